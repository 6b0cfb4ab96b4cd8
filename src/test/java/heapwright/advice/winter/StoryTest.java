package heapwright.advice.winter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.Advice;
import heapwright.advice.TestPile;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Remedy;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The past of a pile, read beside a healthy one")
class StoryTest {

    private static final String COLD_CORE = "{'date': '2026-10-22', 'measured': {'core': {'value': 14, 'unit': 'C'},"
            + " 'outdoor': {'value': 4, 'unit': 'C'}, 'moisture': {'value': %d, 'unit': '%%'}}}";

    @Test
    @DisplayName("finds a fault where a healthy pile would be hot, and names the water")
    void somethingWrong() {
        Story dry = Story.of(WinterPiles.model(WinterPiles.good(COLD_CORE.formatted(28))));
        assertEquals(Verdict.SOMETHING_WRONG, dry.verdict());
        assertEquals(Factor.WATER, dry.factor());
        assertTrue(dry.shortfallC() > 5, "short by " + dry.shortfallC());
        Story wet = Story.of(WinterPiles.model(WinterPiles.good(COLD_CORE.formatted(78))));
        assertEquals(Factor.AIR, wet.factor());
    }

    @Test
    @DisplayName("finds none where the pile is hot")
    void working() {
        Story hot = Story.of(WinterPiles.model(
                WinterPiles.good("{'date': '2026-10-25', 'measured': {'core': {'value': 60, 'unit': 'C'}}}")));
        assertEquals(Verdict.WORKING, hot.verdict());
        assertTrue(hot.stalledOn().isEmpty() || hot.stalledOn().getAsInt() > 15);
        assertEquals(List.of(), ModelFacts.of(hot));
    }

    @Test
    @DisplayName("meets the measured core on its day")
    void meetsTheReading() {
        Story story = Story.of(WinterPiles.model(WinterPiles.good(COLD_CORE.formatted(55))));
        assertEquals(14, story.past().course().days().get(12).coreC(), 0.5);
    }

    @Test
    @DisplayName("is not told where no core was measured")
    void quiet() {
        assertTrue(TestPile.ADVISOR.advise(WinterPiles.good("")).story().isEmpty());
    }

    @Test
    @DisplayName("tells what would have helped: water for a dry pile")
    void costs() {
        Story dry = Story.of(WinterPiles.model(WinterPiles.good(COLD_CORE.formatted(28))));
        HeldBack.Cost dearest = dry.costs().get(0);
        assertEquals(Factor.WATER, dearest.factor());
        assertTrue(dearest.kelvin() > 5 && dearest.days() > 2, dearest.toString());
        Story hot = Story.of(
                WinterPiles.model(WinterPiles.good(COLD_CORE.formatted(55).replace("14", "62"))));
        assertEquals(List.of(), hot.costs(), "nothing of a pile that is warm");
    }

    @Test
    @DisplayName("tries the steps: water wakes a dry pile, and the ranking knows it")
    void steps() {
        Advice advice = TestPile.ADVISOR.advise(WinterPiles.good(COLD_CORE.formatted(28)));
        assertTrue(advice.findings().stream().anyMatch(f -> f.cause() == Cause.TOO_DRY));
        Gain water = advice.steps().stream()
                .filter(s -> s.main().remedy() == Remedy.ADD_WATER || s.main().remedy() == Remedy.WATER_THE_CORE)
                .findFirst()
                .flatMap(s -> s.main().gain())
                .orElseThrow();
        assertTrue(water.daysWon().low() > 0, "wins " + water.daysWon());
        assertTrue(water.warmerC().likely() > 0);
    }
}
