package heapwright.advice.fact;

import heapwright.pile.Action;

/** Something was done to the pile. */
public record Did(Action action, int daysAgo) {}
