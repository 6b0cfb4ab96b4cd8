package heapwright.advice.fact;

import heapwright.knowledge.Condition;
import heapwright.knowledge.Evidence;

/** A row of evidence that waits to hear that a named condition holds. */
public record RowOnHolds(Condition condition, Evidence row) implements Waiting {}
