package heapwright.knowledge;

/**
 * An edge of a range. Value, unit and source stand in {@code rules/tables/limits.json}; a pile file may replace it.
 */
public enum Limit implements Id {
    // moisture, percent of wet mass
    MOISTURE_STOPPED,
    MOISTURE_SLOW,
    MOISTURE_GOOD_LOW,
    MOISTURE_GOOD_HIGH,
    MOISTURE_OK_HIGH,
    MOISTURE_SATURATED,
    // C:N
    CN_AMMONIA,
    CN_GOOD_LOW,
    CN_GOOD_HIGH,
    CN_SLOW,
    CN_STARVED,
    // air and density
    FAS_BAD,
    FAS_POOR,
    FAS_DRAUGHTY,
    DENSITY_DENSE,
    DENSITY_GOOD_HIGH,
    PIECE_GOOD,
    PIECE_LONG,
    WOODY_SHARE_HIGH,
    LEAF_SHARE,
    COARSE_SHARE_LOW,
    SOIL_MAX_SHARE,
    MATTING_MAX_SHARE,
    // pH
    PH_ACID,
    PH_AMMONIA,
    // temperature, degrees Celsius
    CORE_COLD,
    CORE_ACTIVE,
    CORE_SANITISING,
    CORE_OVERHEATED,
    CORE_FIRE_EARLY,
    CORE_FIRE_WATCH,
    CORE_FIRE_ACT,
    EXCESS_COLD,
    EXCESS_WORKING,
    CORE_FALL,
    FREEZING,
    TURNING_FROST,
    MEAN_COLD_SEASON,
    // size
    VOLUME_SMALL,
    VOLUME_WINTER,
    HEIGHT_MIN,
    HEIGHT_MAX,
    HAND_VOLUME,
    HAND_HEIGHT,
    PIT_DEEP,
    // turns
    HEAT_PROOF_TURNS,
    // time, days
    AGE_YOUNG,
    AGE_HEATING,
    AGE_OLD,
    AGE_FINISHED,
    TURN_RECENT,
    WORK_SHOWS,
    HARM_SHOWS,
    OPENINGS_MANY,
    OPENINGS_OF_A_FORTNIGHT_MANY,
    TURN_LONG_AGO,
    INPUT_RECENT,
    ALKALI_NITROGEN_APART,
    HEAT_PROOF_DAYS,
    CORE_READING_STILL_GOOD,
    ANSWER_FRESH,
    EMBERS_LIVE,
    // doses
    UREA_MAX,
    NITROGEN_MAX,
    ASH_MAX,
    NITROGEN_FRACTION_LOW,
    NITROGEN_FRACTION_HIGH,
    NITROGEN_DOSE_INTERVAL,
    CARBON_MAX_SHARE,
    WATER_MAX_AT_ONCE,
    SOLUTION_MAX,
    ASH_MASS_MAX,
    SALT_LOAD_MAX
}
