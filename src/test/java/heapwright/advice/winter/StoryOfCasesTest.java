package heapwright.advice.winter;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.Advice;
import heapwright.advice.fact.ModelSays;
import heapwright.casebook.JudgedCases;
import heapwright.knowledge.ModelFinding;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** All cases, and therefore slow. */
@DisplayName("The past of every case")
@Tag("thorough")
class StoryOfCasesTest {

    @Test
    @DisplayName("never contradicts the findings")
    void noContradiction() {
        for (JudgedCases.Judged judged : JudgedCases.all()) {
            Advice advice = judged.advice();
            advice.why()
                    .flatMap(w -> w.cause())
                    .ifPresent(cause -> assertTrue(
                            advice.findings().stream().anyMatch(f -> f.cause() == cause),
                            judged.tested().file()));
            boolean wrong = advice.outcome().facts().stream()
                    .anyMatch(f -> f instanceof ModelSays m && m.says() == ModelFinding.COLDER_THAN_HEALTHY);
            boolean well =
                    advice.why().filter(w -> w.verdict() == Verdict.WORKING).isPresent();
            assertFalse(wrong && well, judged.tested().file());
        }
    }
}
