package heapwright.advice.winter;

import static org.junit.jupiter.api.Assertions.assertEquals;

import heapwright.advice.TestPile;
import heapwright.knowledge.Sign;
import heapwright.pile.Pile;
import heapwright.process.heat.CoreReading;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("That a pile was ever warm")
class WarmOnceTest {

    private static WarmOnce by(Set<Sign> seen, double... cores) {
        List<CoreReading> read =
                Arrays.stream(cores).mapToObj(c -> new CoreReading(5, c)).toList();
        return WarmOnce.of(seen, read);
    }

    /** 30 °C, at which the model calls a pile stalled that falls below it. */
    @Test
    @DisplayName("is known from a thermometer at 30 °C")
    void measured() {
        assertEquals(WarmOnce.YES, by(Set.of(), 12, 30));
        assertEquals(WarmOnce.UNTOLD, by(Set.of(), 12, 29.9));
        assertEquals(WarmOnce.YES, by(Set.of(Sign.NEVER_HEATED), 30), "a thermometer beats a memory");
    }

    @Test
    @DisplayName("is known from the hand, denied by a memory, and else untold")
    void felt() {
        assertEquals(WarmOnce.UNTOLD, by(Set.of()));
        assertEquals(WarmOnce.UNTOLD, by(Set.of(Sign.SMELLS_SOUR)));
        assertEquals(WarmOnce.YES, by(Set.of(Sign.HEATED_THEN_COOLED)));
        assertEquals(WarmOnce.YES, by(Set.of(Sign.STEAM, Sign.NEVER_HEATED)));
        assertEquals(WarmOnce.NO, by(Set.of(Sign.NEVER_HEATED)));
        assertEquals(WarmOnce.NO, by(Set.of(Sign.NEVER_HEATED), 12));
    }

    private static WarmOnce record(String sign, String asOf) {
        Pile pile = TestPile.of("'built': '2026-03-10', 'asOf': '2026-11-21', 'log': [{'date': '2026-04-02', 'seen': ['"
                + sign + "']}]");
        return WarmOnce.of(
                pile.with(pile.name(), LocalDate.parse(asOf), pile.recipe(), pile.log()), Set.of(), List.of());
    }

    @Test
    @DisplayName("is not forgotten after months, nor known before its day")
    void longAgo() {
        assertEquals(WarmOnce.YES, record("core-hot", "2026-11-21"));
        assertEquals(WarmOnce.YES, record("core-hot", "2026-04-02"));
        assertEquals(WarmOnce.UNTOLD, record("core-hot", "2026-04-01"));
        assertEquals(WarmOnce.UNTOLD, record("smells-sour", "2026-11-21"));
    }
}
