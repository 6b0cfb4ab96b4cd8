package heapwright.advice.fact;

import heapwright.knowledge.Evidence;
import heapwright.knowledge.Sign;

/** A row of evidence that waits to hear that a sign is looked for and not found. */
public record RowOnDenied(Sign sign, Evidence row) implements Waiting {}
