package heapwright.advice.fact;

import heapwright.knowledge.Trait;

/** Something with this trait went into the pile; {@code share} is its part of the dry mass put in, 0 to 1, or NaN when the amount is unknown. */
public record WentIn(Trait trait, int daysAgo, double share) {

    /** Its part of the dry mass put in, percent; NaN when the amount is unknown. */
    public double sharePct() {
        return share * 100;
    }
}
