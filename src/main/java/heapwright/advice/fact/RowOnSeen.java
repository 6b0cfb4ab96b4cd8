package heapwright.advice.fact;

import heapwright.knowledge.Evidence;
import heapwright.knowledge.Sign;

/** A row of evidence that waits to hear that a sign is seen. */
public record RowOnSeen(Sign sign, Evidence row) implements Waiting {}
