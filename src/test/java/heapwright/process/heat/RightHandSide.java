package heapwright.process.heat;

/**
 * The equations themselves, for a general integrator: the rate of change of every quantity of every shell under one
 * day's steady weather, with the oxygen balance solved to the end and no daily rounding-off. The fast course must agree
 * with what such an integrator makes of them. For one thread.
 */
final class RightHandSide {
    private static final double DAY_S = 86400;

    private final Shells shells;
    private final SlowTerms set;
    private final Air air;
    private final Heat heat;
    private final Decay decay;
    private final Constants constants;
    private final Outdoors outdoors;
    private final double windMs;
    private final double[] dHeat;
    private final double[] d = new double[Shells.QUANTITIES];

    /**
     * The equations of a pile.
     *
     * @param start the pile
     * @param airC steady outdoor temperature, °C
     * @param groundC steady ground temperature, °C
     * @param windMs steady wind, m/s
     * @param constants the constants
     * @param count number of shells
     */
    public RightHandSide(PileState start, double airC, double groundC, double windMs, Constants constants, int count) {
        shells = new Shells(start, count, constants);
        set = new SlowTerms(count);
        air = new Air(count);
        heat = new Heat(count);
        decay = new Decay(count);
        this.constants = constants;
        outdoors = Outdoors.of(airC, groundC);
        this.windMs = windMs;
        dHeat = new double[count];
    }

    /** Length of the state. */
    public int dimension() {
        return Shells.QUANTITIES * shells.n + 1;
    }

    /** The state at the start. */
    public double[] initial() {
        double[] y = new double[dimension()];
        shells.copyTo(y);
        return y;
    }

    /** Rates of change a second, of a state, into {@code dy}. */
    public void rates(double[] y, double[] dy) {
        shells.copyFrom(y);
        set.update(shells, constants, windMs, 1, 1);
        decay.assess(shells, set, constants, 0);
        air.draw(shells, set, outdoors.airC());
        air.breathe(shells, set, decay.demand, 60);
        decay.kindle(shells, set, constants, heat.cool, heat.hot);
        heat.rates(shells, set, air, constants, outdoors, dHeat);
        double brisk = air.briskness(set.skinCrossSection);
        for (int i = 0; i < shells.n; i++) {
            decay.rates(shells, set, constants, i, heat.released[i], brisk, 0, d);
            d[0] = dHeat[i];
            d[1] += heat.vapour[i];
            for (int k = 0; k < Shells.QUANTITIES; k++) {
                dy[k * shells.n + i] = d[k];
            }
        }
        dy[Shells.QUANTITIES * shells.n] = -shells.loose / (constants.settling().looseDays() * DAY_S);
    }

    /** Core temperature of a state, °C. */
    public double coreC(double[] y) {
        shells.copyFrom(y);
        return shells.temperature[0];
    }

    /** Heat released in a state, W; of the state last given to {@link #rates}. */
    public double releasedW() {
        return Shells.sum(heat.released);
    }

    /** Dry matter of a state, kg. */
    public double dryKg(double[] y) {
        shells.copyFrom(y);
        return Tally.dry(shells);
    }

    /** Quick and slow matter of a state, kg. */
    public double foodKg(double[] y) {
        shells.copyFrom(y);
        return Tally.food(shells);
    }

    /** Water of a state, kg. */
    public double waterKg(double[] y) {
        shells.copyFrom(y);
        return Shells.sum(shells.water);
    }
}
