package heapwright.process.mixture;

/** Where a figure of a pile comes from; the earlier beats the later. */
public enum Basis {
    /** Measured on this pile. */
    MEASURED,
    /** Stated by the person: a size, a recipe by weight. */
    REPORTED,
    /** Worked out from the recipe and the usual figures of its materials. */
    ESTIMATED,
    /** Nothing is known of this pile; the usual range of any pile stands in. */
    ASSUMED
}
