package heapwright.process.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Limits with a known answer, each within 1 %. */
class AnalyticTest {
    private static final double DAY = 86400;

    /** Constants under which only what a test is about happens. */
    static Constants plain(double quickPerDay, double conductivity) {
        return plain(quickPerDay, conductivity, new Constants.Reach(1, 0, 0));
    }

    private static Constants plain(double quickPerDay, double conductivity, Constants.Reach reach) {
        Constants c = Constants.standard();
        return new Constants(
                new Constants.Kinetics(
                        quickPerDay,
                        0,
                        0,
                        0,
                        1.3,
                        14e6,
                        0,
                        0,
                        5,
                        1,
                        new Constants.Guild(1, 0, 0, 90, 1),
                        new Constants.Guild(1, 0, 0, 90, 1)),
                reach,
                new Constants.Transport(conductivity, 0, 0, 0, 1e-20, 0, 1e9, 1),
                c.nitrogen(),
                new Constants.Acid(0, 0),
                new Constants.Settling(0, 1e9));
    }

    private static Envelope closed() {
        return new Envelope(0, 0, 0, 0, 0, 0, 0, 0);
    }

    @Test
    void heatSpreadsInASphereAsTheParabolaOfSteadyConduction() {
        int n = 24;
        Shells s = new Shells(
                PileState.cube(Matter.of(1, 500, 0.6, 0.25, 0.4, 0.25, 30, 2.5), 20, closed()), n, Fixtures.seeded(1));
        Constants c = plain(0, 0.4);
        SlowTerms set = new SlowTerms(n);
        set.update(s, c, 2, 1, 1);
        set.toAir = 1e4;
        set.toGround = 0;
        Heat heat = new Heat(n);
        double perM3 = 200;
        Air air = new Air(n);
        Outdoors out = Outdoors.of(5, 5);
        for (int step = 0; step < 4000; step++) {
            for (int i = 0; i < n; i++) {
                s.heat[i] += perM3 * s.volume[i] * DAY / 4;
            }
            heat.step(s, set, air, c, out, DAY / 4);
            s.derive();
        }
        double outer = s.temperature[n - 1];
        double rOuter = set.nodeRadius(n - 1);
        for (int i = 0; i < n - 1; i++) {
            double r = set.nodeRadius(i);
            double expected = perM3 * (rOuter * rOuter - r * r) / (6 * 0.4);
            assertEquals(expected, s.temperature[i] - outer, 0.01 * expected + 0.01, "shell " + i);
        }
    }

    @Test
    void aBodyThatConductsWellCoolsAsOneLump() {
        Matter m = Matter.of(1, 500, 0.6, 0.25, 0.4, 0.25, 30, 2.5);
        PileState start = PileState.cube(m, 40, closed());
        Shells s = new Shells(start, 8, Fixtures.seeded(1));
        Constants c = plain(0, 1e5);
        SlowTerms set = new SlowTerms(8);
        set.update(s, c, 2, 1, 1);
        double conductance = set.toAir + set.toGround;
        double capacity = Shells.liquidCapacity(m.dryKg(), m.waterKg());
        Heat heat = new Heat(8);
        Air air = new Air(8);
        double seconds = 0;
        while (seconds < DAY / 4) {
            heat.step(s, set, air, c, Outdoors.of(5, 5), 30);
            s.derive();
            seconds += 30;
        }
        double expected = 5 + 35 * Math.exp(-conductance * seconds / capacity);
        assertEquals(expected - 5, s.temperature[3] - 5, 0.01 * (expected - 5));
    }

