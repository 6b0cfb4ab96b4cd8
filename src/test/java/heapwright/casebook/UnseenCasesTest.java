package heapwright.casebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Cases that were written from sources before anybody knew the answer. They measure the advice and are not made to agree:
 * what is held here is that the measure does not fall. Those of {@code unfitted} stay out of every fit for good.
 */
@DisplayName("The cases that measure the advice")
@Tag("thorough")
class UnseenCasesTest {

    private static final String FRESH = "fresh";
    private static final String UNFITTED = "unfitted";

    /** Whether a case measures the advice and need not agree with it. */
    static boolean measures(Case tested) {
        return tested.file().startsWith(FRESH + "/") || tested.file().startsWith(UNFITTED + "/");
    }

    /** As measured when the floors were last raised: {@code heapwright cases --by-source cases/fresh}. */
    @Test
    @DisplayName("are answered no worse than before where they may be learned from")
    void fresh() {
        Score score = score(FRESH);
        assertEquals(143, score.cases());
        assertTrue(score.right() >= 138, score.toString());
        assertEquals(0, score.harmful());
        assertTrue(score.brier() <= 0.042, score.toString());
    }

    /** As measured when the floors were last raised: {@code heapwright cases --by-source cases/unfitted}. */
    @Test
    @DisplayName("are answered no worse than before where nothing may be learned from them")
    void unfitted() {
        Score score = score(UNFITTED);
        assertEquals(74, score.cases());
        assertTrue(score.right() >= 65, score.toString());
        assertTrue(score.harmful() <= 2, score.toString());
        assertTrue(score.brier() <= 0.118, score.toString());
    }

    @Test
    @DisplayName("share no source with those that anything is fitted to")
    void sourcesApart() {
        Set<String> kept = sources(UNFITTED);
        Set<String> others = JudgedCases.all().stream()
                .filter(j -> !j.tested().file().startsWith(UNFITTED + "/"))
                .map(j -> j.tested().source())
                .collect(Collectors.toCollection(TreeSet::new));
        others.retainAll(kept);
        assertEquals(Set.of(), others);
    }

    private static Set<String> sources(String folder) {
        return JudgedCases.below(folder).stream().map(j -> j.tested().source()).collect(Collectors.toSet());
    }

    private static Score score(String folder) {
        return Score.of(JudgedCases.below(folder).stream()
                .map(j -> Scored.of(j.tested(), j.advice(), Verdict.of(j.tested(), j.advice(), j.audit())))
                .toList());
    }
}
