package heapwright.process.sanitation;

import heapwright.knowledge.HeatRule;
import heapwright.knowledge.Survivor;

/**
 * What the heat of this pile says of one weed, pest or disease.
 *
 * @param survivor the weed, pest or disease
 * @param verdict what is to be thought of it
 * @param inThisPile whether something that may carry it went in
 */
public record Fate(Survivor survivor, Verdict verdict, boolean inThisPile) {

    /** What is to be thought of it; none of them says that it is gone. */
    public enum Verdict {
        /** Killed at such heat in published trials, and the core had it. */
        REACHED_IN_CORE,
        /** Killed at such heat in published trials, which the core is not shown to have had. */
        NOT_REACHED,
        /** It survives what a home pile does. */
        OUTLIVES,
        /** Time and decay are enough by what is published. */
        FADES,
        /** Nothing is published that would settle it. */
        UNKNOWN
    }

    static Fate of(Survivor survivor, HeatRecord record, boolean inThisPile) {
        return new Fate(survivor, verdict(survivor, record), inThisPile);
    }

    private static Verdict verdict(Survivor survivor, HeatRecord record) {
        return switch (survivor.fate()) {
            case OUTLIVES -> Verdict.OUTLIVES;
            case COOL -> Verdict.FADES;
            case UNKNOWN -> Verdict.UNKNOWN;
            case HEAT ->
                survivor.needs()
                                .filter(n -> RuleCheck.shown(
                                                new HeatRule.Need(n.celsius(), n.days(), n.turns(), 0, 0, true), record)
                                        .met())
                                .isPresent()
                        ? Verdict.REACHED_IN_CORE
                        : Verdict.NOT_REACHED;
        };
    }
}
