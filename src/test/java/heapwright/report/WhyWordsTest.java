package heapwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.advice.WhyAnswer;
import heapwright.advice.winter.Factor;
import heapwright.advice.winter.Verdict;
import heapwright.knowledge.Cause;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The answer to why, in words")
class WhyWordsTest {

    private static final String WINTER = "It is just winter";
    private static final String SMALL = "It is too small for this cold";
    private static final String HEALTHY = "a healthy pile of this size would be cold too";

    @Test
    @DisplayName("calls a pile that is too small by that name, and not just winter, which nobody can mend")
    void small() {
        String small = answer(Cause.TOO_SMALL_FOR_COLD, false);
        assertTrue(small.startsWith(SMALL) && small.contains(HEALTHY), small);
        assertFalse(small.contains(WINTER), small);
        String winter = answer(Cause.SLOWED_BY_WINTER, false);
        assertTrue(winter.startsWith(WINTER) && winter.contains(HEALTHY), winter);
    }

    @Test
    @DisplayName("says nothing of a healthy pile where this one is colder than that")
    void colder() {
        for (Cause cause : new Cause[] {Cause.TOO_SMALL_FOR_COLD, Cause.SLOWED_BY_WINTER}) {
            String said = answer(cause, true);
            assertFalse(said.contains(HEALTHY), said);
            assertEquals(cause == Cause.TOO_SMALL_FOR_COLD, said.startsWith(SMALL), said);
        }
    }

    private static String answer(Cause cause, boolean colder) {
        WhyAnswer answer = new WhyAnswer(
                Verdict.JUST_WINTER, Factor.COLD, Optional.of(cause), Optional.empty(), Optional.empty(), colder);
        return new ModelWords(new Words(TestPile.KNOWLEDGE, Catalogue.english(), Units.METRIC)).answer(answer);
    }
}
