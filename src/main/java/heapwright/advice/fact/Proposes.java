package heapwright.advice.fact;

import heapwright.knowledge.Cause;
import heapwright.knowledge.Remedy;

/** A remedy proposed for a cause. How firmly is the strength of the rule that inserted it. */
public record Proposes(Remedy remedy, Cause cause) {}
