package heapwright.process.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Weather from means, spells and unrest; refusals of inputs out of range. */
class WeatherTest {
    @Test
    void passesThroughMonthlyMeans() {
        Weather year = Weather.monthly(Fixtures.NORTHERN, 1, 365);
        int day = 0;
        int[] lengths = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
        for (int m = 0; m < 12; m++) {
            double sum = 0;
            for (int d = 0; d < lengths[m]; d++) {
                sum += year.airC(day++);
            }
            assertEquals(Fixtures.NORTHERN[m], sum / lengths[m], 1.3, "month " + (m + 1));
        }
    }

    @Test
    void groundFollowsTheAirSlowly() {
        Weather year = Weather.monthly(Fixtures.NORTHERN, 1, 365);
        assertTrue(year.groundC(15) > year.airC(15));
        assertTrue(year.groundC(195) < year.airC(195));
    }

    @Test
    void aSpellIsColderForItsDaysOnly() {
        Weather spell = Weather.constant(2, 30).withSpell(10, 5, 12);
        assertEquals(2, spell.airC(9));
        assertEquals(-10, spell.airC(10));
        assertEquals(-10, spell.airC(14));
        assertEquals(2, spell.airC(15));
        assertTrue(spell.groundC(15) < 2);
    }

    @Test
    void unrestRepeatsWithItsSeedAndHasItsSpread() {
        Weather one = Weather.constant(0, 3000).restless(5, 4);
        Weather two = Weather.constant(0, 3000).restless(5, 4);
        Weather other = Weather.constant(0, 3000).restless(6, 4);
        double square = 0;
        int differing = 0;
        for (int d = 0; d < 3000; d++) {
            assertEquals(one.airC(d), two.airC(d));
            square += one.airC(d) * one.airC(d);
            differing += one.airC(d) == other.airC(d) ? 0 : 1;
        }
        assertEquals(4, Math.sqrt(square / 3000), 0.4);
        assertTrue(differing > 2900);
    }

    @Test
    void refusesWhatCannotBe() {
        assertThrows(IllegalArgumentException.class, () -> Weather.daily());
        assertThrows(IllegalArgumentException.class, () -> Weather.daily(-90));
        assertThrows(IllegalArgumentException.class, () -> Weather.monthly(new double[11], 1, 10));
        assertThrows(IllegalArgumentException.class, () -> Fixtures.good(0));
        assertThrows(IllegalArgumentException.class, () -> Fixtures.good(1).withAcid(1.5));
        assertThrows(IllegalArgumentException.class, () -> new Event.Water(0, -1, 20));
        assertThrows(IllegalArgumentException.class, () -> new CoreReading(0, Double.NaN));
        IllegalArgumentException e =
                assertThrows(IllegalArgumentException.class, () -> Matter.of(1, 500, 0.5, 0.6, 0.6, 0, 30, 5));
        assertTrue(e.getMessage().contains("quickShare + slowShare + ligninShare"));
    }
}
