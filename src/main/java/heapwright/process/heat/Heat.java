package heapwright.process.heat;

/**
 * The heat balance of the shells. One step solves, for the heat content of every shell at its end,
 *
 * <pre>H' − H = dt [ conduction(T') + draught and vapour(T') + source((T + T') / 2) ]</pre>
 *
 * by Newton on the enthalpy form, three-diagonal. What is passed between shells is what the last linear system passed,
 * so heat is conserved to rounding whether or not a freezing shell has fully converged.
 */
final class Heat {
    /** Two or three do as a rule; more when a freezing front crosses several dry shells in one step. */
    private static final int ROUNDS = 8;

    private static final double CLOSE_K = 0.01;
    /** A step this short is taken as it is, s. */
    private static final double SHORT_S = 100;

    private final int n;
    /** W from the organisms of the cool and warm range and of the hot range, as they have grown, at a factor of 1. */
    final double[] cool;

    final double[] hot;
    /** W released, as the last step had it. */
    final double[] released;
    /** kg/s of water gained as vapour, as the last step had it. */
    final double[] vapour;
    /** Temperatures at which the last step's fluxes passed, °C. */
    private final double[] t;

    private final double[] held;

    private final double[] slope;
    private final double[] air;
    private final double[] airSlope;
    private final double[] vapourSlope;
    /** W more per kelvin of what is released. */
    private final double[] steeper;

    private final double[] flux;
    private final double[] next;
    /** Kelvin per joule, thawed and frozen. */
    private final double[] liquid;

    private final double[] frozen;
    private final double[] melt;
    private final double[] before;
    private final double[] first;
    private final double[] lower;
    private final double[] diagonal;
    private final double[] upper;
    private final double[] right;
    /** Air equivalent of the drying skin, kg/s; a frozen skin neither dries nor takes up frost (judgement). */
    private double drying;

    /** W out through skin and ground, W out with air and vapour, kg/s of water out as vapour. */
    double conducted;

    double aired;
    double vapourOut;

    Heat(int n) {
        this.n = n;
        cool = new double[n];
        hot = new double[n];
        released = new double[n];
        vapour = new double[n];
        t = new double[n];
        held = new double[n];
        slope = new double[n];
        air = new double[n];
        airSlope = new double[n];
        vapourSlope = new double[n];
        steeper = new double[n];
        flux = new double[n];
        next = new double[n];
        liquid = new double[n];
        frozen = new double[n];
        melt = new double[n];
        before = new double[n];
        first = new double[n];
        lower = new double[n];
        diagonal = new double[n];
        upper = new double[n];
        right = new double[n];
    }

    /**
     * Advances the heat of the shells by dt seconds; temperatures are left for the caller to derive.
     *
     * @return false, with the shells as they were, when freezing shells did not settle and dt is long enough to be cut
     */
    boolean step(Shells s, SlowTerms set, Air draught, Constants c, Outdoors out, double dt) {
        double shift = c.kinetics().shiftC();
        for (int i = 0; i < n; i++) {
            double dry = s.dry(i);
            liquid[i] = 1 / Shells.liquidCapacity(dry, s.water[i]);
            frozen[i] = 1 / Shells.frozenCapacity(dry, s.water[i]);
            melt[i] = Shells.MELT_J * s.water[i];
            before[i] = s.heat[i];
            next[i] = s.heat[i];
            first[i] = power(i, s.temperature[i] - shift);
        }
        drying = set.drying * (1 - s.ice[n - 1]);
        boolean moving = true;
        for (int round = 0; moving && round < ROUNDS; round++) {
            linearise(set, shift);
            assemble(set, draught, c, out, dt);
            solve();
            moving = moved();
        }
        if (moving && dt > SHORT_S) {
            return false;
        }
        account(set, draught, c, out);
        for (int i = 0; i < n; i++) {
            s.heat[i] = next[i];
        }
        return true;
    }

    /** The balance at the present temperatures, W a shell into {@code dHeat}: the right-hand side itself. */
    void rates(Shells s, SlowTerms set, Air draught, Constants c, Outdoors out, double[] dHeat) {
        double shift = c.kinetics().shiftC();
        drying = set.drying * (1 - s.ice[n - 1]);
        for (int i = 0; i < n; i++) {
            t[i] = s.temperature[i];
            air[i] = Curves.AIR_J_K * t[i] + set.humidity[i] * Curves.vapourHeat(t[i]);
            released[i] = power(i, t[i] - shift);
        }
        fluxes(set, draught, c, out);
        account(set, draught, c, out);
        System.arraycopy(flux, 0, dHeat, 0, n);
    }

    private double power(int i, double c) {
        int at = Curves.index(c);
        double beyond = Curves.beyond(c, at);
        return cool[i] * Curves.mesophiles(at, beyond) + hot[i] * Curves.thermophiles(at, beyond);
    }

