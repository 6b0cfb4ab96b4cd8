package heapwright.advice.fact;

import heapwright.knowledge.Condition;
import heapwright.knowledge.Evidence;

/** A row of evidence that waits to hear that a named condition does not hold. */
public record RowOnHoldsNot(Condition condition, Evidence row) implements Waiting {}
