package heapwright.advice.fact;

import heapwright.knowledge.Evidence;
import heapwright.knowledge.Trait;

/** A row of evidence that waits to hear that stuff with a trait went in. */
public record RowOnWentIn(Trait trait, Evidence row) implements Waiting {}
