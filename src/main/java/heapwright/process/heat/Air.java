package heapwright.process.heat;

/** The draught that warmth draws through, and the oxygen it and diffusion bring. */
final class Air {
    static final double OUTSIDE_OXYGEN = 20.9;
    /** kg of oxygen per kg of air per percent by volume. */
    private static final double OXYGEN_PER_AIR = 32 / 28.97 / 100;
    /** A trace of leakage keeps the system solvable when everything is sealed. */
    private static final double TRACE = 1e-10;

    private final int n;
    /** kg/s of air inward across edge j. */
    final double[] flow;

    /** kg/s of oxygen per percent by volume that come in across edge j. */
    private final double[] entering;

    private final double[] share;
    private final double[] right;

    Air(int n) {
        this.n = n;
        flow = new double[n + 1];
        entering = new double[n + 1];
        share = new double[n];
        right = new double[n];
    }

    /** Draught by the warmth of the mean of the pile over outdoors; none when it is colder. */
    void draw(Shells s, SlowTerms set, double outdoorC) {
        double mean = 0;
        for (int i = 0; i < n; i++) {
            mean += s.temperature[i] * s.volume[i];
        }
        mean /= set.volume;
        double lighter = Math.max(0, 353 / (outdoorC + 273.15) - 353 / (mean + 273.15));
        for (int j = 1; j <= n; j++) {
            flow[j] = set.flowPerDensity[j] * lighter;
        }
    }

    /**
     * Oxygen in balance with the demand of each shell (kg/s at full oxygen): air entering a shell leaves it, inward or
     * upward, with the shell's oxygen. Fixed-point rounds from the last oxygen; each round is a positive system, so
     * oxygen stays between 0 and that outdoors.
     */
    void breathe(Shells s, SlowTerms set, double[] demand, int rounds) {
        double[] o = s.oxygen;
        for (int j = 1; j <= n; j++) {
            entering[j] = OXYGEN_PER_AIR * flow[j] + set.diffusion[j];
        }
        for (int round = 0; round < rounds; round++) {
            // Elimination from the core outward, then back.
            for (int i = 0; i < n; i++) {
                double back = i == 0 ? 0 : set.diffusion[i];
                double d = entering[i + 1] + back + TRACE + demand[i] / (set.oxygenHalf[i] + o[i]);
                double b = TRACE * OUTSIDE_OXYGEN;
                if (i > 0) {
                    double factor = back * share[i - 1];
                    d -= factor * entering[i];
                    b += factor * right[i - 1];
                }
                share[i] = 1 / d;
                right[i] = b;
            }
            double outer = OUTSIDE_OXYGEN;
            for (int i = n - 1; i >= 0; i--) {
                outer = (right[i] + entering[i + 1] * outer) * share[i];
                o[i] = outer;
            }
        }
    }

    /** The draught against a strong one (2e-4 m/s through the skin's cross-section), 0.05 to 3: carries ammonia off. */
    double briskness(double crossSectionM2) {
        return Math.min(3, 0.05 + flow[n] / (1.25 * crossSectionM2 * 2e-4));
    }
}
