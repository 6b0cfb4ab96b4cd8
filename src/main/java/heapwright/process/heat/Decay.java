package heapwright.process.heat;

/** Decay of the pools, and what follows: nitrogen, acid, water formed, volume lost. */
final class Decay {
    /** Days. */
    private static final double A_SECOND = 1.0 / 86400;

    private static final double TWELFTH = 1.0 / 12;

    private final int n;
    /** kg/s that grown organisms of each range would take in a shell at a factor of 1 and full oxygen. */
    private final double[] cool;

    private final double[] hot;
    /** kg/s of oxygen asked for at the shell's temperature and full oxygen. */
    final double[] demand;

    /** Temperature factors and acid factor of each shell, as last assessed. */
    private final double[] mesophiles;

    private final double[] thermophiles;

    private final double[] mildness;
    private final double[] quickPart;
    private final double[] slowPart;
    private final double[] oxygenFactor;
    /** kg lost as gas, kg of water formed and kg of nitrogen lost in the last step or, as rates, per second. */
    double lostDry;

    double formedWater;
    double lostNitrogen;

    Decay(int n) {
        this.n = n;
        cool = new double[n];
        hot = new double[n];
        demand = new double[n];
        mesophiles = new double[n];
        thermophiles = new double[n];
        mildness = new double[n];
        quickPart = new double[n];
        slowPart = new double[n];
        oxygenFactor = new double[n];
    }

    /** What each shell would do in the coming dt seconds (0: the rate itself). */
    void assess(Shells s, SlowTerms set, Constants c, double dt) {
        Constants.Kinetics k = c.kinetics();
        double perKg = (1 - k.humusYield()) * k.oxygenPerKg();
        for (int i = 0; i < n; i++) {
            double warm = s.temperature[i];
            int at = Curves.index(warm - k.shiftC());
            double beyond = Curves.beyond(warm - k.shiftC(), at);
            mesophiles[i] = Curves.mesophiles(at, beyond);
            thermophiles[i] = Curves.thermophiles(at, beyond);
            double warmth = s.mesophiles[i] * mesophiles[i];
            double heat = s.thermophiles[i] * thermophiles[i];
            double onQuick = warmth + heat;
            double onSlow = warmth + k.hotOnSlow() * heat;
            mildness[i] = Factors.acid(set.ph[i], warm);
            double here = (1 - s.ice[i]) * mildness[i];
            double quick = drawn(set.quickRate[i] * here, onQuick * dt) * s.quick[i] * s.reach[i];
            double slow = drawn(set.slowRate[i] * here, onSlow * dt) * s.slow[i] * s.reach[i];
            double lignin = drawn(set.ligninRate[i] * here, onSlow * dt) * s.lignin[i] * s.reach[i];
            cool[i] = (quick + slow + lignin) * s.mesophiles[i];
            hot[i] = (quick + k.hotOnSlow() * (slow + lignin)) * s.thermophiles[i];
            double all = quick * onQuick + (slow + lignin) * onSlow;
            double part = all > Double.MIN_NORMAL ? 1 / all : 0;
            quickPart[i] = quick * onQuick * part;
            slowPart[i] = slow * onSlow * part;
            demand[i] = all * perKg;
        }
    }

    /** Rate that, held for a while, leaves what first-order decay leaves: (1 − exp(−x))/x by its Padé form. */
    private static double drawn(double rate, double time) {
        double x = rate * time;
        return rate / (1 + x * (0.5 + x * TWELFTH));
    }

    /** Heat sources of each range at a temperature factor of 1, W, once oxygen is known. */
    void kindle(Shells s, SlowTerms set, Constants c, double[] coolW, double[] hotW) {
        Constants.Kinetics k = c.kinetics();
        double perKg = (1 - k.humusYield()) * k.oxygenPerKg() * k.heatPerKgOxygen();
        for (int i = 0; i < n; i++) {
            oxygenFactor[i] = Factors.oxygen(s.oxygen[i], set.oxygenHalf[i]);
            coolW[i] = cool[i] * oxygenFactor[i] * perKg;
            hotW[i] = hot[i] * oxygenFactor[i] * perKg;
        }
    }