    private void linearise(SlowTerms set, double shift) {
        for (int i = 0; i < n; i++) {
            t[i] = Shells.temperatureOf(next[i], liquid[i], melt[i], frozen[i]);
            slope[i] = Shells.slopeOf(next[i], liquid[i], melt[i], frozen[i]);
            int at = Curves.index(t[i]);
            vapourSlope[i] = set.humidity[i] * Curves.vapourHeatSlope(at);
            air[i] = Curves.AIR_J_K * t[i] + set.humidity[i] * Curves.vapourHeat(at, Curves.beyond(t[i], at));
            airSlope[i] = Curves.AIR_J_K + vapourSlope[i];
            at = Curves.index(t[i] - shift);
            double beyond = Curves.beyond(t[i] - shift, at);
            double power = cool[i] * Curves.mesophiles(at, beyond) + hot[i] * Curves.thermophiles(at, beyond);
            steeper[i] = cool[i] * Curves.mesophilesSlope(at) + hot[i] * Curves.thermophilesSlope(at);
            released[i] = 0.5 * (first[i] + power);
        }
    }

    private void assemble(SlowTerms set, Air draught, Constants c, Outdoors out, double dt) {
        fluxes(set, draught, c, out);
        double recovery = c.transport().heatRecovery();
        double[] q = draught.flow;
        for (int i = 0; i < n; i++) {
            double outward = i == n - 1 ? set.toAir + set.toGround : set.conductance[i + 1];
            double inward = i == 0 ? 0 : set.conductance[i];
            double back = i == 0 ? 0 : recovery * q[i];
            double dried = i == n - 1 ? drying * vapourSlope[i] : 0;
            double feed = 0.5 * steeper[i];
            diagonal[i] = 1 - dt * slope[i] * (feed - outward - inward - (q[i + 1] + back) * airSlope[i] - dried);
            lower[i] = i == 0 ? 0 : -dt * slope[i - 1] * (inward + back * airSlope[i - 1]);
            upper[i] = i == n - 1 ? 0 : -dt * slope[i + 1] * (outward + q[i + 1] * airSlope[i + 1]);
            right[i] = before[i] + dt * flux[i] - next[i];
        }
    }

    private void fluxes(SlowTerms set, Air draught, Constants c, Outdoors out) {
        double recovery = c.transport().heatRecovery();
        double[] q = draught.flow;
        for (int i = 0; i < n; i++) {
            flux[i] = released[i];
        }
        for (int j = 1; j < n; j++) {
            double conduction = set.conductance[j] * (t[j] - t[j - 1]);
            flux[j - 1] += conduction + q[j] * (air[j] - air[j - 1]);
            flux[j] += recovery * q[j] * (air[j - 1] - air[j]) - conduction;
        }
        int skin = n - 1;
        flux[skin] += set.toAir * (out.airC() - t[skin])
                + set.toGround * (out.groundC() - t[skin])
                + q[n] * (out.airHeat() - air[skin])
                + drying * (out.vapourHeat() - (air[skin] - Curves.AIR_J_K * t[skin]));
    }

    private void solve() {
        double share = 1 / diagonal[0];
        right[0] *= share;
        upper[0] *= share;
        for (int i = 1; i < n; i++) {
            share = 1 / (diagonal[i] - lower[i] * upper[i - 1]);
            upper[i] *= share;
            right[i] = (right[i] - lower[i] * right[i - 1]) * share;
        }
        for (int i = n - 2; i >= 0; i--) {
            right[i] -= upper[i] * right[i + 1];
        }
    }

    /** Takes the solved change on; leaves in t, air and released the linear values the fluxes used. */
    private boolean moved() {
        boolean moved = false;
        for (int i = 0; i < n; i++) {
            double change = right[i];
            next[i] += change;
            double warmer = slope[i] * change;
            t[i] += warmer;
            air[i] += airSlope[i] * warmer;
            released[i] += 0.5 * steeper[i] * warmer;
            double exact = Shells.temperatureOf(next[i], liquid[i], melt[i], frozen[i]);
            moved |= Math.abs(warmer) > 1 || Math.abs(exact - t[i]) > CLOSE_K;
        }
        return moved;
    }

    private void account(SlowTerms set, Air draught, Constants c, Outdoors out) {
        double recovery = c.transport().heatRecovery();
        double[] q = draught.flow;
        int skin = n - 1;
        conducted = set.toAir * (t[skin] - out.airC()) + set.toGround * (t[skin] - out.groundC());
        double inflow = 0;
        double inflowWater = 0;
        for (int i = 0; i < n; i++) {
            vapour[i] = 0;
            held[i] = set.humidity[i] * Curves.water(t[i]);
        }
        for (int j = 1; j < n; j++) {
            double in = q[j] * (held[j] - held[j - 1]);
            double back = recovery * q[j] * (held[j - 1] - held[j]);
            vapour[j - 1] += in;
            vapour[j] += back;
            inflowWater += in + back;
            inflow += q[j] * (air[j] - air[j - 1]) * (1 - recovery);
        }
        double skinWater = q[n] * (out.airWater() - held[skin]) + drying * (out.airWater() - held[skin]);
        vapour[skin] += skinWater;
        vapourOut = -(inflowWater + skinWater);
        aired = -(inflow
                + q[n] * (out.airHeat() - air[skin])
                + drying * (out.vapourHeat() - (air[skin] - Curves.AIR_J_K * t[skin])));
    }
}
