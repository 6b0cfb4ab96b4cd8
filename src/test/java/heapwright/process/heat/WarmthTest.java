package heapwright.process.heat;

import static heapwright.process.heat.Fixtures.core;
import static heapwright.process.heat.Fixtures.good;
import static heapwright.process.heat.Fixtures.run;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Published behaviour of warming and cooling; the number is the row of the acceptance list in docs/method/heat.md. */
class WarmthTest {
    @Test
    @DisplayName("1 OSUEXT: a well-built pile of half to one cubic yard heats within a week")
    void heatsWithinAWeek() {
        for (double volume : new double[] {0.4, 0.6, 0.8}) {
            Course course = run(good(volume), 12, Envelope.slatted(), 12, 14);
            assertTrue(core(course, 6) >= 40, volume + " m3: " + core(course, 6));
        }
    }

    @Test
    @DisplayName("2 NRCS317: a farm pile reaches 55-77 °C in about a week, stays for up to two, then 43 °C or more")
    void farmPileIsHotThenWarm() {
        Course course = Scenes.farmManure(40);
        assertTrue(core(course, 9) >= 55, "day 10: " + core(course, 9));
        assertTrue(course.peakC() >= 55 && course.peakC() <= 77, "peak " + course.peakC());
        assertTrue(core(course, 24) >= 43, "day 25: " + core(course, 24));
    }

    @Test
    @DisplayName("3 CORNPHYS: larger bodies get hotter; 38 L indoors passes 40 °C in about two to three days")
    void sizeOrdersTheFirstHeat() {
        Course bottle = Scenes.bottle();
        Course barrel = Scenes.barrel();
        Course plant = Scenes.works();
        assertTrue(bottle.peakC() >= 26 && bottle.peakC() <= 45, "bottle " + bottle.peakC());
        assertTrue(bottle.peakC() < barrel.peakC(), "barrel " + barrel.peakC());
        int first = barrel.firstAtLeast(40).orElseThrow();
        assertTrue(first >= 1 && first <= 3, "barrel at 40 °C on day " + first);
        assertTrue(barrel.peakC() < plant.peakC(), "plant " + plant.peakC());
        int hot = plant.firstAtLeast(60).orElseThrow();
        assertTrue(hot >= 1 && hot <= 5, "plant at 60 °C on day " + hot);
    }

    @Test
    @DisplayName("4 FINHOG93: biology limits itself; never above about 80 °C")
    void limitsItself() {
        Course course = Scenes.snug();
        assertTrue(course.peakC() >= 65 && course.peakC() <= 80, "peak " + course.peakC());
    }

    @Test
    @DisplayName("5 CORNPHYS, SUND05: decay is fastest at 40-60 °C, and faster at 55 than at 40 or 67 °C")
    void ratesInOrder() {
        assertTrue(Factors.temperature(55) > Factors.temperature(40));
        assertTrue(Factors.temperature(55) > Factors.temperature(67));
        assertTrue(Factors.BEST_C >= 40 && Factors.BEST_C <= 60);
        assertEquals(Factors.PEAK, Factors.temperature(Factors.BEST_C), 0.005 * Factors.PEAK);
    }

    @Test
    @DisplayName("6 KING12: one cubic yard of the right mix holds active heat in deep cold; a smaller one freezes")
    void sizeDecidesInDeepCold() {
        Course yard = Scenes.deepCold(0.8);
        Course small = Scenes.deepCold(0.12);
        for (int d = 8; d < 36; d++) {
            assertTrue(core(yard, d) >= 40, "day " + d + ": " + core(yard, d));
        }
        assertTrue(
                small.firstFrozenThrough().isPresent(),
                "small core at the end " + small.last().coreC());
        assertTrue(yard.firstFrozenThrough().orElse(99)
                > small.firstFrozenThrough().getAsInt());
    }

    @Test
    @DisplayName("12 ARJANG: an open bin seldom passes 40 °C, the same insulated reaches 60-70 °C")
    void insulationMakesTheHeat() {
        Course open = Scenes.smallBin(false);
        Course insulated = Scenes.smallBin(true);
        assertTrue(open.peakC() <= 40, "open " + open.peakC());
        assertTrue(insulated.peakC() >= 58 && insulated.peakC() <= 72, "insulated " + insulated.peakC());
    }

    @Test
    @DisplayName("13 WSUWHAT: the skin falls about 1 °C per cm, and wind makes it cooler")
    void skinFallsSteeplyAndWindCoolsIt() {
        PileState start = PileState.cube(good(1), 15, Envelope.bare());
        Course calm = HeatModel.run(start, Weather.constant(5, 12).withWind(0.2), List.of(), 12, Fixtures.STANDARD, 16);
        Course windy = HeatModel.run(start, Weather.constant(5, 12).withWind(8), List.of(), 12, Fixtures.STANDARD, 16);
        Day day = calm.days().get(9);
        Day blown = windy.days().get(9);
        assertTrue(blown.skinC() < day.skinC() - 1, blown.skinC() + " against " + day.skinC());
        Run run = new Run(start, Weather.constant(5, 12), List.of(), Fixtures.STANDARD, 16);
        for (int d = 0; d < 10; d++) {
            run.live();
        }
        double gradient = (run.s.temperature[13] - run.s.temperature[15])
                / (100 * (run.set.nodeRadius(15) - run.set.nodeRadius(13)));
        assertTrue(gradient >= 0.5 && gradient <= 4, gradient + " °C per cm");
    }

    @Test
    @DisplayName("14 RODALE: a large farm pile stands near 71 °C at −1 °C outdoors")
    void aLargePileIgnoresFrost() {
        Course course = Scenes.bigInFrost();
        assertTrue(course.peakC() >= 66 && course.peakC() <= 76, "peak " + course.peakC());
        assertTrue(course.daysAtLeast(54) >= 25, "days at 54 °C: " + course.daysAtLeast(54));
    }

    @Test
    @DisplayName("27 private observation 2015: leaves 1 × 2 × 0.6 m, day 7, core near 53 °C at 13 °C, 10 cm lower")
    void leavesOfASmallBin() {
        Course course = Scenes.leafBin();
        assertEquals(53, core(course, 6), 12);
        assertEquals(0.10, 0.60 - course.days().get(6).heightM(), 0.06);
    }

    @Test
    @DisplayName("28 WSUWHAT: horse manure is 49-71 °C for weeks, then near 38 °C, then as outdoors")
    void threePhases() {
        Course course = Scenes.farmManure(240);
        int hot = course.daysAtLeast(49);
        assertTrue(hot >= 14, "days at 49 °C: " + hot);
        int warm = course.daysAtLeast(28) - hot;
        assertTrue(warm >= 10, "days between 28 and 49 °C: " + warm);
        assertTrue(course.last().coreC() <= 28, "end " + course.last().coreC());
    }
}
