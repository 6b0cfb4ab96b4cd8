package heapwright.advice.winter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.process.climate.LocalYear;
import heapwright.process.heat.Weather;
import java.time.LocalDate;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The weather of a place")
class ClimateTest {

    private static final String FLAT = "'place': {'monthlyMeanC': [4, 4, 4, 4, 4, 4, 4, 4, 4, 4, 4, 4]}";

    private static Climate of(String fields) {
        return Climate.of(TestPile.of("'built': '2026-10-10', 'asOf': '2026-11-21', " + fields), 60);
    }

    private static String read(String date, double celsius) {
        return "{'date': '" + date + "', 'measured': {'outdoor': {'value': " + celsius + ", 'unit': 'C'}}}";
    }

    @Test
    @DisplayName("is as the file tells it, else as the latitude has it, else a cold one")
    void known() {
        assertEquals(LocalYear.Known.MONTHS, of(FLAT).known());
        assertEquals(4, of(FLAT).january());
        assertEquals(LocalYear.Known.LATITUDE, of("'place': {'latitude': 60}").known());
        assertEquals(LocalYear.Known.ASSUMED, of("'name': 'x'").known());
        assertEquals(
                of("'place': {'latitude': 55}").january(), of("'name': 'x'").january());
    }

    /** Inland at 60° the year's mean is 4.8 °C and the months stand 12.8 K below and above it. */
    @Test
    @DisplayName("by latitude is colder to the poles, with its winter on its own side of the year")
    void latitude() {
        Climate north = of("'place': {'latitude': 60}");
        Climate south = of("'place': {'latitude': -60}");
        assertEquals(4.8 - 12.8, north.january(), 0.3);
        assertEquals(4.8 + 12.8, south.january(), 0.3);
        assertTrue(of("'place': {'latitude': 40}").january() > north.january());
        assertEquals(30, of("'place': {'latitude': 0}").january(), 1e-9);
        assertEquals(1, north.weather().precipitationMm(0), "a millimetre a day");
    }

    /** A thermometer read 10 K above the curve moves its day by seven of them, and fades out over twelve days. */
    @Test
    @DisplayName("bends to a reading and back within twelve days")
    void bent() {
        Weather weather = of(FLAT + ", 'log': [" + read("2026-10-30", 14) + "]").weather();
        assertEquals(4 + 7, weather.airC(20), 1e-9);
        assertEquals(4 + 7 * 0.5, weather.airC(26), 1e-9);
        assertEquals(4 + 7 * 0.5, weather.airC(14), 1e-9);
        assertEquals(4, weather.airC(32), 1e-9);
        assertEquals(4, weather.airC(8), 1e-9);
        assertEquals(4, weather.airC(50), 1e-9);
    }

    /** Halfway between two days eight apart each counts the same: (7 + 0) / 2, two thirds as near. */
    @Test
    @DisplayName("between two readings goes from one to the other")
    void between() {
        Weather weather = of(FLAT + ", 'log': [" + read("2026-10-30", 14) + "," + read("2026-11-07", 4) + "]")
                .weather();
        assertEquals(11, weather.airC(20), 1e-9);
        assertEquals(4 + 3.5 * 2 / 3, weather.airC(24), 1e-9);
        assertEquals(4, weather.airC(28), 1e-9);
    }

    @Test
    @DisplayName("at another start is the same year without the readings")
    void smooth() {
        var pile = TestPile.of(
                "'built': '2026-10-10', 'asOf': '2026-11-21', " + FLAT + ", 'log': [" + read("2026-10-30", 14) + "]");
        Weather smooth = Climate.smooth(pile, LocalDate.of(2026, 9, 1), 90);
        assertEquals(90, smooth.days());
        assertEquals(4, smooth.airC(59), 1e-9);
        assertEquals(1, smooth.precipitationMm(5));
        assertEquals(Surroundings.wind(pile), smooth.windMs(5));
        var windy = TestPile.of("'asOf': '2026-11-21', 'place': {'settings': ['windy']}");
        assertEquals(
                Surroundings.wind(windy),
                Climate.smooth(windy, LocalDate.of(2026, 9, 1), 3).windMs(0));
        assertTrue(Surroundings.wind(windy) > Surroundings.wind(pile));
        var placed = TestPile.of("'asOf': '2026-11-21', 'place': {'latitude': 60}");
        assertTrue(Climate.smooth(placed, LocalDate.of(2026, 1, 15), 2).airC(0) < -7);
        assertTrue(Climate.smooth(placed, LocalDate.of(2026, 7, 15), 2).airC(0) > 15);
    }
}
