package heapwright.advice.fact;

import heapwright.knowledge.Limit;

/** The edge of a range in force for this pile: the table's figure, or the person's own. */
public record LimitIs(Limit limit, double value) {}
