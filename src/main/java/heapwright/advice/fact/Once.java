package heapwright.advice.fact;

import heapwright.knowledge.Sign;

/** A sign was seen on an earlier day of the record, however long ago. What has been is not forgotten. */
public record Once(Sign sign, int daysAgo) {}
