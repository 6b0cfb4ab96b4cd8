package heapwright.advice.fact;

import heapwright.knowledge.Remedy;

/** A step was taken on and done, and the day on which its effect should show has not come. */
public record Underway(Remedy remedy) {}
