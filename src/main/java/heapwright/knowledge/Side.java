package heapwright.knowledge;

/** On which side of a limit a quantity stands, and how surely. */
public enum Side implements Id {
    /** Even the low end of its range is above. */
    SURELY_ABOVE,
    /** It is not sure that it is above, though it is read. */
    NOT_SURELY_ABOVE,
    /** Its best single figure is above. */
    LIKELY_ABOVE,
    /** Even the high end of its range is below. */
    SURELY_BELOW,
    /** Its best single figure is below. */
    LIKELY_BELOW
}
