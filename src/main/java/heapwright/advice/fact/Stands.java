package heapwright.advice.fact;

import heapwright.knowledge.Danger;

/** A danger that stands; while it does, the advice is what the table of dangers says. */
public record Stands(Danger danger) {}
