package heapwright.advice.engine;

import heapwright.knowledge.Id;

/** One of the six passes in which the rules run; the agenda group of its rules has its id as name. */
public enum Pass implements Id {
    DERIVE,
    WEIGH,
    CONCLUDE,
    REMEDY,
    GUARD,
    ARRANGE
}
