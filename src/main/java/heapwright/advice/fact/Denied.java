package heapwright.advice.fact;

import heapwright.knowledge.Sign;

/** The person looked for a sign and did not find it. A sign that was not looked for has neither fact. */
public record Denied(Sign sign, int daysAgo) {}
