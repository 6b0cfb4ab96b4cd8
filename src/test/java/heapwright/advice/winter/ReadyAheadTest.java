package heapwright.advice.winter;

import static org.junit.jupiter.api.Assertions.assertEquals;

import heapwright.process.heat.Bands;
import heapwright.process.heat.Range;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The day on which it will be ready")
class ReadyAheadTest {

    private static final LocalDate FIRST = LocalDate.of(2026, 11, 21);

    private static ReadyAhead on(double day) {
        return new ReadyAhead(FIRST, true, 100, new Range(day - 5, day, day + 5), 0.5, Optional.empty());
    }

    @Test
    @DisplayName("is known within the days looked at, and not at their end, where looking stopped")
    void within() {
        assertEquals(true, on(99.9).likely());
        assertEquals(false, on(100).likely());
        assertEquals(Optional.of(LocalDate.of(2026, 12, 1)), on(50).date(10.4));
        assertEquals(Optional.of(LocalDate.of(2026, 12, 2)), on(50).date(10.5));
        assertEquals(Optional.empty(), on(50).date(100));
        assertEquals(LocalDate.of(2027, 3, 1), on(50).lookedUntil());
    }

    @Test
    @DisplayName("is counted from the day of asking on in a trial of a step")
    void trial() {
        PileModel model = WinterPiles.model(WinterPiles.good(""));
        Bands bands = new Bands(new double[40], new double[40], new double[40]);
        Trial trial = new Trial(model, true, 0, bands, bands, Optional.empty());
        assertEquals(40, trial.days());
        assertEquals(LocalDate.of(2026, 11, 5), trial.date(0));
        assertEquals(LocalDate.of(2026, 11, 15), trial.date(10));
    }
}
