package heapwright.advice.danger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.advice.engine.Inference;
import heapwright.advice.engine.Pass;
import heapwright.advice.engine.Rulebook;
import heapwright.knowledge.Danger;
import heapwright.knowledge.Sign;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The watch for dangers")
class DangerWatchTest {

    private static final DangerWatch WATCH =
            new DangerWatch(TestPile.KNOWLEDGE, new Inference(Rulebook.packed(Pass.gate()), TestPile.KNOWLEDGE));

    @Test
    @DisplayName("needs no more rules than those of the gate, and tells what stands and what is still to be asked")
    void stands() {
        Alarm alarm = WATCH.of(TestPile.seen("smoke", "glow")).orElseThrow();
        assertEquals(Danger.FIRE, alarm.dangers().get(0).info().id());
        assertTrue(alarm.asks().contains(Sign.SMELLS_BURNT), alarm.asks().toString());
        assertTrue(
                !alarm.asks().contains(Sign.SMOKE) && !alarm.asks().contains(Sign.GLOW),
                alarm.asks().toString());
    }

    @Test
    @DisplayName("finds none in a pile that is only sour, nor where nothing was noted")
    void none() {
        assertTrue(WATCH.of(TestPile.seen("smells-sour", "smoke")).isEmpty());
        assertTrue(WATCH.of(TestPile.of("'built': '2026-10-31', 'asOf': '2026-11-21'"))
                .isEmpty());
    }

    @Test
    @DisplayName("reads a record whose days are out of order like the same in order")
    void anyOrder() {
        String ash = "{'date': '2026-11-19', 'seen': ['ash-warm']}";
        String hot = "{'date': '2026-11-21', 'seen': ['core-hot']}";
        List<Danger> inOrder = standing(ash + ", " + hot);
        assertTrue(inOrder.contains(Danger.FIRE), inOrder.toString());
        assertEquals(inOrder, standing(hot + ", " + ash));
    }

    private static List<Danger> standing(String log) {
        return WATCH
                .of(TestPile.of("'built': '2026-10-31', 'asOf': '2026-11-21', 'log': [" + log + "]"))
                .orElseThrow()
                .dangers()
                .stream()
                .map(d -> d.info().id())
                .toList();
    }
}
