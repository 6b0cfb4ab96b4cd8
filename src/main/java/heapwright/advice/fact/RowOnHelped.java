package heapwright.advice.fact;

import heapwright.knowledge.Evidence;
import heapwright.knowledge.Remedy;

/** A row that waits for a step to have helped. */
public record RowOnHelped(Remedy remedy, Evidence row) implements Waiting {}
