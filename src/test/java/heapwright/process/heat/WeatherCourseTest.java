package heapwright.process.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Weather whose every day can be reckoned by hand. */
class WeatherCourseTest {

    /** Means on a first and a second wave of the year give back these waves, whatever the day it starts. */
    @Test
    void aYearOfTwoWavesIsGivenBackDayByDay() {
        double[] means = new double[12];
        for (int m = 0; m < 12; m++) {
            means[m] = wave((m + 0.5) / 12);
        }
        Weather spring = Weather.monthly(means, 91, 200);
        for (int day = 0; day < 200; day++) {
            assertEquals(wave((91 - 0.5 + day) / 365.25), spring.airC(day), 1e-9);
        }
    }

    private static double wave(double year) {
        double angle = 2 * Math.PI * year;
        return 8 - 9 * Math.cos(angle) - 4 * Math.sin(angle) + 2 * Math.cos(2 * angle) + Math.sin(2 * angle);
    }

    /** The ground takes a forty-fifth of the difference a day. */
    @Test
    void theGroundFollowsByAFortyFifthADay() {
        Weather spell = Weather.constant(0, 10).withSpell(2, 1, -45);
        assertEquals(0, spell.groundC(1));
        assertEquals(1, spell.groundC(2), 1e-12);
        assertEquals(44.0 / 45, spell.groundC(3), 1e-12);
        assertEquals(45, spell.airC(2));
    }

    @Test
    void aMonthlyYearStartsOnGroundHalfwayToItsMean() {
        double[] means = new double[12];
        Arrays.setAll(means, m -> wave((m + 0.5) / 12));
        Weather year = Weather.monthly(means, 1, 30);
        double first = (8 + year.airC(0)) / 2;
        assertEquals(first + (year.airC(0) - first) / 45, year.groundC(0), 1e-9);
    }

    @Test
    void aSpellThatReachesPastTheEndsIsCutThere() {
        Weather spell = Weather.constant(5, 4).withSpell(-2, 3, 10).withSpell(3, 9, 10);
        assertEquals(-5, spell.airC(0));
        assertEquals(5, spell.airC(1));
        assertEquals(5, spell.airC(2));
        assertEquals(-5, spell.airC(3));
    }

    /** The ground is by then half as much warmer as the air. */
    @Test
    void warmerThroughoutIsWarmerEveryDay() {
        Weather warm = Weather.constant(4, 3).warmerBy(2);
        assertEquals(6, warm.airC(0));
        assertEquals(6, warm.airC(2));
        assertEquals(5 + 1.0 / 45, warm.groundC(0), 1e-12);
        assertEquals(5, Weather.constant(4, 3).groundC(0) + 1);
    }

    @Test
    void rainAndWindAreAsGivenAndTheLastDayStands() {
        Weather wet =
                Weather.constant(4, 3).withPrecipitation(new double[] {1, 2}).withWind(7);
        assertEquals(1, wet.precipitationMm(0));
        assertEquals(2, wet.precipitationMm(1));
        assertEquals(0, wet.precipitationMm(2), "a day not given is dry");
        assertEquals(0, wet.precipitationMm(99));
        assertEquals(7, wet.windMs(0));
        assertEquals(7, wet.windMs(99));
        assertEquals(3, wet.withPrecipitation(3).precipitationMm(1));
        assertEquals(2, Weather.constant(4, 3).windMs(1), "usual wind in a garden");
        assertEquals(3, wet.days());
        Weather rising = Weather.daily(1, 2, 3);
        assertEquals(3, rising.airC(99));
        assertEquals(rising.groundC(2), rising.groundC(99));
    }

    @Test
    void laterPartsKeepTheirDays() {
        Weather rising = Weather.daily(1, 2, 3, 4).withPrecipitation(new double[] {5, 6, 7, 8});
        Weather later = rising.from(1);
        assertEquals(3, later.days());
        assertEquals(2, later.airC(0));
        assertEquals(rising.groundC(1), later.groundC(0));
        assertEquals(6, later.precipitationMm(0));
        assertEquals(1, rising.from(9).days());
        assertEquals(4, rising.from(9).airC(0));
        assertEquals(4, rising.from(-3).days());
    }

    @Test
    void aBegunCourseGoesOnInItsOwnWay() {
        Weather told = Weather.daily(-9, -6).withPrecipitation(4).withWind(9);
        Weather on = Weather.constant(6, 4).withPrecipitation(1).withWind(2).startingAs(told);
        assertEquals(4, on.days());
        double[][] expected = {{-9, 4, 9}, {-6, 4, 9}, {6, 1, 2}, {6, 1, 2}};
        for (int d = 0; d < 4; d++) {
            assertEquals(expected[d][0], on.airC(d), "air of day " + d);
            assertEquals(expected[d][1], on.precipitationMm(d), "rain of day " + d);
            assertEquals(expected[d][2], on.windMs(d), "wind of day " + d);
        }
        assertEquals(told.groundC(0), on.groundC(0));
        assertEquals(on.groundC(1) + (6 - on.groundC(1)) / 45, on.groundC(2), 1e-12);
        Weather brief = Weather.constant(6, 1).startingAs(told);
        assertEquals(1, brief.days());
        assertEquals(-9, brief.airC(5));
    }

    /** Half a year of 60 °C and half a year of −70 °C, invented: the waves through them would swing beyond. */
    @Test
    void noDayIsBeyondWhatAGardenHas() {
        double[] means = new double[12];
        Arrays.setAll(means, m -> m < 6 ? 60 : -70);
        Weather year = Weather.monthly(means, 1, 365);
        double most = IntStream.range(0, 365).mapToDouble(year::airC).max().orElseThrow();
        double least = IntStream.range(0, 365).mapToDouble(year::airC).min().orElseThrow();
        assertEquals(60, most);
        assertEquals(-70, least);
    }

    /** Over ten thousand days the sums settle: spread as asked, seven tenths of a day's unrest still there on the next. */
    @Test
    void unrestCarriesSevenTenthsOver() {
        Weather restless = Weather.constant(0, 10_000).restless(3, 2);
        double square = 0;
        double next = 0;
        for (int d = 1; d < 10_000; d++) {
            square += restless.airC(d) * restless.airC(d);
            next += restless.airC(d) * restless.airC(d - 1);
        }
        assertEquals(2, Math.sqrt(square / 9_999), 0.06);
        assertEquals(0.7, next / square, 0.03);
    }

    @Test
    void noDaysAreNoWeather() {
        assertThrows(IllegalArgumentException.class, () -> Weather.constant(4, 0));
        assertThrows(IllegalArgumentException.class, () -> Weather.monthly(Fixtures.NORTHERN, 1, -1));
    }
}
