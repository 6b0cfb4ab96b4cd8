package heapwright.advice.winter;

import heapwright.knowledge.Id;

/** Why the process model says nothing of a pile. */
public enum WhyUnmodelled implements Id {
    /** Its file names no ingredients. */
    NO_RECIPE,
    /** What went in first weighs next to nothing. */
    TOO_LITTLE,
    /** It was begun longer ago than the model is for. */
    TOO_OLD,
    /** It is no home pile: the model's shells and constants say nothing of heaps that large. */
    TOO_LARGE,
    /** It is of a kind that works without heat, in earth, by worms or by souring. */
    COLD_KIND
}
