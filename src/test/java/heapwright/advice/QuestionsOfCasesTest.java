package heapwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.danger.DangerGate;
import heapwright.advice.engine.Inference;
import heapwright.advice.engine.Outcome;
import heapwright.advice.fact.Contradicts;
import heapwright.advice.fact.Denied;
import heapwright.advice.fact.Seen;
import heapwright.casebook.JudgedCases;
import heapwright.knowledge.Sign;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The next question over cases, by trying every sign with either answer. */
@DisplayName("The next question, case by case,")
@Tag("thorough")
class QuestionsOfCasesTest {

    /** Every tenth case: enough piles of every kind, and the exhaustive search over them takes seconds. */
    private static final List<JudgedCases.Judged> SOME = everyTenth();

    private final Inference inference = new Inference(TestPile.ADVISOR.rulebook(), TestPile.KNOWLEDGE);

    @Test
    @DisplayName("is none that tells nothing")
    void telling() {
        for (JudgedCases.Judged judged : SOME) {
            assertTrue(
                    questions(judged).stream().allMatch(q -> q.settles() > 0 || q.change() >= 0.05),
                    judged.tested().file());
        }
    }

    @Test
    @DisplayName("is never one that was answered already")
    void notAnswered() {
        for (JudgedCases.Judged judged : SOME) {
            Set<Sign> answered = answered(judged.advice().outcome());
            questions(judged)
                    .forEach(q -> assertFalse(
                            answered.contains(q.sign()), judged.tested().file() + " asks " + q.sign()));
        }
    }

    @Test
    @DisplayName("is never one to which a yes would contradict what was said")
    void notContradictory() {
        for (JudgedCases.Judged judged : SOME) {
            Outcome now = judged.advice().outcome();
            Set<Object> disputed = disputes(now);
            for (Question question : questions(judged)) {
                List<Object> facts = new ArrayList<>(now.facts());
                facts.add(new Seen(question.sign(), 0));
                assertTrue(
                        disputed.containsAll(disputes(inference.upToConclusions(facts))),
                        judged.tested().file() + " asks " + question.sign());
            }
        }
    }

    @Test
    @DisplayName("is there as long as any answer may change the first step, by trying every sign with either answer")
    void never() {
        NextQuestions search = search();
        int open = 0;
        List<String> missed = new ArrayList<>();
        for (JudgedCases.Judged judged : SOME) {
            Outcome now = judged.advice().outcome();
            List<QuestionValue.Candidate> every = Arrays.stream(Sign.values())
                    .filter(s -> !answered(now).contains(s))
                    .map(s -> new QuestionValue.Candidate(s, true, true))
                    .toList();
            if (settling(search.among(now, every))) {
                open++;
                if (!settling(search.after(now, List.of(Sign.values())))) {
                    missed.add(judged.tested().file());
                }
            }
        }
        assertTrue(open > 50, open + " with an open question");
        assertEquals(List.of(), missed);
    }

    private static boolean settling(List<Question> questions) {
        return questions.stream().anyMatch(q -> q.settles() > 0);
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

    private static List<JudgedCases.Judged> everyTenth() {
        List<JudgedCases.Judged> all = JudgedCases.all();
        return IntStream.range(0, all.size())
                .filter(i -> i % 10 == 0)
                .mapToObj(all::get)
                .toList();
    }

    private List<Question> questions(JudgedCases.Judged judged) {
        List<Question> questions = search().after(judged.advice().outcome(), List.of(Sign.values()));
        return questions;
    }

    /** What stands as answered; a sign that a remedy has outlived since may be asked for anew. */
    private static Set<Sign> answered(Outcome outcome) {
        return outcome.facts().stream()
                .filter(f -> f instanceof Seen s && !s.outlived() || f instanceof Denied)
                .map(f -> f instanceof Seen s ? s.sign() : ((Denied) f).sign())
                .collect(Collectors.toSet());
    }

    private static Set<Object> disputes(Outcome outcome) {
        return outcome.of(Contradicts.class).stream().map(f -> f.result()).collect(Collectors.toSet());
    }
}
