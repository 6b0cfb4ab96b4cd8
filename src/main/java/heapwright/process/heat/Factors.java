package heapwright.process.heat;

/**
 * The correction factors of the decay rate, each 1 (or a little less) where nothing holds decay back. Sources and status:
 * docs/method/heat.md.
 */
public final class Factors {
    /** Where the activity of organisms of the cool and warm range would end by the square-root form, °C (calibrated). */
    private static final double MESOPHILES_LEAST_C = -15.6;
    /** Temperature at which heat has halved it, and the width of that fall, °C and K (calibrated; SOLE07: 44 °C). */
    private static final double MESOPHILES_HALF_C = 44.8;

    private static final double MESOPHILES_FALL_K = 1.7;
    /** The range of the organisms of the hot range, °C, and their best against mesophiles at 20 °C (calibrated). */
    private static final double THERMOPHILES_LEAST_C = 30.0;

    private static final double THERMOPHILES_BEST_C = 58.0;
    private static final double THERMOPHILES_MOST_C = 71;
    private static final double THERMOPHILES_TIMES = 8.1;
    /** Temperature at which {@link #temperature} stands at 1, °C. */
    private static final double REFERENCE_C = 20;

    /** Temperature of fastest decay by a grown community, °C. */
    public static final double BEST_C = best();
    /** Highest value of {@link #temperature}. */
    public static final double PEAK = temperature(BEST_C);

    /** Half the width over which water is spread unevenly in a shell, as a share of wet mass (judgement). */
    private static final double UNEVEN = 0.125;
    /** Haug's moisture form: steepness and the constant that sets where it is one half. */
    private static final double MOISTURE_STEEP = 17.684;

    private static final double MOISTURE_SET = 7.0622;
    /** pH without acid, and by how much all of the acid index lowers it (judgement). */
    private static final double NEUTRAL_PH = 7.4;

    private static final double PH_SPAN = 3;

    private Factors() {}

    /** Temperature factor of a grown community of both ranges, 1 at 20 °C; below 0 °C the value of 0 °C stands. */
    public static double temperature(double celsius) {
        return mesophiles(celsius) + thermophiles(celsius);
    }

    /**
     * Temperature factor of the organisms of the cool and warm range, 1 at 20 °C: the square-root form of RATKOWSKY82
     * and, as they die, a fall towards 45 °C. It is small but above zero near 0 °C, so that a cold pile can start again
     * as it warms (LYNCH96); freezing stops it elsewhere, and so the value of 0 °C stands below 0 °C.
     */
    public static double mesophiles(double celsius) {
        double c = Math.max(0, celsius);
        double root = (c - MESOPHILES_LEAST_C) / (REFERENCE_C - MESOPHILES_LEAST_C);
        return root * root * alive(c) / alive(REFERENCE_C);
    }

    private static double alive(double celsius) {
        return 1 / (1 + Math.exp((celsius - MESOPHILES_HALF_C) / MESOPHILES_FALL_K));
    }

    /**
     * Temperature factor of the organisms of the hot range: the cardinal curve (ROSSO93), against mesophiles at 20 °C.
     */
    public static double thermophiles(double celsius) {
        return THERMOPHILES_TIMES * cardinal(celsius, THERMOPHILES_LEAST_C, THERMOPHILES_BEST_C, THERMOPHILES_MOST_C);
    }

    private static double best() {
        double best = 0;
        for (double c = 30; c < THERMOPHILES_MOST_C; c += 0.1) {
            best = temperature(c) > temperature(best) ? c : best;
        }
        return best;
    }

    /** Cardinal temperature model with inflection (ROSSO93), 0–1. */
    public static double cardinal(double c, double min, double best, double max) {
        if (c <= min || c >= max) {
            return 0;
        }
        double top = (c - max) * (c - min) * (c - min);
        double under = (best - min) * ((best - min) * (c - best) - (best - max) * (best + min - 2 * c));
        return Math.max(0, top / under);
    }

    /** Moisture factor (HAUG93): half at 40 %, 0.15 at 30 %. Moisture as a share of wet mass. */
    public static double moisture(double share) {
        return 1 / (Math.exp(MOISTURE_SET - MOISTURE_STEEP * share) + 1);
    }

