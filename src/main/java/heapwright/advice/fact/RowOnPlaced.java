package heapwright.advice.fact;

import heapwright.knowledge.Evidence;

/** A row of evidence that waits to hear that a quantity stands on a side of a limit, however it is known. */
public record RowOnPlaced(Stand stand, Evidence row) implements Waiting {}
