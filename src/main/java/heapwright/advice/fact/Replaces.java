package heapwright.advice.fact;

import heapwright.knowledge.Remedy;

/** Of two offered remedies the better one for this pile; the other is held back. */
public record Replaces(Remedy better, Remedy other) {}
