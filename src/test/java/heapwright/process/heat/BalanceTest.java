package heapwright.process.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Nothing is made or lost on the way, and the same input gives the same course. */
class BalanceTest {
    static List<Event> busyWinter() {
        return List.of(
                new Event.Turn(10),
                new Event.Loosen(24),
                new Event.Water(30, 20, 30),
                new Event.Cover(40, Envelope.slatted().topped(Layer.straw(0.2))),
                new Event.Add(50, Matter.of(0.05, 500, 0.8, 0.5, 0.3, 0.1, 15, 5), 18, false),
                new Event.Add(70, Matter.of(0.1, 500, 0.7, 0.4, 0.3, 0.2, 20, 5), 5, true),
                new Event.SnowIn(90, 30, -5),
                new Event.Feed(120, 0.3, 10, 35),
                new Event.Turn(150));
    }

    private static Course winter() {
        Weather weather = Weather.monthly(Fixtures.NORTHERN, 304, 180)
                .withPrecipitation(1.5)
                .restless(7, 4);
        return HeatModel.run(
                PileState.cube(Fixtures.good(1), 12, Envelope.slatted()),
                weather,
                busyWinter(),
                180,
                Constants.standard());
    }

    @Test
    void heatWaterMatterAndNitrogenBalanceOverABusyWinter() {
        Ledger ledger = winter().ledger();
        assertEquals(0, ledger.heatGap(), 1e-3);
        assertEquals(0, ledger.waterGap(), 1e-3);
        assertEquals(0, ledger.dryGap(), 1e-3);
        assertEquals(0, ledger.nitrogenGap(), 1e-3);
        assertTrue(ledger.heatReleased() > 1e8);
        assertTrue(ledger.nitrogenBrought() > 0.3);
    }

    @Test
    void sameInputSameCourse() {
        assertEquals(winter(), winter());
    }

    @Test
    void pastItsEndTheLastDayOfWeatherStands() {
        Course known = HeatModel.run(
                PileState.cube(Fixtures.good(1), 12, Envelope.bare()),
                Weather.constant(5, 40),
                List.of(),
                40,
                Constants.standard());
        Course brief = HeatModel.run(
                PileState.cube(Fixtures.good(1), 12, Envelope.bare()),
                Weather.daily(5),
                List.of(),
                40,
                Constants.standard());
        assertEquals(known.days(), brief.days());
    }
}
