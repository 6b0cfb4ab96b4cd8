package heapwright.advice.fact;

import heapwright.knowledge.Trait;

/** Something with this trait went into the pile; {@code share} is its part of the dry mass put in, 0 to 1, or NaN when the amount is unknown. */
public record WentIn(Trait trait, int daysAgo, double share) {

    /** Whether it is in the record with its amount, and not only known from an answer. */
    public boolean recorded() {
        return !Double.isNaN(share);
    }

    /** Whether it went in before a day so many days ago, and not longer before than that. */
    public boolean shortlyBefore(int laterDaysAgo, double days) {
        return daysAgo > laterDaysAgo && daysAgo - laterDaysAgo <= days;
    }

    /** Whether it went in within these days, before today. */
    public boolean lately(double days) {
        return shortlyBefore(0, days);
    }

    /** Its part of the dry mass put in, percent; NaN when the amount is unknown. */
    public double sharePct() {
        return share * 100;
    }
}
