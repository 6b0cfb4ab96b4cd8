package heapwright.advice.fact;

import heapwright.knowledge.Cause;

/** A suspected cause that another finding explains away; the rule's rationale says why. */
public record SetAside(Cause cause) {}
