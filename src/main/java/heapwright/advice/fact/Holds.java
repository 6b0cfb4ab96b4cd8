package heapwright.advice.fact;

import heapwright.knowledge.Condition;

/** A named state of the pile, inferred by a derive rule. */
public record Holds(Condition condition) {}
