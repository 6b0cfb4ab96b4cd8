package heapwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.danger.DangerGate;
import heapwright.advice.engine.Inference;
import heapwright.advice.engine.Outcome;
import heapwright.advice.fact.Seen;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Sign;
import heapwright.knowledge.SignInfo;
import heapwright.pile.Pile;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The next question")
class NextQuestionsTest {

    private final Inference inference = new Inference(TestPile.ADVISOR.rulebook(), TestPile.KNOWLEDGE);

    @Test
    @DisplayName("is one that tells wet from dry where a cold core leaves both open")
    void tellsApart() {
        List<Question> asked = asked(
                List.of(new Seen(Sign.CORE_COLD, 0), new Seen(Sign.HEATED_THEN_COOLED, 0)),
                List.of(Sign.SQUEEZE_STREAMS, Sign.SQUEEZE_CRUMBLES, Sign.ANTS, Sign.FOREIGN_BITS));
        assertTrue(
                Set.of(Sign.SQUEEZE_STREAMS, Sign.SQUEEZE_CRUMBLES)
                        .contains(asked.get(0).sign()),
                asked.toString());
        Question streams = of(asked, Sign.SQUEEZE_STREAMS);
        assertEquals(Optional.of(Cause.TOO_WET), streams.raises());
        Question crumbles = of(asked, Sign.SQUEEZE_CRUMBLES);
        assertEquals(Optional.of(Cause.TOO_DRY), crumbles.raises());
    }

    @Test
    @DisplayName("does not ask what was measured or told in another way, and opens no frozen pile")
    void notTold() {
        List<Sign> measured =
                asked("'container': {'cover': 'none'}, 'recipe': [{'material': 'straw-general', 'amount': 9,"
                        + " 'unit': 'bucket'}], 'log': [{'date': '2026-11-21', 'measured': {'core': {'value': 9, 'unit': 'C'},"
                        + " 'moisture': {'value': 50, 'unit': '%'}, 'outdoor': {'value': 4, 'unit': 'C'}},"
                        + " 'done': ['turned-fully']}]");
        for (Sign sign : List.of(
                Sign.CORE_COLD,
                Sign.CORE_HOT,
                Sign.SQUEEZE_STREAMS,
                Sign.SOGGY,
                Sign.DUST_DRY,
                Sign.FROST_AT_NIGHT,
                Sign.NEVER_TURNED,
                Sign.RAIN_GETS_IN,
                Sign.ONLY_BROWNS)) {
            assertFalse(measured.contains(sign), sign.id());
        }
        assertTrue(measured.contains(Sign.SMELLS_SOUR), measured.toString());
        List<Sign> frozen = asked("'log': [{'date': '2026-11-21', 'seen': ['frozen-through']}]");
        for (Sign sign : frozen) {
            assertNotEquals(
                    SignInfo.Where.INSIDE, TestPile.KNOWLEDGE.signs().get(sign).where(), sign.id());
        }
    }

    @Test
    @DisplayName("may be an old one again when something was done about it since")
    void againAfterRemedy() {
        Pile pile = TestPile.of("'built': '2026-10-10', 'log': [{'date': '2026-11-11', 'seen': ['soggy']},"
                + " {'date': '2026-11-13', 'done': ['turned-fully']}, {'date': '2026-11-21', 'seen': ['core-cold']}]");
        Outcome now = TestPile.ADVISOR.diagnose(pile).outcome();
        assertTrue(search().promising(now, List.of(Sign.SOGGY)).stream().anyMatch(c -> c.sign() == Sign.SOGGY));
    }

    @Test
    @DisplayName("reckons with what a yes says of what went in")
    void whatWentIn() {
        List<Question> asked = asked(List.of(new Seen(Sign.SOGGY, 0)), List.of(Sign.PET_WASTE));
        assertTrue(of(asked, Sign.PET_WASTE).settles() > 0, "dog waste comes out before anything is turned");
    }

    @Test
    @DisplayName("is of smell or water where nothing is known, and not one that the person could not tell")
    void noseAndHandFirst() {
        Pile pile = TestPile.seen("", "");
        Sign first = TestPile.ADVISOR.advise(pile).questions().get(0).sign();
        assertTrue(
                Set.of(SignInfo.Sense.NOSE, SignInfo.Sense.HAND)
                        .contains(TestPile.KNOWLEDGE.signs().get(first).sense()),
                first.id());
        assertTrue(TestPile.ADVISOR.advise(pile, Set.of(first)).questions().stream()
                .noneMatch(q -> q.sign() == first));
    }

    /** What is asked, question after question, of a pile of which the person can tell nothing. */
    private static List<Sign> asked(String fields) {
        Pile pile = TestPile.of("'built': '2026-10-10', " + fields);
        Advice advice = TestPile.ADVISOR.diagnose(pile);
        return Askable.of(advice.pile(), advice.outcome(), TestPile.KNOWLEDGE.signs(), Set.of());
    }

    @Test
    @DisplayName("is not whether it smokes, where nothing speaks of fire")
    void seldomMetIsSeldomAsked() {
        List<Question> asked = asked(List.of(new Seen(Sign.CORE_COLD, 0)), List.of(Sign.values()));
        assertNotEquals(Sign.SMOKE, asked.get(0).sign());
        Advice burnt = TestPile.ADVISOR.advise(TestPile.seen("core-hot dust-dry smells-burnt", ""));
        assertEquals(Sign.SMOKE, burnt.questions().get(0).sign());
    }

    @Test
    @DisplayName("of a pile whose handful streams is not whether it is dust-dry")
    void notTheOpposite() {
        List<Question> asked = asked(List.of(new Seen(Sign.SQUEEZE_STREAMS, 0)), List.of(Sign.values()));
        assertTrue(asked.stream().noneMatch(q -> q.sign() == Sign.DUST_DRY), asked.toString());
    }

    @Test
    @DisplayName("is one of those that may be asked")
    void onlyCandidates() {
        List<Question> asked = asked(List.of(new Seen(Sign.SMELLS_SOUR, 0)), List.of(Sign.SOGGY));
        assertEquals(List.of(Sign.SOGGY), asked.stream().map(Question::sign).toList());
    }

    private List<Question> asked(List<Object> facts, List<Sign> candidates) {
        return search().after(inference.run(facts), candidates);
    }

    private NextQuestions search() {
        return new NextQuestions(
                inference,
                TestPile.KNOWLEDGE,
                new FirstStep(
                        TestPile.KNOWLEDGE,
                        new DangerGate(TestPile.KNOWLEDGE),
                        TestPile.of("'asOf': '2026-11-21'"),
                        remedy -> List.of()));
    }

    private static Question of(List<Question> asked, Sign sign) {
        return asked.stream()
                .filter(q -> q.sign() == sign)
                .findFirst()
                .orElseThrow(() -> new AssertionError(sign + " is not asked: " + asked));
    }
}
