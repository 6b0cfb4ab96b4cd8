package heapwright.pile;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Reads the entries of a pile's log. */
final class LogReader {

    private static final String ALLOWED = "the id of a sign, such as smells-sour";
    private static final String EXAMPLE = "\"smells-sour\"";
    private static final String TEST = "a home test, such as bag";
    private static final String RESULT = "how it came out, such as good";

    private final Lexicon lexicon;
    private final Inputs inputs;
    private final Timeline timeline;

    LogReader(Lexicon lexicon, Inputs inputs, Timeline timeline) {
        this.lexicon = lexicon;
        this.inputs = inputs;
        this.timeline = timeline;
    }

    /** The entries in order of date; those of one day stay in the order of the document. */
    List<Entry> log(Section pile, String field) {
        List<Entry> entries = new ArrayList<>();
        for (Section section : pile.sections(field, Shape.ENTRY, Lists.LOG)) {
            entries.add(entry(section));
        }
        entries.sort(Comparator.comparing(Entry::date));
        return entries;
    }

    private Entry entry(Section section) {
        section.needed("date", Dates.ALLOWED, Dates.EXAMPLE);
        LocalDate date = timeline.past(section, "date").orElse(timeline.asOf());
        Set<String> seen = signs(section, "seen", Set.of());
        Set<String> notSeen = signs(section, "notSeen", seen);
        Measured measured = section.section("measured", Shape.MEASURED)
                .map(LogReader::measured)
                .orElseGet(Measured::nothing);
        List<Action> done = section.tokens("done", Action.values());
        List<Ingredient> added = inputs.ingredients(section, "added", Lists.ADDED, date);
        String note = section.words("note", Words.NOTE).orElse("");
        return new Entry(
                date, new ArrayList<>(seen), new ArrayList<>(notSeen), measured, done, added, tested(section), note);
    }

    /** A list of signs; one given twice counts once, one that is in the other list as well is refused. */
    private Set<String> signs(Section section, String field, Set<String> opposite) {
        Set<String> signs = new LinkedHashSet<>();
        for (Node node : section.items(field, Lists.SIGNS, "[" + EXAMPLE + "]")) {
            Optional<String> word = section.string(node, ALLOWED, EXAMPLE);
            Optional<String> sign = word.flatMap(lexicon::sign);
            if (word.isPresent() && sign.isEmpty()) {
                String given = word.get();
                section.findings().wrong(node, node.shown(), ALLOWED, EXAMPLE, () -> lexicon.nearSign(given));
            }
            if (sign.isPresent() && opposite.contains(sign.get())) {
                String found = node.shown() + ", which is also in \"seen\" of this entry";
                section.findings().wrong(node, found, "a sign in one of the two lists only", "");
            }
            sign.ifPresent(signs::add);
        }
        return signs;
    }

    /** The lowest reading of a day, which has a highest beside it. */
    private static OptionalDouble lowest(Section section, OptionalDouble core) {
        OptionalDouble lowest = section.quantity("coreLowest", Quantity.TEMPERATURE);
        if (section.field("coreLowest").isPresent()) {
            section.needed("core", "the highest core temperature of the day", Quantity.TEMPERATURE.example());
        }
        if (lowest.isPresent() && core.isPresent() && lowest.getAsDouble() > core.getAsDouble()) {
            section.findings()
                    .wrong(
                            section.field("coreLowest").orElseThrow(),
                            Quantity.TEMPERATURE.shown(lowest.getAsDouble()) + ", above the core of that day, "
                                    + Quantity.TEMPERATURE.shown(core.getAsDouble()),
                            "the lowest of the day's core temperatures",
                            "");
        }
        return lowest;
    }

    /** The tests that were read; a test or result that is missing was reported. */
    private static List<Tested> tested(Section section) {
        List<Tested> all = new ArrayList<>();
        for (Section one : section.sections("tested", Shape.TESTED, Lists.TOKENS)) {
            Optional<HomeTest> test = one.needed("test", TEST, "\"bag\"").flatMap(n -> one.token(n, HomeTest.values()));
            Optional<Tested.Result> result =
                    one.needed("result", RESULT, "\"good\"").flatMap(n -> one.token(n, Tested.Result.values()));
            if (test.isPresent() && result.isPresent()) {
                all.add(new Tested(test.get(), result.get()));
            }
        }
        return all;
    }

    private static Measured measured(Section section) {
        OptionalDouble core = section.quantity("core", Quantity.TEMPERATURE);
        return new Measured(
                core,
                lowest(section, core),
                section.quantity("coreDepth", Quantity.DEPTH),
                section.quantity("outdoor", Quantity.OUTDOOR_TEMPERATURE),
                section.quantity("moisture", Quantity.MOISTURE),
                section.quantity("bulkDensity", Quantity.DENSITY),
                section.quantity("ph", Quantity.ACIDITY),
                section.quantity("height", Quantity.PILE_HEIGHT));
    }
}
