package heapwright.process.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.pile.Place;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The year of a place")
class LocalYearTest {

    private static final int JANUARY = 0;
    private static final int JULY = 6;

    private static LocalYear year(double latitude, Place.Climate climate, double altitude) {
        return LocalYear.of(
                new Place(OptionalDouble.of(latitude), climate, OptionalDouble.of(altitude), List.of(), List.of()));
    }

    /** Normals 1991–2020 of weather stations (WMO; from memory, to about half a degree). The figures were set on these and some others. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "Dublin, 53.4, 70, MILD_COAST, 5.0, 15.5",
        "London, 51.5, 25, MILD_COAST, 5.7, 18.7",
        "Bergen, 60.4, 10, MILD_COAST, 2.5, 15.5",
        "Vancouver, 49.2, 5, MILD_COAST, 4.0, 18.2",
        "Warsaw, 52.2, 106, INLAND, -1.5, 19.4",
        "Helsinki, 60.3, 50, INLAND, -4.6, 17.6",
        "Berlin, 52.5, 50, INLAND, 0.9, 19.6",
        "Munich, 48.1, 515, INLAND, -0.5, 18.9",
        "Minneapolis, 44.9, 265, FAR_INLAND, -9.0, 23.3",
        "Chicago, 41.8, 190, FAR_INLAND, -4.0, 23.5",
        "Winnipeg, 49.9, 240, FAR_INLAND, -16.3, 19.7",
        "Novosibirsk, 55.0, 150, FAR_INLAND, -17.0, 19.5"
    })
    @DisplayName("comes within 5 K of a station's coldest and warmest month")
    void stations(
            String station, double latitude, double altitude, Place.Climate climate, double january, double july) {
        LocalYear year = year(latitude, climate, altitude);
        assertEquals(january, year.meanC().get(JANUARY), 5, station + " in January");
        assertEquals(july, year.meanC().get(JULY), 5, station + " in July");
    }

    @Test
    @DisplayName("is milder by the sea in winter, hotter inland in summer, colder on the hill")
    void order() {
        double coast = year(55, Place.Climate.MILD_COAST, 0).meanC().get(JANUARY);
        double inland = year(55, Place.Climate.INLAND, 0).meanC().get(JANUARY);
        double far = year(55, Place.Climate.FAR_INLAND, 0).meanC().get(JANUARY);
        assertTrue(coast > inland + 3 && inland > far + 3, coast + " " + inland + " " + far);
        assertTrue(year(55, Place.Climate.FAR_INLAND, 0).meanC().get(JULY)
                > year(55, Place.Climate.MILD_COAST, 0).meanC().get(JULY));
        assertEquals(inland - 5, year(55, Place.Climate.INLAND, 1000).meanC().get(JANUARY), 1e-9);
        assertEquals(year(55, Place.Climate.INLAND, 0), year(55, Place.Climate.UNKNOWN, 0));
    }

    @Test
    @DisplayName("has its winter in July south of the equator, and none on it")
    void south() {
        LocalYear north = year(45, Place.Climate.INLAND, 0);
        LocalYear south = year(-45, Place.Climate.INLAND, 0);
        for (int m = 0; m < 12; m++) {
            assertEquals(north.meanC().get(m), south.meanC().get((m + 6) % 12), 1e-9);
        }
        assertEquals(
                Collections.nCopies(12, 30.0), year(0, Place.Climate.INLAND, 0).meanC());
    }

    @Test
    @DisplayName("is that of the file where the file tells it")
    void told() {
        List<Double> months = List.of(1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0, 9.0, 10.0, 11.0, 12.0);
        LocalYear year = LocalYear.of(
                new Place(OptionalDouble.of(60), Place.Climate.FAR_INLAND, OptionalDouble.of(2000), months, List.of()));
        assertEquals(new LocalYear(LocalYear.Known.MONTHS, months), year);
    }

    @Test
    @DisplayName("goes evenly from the middle of a month to that of the next")
    void days() {
        List<Double> months = List.of(0.0, 10.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, -10.0);
        LocalYear year = new LocalYear(LocalYear.Known.MONTHS, months);
        assertEquals(0, year.on(LocalDate.of(2026, 1, 16)).orElseThrow(), 1e-9);
        assertEquals(-5, year.on(LocalDate.of(2026, 1, 1)).orElseThrow(), 0.3);
        assertEquals(5, year.on(LocalDate.of(2026, 2, 1)).orElseThrow(), 0.3);
        assertEquals(-10, year.on(LocalDate.of(2026, 12, 16)).orElseThrow(), 1e-9);
        for (LocalDate d = LocalDate.of(2026, 1, 1); d.getYear() == 2026; d = d.plusDays(1)) {
            double today = year.on(d).orElseThrow();
            double tomorrow = year.on(d.plusDays(1)).orElseThrow();
            assertEquals(today, tomorrow, 0.5, d.toString());
        }
    }

    @Test
    @DisplayName("says nothing of a day where nothing is known of the place")
    void unknown() {
        LocalYear year = LocalYear.of(Place.unknown());
        assertEquals(LocalYear.Known.ASSUMED, year.known());
        assertEquals(OptionalDouble.empty(), year.on(LocalDate.of(2026, 1, 20)));
        assertThrows(IllegalArgumentException.class, () -> new LocalYear(LocalYear.Known.MONTHS, List.of(1.0)));
    }
}
