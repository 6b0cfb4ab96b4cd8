package heapwright.advice.fact;

import heapwright.knowledge.Id;

/** A likelihood in a word. The edges are judgement. */
public enum Grade implements Id {
    UNLIKELY(0),
    POSSIBLE(0.30),
    LIKELY(0.60),
    VERY_LIKELY(0.85);

    private final double from;

    Grade(double from) {
        this.from = from;
    }

    /** The likelihood from which the word is used, 0 to 1. */
    public double from() {
        return from;
    }

    /** The word for a likelihood of 0 to 1. */
    public static Grade of(double likelihood) {
        Grade word = UNLIKELY;
        for (Grade grade : values()) {
            if (likelihood >= grade.from) {
                word = grade;
            }
        }
        return word;
    }

    public boolean atLeast(Grade other) {
        return compareTo(other) >= 0;
    }
}
