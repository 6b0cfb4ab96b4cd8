package heapwright.advice.ready;

import heapwright.knowledge.Id;

/** How sure a word on ripeness is; none is certain. */
public enum Sureness implements Id {
    /** Hardly anything was looked at. */
    GUESS,
    /** Some of look, smell, warmth and tests. */
    FAIR,
    /** Several of them, and they agree. */
    GOOD
}