    /** A wet wall at 0 °C with its face held at −10 °C freezes inward as Neumann's solution says. */
    @Test
    void frostGoesInAsNeumannFound() {
        int n = 200;
        double cell = 0.005;
        Shells s = new Shells(
                PileState.cube(Matter.of(1, 500, 0.6, 0.25, 0.4, 0.25, 30, 2.5), 0, closed()), n, Fixtures.seeded(1));
        double water = 300 * cell;
        double dry = 200 * cell;
        for (int i = 0; i < n; i++) {
            s.water[i] = water;
            s.quick[i] = dry;
            s.slow[i] = 0;
            s.lignin[i] = 0;
            s.ash[i] = 0;
            s.heat[i] = 0;
        }
        s.derive();
        SlowTerms set = new SlowTerms(n);
        double k = 0.5;
        for (int j = 1; j < n; j++) {
            set.conductance[j] = k / cell;
        }
        set.toAir = 2 * k / cell;
        set.toGround = 0;
        Heat heat = new Heat(n);
        Air air = new Air(n);
        double seconds = 0;
        while (seconds < 12 * DAY) {
            heat.step(s, set, air, plain(0, k), Outdoors.of(-10, -10), 600);
            s.derive();
            seconds += 600;
        }
        double frozen = 0;
        for (int i = 0; i < n; i++) {
            frozen += s.ice[i] * cell;
        }
        assertEquals(neumann(k, 10, seconds), frozen, 0.01 * frozen);
    }

    /** Two parts: R' = e U − k R, U' = −e U, whose sum is known in closed form. */
    @Test
    void foodOutOfReachComesWithinItAsTwoPartsOfOnePool() {
        Matter m = Matter.of(0.001, 500, 0.6, 0.5, 0, 0.3, 20, 2.5).withAcid(0);
        PileState start = PileState.cube(m, 30, new Envelope(0, 0, 0, 1, 1, 1, 0, 0));
        double fresh = 0.6;
        double opened = 0.05;
        Constants c = plain(0.05, 1e3, new Constants.Reach(fresh, opened, 0));
        Run run = new Run(start, Weather.constant(30, 60).withWind(30), List.of(), c, 4);
        double moisture = m.moisture();
        double space = Factors.airFilled(0.001, 0.3, 0, 0.16, 0.04);
        double days = 4;
        for (int d = 0; d < days; d++) {
            run.live();
        }
        moisture = (moisture + run.read().moistureMean()) / 2;
        double k = 0.05
                * Factors.temperature(30)
                * Factors.airSpace(space)
                * Factors.oxygen(20.9, 2)
                * Factors.moistureAround(moisture);
        double within = fresh - (1 - fresh) * opened / (k - opened);
        double left =
                within * Math.exp(-k * days) + (1 - fresh) * (1 + opened / (k - opened)) * Math.exp(-opened * days);
        double reached = 1 - (1 - fresh) * Math.exp(-opened * days) / left;
        assertEquals(left, run.read().foodLeftShare(), 0.01 * left);
        assertEquals(reached, run.s.reach[0], 0.01 * reached);
    }

    private static double neumann(double k, double below, double seconds) {
        double capacity = Shells.frozenCapacity(200, 300);
        double stefan = capacity * below / (Shells.MELT_J * 300);
        double low = 0;
        double high = 3;
        for (int i = 0; i < 80; i++) {
            double x = (low + high) / 2;
            double left = Math.sqrt(Math.PI) * x * Math.exp(x * x) * org.hipparchus.special.Erf.erf(x);
            if (left < stefan) {
                low = x;
            } else {
                high = x;
            }
        }
        return 2 * low * Math.sqrt(k / capacity * seconds);
    }

    @Test
    void foodFallsExponentiallyAtASteadyTemperature() {
        // A thin body in a strong bath: 30 C throughout, whatever it releases.
        Matter m = Matter.of(0.001, 500, 0.6, 0.5, 0, 0.3, 20, 2.5).withAcid(0);
        PileState start = PileState.cube(m, 30, new Envelope(0, 0, 0, 1, 1, 1, 0, 0));
        Constants c = plain(0.02, 1e3);
        Course course = HeatModel.run(start, Weather.constant(30, 60).withWind(30), List.of(), 60, c);
        double space = Factors.airFilled(0.001, 0.3, 0, 0.16, 0.04);
        double perDay = 0.02 * Factors.temperature(30) * Factors.airSpace(space) * Factors.oxygen(20.9, 2);
        double first = course.days().get(0).foodLeftShare();
        double last = course.days().get(4).foodLeftShare();
        // Over four days drying and loss change the factors little.
        assertEquals(
                4 * perDay * Factors.moistureAround(course.days().get(2).moistureMean()),
                Math.log(first / last),
                0.01 * 4 * perDay);
    }
}
