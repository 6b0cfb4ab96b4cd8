package heapwright.advice.fact;

import heapwright.knowledge.Remedy;

/**
 * A step was taken on and helped, and nothing was seen since of what it mends.
 *
 * @param remedy the step
 * @param daysAgo days since that was told
 */
public record Helped(Remedy remedy, int daysAgo) {}
