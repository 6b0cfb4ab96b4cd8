package heapwright.advice.fact;

import heapwright.knowledge.Caution;

/** A caution for this pile whatever is done. */
public record WarnsAlways(Caution caution) {}
