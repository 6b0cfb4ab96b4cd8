package heapwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.engine.Firing;
import heapwright.advice.engine.Inference;
import heapwright.advice.engine.Outcome;
import heapwright.advice.engine.Weighed;
import heapwright.advice.fact.Contradicts;
import heapwright.advice.fact.Denied;
import heapwright.advice.fact.Seen;
import heapwright.advice.fact.SetAside;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Sign;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The estimate of what an answer would move, from two runs, beside the many that it saves. */
@DisplayName("The promise of an answer")
class QuestionValueTest {

    private static final double HAIR = 1e-9;

    /** 36,680 of 36,720 when this was written: the rest are of rules that wait for the absence of some other answer. */
    private static final double LEAST_ALIKE = 0.998;

    private final Knowledge knowledge = TestPile.KNOWLEDGE;
    private final Inference inference = new Inference(TestPile.ADVISOR.rulebook(), knowledge);

    private static final List<List<Object>> KNOWN = List.of(
            List.of(new Seen(Sign.CORE_COLD, 0), new Seen(Sign.HEATED_THEN_COOLED, 0)),
            List.of(new Seen(Sign.SMELLS_AMMONIA, 0), new Seen(Sign.SQUEEZE_HOLDS, 0)),
            List.of(new Seen(Sign.SQUEEZE_STREAMS, 0), new Seen(Sign.SQUEEZE_CRUMBLES, 0)));

    /** What the estimate said of a sign. */
    private record Told(Map<Cause, Double> ifYes, Map<Cause, Double> ifNo) {}

    @Test
    @DisplayName("is nearly always what the runs on yes and on no come to")
    void likeTheRuns() {
        int entries = 0;
        int alike = 0;
        for (List<Object> facts : KNOWN) {
            Outcome now = inference.run(facts);
            for (Map.Entry<Sign, Told> told : told(now).entrySet()) {
                Map<Cause, Double> yes = moves(now, yes(facts, told.getKey()));
                Map<Cause, Double> no = moves(now, no(facts, told.getKey()));
                for (Cause cause : standing(now)) {
                    for (double apart : new double[] {
                        yes.get(cause) - told.getValue().ifYes().getOrDefault(cause, 0.0),
                        no.get(cause) - told.getValue().ifNo().getOrDefault(cause, 0.0)
                    }) {
                        entries++;
                        alike += Math.abs(apart) < HAIR ? 1 : 0;
                    }
                }
            }
        }
        assertTrue(entries > 5_000, "only " + entries);
        assertTrue(alike >= LEAST_ALIKE * entries, alike + " of " + entries + " are alike");
    }

    @Test
    @DisplayName("says that an answer speaks where the run on it differs, and names no answer that moves nothing alone")
    void speaks() {
        int tried = 0;
        List<String> missed = new ArrayList<>();
        for (List<Object> facts : KNOWN) {
            Outcome now = inference.run(facts);
            for (QuestionValue.Candidate one : ranked(now, (sign, ifYes, ifNo) -> 0)) {
                tried += 2;
                if (!one.aYesSpeaks() && !results(now).equals(results(yes(facts, one.sign())))) {
                    missed.add("yes " + one.sign() + facts.size());
                }
                if (!one.aNoSpeaks() && !results(now).equals(results(no(facts, one.sign())))) {
                    missed.add("no " + one.sign() + facts.size());
                }
                assertTrue(one.aYesSpeaks() || one.aNoSpeaks(), one.toString());
            }
        }
        assertEquals(List.of(), missed, missed.size() + " of " + tried);
    }

    @Test
    @DisplayName("leaves out what cannot be beside what is known, though not for an older quarrel")
    void impossible() {
        List<Object> wet = List.of(new Seen(Sign.SQUEEZE_STREAMS, 0));
        Set<Sign> asked = told(inference.run(wet)).keySet();
        for (Sign sign : Sign.values()) {
            if (!yes(wet, sign).of(Contradicts.class).isEmpty()) {
                assertFalse(asked.contains(sign), sign + " is asked of a pile that streams");
            }
        }
        assertTrue(asked.contains(Sign.SMELLS_SOUR));
        assertFalse(told(inference.run(KNOWN.get(2))).isEmpty(), "nothing is asked where two answers are at odds");
    }

    @Test
    @DisplayName("orders the signs by worth, then by their name")
    void order() {
        Outcome now = inference.run(KNOWN.get(0));
        List<Sign> byWorth = ranked(now, (sign, ifYes, ifNo) -> sign.ordinal() / 2).stream()
                .map(QuestionValue.Candidate::sign)
                .toList();
        assertTrue(byWorth.size() > 20);
        for (int i = 1; i < byWorth.size(); i++) {
            int before = byWorth.get(i - 1).ordinal();
            int after = byWorth.get(i).ordinal();
            assertTrue(before / 2 > after / 2 || before / 2 == after / 2 && before < after, byWorth.toString());
        }
    }

    private Map<Sign, Told> told(Outcome now) {
        Map<Sign, Told> told = new EnumMap<>(Sign.class);
        ranked(now, (sign, ifYes, ifNo) -> {
            told.put(sign, new Told(ifYes, ifNo));
            return 0;
        });
        return told;
    }

    private List<QuestionValue.Candidate> ranked(Outcome now, QuestionValue.Worth worth) {
        Set<Sign> seen = now.facts().stream()
                .filter(Seen.class::isInstance)
                .map(f -> ((Seen) f).sign())
                .collect(Collectors.toSet());
        List<Sign> open =
                Arrays.stream(Sign.values()).filter(s -> !seen.contains(s)).toList();
        return QuestionValue.ranked(inference, knowledge, now, open, worth);
    }

    private Outcome yes(List<Object> facts, Sign sign) {
        List<Object> with = new ArrayList<>(facts);
        with.addAll(AffirmedFacts.facts(sign, knowledge));
        return inference.run(with);
    }

    private Outcome no(List<Object> facts, Sign sign) {
        List<Object> with = new ArrayList<>(facts);
        with.add(new Denied(sign, 0));
        return inference.run(with);
    }

    private static Set<Object> results(Outcome run) {
        return run.firings().stream().map(Firing::result).collect(Collectors.toCollection(HashSet::new));
    }

    /** The causes that the estimate reckons with: those that no other finding explains away. */
    private static Set<Cause> standing(Outcome now) {
        Set<Cause> aside = now.of(SetAside.class).stream()
                .map(f -> ((SetAside) f.result()).cause())
                .collect(Collectors.toSet());
        return now.weighed().keySet().stream().filter(c -> !aside.contains(c)).collect(Collectors.toSet());
    }

    private static Map<Cause, Double> moves(Outcome before, Outcome after) {
        Map<Cause, Double> moves = new EnumMap<>(Cause.class);
        for (Map.Entry<Cause, Weighed> one : before.weighed().entrySet()) {
            moves.put(
                    one.getKey(),
                    after.weighed().get(one.getKey()).likelihood()
                            - one.getValue().likelihood());
        }
        return moves;
    }
}
