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
    HOT_ENOUGH_IN_CORE,
    FIRST_HEAT_FALLING,
    FREEZING_OUTSIDE,
    AIR_BELOW_FREEZING,
    DEEP_FROST,
    COLD_SEASON,
    COOLED_BY_A_TURN_IN_FROST,
    WARM_MONTHS_AHEAD,
    WARMTH_COMING,
    FROZEN_MIDDLE,
    NEARLY_COMPOST,
    FINE_WOOD,
    // air and structure
    SMALL,
    LARGE,
    TOO_BIG_TO_HANDLE,
    DAMP_BY_HAND,
    SMALL_ENOUGH_TO_SPREAD,
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
    INSULATED,
    CLOSED_BIN,
    COLD_BY_KIND,
    SCRAPS_COME_IN,
    // outcome
    LOOKS_FINISHED,
    HYGIENE_DOUBT,
    FOR_FOOD_BEDS,

    // Named for rows of evidence, by the files of derive rules they stand in.
    // smell
    AIRLESS_SMELL_UNDER_SEAL(true),
    AIRLESS_SMELL_IN_TALL_PILE(true),
    PUTRID_SMELL_AFTER_FAT(true),
    AMMONIA_AFTER_ALKALI(true),
    DARK_BUT_SMELLS_RAW(true),
    SWEET_AND_NEVER_HEATED(true),
    WET_WITH_FLIES(true),
    // water
    DAMP_BUT_NEVER_HEATED(true),
    DAMP_IN_COLD_SEASON(true),
    DAMP_WITHOUT_REHEAT(true),
    WET_AND_UNCOVERED(true),
    DRY_AFTER_HEAT(true),
    // warmth
    WARM_CORE_IN_COLD_SEASON(true),
    AT_WORK_BY_THE_THERMOMETER(true),
    FOUL_SMELL_OF_DRY_STUFF(true),
    WARM_AFTER_HEAT(true),
    COLD_CORE_IN_COLD_SEASON(true),
    HOT_AND_AIRLESS(true),
    COOLING_IN_MILD_WEATHER(true),
    COOLED_IN_COLD_SEASON(true),
    REHEATS_THOUGH_OLD(true),
    REHEATS_THOUGH_DARK(true),
    NO_REHEAT_AFTER_HEAT(true),
    NEVER_HEATED_IN_COLD_SEASON(true),
    UNTURNED_SINCE_HEAT(true),
    NOT_HOT_YET_AFTER_RECENT_WORK(true),
    // cold
    OPENED_AGAIN_AND_AGAIN(true),
    OPENED_OFTEN_IN_FROST(true),
    ROD_STOPPED_WITHOUT_FROST(true),
    ROD_STOPPED_IN_FROST(true),
    SMALL_WITHOUT_OVERHEATING(true),
    SMALL_IN_COLD_SEASON(true),
    SMALL_AND_COOL_IN_MILD_WEATHER(true),
    // mixture
    PH_HIGH_WITHOUT_ALKALI(true),
    LEAN_MIX_WITH_ALKALI(true),
    STARVED_MIX_AND_NOTHING_RICH(true),
    AMMONIA_MIX_NOT_FINISHED(true),
    // structure
    WEIGHED_AND_DRAUGHTY(true),
    DENSE_WITHOUT_WATER(true),
    SLIMY_AFTER_FAT(true),
    FOOD_COVERED(true),
    ON_WET_GROUND(true),
    // risk
    SEEDS_WITHOUT_HEAT(true),
    ROOTS_IN_SHOWN_HEAT(true),
    RISKY_STUFF_AND_HEAT_IS_OVER(true),
    RISKY_STUFF_WITHOUT_SHOWN_HEAT(true),
    RISKY_STUFF_NEVER_MEASURED(true),
    MANURE_NEVER_TURNED(true),
    SALTED_STUFF_NOT_FOOD(true),
    FIRE_DANGER(true),
    GAS_DANGER(true),
    DEEP_PIT,
    // kind
    WORKS_COLD(true),
    WARM_WORM_BIN(true),
    FROZEN_WORM_BIN(true),
    WORM_BIN_IN_FROST(true),
    FOUL_FERMENT(true),
    ANTS_IN_DAMP_STUFF(true),
    FIRST_ACIDS_USED_UP(true),
    // ripeness
    RAW_THOUGH_OLD(true),
    RAW_OUTSIDE_BURNT_INSIDE(true),
    GREENS_KEPT(true),
    STUNTED_AFTER_SALT(true),
    PAST_DECAY_AND_NOT_RIPE(true);

    private final boolean forEvidence;

    Condition() {
        this(false);
    }

    Condition(boolean forEvidence) {
        this.forEvidence = forEvidence;
    }

    /**
     * Whether it is a name for several parts that only rows of evidence read. What its parts rest on is then told in its
     * stead, and nobody asks for its absence.
     */
    public boolean forEvidence() {
        return forEvidence;
    }
}
