package heapwright.advice.fact;

import heapwright.knowledge.Evidence;

/** A row of evidence that waits to hear that a measured quantity stands on a side of a limit. */
public record RowOnMeasured(Stand stand, Evidence row) implements Waiting {}
