package heapwright.knowledge;

/** What the process model can say of a pile from the measured temperatures of its core. */
public enum ModelFinding implements Id {
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
