package heapwright.casebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.Advice;
import heapwright.advice.engine.Weighed;
import heapwright.casebook.Scored.Stated;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Harm;
import heapwright.knowledge.Remedy;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@DisplayName("The score of the advice")
@Tag("thorough")
class ScoreTest {

    /** The demo case whose advice is used: wet and airless, the first four steps known below. */
    private final JudgedCases.Judged demo = JudgedCases.all().stream()
            .filter(j -> j.tested().file().equals("demo/sour-soggy-cold-three-weeks-old.json"))
            .findFirst()
            .orElseThrow();

    private final Advice advice = demo.advice();

    @Test
    @DisplayName("counts a cause only where it stands among the first, and a step only among the first four")
    void places() {
        Cause first = advice.findings().get(0).cause();
        Cause third = advice.findings().get(2).cause();
        assertTrue(scored(List.of(first), List.of(), List.of()).right());
        assertFalse(scored(List.of(third), List.of(), List.of()).right());
        Remedy leading = advice.steps().get(0).main().remedy();
        assertTrue(scored(List.of(), List.of(leading), List.of()).right());
        assertFalse(scored(List.of(), List.of(Remedy.USE_IT), List.of()).right());
        assertFalse(scored(List.of(first), List.of(), List.of(leading)).right());
    }

    @Test
    @DisplayName("agrees only where the harm is told that a case asks for")
    void harms() {
        assertTrue(scored(List.of(), List.of(), List.of(), List.of()).agrees());
        assertFalse(scored(List.of(), List.of(), List.of(), List.of(Harm.HOT_AFTER_FEED))
                .agrees());
    }

    /** Brier, Monthly Weather Review 78 (1950): the mean of the squared differences between forecast and outcome. */
    @Test
    @DisplayName("reckons the squared error and the bands by hand")
    void byHand() {
        Scored one = new Scored(
                demo.tested(),
                Optional.of(true),
                Optional.of(true),
                Optional.of(false),
                false,
                false,
                List.of(stated(0.9, true), stated(0.7, false)));
        Scored other = new Scored(
                demo.tested(),
                Optional.of(false),
                Optional.of(true),
                Optional.empty(),
                false,
                true,
                List.of(stated(1, true)));
        Score score = Score.of(List.of(one, other));
        assertEquals((0.01 + 0.49 + 0) / 3, score.brier(), 1e-12);
        assertEquals(new Score.Share(1, 2), score.first());
        assertEquals(new Score.Share(0, 1), score.steps());
        assertEquals(1, score.right());
        assertEquals(1, score.agree());
        Score.Band top = score.bands().get(4);
        assertEquals(2, top.stated());
        assertEquals(0.95, top.mean(), 1e-12);
        assertEquals(1, top.so(), 1e-12);
    }

    private static Stated stated(double likelihood, boolean so) {
        return new Stated(new Weighed(Cause.TOO_WET, 0.1, likelihood, List.of(), List.of()), so);
    }

    private Scored scored(List<Cause> causes, List<Remedy> steps, List<Remedy> notSteps) {
        return scored(causes, steps, notSteps, List.of());
    }

    private Scored scored(List<Cause> causes, List<Remedy> steps, List<Remedy> notSteps, List<Harm> harms) {
        Expectation expect = new Expectation(
                causes,
                1,
                List.of(),
                List.of(),
                List.of(),
                steps,
                Optional.empty(),
                notSteps,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                Map.of(),
                List.of(),
                harms,
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        Case asked = new Case(
                demo.tested().file(),
                "",
                "INVENTED",
                "",
                demo.tested().known(),
                demo.tested().pile(),
                expect);
        return Scored.of(asked, advice, Verdict.of(asked, advice, Optional.empty()));
    }
}
