package heapwright.advice.fact;

import heapwright.knowledge.Harm;

/**
 * Work on the pile did harm.
 *
 * @param harm what came of it
 * @param daysAgo days since that work
 */
public record Harmed(Harm harm, int daysAgo) {}
