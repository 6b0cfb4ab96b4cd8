package heapwright.advice.fact;

import heapwright.knowledge.Cause;

/** A cause that stands after the conclude pass; the remedy rules read it. */
public record Concluded(Cause cause, double likelihood) {}
