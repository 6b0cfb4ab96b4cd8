package heapwright.pile;

/** A test of compost that can be made at home. */
public enum HomeTest implements Token {
    /** Shut damp in a bag or jar for a week, then smelled. */
    BAG,
    /** Left in an insulated jar with a thermometer. */
    REHEAT,
    /** Cress or radish beside the same in clean mix. */
    SEEDLINGS,
    /** Peas or beans beside the same in clean mix, for weedkiller. */
    PEAS,
    /** Thrown through a screen. */
    SIEVE,
    /** A strip of pH paper in the water of it. */
    PH_STRIP
}
