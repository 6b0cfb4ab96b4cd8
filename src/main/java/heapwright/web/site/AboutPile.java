package heapwright.web.site;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import heapwright.knowledge.Sign;
import heapwright.phrase.NumberPhrase;
import heapwright.pile.Aim;
import heapwright.pile.Container;
import heapwright.pile.Pile;
import heapwright.pile.PileReader;
import heapwright.pile.PileWriter;
import heapwright.pile.Token;
import heapwright.report.Units;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The fields of a checkup about the pile itself, and the pile document that all answers make. Every field may stay
 * empty.
 */
final class AboutPile {

    static final String BUILT = "built";
    static final String SIZE = "size";
    static final String KIND = "kind";
    static final String USE = "use";
    static final String CORE = "core";
    static final String OUT = "out";

    /** The fields by name. */
    static final List<String> FIELDS = List.of(BUILT, SIZE, KIND, USE, CORE, OUT);

    /** Sizes that can be chosen, cubic metres. */
    static final List<String> SIZES = List.of("0.3", "0.6", "1", "2", "4");

    private AboutPile() {}

    /** The document of the answers, for the pile reader to check. */
    static ObjectNode document(CheckupAnswers said, Units units, String name) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("heapwright", PileReader.VERSION);
        root.put("name", name);
        root.put("asOf", said.on().toString());
        Map<String, String> about = said.about();
        BuiltWhen.of(about.getOrDefault(BUILT, ""), said.on()).ifPresent(when -> when.into(root));
        ObjectNode container = JsonNodeFactory.instance.objectNode();
        if (SIZES.contains(about.getOrDefault(SIZE, ""))) {
            container
                    .putObject("volume")
                    .put("value", Double.parseDouble(about.get(SIZE)))
                    .put("unit", "m3");
        }
        token(about.get(KIND), Container.Kind.values()).ifPresent(kind -> container.put("kind", kind));
        if (!container.isEmpty()) {
            root.set("container", container);
        }
        token(about.get(USE), Aim.Use.values())
                .ifPresent(use -> root.putObject("aim").put("use", use));
        entry(root.putArray("log"), said, units);
        return root;
    }

    /** The document of a pile of the folder with the answers as an entry of its log. */
    static ObjectNode document(CheckupAnswers said, Units units, Pile pile) {
        ObjectNode root = new PileWriter().tree(pile);
        LocalDate asOf = said.on().isAfter(pile.asOf()) ? said.on() : pile.asOf();
        root.put("asOf", asOf.toString());
        entry(root.withArray("log"), said, units);
        return root;
    }

    private static void entry(ArrayNode log, CheckupAnswers said, Units units) {
        ObjectNode entry = log.addObject().put("date", said.on().toString());
        signs(entry, "seen", said.yes());
        signs(entry, "notSeen", said.no());
        ObjectNode measured = JsonNodeFactory.instance.objectNode();
        temperature(measured, "core", said.about().get(CORE), units);
        temperature(measured, "outdoor", said.about().get(OUT), units);
        if (!measured.isEmpty()) {
            entry.set("measured", measured);
        }
    }

    private static void signs(ObjectNode entry, String field, Set<Sign> signs) {
        if (!signs.isEmpty()) {
            ArrayNode list = entry.putArray(field);
            signs.stream().sorted().forEach(s -> list.add(s.id()));
        }
    }

    /** Whether a token is one of a kind. */
    static <E extends Token> java.util.Optional<String> token(String given, E[] all) {
        return Arrays.stream(all).map(Token::token).filter(t -> t.equals(given)).findFirst();
    }

    /** Puts a temperature in, as typed: the reader judges whether it is a possible one. */
    static void temperature(ObjectNode measured, String field, String typed, Units units) {
        if (typed != null) {
            ObjectNode quantity = measured.putObject(field);
            NumberPhrase.number(typed)
                    .ifPresentOrElse(v -> quantity.put("value", v), () -> quantity.put("value", typed));
            quantity.put("unit", degrees(units));
        }
    }

    /** The unit in which temperatures are typed, as a document writes it. */
    static String degrees(Units units) {
        return units == Units.US ? "F" : "C";
    }

    /** The document's places to the fields they were typed into. */
    static final Map<String, String> PLACES = Map.of("measured/core", CORE, "measured/outdoor", OUT);
}
