package heapwright.advice.winter;

import heapwright.knowledge.Id;

/** Why a pile is as warm or cold as it is, in a word. */
public enum Verdict implements Id {
    /** Warm, or as warm as a healthy pile would be. */
    WORKING,
    /** Cold, as a healthy pile of this size would be in this weather. */
    JUST_WINTER,
    /** Clearly colder than a healthy pile of this size in this weather. */
    SOMETHING_WRONG,
    /** The food is spent. */
    FINISHED,
    /** Too young to say. */
    TOO_EARLY
}
