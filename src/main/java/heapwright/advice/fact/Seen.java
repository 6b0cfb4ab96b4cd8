package heapwright.advice.fact;

import heapwright.knowledge.Sign;

/** The person looked for a sign and found it, at the latest answer that is still fresh. */
public record Seen(Sign sign, int daysAgo) {}
