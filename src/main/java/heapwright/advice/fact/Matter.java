package heapwright.advice.fact;

import heapwright.knowledge.Id;

/** What findings may disagree about. */
public enum Matter implements Id {
    WATER,
    WARMTH,
    AIR,
    SMELL,
    FOOD,
    RIPENESS
}
