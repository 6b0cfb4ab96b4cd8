package heapwright.process.heat;

/** Reads a {@link Day} off a run. */
final class DayReader {
    /** A test for stability warms a damp, airy sample to this, °C (judgement: usual for respiration tests). */
    private static final double TEST_C = 37;

    /** mg of carbon as CO2 per mg of oxygen (CH2O + O2 gives CO2 + H2O). */
    private static final double CARBON_PER_OXYGEN = 12.0 / 32;
    /** A factor must cut the rate at least to this to be named. */
    private static final double NAMED = 0.6;
    /** Fresh matter for the measure of spent food: quick and slow shares of a good mix (judgement). */
    private static final double FRESH_QUICK = 0.25;

    private static final double FRESH_SLOW = 0.40;
    /** Below this share of fresh vigour food is spent (judgement). */
    private static final double SPENT = 0.12;

    private DayReader() {}

    static Day of(Run run, Constants c, double outdoorC, double heatW) {
        Shells s = run.s;
        Tally tally = run.tally;
        double dry = Tally.dry(s);
        double water = Shells.sum(s.water);
        double volume = Shells.sum(s.volume);
        double organic = dry - Shells.sum(s.ash);
        double ice = 0;
        double warmth = 0;
        for (int i = 0; i < s.n; i++) {
            ice += s.ice[i] * s.water[i];
            warmth += s.temperature[i] * s.volume[i];
        }
        double coreFood = s.organic(0);
        double nitrogen = Tally.nitrogen(s);
        return new Day(
                run.day - 1,
                s.temperature[0],
                warmth / volume,
                s.temperature[s.n - 1],
                outdoorC,
                water > 0 ? ice / water : 0,
                s.ice[0],
                s.water[0] / (s.water[0] + s.dry(0)),
                water / (water + dry),
                s.oxygen[0],
                Factors.airFilled(s.volume[0], s.water[0] * (1 - s.ice[0]), s.water[0] * s.ice[0], coreFood, s.ash[0]),
                Factors.ph(s.acid[0], s.ammonium[0] / s.dry(0)),
                organic * Matter.CARBON_SHARE / Math.max(1e-9, nitrogen),
                volume,
                volume / (s.length * s.width),
                dry + water,
                dry,
                Tally.food(s) / Math.max(1e-9, tally.foodStart + tally.foodBrought),
                (tally.nitrogenGas + tally.nitrogenDrained)
                        / Math.max(1e-9, tally.nitrogenStart + tally.nitrogenBrought),
                heatW,
                respiration(s, c),
                limitation(s, c));
    }

    static double respiration(Shells s, Constants c) {
        double organic = Tally.dry(s) - Shells.sum(s.ash);
        Constants.Kinetics k = c.kinetics();
        double slow = k.slowPerDay() * Shells.sum(s.slow) + k.ligninPerDay() * Shells.sum(s.lignin);
        double perDay = Factors.mesophiles(TEST_C) * (k.quickPerDay() * Shells.sum(s.quick) + slow)
                + Factors.thermophiles(TEST_C) * (k.quickPerDay() * Shells.sum(s.quick) + k.hotOnSlow() * slow);
        double oxygen = perDay * (1 - k.humusYield()) * k.oxygenPerKg();
        return 1000 * oxygen * CARBON_PER_OXYGEN / Math.max(1e-9, organic);
    }

    private static double vigour(double quick, double slow, double lignin, Constants c) {
        Constants.Kinetics k = c.kinetics();
        return k.quickPerDay() * quick + k.slowPerDay() * slow + k.ligninPerDay() * lignin;
    }

    /**
     * The lowest factor of the core. Ice comes first, then spent food; then what a person could mend (water, air,
     * nitrogen, acid, pieces); cold only when none of these stands out, since a pile is mostly cold because of them.
     */
    private static Limitation limitation(Shells s, Constants c) {
        if (s.ice[0] >= 0.5) {
            return new Limitation(LimitingFactor.FROZEN, 1 - s.ice[0]);
        }
        double dry = s.dry(0);
        double food = vigour(s.quick[0], s.slow[0], s.lignin[0], c) / (dry * vigour(FRESH_QUICK, FRESH_SLOW, 0, c));
        if (food < SPENT) {
            return new Limitation(LimitingFactor.FOOD_SPENT, food);
        }
        double warm = s.temperature[0];
        double moisture = s.water[0] / (s.water[0] + dry);
        double space = Factors.airFilled(
                s.volume[0], s.water[0] * (1 - s.ice[0]), s.water[0] * s.ice[0], s.organic(0), s.ash[0]);
        double oxygen = Factors.oxygen(s.oxygen[0], Factors.oxygenHalf(moisture)) / Factors.oxygen(20.9, 2);
        double ratio = s.organic(0) * Matter.CARBON_SHARE / Math.max(1e-9, s.nitrogen(0));
        Limitation worst = new Limitation(LimitingFactor.WATER, Factors.moistureAround(moisture));
        worst = lower(worst, LimitingFactor.AIR, Factors.airSpace(space) * oxygen);
        worst = lower(worst, LimitingFactor.NITROGEN, Factors.nitrogen(ratio));
        worst = lower(worst, LimitingFactor.ACID, Factors.acid(Factors.ph(s.acid[0], s.ammonium[0] / dry), warm));
        worst = lower(
                worst,
                LimitingFactor.PIECE_SIZE,
                Factors.pieces(s.pieceCm, c.kinetics().halfSizeCm()));
        if (worst.value() < NAMED) {
            return worst;
        }
        double heat = Curves.rate(warm - c.kinetics().shiftC()) / Factors.PEAK;
        if (heat < NAMED) {
            return new Limitation(warm > Factors.BEST_C ? LimitingFactor.HEAT : LimitingFactor.COLD, heat);
        }
        return new Limitation(LimitingFactor.NONE, Math.min(worst.value(), heat));
    }

    private static Limitation lower(Limitation worst, LimitingFactor factor, double value) {
        return value < worst.value() ? new Limitation(factor, value) : worst;
    }
}
