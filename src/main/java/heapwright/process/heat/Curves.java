package heapwright.process.heat;

/**
 * Curves as tables, so that a run needs few exponentials: the rate factors of temperature and moisture, and the water and
 * heat that saturated air carries per kg of dry air.
 */
final class Curves {
    /** Heat of vapour at 0 °C above liquid at 0 °C, J/kg, and its rise per kelvin (physics). */
    static final double VAPOUR_J = 2.501e6;

    private static final double VAPOUR_J_K = 1860;
    /** Heat of dry air, J/kg·K. */
    static final double AIR_J_K = 1006;

    private static final double LOW = -60;
    private static final double PER_K = 4;
    private static final int SIZE = 641;

    private static final double[] MESOPHILES = new double[SIZE];
    private static final double[] THERMOPHILES = new double[SIZE];
    private static final double[] WATER = new double[SIZE];
    private static final double[] HEAT = new double[SIZE];
    private static final int MOISTURES = 401;
    private static final double[] MOISTURE = new double[MOISTURES];

    static {
        for (int i = 0; i < SIZE; i++) {
            double c = LOW + i / PER_K;
            MESOPHILES[i] = Factors.mesophiles(c);
            THERMOPHILES[i] = Factors.thermophiles(c);
            double pressure = 610.94 * Math.exp(17.625 * c / (c + 243.04));
            WATER[i] = 0.622 * pressure / Math.max(2.0e4, 101325 - pressure);
            HEAT[i] = WATER[i] * (VAPOUR_J + VAPOUR_J_K * c);
        }
        for (int i = 0; i < MOISTURES; i++) {
            MOISTURE[i] = Factors.moistureAround(i / (MOISTURES - 1.0));
        }
    }

    private Curves() {}

    /** Where a temperature stands in the tables, to be asked once for several curves. */
    static int index(double c) {
        return Math.max(0, Math.min(SIZE - 2, (int) ((c - LOW) * PER_K)));
    }

    /** How far it stands beyond that place, in places. */
    static double beyond(double c, int index) {
        return (c - LOW) * PER_K - index;
    }

    static double mesophiles(int index, double beyond) {
        return at(MESOPHILES, index, beyond);
    }

    static double thermophiles(int index, double beyond) {
        return at(THERMOPHILES, index, beyond);
    }

    static double vapourHeat(int index, double beyond) {
        return at(HEAT, index, beyond);
    }

    static double mesophilesSlope(int index) {
        return steep(MESOPHILES, index);
    }

    static double thermophilesSlope(int index) {
        return steep(THERMOPHILES, index);
    }

    static double vapourHeatSlope(int index) {
        return steep(HEAT, index);
    }

    /** That of a grown community of both. */
    static double rate(double c) {
        return value(MESOPHILES, c) + value(THERMOPHILES, c);
    }

    static double mesophiles(double c) {
        return value(MESOPHILES, c);
    }

    static double thermophiles(double c) {
        return value(THERMOPHILES, c);
    }

    /** kg of water per kg of dry air at saturation. */
    static double water(double c) {
        return value(WATER, c);
    }

    static double waterSlope(double c) {
        return slope(WATER, c);
    }

    /** J carried as vapour per kg of dry air at saturation. */
    static double vapourHeat(double c) {
        return value(HEAT, c);
    }

    /** Moisture factor of unevenly wet matter, {@link Factors#moistureAround}, of water as a share of wet mass. */
    static double moisture(double share) {
        double at = share * (MOISTURES - 1);
        int i = Math.max(0, Math.min(MOISTURES - 2, (int) at));
        return MOISTURE[i] + (at - i) * (MOISTURE[i + 1] - MOISTURE[i]);
    }

    private static double value(double[] table, double c) {
        int i = index(c);
        return at(table, i, beyond(c, i));
    }

    private static double slope(double[] table, double c) {
        return steep(table, index(c));
    }

    private static double at(double[] table, int i, double beyond) {
        return table[i] + beyond * (table[i + 1] - table[i]);
    }

    private static double steep(double[] table, int i) {
        return (table[i + 1] - table[i]) * PER_K;
    }
}
