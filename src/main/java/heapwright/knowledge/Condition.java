package heapwright.knowledge;

/**
 * A named state of the pile, inferred once from answers and readings and then used by many rules.
 */
public enum Condition implements Id {
    // water
    WET,
    DRY,
    SATURATED,
    // warmth
    COLD_CORE,
    TOO_COOL_TO_SCALD,
    WARM_CORE,
    HOT_CORE,
    OVERHEATING,
    DRY_HEAT_SEEN,
    HAS_BEEN_HOT,
    HEAT_PROVEN,
    FREEZING_OUTSIDE,
    DEEP_FROST,
    COLD_SEASON,
    // air and structure
    DENSE,
    AIRY,
    SMALL,
    SMALL_FOR_WINTER,
    LARGE,
    TOO_BIG_TO_HANDLE,
    // food
    NITROGEN_RICH,
    NITROGEN_POOR,
    ACID,
    ALKALINE,
    AMMONIA_PRESENT,
    FOUL_GAS,
    RECENT_ALKALI,
    LOADED_WITH_ALKALI,
    YOUNG_ASH,
    RECENT_NITROGEN,
    FRESH_MANURE,
    ANIMAL_FOOD,
    // time
    YOUNG,
    MIDDLE_AGED,
    OLD,
    RECENTLY_TURNED,
    LONG_UNTURNED,
    // place
    CLOSED_SPACE,
    SEALED,
    IN_THE_WIND,
    WATER_NEARBY,
    UNCOVERED,
    ON_HARD_GROUND,
    INSULATED,
    CLOSED_BIN,
    // outcome
    LOOKS_FINISHED,
    STILL_RAW,
    ACTIVE,
    HYGIENE_DOUBT,
    FOR_FOOD_BEDS
}
