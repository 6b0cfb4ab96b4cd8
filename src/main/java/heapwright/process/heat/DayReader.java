package heapwright.process.heat;

/** Reads a {@link Day} off a run. */
final class DayReader {
    /** A test for stability warms a damp, airy sample to this, °C (judgement: usual for respiration tests). */
    private static final double TEST_C = 37;

    /** mg of carbon as CO2 per mg of oxygen (CH2O + O2 gives CO2 + H2O). */
    private static final double CARBON_PER_OXYGEN = 12.0 / 32;

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
                respiration(s, c));
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
}
