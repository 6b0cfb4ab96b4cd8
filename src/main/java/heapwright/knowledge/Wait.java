package heapwright.knowledge;

/** What compost or its grower waits for. */
public enum Wait implements Id {
    CURE_AFTER_HEAT,
    CURE_NEVER_HOT,
    FRESH_STUFF,
    RIPE_BY_AGE,
    HARVEST_TOUCHING_SOIL,
    HARVEST_OTHERS,
    WALNUT_WOOD,
    WALNUT_LEAVES,
    HORSE_MANURE_SUMMER,
    HORSE_MANURE_WINTER,
    TEST_HOLDS
}
