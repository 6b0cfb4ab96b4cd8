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

    private final double[] diagonal;
    private final double[] right;

    Air(int n) {
        this.n = n;
        flow = new double[n + 1];
        diagonal = new double[n];
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
        for (int round = 0; round < rounds; round++) {
            // Elimination from the core outward, then back.
            for (int i = 0; i < n; i++) {
                double in = OXYGEN_PER_AIR * flow[i + 1] + set.diffusion[i + 1];
                double back = i == 0 ? 0 : set.diffusion[i];
                double d = in + back + TRACE + demand[i] / (set.oxygenHalf[i] + o[i]);
                double b = TRACE * OUTSIDE_OXYGEN;
                if (i > 0) {
                    double up = OXYGEN_PER_AIR * flow[i] + set.diffusion[i];
                    double factor = back / diagonal[i - 1];
                    d -= factor * up;
                    b += factor * right[i - 1];
                }
                diagonal[i] = d;
                right[i] = b;
            }
            double outer = OUTSIDE_OXYGEN;
            for (int i = n - 1; i >= 0; i--) {
                double in = OXYGEN_PER_AIR * flow[i + 1] + set.diffusion[i + 1];
                outer = (right[i] + in * outer) / diagonal[i];
                o[i] = outer;
            }
        }
    }

    /** The draught against a strong one (2e-4 m/s through the skin's cross-section), 0.05 to 3: carries ammonia off. */
    double briskness(double crossSectionM2) {
        return Math.min(3, 0.05 + flow[n] / (1.25 * crossSectionM2 * 2e-4));
    }
}
