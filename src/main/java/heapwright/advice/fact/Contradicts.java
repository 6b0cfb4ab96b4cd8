package heapwright.advice.fact;

import heapwright.knowledge.Sign;

/** Two answers that cannot both be so; both are asked again. */
public record Contradicts(Sign one, Sign other) {}