    /**
     * Rates of change of shell i, at the temperatures last assessed, for a heat release in W, into {@code d} in the order of {@link Shells#quantities}
     * (heat and water by vapour are not its business; ash never changes), held for dt seconds (0: the rate itself).
     */
    void rates(Shells s, SlowTerms set, Constants c, int i, double released, double briskness, double dt, double[] d) {
        Constants.Kinetics k = c.kinetics();
        double gas = released / (k.oxygenPerKg() * k.heatPerKgOxygen());
        double gross = gas / (1 - k.humusYield());
        double quick = gross * quickPart[i];
        double slow = gross * slowPart[i];
        double lignin = gross - quick - slow;
        double dry = s.dry(i);
        d[1] = gas * k.waterPerKg();
        d[2] = -quick;
        d[3] = -slow;
        d[4] = gross * k.humusYield() - lignin;

        double food = s.quick[i] + s.slow[i];
        double eaten = food > 0 ? (quick + slow) / food : 0;
        double freed = s.nitrogenFood[i] * eaten;
        double wanted = (quick + slow) * Matter.CARBON_SHARE / c.nitrogen().criticalRatio();
        double bound = Math.min(wanted, freed + s.ammonium[i] * A_SECOND);
        double damp = Factors.ramp(1 - Math.abs(s.temperature[i] - 25) / 20) * oxygenFactor[i] * (1 - s.ice[i]);
        double nitrified = c.nitrogen().nitrifyPerDay() * A_SECOND * damp * s.ammonium[i];
        double gone = drawn(set.ammoniaRate[i] * briskness, dt) * s.ammonium[i];
        d[6] = -freed;
        d[7] = bound + nitrified;
        d[8] = freed - bound - nitrified - gone;
        d[9] = acidRate(s, set, c, i, quick / dry);
        double shrink = c.settling().exponent() * gas / dry;
        // A body short of air space has no more to give: it settles less and less below 0.30.
        double room = Factors.ramp((set.airSpace[i] - 0.15) / 0.15);
        double settle = s.loose * A_SECOND / ((1 + s.loose) * c.settling().looseDays());
        d[10] = -s.volume[i] * (shrink + settle) * room;
        double mild = oxygenFactor[i] * (1 - s.ice[i]) * mildness[i];
        d[11] = growth(k.mesophiles(), s.mesophiles[i], mesophiles[i] * mild, s.temperature[i] - k.shiftC(), dt);
        d[12] = growth(k.thermophiles(), s.thermophiles[i], thermophiles[i] * mild, s.temperature[i] - k.shiftC(), dt);
        // Of two parts, within reach and not, the first is eaten and the second comes within reach: the share of the
        // first.
        double opened = c.reach().perDay() * A_SECOND * (1 - s.ice[i]);
        d[13] = (1 - s.reach[i]) * (opened - eaten);
        lostDry += gas;
        formedWater += d[1];
        lostNitrogen += gone;
    }

    /**
     * Growth follows the temperature curve up to three times that at 20 °C and needs oxygen; great heat kills. Mean over
     * dt, so that long steps settle where the rate itself would.
     */
    private static double growth(Constants.Guild guild, double v, double speed, double warm, double dt) {
        double grow = guild.growthPerDay() * A_SECOND * Math.min(3, speed);
        double over = Math.max(0, warm - guild.deathFromC());
        double die = guild.deathPerDayK2() * A_SECOND * over * over;
        if (dt == 0) {
            return v * (grow * (1 - v) - die) + die * guild.least();
        }
        // The logistic solution over dt, its exponential by the Padé form ((x + 3)² + 3) / ((x − 3)² + 3).
        double x = (grow - die) * dt;
        double grown = v * ((x + 3) * (x + 3) + 3) / ((x - 3) * (x - 3) + 3 + 12 * grow * v * dt);
        return (grown - v) / dt + (over > 0 ? die * guild.least() / (1 + die * dt) : 0);
    }

    private double acidRate(Shells s, SlowTerms set, Constants c, int i, double quickShare) {
        double warm = s.temperature[i];
        double thin = Math.max(0, 0.75 - oxygenFactor[i]);
        double made = c.acid().produced() * quickShare * thin * (1 - s.acid[i]);
        double sour = Factors.ramp((6.5 - set.ph[i]) / 0.5);
        double mesophile = sour > 0 ? Factors.cardinal(warm, 2, 35.4, 44) : 0;
        double any = Math.min(1, Curves.rate(warm) / 4);
        double eaten = c.acid().consumePerDay()
                * A_SECOND
                * (sour * mesophile + (1 - sour) * any)
                * oxygenFactor[i]
                * (1 - s.ice[i]);
        return made - eaten * s.acid[i];
    }

    void clear() {
        lostDry = 0;
        formedWater = 0;
        lostNitrogen = 0;
    }
}
