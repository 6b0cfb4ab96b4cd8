package heapwright.process.use;

import static org.junit.jupiter.api.Assertions.assertEquals;

import heapwright.process.climate.LocalYear;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Means of Helsinki, 1991 to 2020 (from memory, rounded): the ground there opens in the second half of April. */
@DisplayName("The first spreading")
class ThawTest {

    private static final LocalYear HELSINKI = new LocalYear(
            LocalYear.Known.MONTHS, List.of(-3.0, -4.0, -1.0, 4.0, 10.0, 15.0, 18.0, 17.0, 12.0, 7.0, 2.0, -1.0));

    @ParameterizedTest(name = "asked on {0} lies from {1} to {2}")
    @CsvSource({
        "2028-01-10, 2028-04-10, 2028-04-30",
        "2028-03-20, 2028-04-10, 2028-04-30",
        "2028-07-01, 2028-07-01, 2028-07-01",
        "2028-11-10, 2028-11-10, 2028-11-10",
        "2028-12-20, 2029-04-10, 2029-04-30"
    })
    void opens(LocalDate asked, LocalDate from, LocalDate to) {
        LocalDate first = Thaw.first(HELSINKI, asked, 5);
        assertEquals(List.of(true, true), List.of(!first.isBefore(from), !first.isAfter(to)), first.toString());
    }

    private static LocalDate first(String asked, Double... months) {
        return Thaw.first(new LocalYear(LocalYear.Known.MONTHS, List.of(months)), LocalDate.parse(asked), 5);
    }

    /** Means of the middle of a month go in a straight line to that of the next: from 3 in March to 10 in April, 5 is passed on day 9. */
    @Test
    @DisplayName("waits for spring in a winter that is even and never mild")
    void even() {
        LocalDate first = first("2027-01-20", 3., 3., 3., 10., 15., 18., 20., 18., 15., 10., 6., 4.);
        assertEquals(LocalDate.of(2027, 3, 25), first);
    }

    @Test
    @DisplayName("is over in autumn once the mean of the day is at freezing")
    void freezing() {
        Double[] months = {-10., -8., -2., 6., 12., 16., 18., 16., 10., 0., 0., -10.};
        assertEquals(2028, first("2027-11-10", months).getYear(), "0 °C, and falling in two weeks");
        assertEquals(LocalDate.of(2027, 10, 10), first("2027-10-10", months));
    }

    @Test
    @DisplayName("is the day on which the mean is mild, and none where it never is")
    void mild() {
        Double[] barely = {0., 0., 0., 5., 5., 5., 5., 5., 5., 0., 0., 0.};
        assertEquals(LocalDate.of(2027, 4, 16), first("2027-01-20", barely), "from the middle of April it is 5 °C");
        Double[] never = {-9., -8., -6., -3., 0., 3., 4., 3., 0., -3., -6., -8.};
        assertEquals(LocalDate.of(2027, 3, 20), first("2027-03-20", never), "go by the hand in the soil");
    }
}
