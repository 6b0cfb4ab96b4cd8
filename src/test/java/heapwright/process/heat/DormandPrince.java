package heapwright.process.heat;

import java.util.function.BiConsumer;

/** Dormand and Prince's embedded 5(4) Runge–Kutta method with step control; for tests only. */
final class DormandPrince {
    private static final double[][] A = {
        {},
        {1.0 / 5},
        {3.0 / 40, 9.0 / 40},
        {44.0 / 45, -56.0 / 15, 32.0 / 9},
        {19372.0 / 6561, -25360.0 / 2187, 64448.0 / 6561, -212.0 / 729},
        {9017.0 / 3168, -355.0 / 33, 46732.0 / 5247, 49.0 / 176, -5103.0 / 18656},
        {35.0 / 384, 0, 500.0 / 1113, 125.0 / 192, -2187.0 / 6784, 11.0 / 84}
    };
    private static final double[] FOURTH = {
        5179.0 / 57600, 0, 7571.0 / 16695, 393.0 / 640, -92097.0 / 339200, 187.0 / 2100, 1.0 / 40
    };

    private final BiConsumer<double[], double[]> rates;
    private final double[] tolerance;
    private double step = 10;

    /**
     * @param rates fills its second argument with the rates of change of its first
     * @param tolerance error allowed a step, a component
     */
    DormandPrince(BiConsumer<double[], double[]> rates, double[] tolerance) {
        this.rates = rates;
        this.tolerance = tolerance.clone();
    }

    double[] advance(double[] from, double seconds) {
        double[] y = from.clone();
        int n = y.length;
        double[][] k = new double[7][n];
        double[] at = new double[n];
        double left = seconds;
        while (left > 1e-6) {
            double h = Math.min(step, left);
            for (int stage = 0; stage < 7; stage++) {
                System.arraycopy(y, 0, at, 0, n);
                for (int j = 0; j < stage; j++) {
                    for (int i = 0; i < n; i++) {
                        at[i] += h * A[stage][j] * k[j][i];
                    }
                }
                rates.accept(at, k[stage]);
            }
            double worst = 0;
            for (int i = 0; i < n; i++) {
                double fourth = y[i];
                for (int j = 0; j < 7; j++) {
                    fourth += h * FOURTH[j] * k[j][i];
                }
                worst = Math.max(worst, Math.abs(at[i] - fourth) / tolerance[i]);
            }
            if (worst <= 1) {
                System.arraycopy(at, 0, y, 0, n);
                left -= h;
            }
            step = h * Math.max(0.2, Math.min(4, 0.9 * Math.pow(Math.max(worst, 1e-8), -0.2)));
            if (step < 1e-3) {
                throw new IllegalStateException("the step has become too small");
            }
        }
        return y;
    }
}
