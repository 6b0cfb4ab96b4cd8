package heapwright.process.heat;

import static heapwright.process.heat.Fixtures.core;
import static heapwright.process.heat.Fixtures.good;
import static heapwright.process.heat.Fixtures.rich;
import static heapwright.process.heat.Fixtures.run;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Published behaviour in winter; the number is the row of the acceptance list in docs/method/heat.md. */
class WinterTest {
    /** Eight mild days, then steady frost. */
    private static Weather coldSnap() {
        return Weather.constant(8, 60).withSpell(8, 60, 16);
    }

    @Test
    @DisplayName("7 KING12: 38 % more food makes a dense, saturated, cold core")
    void overfeedingChokes() {
        Matter right = rich(0.8);
        Matter food = Matter.of(0.02, 900, 0.82, 0.6, 0.2, 0.05, 17, 4);
        double more = 0.38 * (right.dryKg() + right.waterKg()) / (food.dryKg() + food.waterKg());
        Matter wet = new Matter(
                right.dryKg() + more * food.dryKg(),
                right.waterKg() + more * food.waterKg(),
                0.42,
                0.31,
                0.17,
                right.nitrogenKg() + more * food.nitrogenKg(),
                0,
                0.8,
                4,
                0.5);
        Envelope strawed = Envelope.slatted().topped(Layer.straw(0.15));
        Course fed = run(right, 15, strawed, -5, 30);
        Course overfed = run(wet, 15, strawed, -5, 30);
        assertTrue(fed.peakC() > 50, "fed " + fed.peakC());
        assertTrue(overfed.peakC() < 40, "overfed " + overfed.peakC());
        Day day = overfed.days().get(6);
        assertTrue(day.airSpaceCore() < 0.36 && day.moistureCore() > 0.65, day.toString());
    }

    @Test
    @DisplayName("8 LYNCH96: a windrow that froze right through heats up as it warms, −27 to +15 °C")
    void reheatsAfterFreezing() {
        double[] air = Scenes.warmingUp();
        Course course = Scenes.frozenWindrow(air);
        assertTrue(course.days().get(40).coreIceShare() > 0.99);
        int hot = course.firstAtLeast(45).orElseThrow();
        assertTrue(air[hot] > -5 && air[hot] <= 15, "hot on day " + hot + " at " + air[hot]);
    }

    @Test
    @DisplayName("9 MCC05: started in late autumn it gets hot; started in deep winter not before the warm season")
    void theDateOfTheStartMatters() {
        int autumn = Scenes.hotDay(293, 10);
        assertTrue(autumn < 30, "autumn " + autumn);
        int hot = Scenes.hotDay(10, 0);
        assertTrue(hot > 90, "winter-built pile hot on day " + hot);
    }

    @Test
    @DisplayName("10 MCC05, WSUWHAT: turning in the cold loses much heat; snow in the mix cools and wets")
    void turningAndSnowHurtInTheCold() {
        Course left = Scenes.coldSnap();
        Course turned = Scenes.coldSnap(new Event.Turn(12));
        Course snowed = Scenes.coldSnap(new Event.SnowIn(12, 60, -4));
        assertTrue(core(left, 11) > 50, "before " + core(left, 11));
        double held =
                2.6e6 * left.days().get(11).volumeM3() * left.days().get(11).midC();
        double lost = left.ledger().heatBrought() - turned.ledger().heatBrought();
        assertTrue(lost > 0.15 * held, lost / held + " of the heat");
        assertTrue(turned.daysAtLeast(40) < left.daysAtLeast(40) - 3, turned.daysAtLeast(40) + " days");
        assertTrue(snowed.daysAtLeast(40) < left.daysAtLeast(40) - 3, snowed.daysAtLeast(40) + " days");
        assertTrue(core(snowed, 12) < core(left, 12) - 5, core(snowed, 12) + " against " + core(left, 12));
        assertTrue(snowed.days().get(12).moistureCore() > left.days().get(12).moistureCore() + 0.03);
    }

    @Test
    @DisplayName("11 NMSU21 and others: slow below 13 °C, almost nothing at −20 °C")
    void coldSlowsAndFrostStops() {
        assertTrue(Factors.temperature(13) < 0.15 * Factors.PEAK);
        assertTrue(Factors.temperature(5) < 0.1 * Factors.PEAK);
        Course frozen = run(good(0.5), -20, Envelope.slatted(), -20, 60);
        assertEquals(1, frozen.last().foodLeftShare(), 1e-9);
        Course cool = run(good(0.05), 8, Envelope.slatted(), 8, 30);
        Course mild = run(good(0.05), 20, Envelope.slatted(), 20, 30);
        assertTrue(
                1 - cool.last().foodLeftShare() < 0.6 * (1 - mild.last().foodLeftShare()),
                "lost " + (1 - cool.last().foodLeftShare()) + " against "
                        + (1 - mild.last().foodLeftShare()));
    }

    @Test
    @DisplayName("A frozen pile holds at 0 °C while it thaws, and decays no food before")
    void thawTakesTheHeatOfMelting() {
        Course course = run(good(0.5), -10, Envelope.slatted(), 6, 60);
        long atZero = course.days().stream()
                .filter(d -> Math.abs(d.coreC()) < 0.05 && d.coreIceShare() > 0)
                .count();
        assertTrue(atZero >= 4, "days at 0 °C: " + atZero);
        assertTrue(course.last().coreC() > 3, "end " + course.last().coreC());
    }

    @Test
    @DisplayName("Loosening only the outside keeps the core; turning does not")
    void looseningSparesTheCore() {
        Course loosened = run(PileState.cube(good(0.8), 15, Envelope.slatted()), coldSnap(), 30, new Event.Loosen(14));
        Course turned = run(PileState.cube(good(0.8), 15, Envelope.slatted()), coldSnap(), 30, new Event.Turn(14));
        assertTrue(core(loosened, 13) > 40, "before " + core(loosened, 13));
        assertTrue(core(loosened, 14) > core(turned, 14) + 8, core(loosened, 14) + " against " + core(turned, 14));
        assertTrue(core(loosened, 14) > core(loosened, 13) - 6);
    }

    @Test
    @DisplayName("Snow that falls on the top insulates it")
    void fallenSnowInsulates() {
        PileState start = PileState.cube(good(0.8), 15, Envelope.slatted());
        Course dry = run(start, Weather.constant(-10, 40), 40);
        Course snowy = run(start, Weather.constant(-10, 40).withPrecipitation(2), 40);
        assertTrue(snowy.days().get(25).midC() >= dry.days().get(25).midC());
        assertTrue(snowy.ledger().waterBrought() > 1, "melted into the pile from below");
    }
}
