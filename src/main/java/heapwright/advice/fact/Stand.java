package heapwright.advice.fact;

import heapwright.knowledge.Limit;
import heapwright.knowledge.Reading;
import heapwright.knowledge.Side;

/** A side of a limit on which a quantity may stand. */
public record Stand(Reading reading, Side side, Limit limit) {}
