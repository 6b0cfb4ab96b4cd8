package heapwright.advice.observe;

import static org.junit.jupiter.api.Assertions.assertEquals;

import heapwright.advice.TestPile;
import heapwright.pile.Pile;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The rule for turned heaps: 15 days at 55 °C with five turns (40 CFR 257 appendix II). */
@DisplayName("The hot phase of a record")
class HotPhaseTest {

    @Test
    @DisplayName("counts the days from the first to the last hot reading, and the turns in them")
    void counts() {
        assertEquals(
                new HotPhase(4, 1), of("2026-03-01: 56", "2026-03-03: 60 turned", "2026-03-04: 55", "2026-03-06: 50"));
    }

    @Test
    @DisplayName("is broken by a cooler reading and by days without one")
    void broken() {
        assertEquals(new HotPhase(2, 0), of("2026-03-01: 56", "2026-03-02: 54", "2026-03-03: 56", "2026-03-04: 56"));
        assertEquals(new HotPhase(1, 0), of("2026-03-01: 56", "2026-03-05: 56"));
    }

    @Test
    @DisplayName("is none where nothing was hot")
    void none() {
        assertEquals(new HotPhase(0, 0), of("2026-03-01: 54"));
    }

    private static HotPhase of(String... days) {
        StringBuilder log = new StringBuilder();
        for (String day : days) {
            String done = day.endsWith("turned") ? ", 'done': ['turned-fully']" : "";
            log.append(log.isEmpty() ? "" : ",")
                    .append("{'date': '")
                    .append(day, 0, 10)
                    .append("', 'measured': {'core': {'value': ")
                    .append(day, 12, 14)
                    .append(", 'unit': 'C'}}")
                    .append(done)
                    .append("}");
        }
        Pile pile = TestPile.of("'asOf': '2026-03-20', 'built': '2026-02-20', 'log': [" + log + "]");
        return HotPhase.longest(pile.log(), pile.asOf(), 55);
    }
}
