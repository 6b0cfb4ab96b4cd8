package heapwright.knowledge;

/**
 * What may be the matter with a pile, or why it is well as it is. Words and base rates stand in {@code rules/tables/causes.json}.
 */
public enum Cause implements Id {
    // water
    TOO_WET,
    TOO_DRY,
    DRY_CORE,
    RAIN_GETS_IN,
    POOR_DRAINAGE,
    // air
    TOO_LITTLE_AIR,
    COMPACTED,
    MATTED,
    TOO_AIRY,
    SEALED_IN,
    POORLY_MIXED,
    // food
    LACKS_NITROGEN,
    TOO_MUCH_NITROGEN,
    TOO_ALKALINE,
    ACID_START,
    FERMENTING,
    COARSE_WOOD,
    FAT_COATED,
    SPENT,
    // heat
    TOO_SMALL_FOR_COLD,
    FROZEN_IN,
    SLOWED_BY_WINTER,
    DISTURBED_TOO_OFTEN,
    OVERHEATED,
    TOO_LARGE,
    FIRE_RISK,
    GAS_IN_CLOSED_SPACE,
    SOMEBODY_HURT,
    HAZARDOUS_WASTE,
    WASPS_NEST,
    // visitors and hygiene
    FOOD_EXPOSED,
    STANDING_WATER_BREEDS,
    RUNOFF_LOSS,
    WEED_SEEDS_ALIVE,
    ROOTS_INVADING,
    DISEASE_CARRIED,
    HERBICIDE_RESIDUE,
    SALT_LOAD,
    CONTAMINATED,
    PATHOGEN_RISK,
    RAW_STORE_SMELLS,
    WORMS_IN_TROUBLE,
    FERMENT_SPOILT,
    // nothing to mend
    JUST_BUILT,
    WORK_TOO_RECENT,
    WORKING_WELL,
    HARMLESS_FUNGI,
    HARMLESS_VISITORS,
    COLD_BY_KIND,
    MATURING,
    FINISHED,
    UNFINISHED
}
