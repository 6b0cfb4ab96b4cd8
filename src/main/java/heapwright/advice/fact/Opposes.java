package heapwright.advice.fact;

import heapwright.knowledge.Cause;
import heapwright.knowledge.Origin;

/** Evidence against a cause. Its weight is the strength of the rule that inserted it. */
public record Opposes(Cause cause, Origin origin) {}
