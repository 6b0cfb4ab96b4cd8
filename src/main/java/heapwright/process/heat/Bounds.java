package heapwright.process.heat;

/**
 * What nose, hand and eye say of the whole pile: no figures, but bounds. Within them the model keeps its own.
 *
 * @param leastMoisture water as a share of wet mass at least, 0 to below 0.95
 * @param mostMoisture the same at most
 * @param mostReach share of the food within reach of air and organisms at most, 0–1
 * @param spent whether no more food is left than in finished compost
 */
public record Bounds(double leastMoisture, double mostMoisture, double mostReach, boolean spent) {

    private static final double WETTEST = 0.95;
    /** Of the respiration at which food counts as spent: well below that edge, which is known to a fifth (judgement). */
    private static final double SURELY = 0.9;

    public Bounds {
        Checks.within("leastMoisture", leastMoisture, 0, WETTEST);
        Checks.within("mostMoisture", mostMoisture, leastMoisture, WETTEST);
        Checks.within("mostReach", mostReach, 0, 1);
    }

    /** Of water. */
    public static Bounds moisture(double least, double most) {
        return new Bounds(least, most, 1, false);
    }

    /** Of a pile whose food lies in clumps and layers without air. */
    public static Bounds reach(double most) {
        return new Bounds(0, WETTEST, most, false);
    }

    /** Of a pile that has rotted down. */
    public static Bounds rottedDown() {
        return new Bounds(0, WETTEST, 1, true);
    }

    /** These without what they say of air. */
    public Bounds airy() {
        return new Bounds(leastMoisture, mostMoisture, 1, spent);
    }

    /** The moisture that the bounds ask for where the pile has another. */
    double nearest(double moisture) {
        return Math.max(leastMoisture, Math.min(mostMoisture, moisture));
    }

    /** What was eaten according to the eye has become humus, with its nitrogen. */
    static void rotDown(Shells s, Constants c) {
        double limit = SURELY * Readiness.standard().respiration();
        double now = DayReader.respiration(s, c);
        if (now <= limit) {
            return;
        }
        double left = limit / now;
        for (int i = 0; i < s.n; i++) {
            double eaten = (1 - left) * (s.quick[i] + s.slow[i]);
            s.lignin[i] += eaten;
            s.quick[i] *= left;
            s.slow[i] *= left;
            double nitrogen = (1 - left) * s.nitrogenFood[i];
            s.nitrogenFood[i] -= nitrogen;
            s.nitrogenHumus[i] += nitrogen;
        }
    }
}
