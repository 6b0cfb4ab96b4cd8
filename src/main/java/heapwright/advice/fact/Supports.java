package heapwright.advice.fact;

import heapwright.knowledge.Cause;
import heapwright.knowledge.Origin;

/** Evidence for a cause. Its weight is the strength of the rule that inserted it. */
public record Supports(Cause cause, Origin origin) {}
