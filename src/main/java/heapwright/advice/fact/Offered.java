package heapwright.advice.fact;

import heapwright.knowledge.Remedy;

/** A proposed remedy that no guard withholds; the arrange rules read it. */
public record Offered(Remedy remedy) {}
