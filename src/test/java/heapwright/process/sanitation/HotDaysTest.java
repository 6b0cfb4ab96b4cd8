package heapwright.process.sanitation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.knowledge.HeatRule;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Counted by hand on records of a few days. */
@DisplayName("The hot days of a record")
class HotDaysTest {

    private static final LocalDate FIRST = LocalDate.of(2026, 3, 1);

    private static LocalDate day(int after) {
        return FIRST.plusDays(after);
    }

    private static String core(int day, double celsius) {
        return "{'date': '" + day(day) + "', 'measured': {'core': {'value': " + celsius + ", 'unit': 'C'}}}";
    }

    private static String done(int day, String action) {
        return "{'date': '" + day(day) + "', 'done': ['" + action + "']}";
    }

    private static HeatRecord record(String... entries) {
        return HeatRecord.of(
                TestPile.of("'asOf': '2026-06-20', 'built': '2026-02-20', 'log': [" + String.join(",", entries) + "]"));
    }

    @Test
    @DisplayName("fall into stretches, whose longest and whose nearest to a rule are found")
    void stretches() {
        // Three days turned twice, a cold day, five days never turned, a cold day, three days.
        HotDays hot = record(
                        core(0, 56),
                        core(1, 57),
                        core(2, 56),
                        done(1, "turned-fully"),
                        done(2, "turned-fully"),
                        core(3, 40),
                        core(4, 56),
                        core(5, 58),
                        core(6, 59),
                        core(7, 58),
                        core(8, 55),
                        core(9, 40),
                        core(10, 56),
                        core(11, 56),
                        core(12, 56))
                .at(55);
        assertEquals(11, hot.total());
        assertEquals(
                List.of(day(0), day(4), day(10)),
                hot.stretches().stream().map(Stretch::first).toList());
        assertEquals(
                List.of(day(2), day(8), day(12)),
                hot.stretches().stream().map(Stretch::last).toList());
        assertEquals(Optional.of(day(4)), hot.longest().map(Stretch::first));
        // Five days and no turn asked: the middle one has them. Three days and two turns: the first has both.
        assertEquals(Optional.of(day(4)), hot.nearest(5, 0).map(Stretch::first));
        assertEquals(Optional.of(day(0)), hot.nearest(3, 2).map(Stretch::first));
        // Six days and two turns: the first lacks three, the middle one and two turns, three as well and is longer.
        assertEquals(Optional.of(day(4)), hot.nearest(6, 2).map(Stretch::first));
        // Of two that lack the same and are as long, the earlier.
        assertEquals(
                Optional.of(day(0)),
                record(core(0, 56), core(1, 40), core(2, 56)).at(55).longest().map(Stretch::first));
        assertEquals(
                Optional.of(day(0)),
                record(core(0, 56), core(1, 40), core(2, 56))
                        .at(55)
                        .nearest(1, 0)
                        .map(Stretch::first));
        assertEquals(Optional.empty(), record(core(0, 40)).at(55).longest());
    }

    @Test
    @DisplayName("have hours only between two readings with nothing done between that cools")
    void hours() {
        assertEquals(72, record(core(0, 56), core(1, 56), core(3, 56)).at(55).hours());
        assertEquals(
                24,
                record(core(0, 56), core(1, 56), done(1, "turned-fully"), core(3, 56))
                        .at(55)
                        .hours());
    }

    @Test
    @DisplayName("end where readings lie further apart than three days, and at the temperature itself are hot")
    void gaps() {
        assertEquals(4, record(core(0, 55), core(3, 55)).at(55).total());
        assertEquals(1, record(core(0, 55), core(3, 55)).at(55).stretches().size());
        assertEquals(2, record(core(0, 55), core(4, 55)).at(55).total());
        assertEquals(2, record(core(0, 55), core(4, 55)).at(55).stretches().size());
        assertEquals(0, record(core(0, 54.9)).at(55).total());
    }

    @Test
    @DisplayName("lack so many days and turns of a rule, to the day and the turn")
    void missing() {
        HeatRule.Need need = new HeatRule.Need(55, 5, 2, 0, 0, true);
        RuleCheck.Shown three =
                RuleCheck.shown(need, record(core(0, 56), core(1, 56), done(1, "turned-fully"), core(2, 56)));
        assertEquals(2, three.missingDays());
        assertEquals(1, three.missingTurns());
        assertFalse(three.met());
        RuleCheck.Shown five = RuleCheck.shown(
                need,
                record(
                        core(0, 56),
                        core(1, 56),
                        done(1, "turned-fully"),
                        core(2, 56),
                        core(3, 56),
                        done(3, "turned-fully"),
                        core(4, 56)));
        assertEquals(0, five.missingDays());
        assertEquals(0, five.missingTurns());
        assertTrue(five.met());
    }
}
