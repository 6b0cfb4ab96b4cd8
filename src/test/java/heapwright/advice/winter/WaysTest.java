package heapwright.advice.winter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.process.heat.Envelope;
import heapwright.process.heat.Event;
import heapwright.process.heat.Matter;
import heapwright.process.heat.PileState;
import heapwright.process.heat.Weather;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Other ways to build or keep a pile from now on: {@link Plan}. */
@DisplayName("Another way")
class WaysTest {

    /** In no way that can be bettered but by size and straw: damp, airy, C:N 30, fine, not sour. */
    private static final Matter GOOD =
            Matter.of(1, 500, 0.58, 0.25, 0.40, 0.25, 30, 4).withAcid(0.1);

    /** From the first of November, an invented northern place. */
    private static final Weather SKY =
            Weather.monthly(new double[] {-5, -6, -2, 4, 10, 15, 17, 16, 11, 6, 1, -3}, 305, 240);

    private static PileState pile(Matter matter) {
        return PileState.cube(matter, 12, Envelope.slatted());
    }

    @Test
    @DisplayName("ahead: pieces of half the size, where they are longer than 3 cm")
    void finerAhead() {
        Plan.Way way = Plan.FINER.building(pile(GOOD), SKY).get(0);
        assertEquals(2, way.start().matter().pieceCm());
        assertEquals(List.of(), way.events());
        Plan.Way standing = Plan.FINER.standing(pile(GOOD), SKY).get(0);
        assertEquals(2, standing.start().matter().pieceCm());
        assertEquals(List.of(new Event.Turn(0)), standing.events(), "a pile that stands is opened for it");
        assertEquals(List.of(), Plan.FINER.building(pile(GOOD.withPieces(3)), SKY));
        assertEquals(List.of(), Plan.FINER.standing(pile(GOOD.withPieces(3)), SKY));
    }

    @Test
    @DisplayName("ahead: five points more of water, where that is no more than 62 %")
    void wetterAhead() {
        Matter dryish = Matter.of(1, 500, 0.50, 0.25, 0.40, 0.25, 30, 4);
        Event.Water water = (Event.Water)
                Plan.WETTER.building(pile(dryish), SKY).get(0).events().get(0);
        assertEquals(0.55, (250 + water.kg()) / (500 + water.kg()), 1e-9);
        assertEquals(List.of(), Plan.WETTER.building(pile(GOOD), SKY));
        assertEquals(Plan.WETTER.building(pile(dryish), SKY), Plan.WETTER.standing(pile(dryish), SKY));
    }

    @Test
    @DisplayName("ahead: nitrogen to C:N 25")
    void nitrogenAhead() {
        Event.Feed feed = (Event.Feed)
                Plan.NITROGEN.building(pile(GOOD), SKY).get(0).events().get(0);
        double organic = GOOD.dryKg() * 0.9;
        assertEquals(25, organic / 2 / (GOOD.nitrogenKg() + feed.nitrogenKg()), 1e-9);
        assertTrue(feed.waterKg() >= 1 && feed.waterKg() >= 20 * feed.nitrogenKg());
        Matter rich = Matter.of(1, 500, 0.58, 0.25, 0.40, 0.25, 20, 4);
        assertEquals(List.of(), Plan.NITROGEN.building(pile(rich), SKY));
    }

    @Test
    @DisplayName("ahead: turned now, in two weeks, or on the first mild day after the cold")
    void turned() {
        assertEquals(List.of(), Plan.TURNED_NOW.building(pile(GOOD), SKY), "what is just built is not turned");
        assertEquals(0, Plan.TURNED_NOW.standing(pile(GOOD), SKY).get(0).day());
        assertEquals(
                14, Plan.TURNED_IN_TWO_WEEKS.building(pile(GOOD), SKY).get(0).day());
        assertEquals(List.of(), Plan.TURNED_IN_TWO_WEEKS.standing(pile(GOOD), SKY));
        Plan.Way spring = Plan.TURNED_IN_SPRING.standing(pile(GOOD), SKY).get(0);
        assertEquals(List.of(new Event.Turn(spring.day())), spring.events());
        assertTrue(SKY.airC(spring.day()) >= 8);
        for (int d = spring.day() - 1; SKY.airC(d) >= 5 && d > 14; d--) {
            assertTrue(SKY.airC(d) < 8, "milder already on day " + d);
        }
        assertEquals(List.of(), Plan.TURNED_IN_SPRING.standing(pile(GOOD), Weather.constant(12, 200)), "no cold");
        assertEquals(List.of(), Plan.TURNED_IN_SPRING.standing(pile(GOOD), Weather.constant(-2, 200)), "no spring");
    }

    @ParameterizedTest
    @CsvSource({"4, 0, 20, 20", "5, 0, 20, -1", "4, 0, 13, 14"})
    @DisplayName("ahead: spring is the first day of 8 °C after one below 5 °C, two weeks from now at the earliest")
    void spring(double cold, int from, int until, int day) {
        double[] air = new double[60];
        java.util.Arrays.fill(air, 8);
        java.util.Arrays.fill(air, from, until, cold);
        List<Plan.Way> ways = Plan.TURNED_IN_SPRING.standing(pile(GOOD), Weather.daily(air));
        assertEquals(day, ways.isEmpty() ? -1 : ways.get(0).day());
    }

    @Test
    @DisplayName("ahead: half as much again laid on, as warm as it is outdoors")
    void biggerAhead() {
        Event.Add add = (Event.Add)
                Plan.BIGGER.standing(pile(GOOD), SKY).get(0).events().get(0);
        assertEquals(0.5, add.matter().volumeM3(), 1e-9);
        assertEquals(Math.max(-10, SKY.airC(0)), add.temperatureC(), 1e-9);
        assertTrue(!add.mixed());
        assertEquals(
                2, Plan.BIGGER.building(pile(GOOD), SKY).get(0).start().matter().volumeM3(), 1e-9);
        assertEquals(List.of(), Plan.BUILT_EARLIER.building(pile(GOOD), SKY), "that is reckoned apart");
    }
}
