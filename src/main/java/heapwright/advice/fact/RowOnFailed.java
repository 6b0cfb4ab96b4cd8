package heapwright.advice.fact;

import heapwright.knowledge.Evidence;
import heapwright.knowledge.Remedy;

/** A row that waits for a step to have been done without help. */
public record RowOnFailed(Remedy remedy, Evidence row) implements Waiting {}
