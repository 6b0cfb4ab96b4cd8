package heapwright.advice.fact;

/**
 * What the process model reads from the measured core temperatures of a pile whose recipe is known.
 *
 * @param says what
 * @param shortfallC kelvin by which the last measured core stands below what a healthy pile would have, 0 or more
 */
public record ModelSays(Says says, double shortfallC) {

    /** What the model can say. */
    public enum Says {
        /** Clearly colder than a healthy pile of this size in this weather. */
        COLDER_THAN_HEALTHY,
        /** As cold as a healthy pile of this size would be in this weather. */
        COLD_AS_HEALTHY,
        SPENT,
        SHORT_OF_WATER,
        SHORT_OF_AIR,
        SHORT_OF_NITROGEN,
        TOO_SOUR,
        TOO_COARSE,
        OPENED_TOO_OFTEN
    }
}
