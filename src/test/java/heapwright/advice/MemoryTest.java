package heapwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.knowledge.Remedy;
import heapwright.pile.Advised;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What is remembered, and for how long, is our own choice. */
@DisplayName("The memory of a pile")
class MemoryTest {

    private static Memory on(String day, String log, String... advised) {
        return Memory.of(TestPile.of("'built': '2026-08-01', 'asOf': '" + day + "', 'log': [" + log + "], 'advised': ["
                + String.join(",", advised) + "]"));
    }

    private static String step(String date, String id, String look, String outcome) {
        return "{'date': '" + date + "', 'step': '" + id + "', 'look': '" + look + "', 'outcome': '" + outcome + "'}";
    }

    private static List<String> ids(List<Advised> steps) {
        return steps.stream().map(Advised::step).toList();
    }

    @Test
    @DisplayName("holds what failed when it was last tried, and nothing that helped since")
    void failed() {
        String failed = step("2026-11-01", "turn-fully", "2026-11-09", "did-not-help");
        assertEquals(Set.of(Remedy.TURN_FULLY), on("2026-11-21", "", failed).failed());
        String helped = step("2026-11-10", "turn-fully", "2026-11-18", "helped");
        assertEquals(Set.of(), on("2026-11-21", "", failed, helped).failed());
        assertEquals(Set.of(), on("2026-11-21", "", helped).failed());
        String not = step("2026-11-10", "turn-fully", "2026-11-18", "not-done");
        assertEquals(
                Set.of(Remedy.TURN_FULLY), on("2026-11-21", "", failed, not).failed());
    }

    @Test
    @DisplayName("reaches back two months")
    void twoMonths() {
        String failed = step("2026-09-22", "turn-fully", "2026-09-30", "did-not-help");
        assertEquals(Set.of(Remedy.TURN_FULLY), on("2026-11-21", "", failed).failed());
        assertEquals(Set.of(), on("2026-11-22", "", failed).failed());
    }

    @Test
    @DisplayName("asks from the day to look, and waits until then, as long as nobody has told")
    void asks() {
        String open = step("2026-11-15", "turn-fully", "2026-11-21", "open");
        String done = step("2026-11-15", "bury-food", "2026-11-22", "done");
        String told = step("2026-11-15", "insulate", "2026-11-20", "helped");
        Memory memory = on("2026-11-21", "", open, done, told);
        assertEquals(List.of("turn-fully"), ids(memory.asking()));
        assertEquals(List.of("bury-food"), ids(memory.waiting()));
        assertEquals(
                List.of("turn-fully", "bury-food"),
                ids(on("2026-11-22", "", open, done, told).asking()));
    }

    @Test
    @DisplayName("is stale once it is told what came of the last work and nothing was noted since")
    void stale() {
        String helped = step("2026-11-10", "turn-fully", "2026-11-18", "helped");
        String failed = step("2026-11-10", "turn-fully", "2026-11-18", "did-not-help");
        String open = step("2026-11-10", "turn-fully", "2026-11-18", "open");
        String before = "{'date': '2026-11-10', 'seen': ['soggy']}";
        String since = "{'date': '2026-11-11', 'seen': ['soggy']}";
        assertTrue(on("2026-11-21", before, helped).stale());
        assertTrue(on("2026-11-21", before, failed).stale());
        assertFalse(on("2026-11-21", before, open).stale());
        assertFalse(on("2026-11-21", since, helped).stale());
        assertFalse(on("2026-11-21", before).stale());
        // What counts is the last of them.
        String later = step("2026-11-12", "bury-food", "2026-11-18", "helped");
        assertTrue(on("2026-11-21", since, helped, later).stale());
    }
}
