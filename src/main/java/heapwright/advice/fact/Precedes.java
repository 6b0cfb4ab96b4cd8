package heapwright.advice.fact;

import heapwright.knowledge.Remedy;

/** Of two offered remedies the one that must be done first. */
public record Precedes(Remedy first, Remedy second) {}
