package heapwright.knowledge;

/**
 * A quantity of the pile with a low, likely and high value.
 */
public enum Reading implements Id {
    // mixture
    MOISTURE,
    CARBON_TO_NITROGEN,
    FREE_AIR_SPACE,
    WET_DENSITY,
    WOODY_SHARE,
    ASH_LOAD,
    SOIL_SHARE,
    ALL_CARBON_TO_NITROGEN,
    COARSE_SHARE,
    ASH_VOLUME,
    FERTILISER_NITROGEN,
    SALT_LOAD,
    LONGEST_PIECE,
    // measured
    PH,
    CORE_TEMPERATURE,
    CORE_READING_AGE,
    OUTDOOR_TEMPERATURE,
    COLDEST_MONTH_AHEAD,
    /** What the air is on the average at the date and the place, where nobody measured it. */
    USUAL_OUTDOOR_TEMPERATURE,
    /** The coldest that the air is on the average from today to two months on. */
    COLDEST_SOON,
    /** The coldest that the air is on the average from a month to two months on: what a coat put on now will meet. */
    COLDEST_NEXT,
    CORE_EXCESS,
    PEAK_TEMPERATURE,
    DAYS_AT_SANITISING_HEAT,
    TURNS_AT_SANITISING_HEAT,
    HEIGHT,
    /** How deep the pit is dug that it lies in, as far as that was told. */
    PIT_DEPTH,
    // size and time
    VOLUME,
    DOUBTED_VOLUME,
    AGE,
    DAYS_SINCE_TURN,
    /** On how many of the last seven days it was opened or turned. */
    OPENINGS,
    /** On how many days of the last two weeks it was opened or turned. */
    OPENINGS_OF_A_FORTNIGHT
}
