package heapwright.web.site;

import heapwright.phrase.NumberPhrase;
import heapwright.pile.LengthUnit;
import heapwright.pile.Problem;
import heapwright.pile.TemperatureUnit;
import heapwright.pile.Unit;
import heapwright.pile.VolumeUnit;
import heapwright.web.view.CheckupView.Fault;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What is wrong with a field, in a gardener's words: what was typed, as it was typed, and what would do. The reader of
 * pile documents speaks to who writes JSON; of its messages only the span that a figure must lie in is taken over, told
 * in the unit of the field.
 */
final class FaultWords {

    private static final Pattern SPAN = Pattern.compile("a figure from (-?[0-9.]+) to (-?[0-9.]+) ?([A-Za-z0-9]*).*");
    private static final List<List<Unit>> KINDS =
            List.of(List.of(TemperatureUnit.values()), List.of(LengthUnit.values()), List.of(VolumeUnit.values()));
    private static final MathContext FIGURES = new MathContext(3);
    private static final String DAY = "[0-9]{4}-[0-9]{2}-[0-9]{2}";
    private static final String DEGREES = "degrees";
    private static final String SIZE = "size";
    private static final Map<String, String> HINTS = Map.ofEntries(
            Map.entry("core", DEGREES),
            Map.entry("out", DEGREES),
            Map.entry("date", "date"),
            Map.entry("readyBy", "readyBy"),
            Map.entry("amount", "amount"),
            Map.entry("length", SIZE),
            Map.entry("width", SIZE),
            Map.entry("height", SIZE),
            Map.entry("volume", SIZE),
            Map.entry("latitude", "latitude"),
            Map.entry("minutes", "minutes"),
            Map.entry("material", "material"),
            Map.entry("name", "text"),
            Map.entry("note", "text"));

    private final Texts texts;

    FaultWords(Texts texts) {
        this.texts = texts;
    }

    /**
     * The sentence.
     *
     * @param label what the field is called on the page
     * @param field the field, without the row it stands in
     * @param typed what was typed into it
     * @param unit the unit it is typed in, as a document writes it; empty where it has none
     * @param allowed what the reader allows
     * @param near the nearest thing that would do
     */
    String text(String label, String field, String typed, String unit, String allowed, Optional<String> near) {
        String hint = texts.of("fault.hint." + HINTS.getOrDefault(field, "choose"));
        if (typed.isBlank()) {
            return texts.of("fault.empty", label, hint);
        }
        OptionalDouble number = NumberPhrase.number(typed);
        Matcher span = SPAN.matcher(allowed);
        if (number.isPresent() && span.matches()) {
            return texts.of(
                    "fault.beyond",
                    label,
                    typed,
                    bound(span.group(1), span.group(3), unit),
                    bound(span.group(2), span.group(3), unit),
                    unit.isEmpty() ? "" : " " + shown(unit));
        }
        return texts.of(number.isPresent() || typed.matches(DAY) ? "fault.field" : "fault.unread", label, typed, hint)
                + near.map(n -> " " + texts.of("fault.near", n)).orElse("");
    }

    /** The same for what the reader found. */
    String text(String label, String field, String typed, String unit, Problem problem) {
        return text(label, field, typed, unit, problem.allowed(), problem.closest());
    }

    /** What is wrong where no field of the form is to blame. */
    Fault other(Problem problem) {
        return new Fault("", texts.of("fault.other", problem.found(), problem.allowed()));
    }

    private static String bound(String figure, String from, String to) {
        double bound = Double.parseDouble(figure);
        double told = KINDS.stream()
                .flatMap(kind -> unit(kind, from).stream()
                        .flatMap(a -> unit(kind, to).stream().map(b -> a.to(b, bound))))
                .findFirst()
                .orElse(bound);
        return BigDecimal.valueOf(told)
                .round(FIGURES)
                .stripTrailingZeros()
                .toPlainString()
                .replace('-', '\u2212');
    }

    private static Optional<Unit> unit(List<Unit> kind, String symbol) {
        return kind.stream().filter(u -> u.symbol().equals(symbol)).findFirst();
    }

    /** A unit as the page writes it beside the field. */
    private static String shown(String unit) {
        return Stream.of(TemperatureUnit.values()).anyMatch(u -> u.symbol().equals(unit))
                ? "°" + unit
                : unit.replace('3', '³');
    }
}
