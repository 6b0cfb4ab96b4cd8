package heapwright.process.heat;

import java.util.List;

/** Piles and weather the tests share; all invented. */
final class Fixtures {
    /** Monthly means of an invented northern place, °C. */
    static final double[] NORTHERN = {-5, -6, -2, 4, 10, 15, 17, 16, 11, 6, 1, -3};

    static final Constants STANDARD = Constants.standard();

    private Fixtures() {}

    /** The standard constants with both guilds at a vigour. */
    static Constants seeded(double vigour) {
        Constants.Kinetics k = STANDARD.kinetics();
        return STANDARD.with(new Constants.Kinetics(
                k.quickPerDay(),
                k.slowPerDay(),
                k.ligninPerDay(),
                k.humusYield(),
                k.oxygenPerKg(),
                k.heatPerKgOxygen(),
                k.waterPerKg(),
                k.shiftC(),
                k.halfSizeCm(),
                k.hotOnSlow(),
                seeded(k.mesophiles(), vigour),
                seeded(k.thermophiles(), vigour)));
    }

    private static Constants.Guild seeded(Constants.Guild g, double vigour) {
        return new Constants.Guild(vigour, g.growthPerDay(), g.deathPerDayK2(), g.deathFromC(), g.least());
    }

    /** A well-built garden mix of a volume, m³: 58 % water, 500 kg/m³, C:N 30, pieces of 4 cm. */
    static Matter good(double volumeM3) {
        return Matter.of(volumeM3, 500, 0.58, 0.25, 0.40, 0.25, 30, 4);
    }

    /** A rich mix: more quick food, C:N 27, as from kitchen waste with chips. */
    static Matter rich(double volumeM3) {
        return Matter.of(volumeM3, 520, 0.60, 0.38, 0.34, 0.18, 27, 4);
    }

    static Course run(PileState start, Weather weather, int days, Event... events) {
        return HeatModel.run(start, weather, List.of(events), days, STANDARD);
    }

    static Course run(Matter matter, double startC, Envelope envelope, double airC, int days, Event... events) {
        return run(PileState.cube(matter, startC, envelope), Weather.constant(airC, days), days, events);
    }

    static double core(Course course, int day) {
        return course.days().get(day).coreC();
    }
}
