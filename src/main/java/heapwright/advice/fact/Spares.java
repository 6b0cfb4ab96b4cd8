package heapwright.advice.fact;

import heapwright.knowledge.Caution;
import heapwright.knowledge.Remedy;

/** A caution that does not go with a remedy as it is done with a pile of this kind, whatever else asks for it. */
public record Spares(Remedy remedy, Caution caution) {}
