package heapwright.process.use;

import heapwright.process.mixture.Band;

/**
 * A layer of compost.
 *
 * @param cm its depth, cm
 */
public record Layer(double cm) {

    private static final double LITRES_PER_M2_AND_CM = 10;
    private static final double M2_PER_100_FT2 = 9.290304;
    private static final double LITRES_PER_FT3 = 28.316846592;

    /** Litres on a square metre. */
    public double litresPerM2() {
        return LITRES_PER_M2_AND_CM * cm;
    }

    /** Cubic feet on a hundred square feet. */
    public double cubicFeetPer100SquareFeet() {
        return litresPerM2() * M2_PER_100_FT2 / LITRES_PER_FT3;
    }

    /** What so many litres cover, m². */
    public Band coversM2(Band litres) {
        return litres.times(1 / litresPerM2());
    }

    /** How many litres of a mix can be made with so many litres of compost, at a share of it in percent. */
    public static Band mixLitres(Band litres, double sharePct) {
        return litres.times(100 / sharePct);
    }
}
