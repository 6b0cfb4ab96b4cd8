package heapwright.advice.fact;

import heapwright.knowledge.Remedy;

/** A remedy that would do harm here and now; the rule's rationale says why. */
public record Withholds(Remedy remedy) {}
