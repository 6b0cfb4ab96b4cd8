package heapwright.process.mend;

import java.time.LocalDate;

/**
 * When a pile may be finished, by what others saw with piles of its kind; a run of the heat and decay model on the pile
 * itself is narrower.
 *
 * @param earliest with everything going well
 * @param latest when little is done to it
 */
public record ReadyRange(LocalDate earliest, LocalDate latest) {

    /** How a pile is kept. */
    public enum Care {
        /** A usual home pile: 6 to 12 months (ILLEXT, published). */
        USUAL(182, 365),
        /** Horse manure over summer: 1 to 3 months and the cure (WSUWHAT, published). */
        MANURE_SUMMER(51, 112),
        /** Horse manure over winter: 3 to 6 months and the cure (WSUWHAT, published). */
        MANURE_WINTER(112, 203),
        /** Leaves left alone: more than a year (CORNFAQ, published); twice that at the far end (judgement). */
        UNTENDED_LEAVES(365, 730);

        private final int fromDays;
        private final int toDays;

        Care(int fromDays, int toDays) {
            this.fromDays = fromDays;
            this.toDays = toDays;
        }
    }

    public static ReadyRange of(LocalDate built, Care care) {
        return new ReadyRange(built.plusDays(care.fromDays), built.plusDays(care.toDays));
    }
}
