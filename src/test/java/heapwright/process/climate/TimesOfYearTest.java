package heapwright.process.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import heapwright.knowledge.TimeOfYear;
import heapwright.pile.Place;
import java.time.LocalDate;
import java.time.Month;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The times of the year")
class TimesOfYearTest {

    /** Means of a coast at 60° north, 1991–2020 (WMO normals, from memory). */
    private static final List<Double> NORTH =
            List.of(-3.1, -3.8, -0.7, 4.4, 10.4, 14.9, 18.1, 16.9, 12.3, 6.6, 2.4, -0.7);

    private static final List<Double> SOUTH =
            IntStream.range(0, 12).mapToObj(m -> NORTH.get((m + 6) % 12)).toList();

    private static TimeOfYear at(List<Double> means, Month month, int third) {
        Place place =
                new Place(OptionalDouble.empty(), Place.Climate.UNKNOWN, OptionalDouble.empty(), means, List.of());
        return new TimesOfYear(LocalYear.of(place)).of(new MonthThird(month, third));
    }

    /**
     * The Finnish weather service lets spring begin there about 20 March, summer in mid-May, autumn at the end of September
     * and winter in early December, and the growing season last from late April to early November (from memory).
     */
    @ParameterizedTest
    @CsvSource({
        "JANUARY, 1, DEEP_WINTER",
        "MARCH, 1, DEEP_WINTER",
        "MARCH, 2, THAW",
        "APRIL, 1, THAW",
        "APRIL, 2, SPRING",
        "MAY, 0, SPRING",
        "MAY, 1, SUMMER",
        "SEPTEMBER, 2, SUMMER",
        "OCTOBER, 0, AUTUMN",
        "OCTOBER, 2, AUTUMN",
        "NOVEMBER, 0, BEFORE_FROST",
        "DECEMBER, 0, BEFORE_FROST",
        "DECEMBER, 2, DEEP_WINTER"
    })
    @DisplayName("come when the weather service of the place lets them begin, and half a year later in the south")
    void thermal(Month month, int third, TimeOfYear expected) {
        assertEquals(expected, at(NORTH, month, third));
        assertEquals(expected, at(SOUTH, month.plus(6), third));
    }

    @Test
    @DisplayName("know no deep winter on a mild coast, and nothing but summer where it is always warm")
    void mild() {
        List<Double> coast = List.of(5.0, 5.2, 6.5, 8.3, 11.0, 13.6, 15.5, 15.2, 13.4, 10.6, 7.4, 5.6);
        List<Double> warm = List.of(24., 24., 25., 26., 27., 27., 28., 28., 27., 26., 25., 24.);
        for (Month month : Month.values()) {
            for (int third = 0; third < 3; third++) {
                TimeOfYear time = at(coast, month, third);
                assertEquals(false, time == TimeOfYear.DEEP_WINTER || time == TimeOfYear.THAW, month + " " + third);
                assertEquals(TimeOfYear.SUMMER, at(warm, month, third));
            }
        }
    }

    /** Where every month is alike, the first third is the coldest, and half a year counts as rising from there. */
    @ParameterizedTest
    @CsvSource({
        "-0.001, DEEP_WINTER, DEEP_WINTER",
        "0, THAW, BEFORE_FROST",
        "4.999, THAW, BEFORE_FROST",
        "5, SPRING, AUTUMN",
        "9.999, SPRING, AUTUMN",
        "10, SUMMER, SUMMER"
    })
    @DisplayName("begin with their marks, which belong to the warmer one")
    void marks(double mean, TimeOfYear rising, TimeOfYear falling) {
        List<Double> means = Collections.nCopies(12, mean);
        assertEquals(rising, at(means, Month.JANUARY, 0));
        assertEquals(rising, at(means, Month.JUNE, 2));
        assertEquals(falling, at(means, Month.JULY, 0));
        assertEquals(falling, at(means, Month.DECEMBER, 2));
    }

    @ParameterizedTest
    @CsvSource({
        "2026-01-01, JANUARY, 0",
        "2026-01-10, JANUARY, 0",
        "2026-01-11, JANUARY, 1",
        "2026-02-20, FEBRUARY, 1",
        "2026-02-21, FEBRUARY, 2",
        "2028-02-29, FEBRUARY, 2",
        "2026-12-31, DECEMBER, 2"
    })
    @DisplayName("go by thirds of a month")
    void thirds(LocalDate day, Month month, int third) {
        assertEquals(new MonthThird(month, third), MonthThird.of(day));
    }

    @Test
    @DisplayName("go round the year")
    void round() {
        MonthThird late = new MonthThird(Month.DECEMBER, 2);
        assertEquals(new MonthThird(Month.JANUARY, 0), late.plus(1));
        assertEquals(late, new MonthThird(Month.JANUARY, 0).plus(-1));
        assertEquals(late, late.plus(MonthThird.IN_A_YEAR));
        assertThrows(IllegalArgumentException.class, () -> new MonthThird(Month.JANUARY, 3));
        assertThrows(IllegalArgumentException.class, () -> new MonthThird(Month.JANUARY, -1));
    }
}
