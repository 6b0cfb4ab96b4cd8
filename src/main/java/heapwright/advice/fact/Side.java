package heapwright.advice.fact;

/** On which side of a limit a quantity stands, and how surely. */
public enum Side {
    /** Even the low end of its range is above. */
    SURELY_ABOVE,
    /** It is not sure that it is above, though it is read. */
    NOT_SURELY_ABOVE,
    /** Its best single figure is above. */
    LIKELY_ABOVE,
    /** Even the high end of its range is below. */
    SURELY_BELOW,
    /** Its best single figure is below. */
    LIKELY_BELOW;

    /** How far within this side a reading is from an edge, in the unit of the reading; negative where it is outside. */
    public double within(Reads reads, double edge) {
        return switch (this) {
            case SURELY_ABOVE -> reads.low() - edge;
            case NOT_SURELY_ABOVE -> edge - reads.low();
            case LIKELY_ABOVE -> reads.likely() - edge;
            case SURELY_BELOW -> edge - reads.high();
            case LIKELY_BELOW -> edge - reads.likely();
        };
    }
}
