package heapwright.process.use;

import static org.junit.jupiter.api.Assertions.assertEquals;

import heapwright.process.climate.LocalYear;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
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
}