    /** Moisture factor of matter in which the moisture lies evenly within {@link #UNEVEN} of its mean (derived). */
    public static double moistureAround(double mean) {
        double high = Math.log1p(Math.exp(MOISTURE_STEEP * (mean + UNEVEN) - MOISTURE_SET));
        double low = Math.log1p(Math.exp(MOISTURE_STEEP * (mean - UNEVEN) - MOISTURE_SET));
        return (high - low) / (2 * UNEVEN * MOISTURE_STEEP);
    }

    /** Air space factor (HAUG93): half at 0.15, 0.97 at 0.30. Air space as a share of volume. */
    public static double airSpace(double share) {
        return 1 / (Math.exp(-23.675 * share + 3.4945) + 1);
    }

    /** Oxygen factor O2/(K + O2) (HAUG93, K = 2 %); percent by volume. */
    public static double oxygen(double percent, double halfAt) {
        return percent / (halfAt + percent);
    }

    /**
     * Oxygen at which the rate is halved, %: 2 (HAUG93), rising above 60 % moisture where water films thicken
     * (CORNMOIST says they do; the slope is judgement).
     */
    public static double oxygenHalf(double moisture) {
        return 2 + 20 * Math.max(0, moisture - 0.6);
    }

    /**
     * Nitrogen factor: 1 up to C:N 30, then 1/(1 + (C:N − 30)/55), 0.53 at 78; GOT56 implies no more than a factor 2
     * (derived). Not below 0.15.
     */
    public static double nitrogen(double carbonToNitrogen) {
        return Math.max(0.15, 1 / (1 + Math.max(0, carbonToNitrogen - 30) / 55));
    }

    /**
     * Piece size factor by the shrinking-piece argument: the rate goes with the surface (1/size) for coarse pieces and
     * levels off for fine ones; 1 at 2.5 cm, the upper end of the preferred range of SASK08. The form is judgement.
     *
     * @param cm piece size
     * @param halfSizeCm size at which surface and depth count alike
     */
    public static double pieces(double cm, double halfSizeCm) {
        return (1 + 2.5 / halfSizeCm) / (1 + cm / halfSizeCm);
    }

    /**
     * Acid factor: below pH 6 activity falls, mildly under 38 °C and severely above 42 °C (SUND05, published abstract:
     * severe inhibition below pH 6 with more than 40 °C). The ramps are judgement.
     */
    public static double acid(double ph, double celsius) {
        double sour = ramp(6.5 - ph);
        double hot = ramp((celsius - 38) / 4);
        return 1 - sour * (0.35 + 0.63 * hot);
    }

    /**
     * Share of ammonium nitrogen present as ammonia gas (EMER75): pKa = 0.09018 + 2729.92/T(K). Stated for 0–50 °C,
     * carried on above.
     */
    public static double freeAmmonia(double ph, double celsius) {
        double pka = 0.09018 + 2729.92 / (celsius + 273.15);
        return 1 / (Math.pow(10, pka - ph) + 1);
    }

    /** pH from the acid index and the ammonium share of dry matter (7.4 neutral, 4.4 fully sour). */
    public static double ph(double acidIndex, double ammoniumShare) {
        return NEUTRAL_PH - PH_SPAN * acidIndex + 1.3 * Math.min(1, ammoniumShare / 0.006);
    }

    /** Acid index of a pH without ammonium; below 0 above pH 7.4, over 1 below 4.4. */
    public static double acidIndex(double ph) {
        return (NEUTRAL_PH - ph) / PH_SPAN;
    }

    /**
     * Air-filled share of the volume (RICH04): 1 less the volumes of water, ice, organic matter (1600 kg/m³) and ash
     * (2500 kg/m³); not below 0.005.
     */
    public static double airFilled(double volumeM3, double liquidKg, double iceKg, double organicKg, double ashKg) {
        double filled = liquidKg / 1000 + iceKg / 917 + organicKg / 1600 + ashKg / 2500;
        return Math.max(0.005, 1 - filled / volumeM3);
    }

    static double ramp(double x) {
        return Math.max(0, Math.min(1, x));
    }
}
