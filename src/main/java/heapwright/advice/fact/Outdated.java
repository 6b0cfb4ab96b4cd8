package heapwright.advice.fact;

import heapwright.knowledge.Sign;

/** An older answer that a newer one of another name has put right. */
public record Outdated(Sign sign) {}
