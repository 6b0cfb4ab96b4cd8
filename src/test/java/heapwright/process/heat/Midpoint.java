package heapwright.process.heat;

import java.util.function.ToDoubleFunction;

/** The equations taken forward by the midpoint rule in steps of four seconds, to read a figure between the days. */
final class Midpoint {
    private static final double STEP_S = 4;
    private static final double DAY_S = 86400;

    private Midpoint() {}

    /** The highest value of a figure within so many days. */
    static double highest(RightHandSide rhs, int days, ToDoubleFunction<double[]> figure) {
        double[] y = rhs.initial();
        double[] slope = new double[y.length];
        double[] half = new double[y.length];
        double highest = 0;
        for (double t = 0; t < days * DAY_S; t += STEP_S) {
            rhs.rates(y, slope);
            highest = Math.max(highest, figure.applyAsDouble(y));
            for (int i = 0; i < y.length; i++) {
                half[i] = y[i] + STEP_S / 2 * slope[i];
            }
            rhs.rates(half, slope);
            for (int i = 0; i < y.length; i++) {
                y[i] += STEP_S * slope[i];
            }
        }
        return highest;
    }
}
