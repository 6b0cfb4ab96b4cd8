package heapwright.advice.fact;

import heapwright.knowledge.Reading;
import heapwright.knowledge.Side;

/**
 * A quantity of this pile as a range, in the unit its {@link Reading} has.
 *
 * @param reading what it is
 * @param low 5 in 100 chance that it is lower
 * @param likely best single figure
 * @param high 5 in 100 chance that it is higher
 * @param basis where it comes from
 */
public record Reads(Reading reading, double low, double likely, double high, Basis basis) {

    /** Where a reading comes from; a measured figure replaces an estimate. */
    public enum Basis {
        MEASURED,
        REPORTED,
        ESTIMATED,
        /** Nothing is known of it; the usual figure of any pile stands in. */
        ASSUMED
    }

    /** Figures that differ by less are equal: no reading is so fine, and arithmetic rounds off below it. */
    private static final double EQUAL_WITHIN = 1e-6;

    public boolean surelyAbove(double edge) {
        return low - edge > EQUAL_WITHIN;
    }

    public boolean surelyBelow(double edge) {
        return edge - high > EQUAL_WITHIN;
    }

    public boolean likelyAbove(double edge) {
        return likely - edge > EQUAL_WITHIN;
    }

    public boolean likelyBelow(double edge) {
        return edge - likely > EQUAL_WITHIN;
    }

    /** How far it is within a side of an edge, in its unit; negative where it is outside. */
    public double within(Side side, double edge) {
        return switch (side) {
            case SURELY_ABOVE -> low - edge;
            case NOT_SURELY_ABOVE -> edge - low;
            case LIKELY_ABOVE -> likely - edge;
            case SURELY_BELOW -> edge - high;
            case LIKELY_BELOW -> edge - likely;
        };
    }

    public boolean measured() {
        return basis == Basis.MEASURED;
    }
}
