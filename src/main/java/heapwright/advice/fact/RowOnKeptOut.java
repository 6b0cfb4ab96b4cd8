package heapwright.advice.fact;

import heapwright.knowledge.Evidence;
import heapwright.knowledge.KeepOutClass;

/** A row of evidence that waits to hear that stuff went in which stays out of a home pile. */
public record RowOnKeptOut(KeepOutClass kind, Evidence row) implements Waiting {}
