package heapwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import heapwright.advice.danger.DangerGate;
import heapwright.advice.engine.Outcome;
import heapwright.advice.fact.Proposes;
import heapwright.advice.fact.Stands;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Danger;
import heapwright.knowledge.Remedy;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The first step on a run")
class FirstStepTest {

    private final List<Remedy> reckoned = new ArrayList<>();

    private final FirstStep first = new FirstStep(
            TestPile.KNOWLEDGE, new DangerGate(TestPile.KNOWLEDGE), TestPile.of("'asOf': '2026-11-21'"), remedy -> {
                reckoned.add(remedy);
                return List.of();
            });

    private static HandRun proposed(double wet, double dry) {
        return new HandRun()
                .likely(Cause.TOO_WET, wet)
                .likely(Cause.TOO_SMALL_FOR_COLD, dry)
                .says(new Proposes(Remedy.COVER_AGAINST_RAIN, Cause.TOO_WET))
                .says(new Proposes(Remedy.INSULATE, Cause.TOO_SMALL_FOR_COLD));
    }

    @Test
    @DisplayName("is that for what is likeliest")
    void likeliest() {
        assertEquals(
                Optional.of(Remedy.COVER_AGAINST_RAIN),
                first.apply(proposed(0.9, 0.35).outcome()));
        assertEquals(
                Optional.of(Remedy.INSULATE), first.apply(proposed(0.35, 0.9).outcome()));
    }

    @Test
    @DisplayName("is none where none is proposed")
    void none() {
        assertEquals(Optional.empty(), first.apply(new HandRun().outcome()));
    }

    @Test
    @DisplayName("is that against the danger where one stands")
    void danger() {
        Outcome fire = proposed(0.9, 0.35).says(new Stands(Danger.FIRE)).outcome();
        assertEquals(Optional.of(Remedy.CALL_FIRE_SERVICE), first.apply(fire));
    }

    @Test
    @DisplayName("has the amounts of each remedy worked out once, however many runs there are")
    void once() {
        first.apply(proposed(0.9, 0.35).outcome());
        int once = reckoned.size();
        first.apply(proposed(0.35, 0.9).outcome());
        assertEquals(once, reckoned.size());
        assertEquals(2, reckoned.stream().distinct().count());
    }
}
