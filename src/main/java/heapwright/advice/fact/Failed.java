package heapwright.advice.fact;

import heapwright.knowledge.Remedy;

/**
 * A step was taken on, done, and did not help.
 *
 * @param remedy the step
 * @param daysAgo days since that was told
 */
public record Failed(Remedy remedy, int daysAgo) {}
