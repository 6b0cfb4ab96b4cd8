package heapwright.advice.fact;

import heapwright.knowledge.Evidence;
import heapwright.knowledge.ModelFinding;

/** A row of evidence that waits to hear what the process model says. */
public record RowOnModel(ModelFinding finding, Evidence row) implements Waiting {}
