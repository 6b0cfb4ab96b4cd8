package heapwright.advice.fact;

import heapwright.knowledge.Condition;

/**
 * A named state that the pile is not in; the weigh rules read it instead of an absence, which has no degree.
 *
 * @param condition the state
 * @param degree how far it does not hold, above 0 to 1
 */
public record HoldsNot(Condition condition, double degree) implements Graded {}
