package heapwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.engine.Inference;
import heapwright.advice.engine.Outcome;
import heapwright.advice.engine.Weighed;
import heapwright.advice.fact.Denied;
import heapwright.advice.fact.Seen;
import heapwright.advice.fact.SetAside;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Sign;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The estimate of what an answer would move, beside a run of the rules with that answer. */
@DisplayName("What an answer promises")
class PromiseTest {

    private static final List<Sign> OPEN = List.of(
            Sign.SQUEEZE_STREAMS,
            Sign.SQUEEZE_CRUMBLES,
            Sign.SMELLS_SOUR,
            Sign.SMELLS_AMMONIA,
            Sign.MUCH_GRASS,
            Sign.ANTS,
            Sign.SQUEEZE_HOLDS);

    private final Inference inference = new Inference(TestPile.ADVISOR.rulebook(), TestPile.KNOWLEDGE);

    /** How a yes and a no would move the likelihoods. */
    private record Moves(Map<Cause, Double> yes, Map<Cause, Double> no) {}

    private Map<Sign, Moves> estimated(Outcome now, Collection<Sign> open) {
        Map<Sign, Moves> moves = new EnumMap<>(Sign.class);
        Promise.ranked(inference, TestPile.KNOWLEDGE, now, open, (sign, yes, no) -> {
            moves.put(sign, new Moves(yes, no));
            return 1;
        });
        return moves;
    }

    private void agrees(Outcome now, List<Object> answer, Map<Cause, Double> estimated, double within) {
        List<Object> facts = new ArrayList<>(now.facts());
        facts.addAll(answer);
        Map<Cause, Weighed> then = inference.run(facts).weighed();
        Set<Cause> aside = EnumSet.noneOf(Cause.class);
        now.of(SetAside.class).forEach(f -> aside.add(((SetAside) f.result()).cause()));
        for (Cause cause : Cause.values()) {
            if (!aside.contains(cause)) {
                double run =
                        then.get(cause).likelihood() - now.weighed().get(cause).likelihood();
                assertEquals(run, estimated.getOrDefault(cause, 0.0), within, answer + " and " + cause);
            }
        }
    }

    private void agrees(double within, Object... known) {
        Outcome now = inference.run(List.of(known));
        Map<Sign, Moves> all = estimated(now, OPEN);
        assertTrue(all.size() > 3, all.keySet().toString());
        all.forEach((sign, moves) -> {
            agrees(now, SaidYes.facts(sign, TestPile.KNOWLEDGE), moves.yes(), within);
            agrees(now, List.of(new Denied(sign, 0)), moves.no(), within);
        });
    }

    @Test
    @DisplayName("is what a run with that answer gives, where no rule waits for the absence of something")
    void asARun() {
        agrees(1e-9, new Seen(Sign.CORE_COLD, 0));
    }

    @Test
    @DisplayName("is little more where the same witness was heard already")
    void heardAlready() {
        agrees(0.005, new Seen(Sign.SOGGY, 0), new Seen(Sign.SMELLS_ROTTEN_EGG, 0));
    }

    @ParameterizedTest
    @EnumSource(
            value = Sign.class,
            names = {"SQUEEZE_STREAMS", "SMELLS_SOUR", "ANTS"})
    @DisplayName("does not depend on what else is open")
    void alone(Sign sign) {
        Outcome now = inference.run(List.of(new Seen(Sign.CORE_COLD, 0)));
        assertEquals(
                estimated(now, List.of(sign)).get(sign), estimated(now, OPEN).get(sign));
    }

    @Test
    @DisplayName("says which answers speak at all, and leaves out signs of which neither does")
    void speaks() {
        Outcome now = inference.run(List.of(new Seen(Sign.CORE_COLD, 0)));
        List<Promise.Candidate> ranked = Promise.ranked(
                inference,
                TestPile.KNOWLEDGE,
                now,
                List.of(Sign.MUCH_GRASS, Sign.SQUEEZE_STREAMS, Sign.NEVER_TURNED),
                (sign, yes, no) -> 1);
        assertEquals(
                Set.of(
                        new Promise.Candidate(Sign.MUCH_GRASS, true, false),
                        new Promise.Candidate(Sign.SQUEEZE_STREAMS, true, true)),
                Set.copyOf(ranked));
    }

    @Test
    @DisplayName("is nothing of a sign that cannot be seen beside what is known")
    void impossible() {
        Outcome soggy = inference.run(List.of(new Seen(Sign.SOGGY, 0)));
        assertFalse(estimated(soggy, OPEN).containsKey(Sign.SQUEEZE_CRUMBLES));
        Outcome cold = inference.run(List.of(new Seen(Sign.CORE_COLD, 0)));
        assertTrue(estimated(cold, OPEN).containsKey(Sign.SQUEEZE_CRUMBLES));
    }

    @Test
    @DisplayName("of what is explained by another finding is nothing")
    void aside() {
        List<Object> facts = List.of(new Seen(Sign.SOGGY, 0), new Seen(Sign.SMELLS_ROTTEN_EGG, 0));
        Outcome now = inference.run(facts);
        for (Cause cause : List.of(Cause.TOO_WET, Cause.TOO_LITTLE_AIR)) {
            assertTrue(
                    estimated(now, OPEN).values().stream().anyMatch(m -> m.yes().containsKey(cause)));
            List<heapwright.advice.engine.Firing> explained =
                    new HandRun().says(new SetAside(cause)).outcome().firings();
            Outcome aside = now.with(explained);
            assertTrue(estimated(aside, OPEN).values().stream()
                    .flatMap(m -> Stream.of(m.yes(), m.no()))
                    .noneMatch(m -> m.containsKey(cause)));
        }
    }

    @Test
    @DisplayName("puts the signs in order, the most first, of equals in the order of the table")
    void order() {
        Outcome now = inference.run(List.of(new Seen(Sign.CORE_COLD, 0)));
        List<Sign> open = List.of(Sign.ANTS, Sign.SMELLS_SOUR, Sign.MUCH_GRASS, Sign.SQUEEZE_STREAMS);
        assertEquals(
                open.stream().sorted().toList(),
                Promise.ranked(inference, TestPile.KNOWLEDGE, now, open, (sign, yes, no) -> 1).stream()
                        .map(Promise.Candidate::sign)
                        .toList());
        Map<Sign, Double> worth =
                Map.of(Sign.ANTS, 3.0, Sign.SMELLS_SOUR, 1.0, Sign.MUCH_GRASS, 4.0, Sign.SQUEEZE_STREAMS, 2.0);
        assertEquals(
                List.of(Sign.MUCH_GRASS, Sign.ANTS, Sign.SQUEEZE_STREAMS, Sign.SMELLS_SOUR),
                Promise.ranked(inference, TestPile.KNOWLEDGE, now, open, (sign, yes, no) -> worth.get(sign)).stream()
                        .map(Promise.Candidate::sign)
                        .toList());
    }
}
