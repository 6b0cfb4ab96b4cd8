package heapwright.advice.fact;

import heapwright.knowledge.Caution;
import heapwright.knowledge.Remedy;

/** A caution that goes with a remedy because of the state of this pile. */
public record Warns(Remedy remedy, Caution caution) {}
