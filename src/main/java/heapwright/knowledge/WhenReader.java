package heapwright.knowledge;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads what a row of evidence waits for: an object that names exactly one kind of thing. */
final class WhenReader {

    private static final List<String> KINDS =
            List.of("seen", "denied", "holds", "holdsNot", "reading", "model", "wentIn", "keepOut", "helped", "failed");

    private final Row.Ids<Sign> signs;
    private final Row.Ids<Condition> conditions;
    private final Row.Ids<Limit> limits;
    private final Row.Ids<Trait> traits;
    private final Row.Ids<KeepOutClass> keepOuts;
    private final Row.Ids<Remedy> remedies = Row.Ids.of(Remedy.values());
    private final Row.Ids<Reading> readings = Row.Ids.of(Reading.values());
    private final Row.Ids<Side> sides = Row.Ids.of(Side.values());
    private final Row.Ids<ModelFinding> findings = Row.Ids.of(ModelFinding.values());

    WhenReader(
            Row.Ids<Sign> signs,
            Row.Ids<Condition> conditions,
            Row.Ids<Limit> limits,
            Row.Ids<Trait> traits,
            Row.Ids<KeepOutClass> keepOuts) {
        this.signs = signs;
        this.conditions = conditions;
        this.limits = limits;
        this.traits = traits;
        this.keepOuts = keepOuts;
    }

    When read(Row row) {
        List<? extends When> named = Stream.of(
                        row.severalIfAny("seen", signs).map(When.Seen::new),
                        row.severalIfAny("denied", signs).map(When.Denied::new),
                        row.oneIfAny("holds", conditions).map(When.Holds::new),
                        row.oneIfAny("holdsNot", conditions).map(When.HoldsNot::new),
                        row.oneIfAny("reading", readings).map(r -> placed(r, row)),
                        row.oneIfAny("model", findings).map(When.ModelSays::new),
                        row.severalIfAny("wentIn", traits).map(When.WentIn::new),
                        row.oneIfAny("keepOut", keepOuts).map(When.KeptOut::new),
                        row.severalIfAny("helped", remedies).map(When.Helped::new),
                        row.severalIfAny("failed", remedies).map(When.Failed::new))
                .flatMap(Optional::stream)
                .toList();
        List<String> told = KINDS.stream().filter(row::has).toList();
        if (told.size() != 1) {
            String found = String.join(" and ", told);
            throw row.fault(
                    "",
                    found.isEmpty() ? "none of the kinds" : found,
                    "exactly one of " + String.join(", ", KINDS)
                            + "; name a condition of several parts by a derive rule",
                    "{\"seen\": [\"smells-sour\"]}");
        }
        // Nothing where the one that is told has a fault, which is noted.
        return named.isEmpty() ? null : named.get(0);
    }

    private When.Placed placed(Reading reading, Row row) {
        return new When.Placed(
                reading,
                row.one("side", sides),
                row.one("limit", limits),
                row.flagIfAny("measured").orElse(false));
    }
}
