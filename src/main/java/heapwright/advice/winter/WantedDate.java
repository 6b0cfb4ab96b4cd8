package heapwright.advice.winter;

import heapwright.knowledge.Id;
import heapwright.process.heat.Ensemble;
import heapwright.process.heat.Readiness;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/**
 * The answer to the day on which compost is wanted.
 *
 * @param day the day
 * @param answer whether it will be ready by then
 * @param chance chance that it is, 0–1, as far ahead as is looked
 */
public record WantedDate(LocalDate day, Answer answer, double chance) {

    /** Whether a pile will be ready by a day. */
    public enum Answer implements Id {
        /** The day is past. */
        PAST,
        LIKELY,
        PERHAPS,
        /** Not by then. */
        NOT_BY_THEN,
        /** The day lies further ahead than is looked, and it is not likely to be ready within that. */
        BEYOND
    }

    /** From this chance on it is likely, and below that one not to be counted on (judgement). */
    private static final double LIKELY_FROM = 2.0 / 3;

    private static final double PERHAPS_FROM = 1.0 / 3;

    /**
     * The answer to the wish of a pile, if it has one.
     *
     * @param model the pile
     * @param first the first day of the courses
     * @param courses the pile left alone, as far ahead as is looked
     * @param looked how many days that is
     */
    static Optional<WantedDate> of(PileModel model, LocalDate first, Ensemble courses, int looked) {
        return model.pile().aim().readyBy().map(day -> {
            long by = ChronoUnit.DAYS.between(first, day);
            double chance =
                    courses.share(c -> Readiness.standard().day(c).orElse(Integer.MAX_VALUE) <= Math.min(by, looked));
            return new WantedDate(day, answer(model, day, chance, by > looked), chance);
        });
    }

    private static Answer answer(PileModel model, LocalDate day, double chance, boolean beyond) {
        if (day.isBefore(model.pile().asOf())) {
            return Answer.PAST;
        }
        if (chance >= LIKELY_FROM) {
            return Answer.LIKELY;
        }
        if (beyond) {
            return Answer.BEYOND;
        }
        return chance >= PERHAPS_FROM ? Answer.PERHAPS : Answer.NOT_BY_THEN;
    }
}
