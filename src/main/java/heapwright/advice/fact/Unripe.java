package heapwright.advice.fact;

import heapwright.knowledge.RipeReason;

/** The days of the record or a home test speak against using the compost yet. */
public record Unripe(RipeReason reason) {}
