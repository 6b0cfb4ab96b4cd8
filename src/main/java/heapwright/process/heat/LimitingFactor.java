package heapwright.process.heat;

/** What holds decay back most. */
public enum LimitingFactor {
    /** Nothing holds it back much. */
    NONE,
    COLD,
    FROZEN,
    HEAT,
    WATER,
    AIR,
    NITROGEN,
    ACID,
    PIECE_SIZE,
    FOOD_SPENT
}
