package heapwright.advice.observe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.advice.fact.Failed;
import heapwright.advice.fact.Helped;
import heapwright.advice.fact.Underway;
import heapwright.knowledge.Remedy;
import heapwright.knowledge.Sign;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("What was tried")
class TriedTest {

    private static final int FRESH = 21;

    private static Tried tried(String outcome, String more) {
        return new Tried(
                TestPile.of("'built': '2026-10-10', 'asOf': '2026-11-21', 'advised': [{'date': '2026-11-05', 'step': "
                        + "'mix-in-dry-carbon', 'look': '2026-11-12'" + outcome + "}]" + more),
                TestPile.KNOWLEDGE.remedies(),
                FRESH);
    }

    @Test
    @DisplayName("is a fact once it is told what came of it")
    void facts() {
        assertEquals(List.of(), tried("", "").facts());
        assertEquals(List.of(), tried(", 'outcome': 'not-done'", "").facts());
        assertEquals(
                List.of(new Failed(Remedy.MIX_IN_DRY_CARBON, 16)),
                tried(", 'outcome': 'did-not-help'", "").facts(),
                "from the day of advice where none is told");
        assertEquals(
                List.of(new Helped(Remedy.MIX_IN_DRY_CARBON, 2)),
                tried(", 'outcome': 'helped', 'told': '2026-11-19'", "").facts());
    }

    @ParameterizedTest
    @CsvSource({"2026-11-21, false", "2026-11-22, true"})
    @DisplayName("is under way until the day to look")
    void underway(String look, boolean so) {
        Tried tried = new Tried(
                TestPile.of("'built': '2026-10-10', 'asOf': '2026-11-21', 'advised': [{'date': '2026-11-05', 'step': "
                        + "'insulate', 'look': '" + look + "', 'outcome': 'done', 'told': '2026-11-14'}]"),
                TestPile.KNOWLEDGE.remedies(),
                FRESH);
        assertEquals(so ? List.of(new Underway(Remedy.INSULATE)) : List.of(), tried.facts());
    }

    @ParameterizedTest
    @CsvSource({"2026-11-18, soggy, true", "2026-11-19, soggy, false", "2026-11-20, mushrooms, true"})
    @DisplayName("no longer counts as help once a sign that it mends is seen anew")
    void anew(String day, String sign, boolean helped) {
        List<Object> facts = tried(
                        ", 'outcome': 'helped', 'told': '2026-11-19'",
                        ", 'log': [{'date': '" + day + "', 'seen': ['" + sign + "']}]")
                .facts();
        assertEquals(helped, facts.contains(new Helped(Remedy.MIX_IN_DRY_CARBON, 2)));
    }

    @Test
    @DisplayName("and helped mends what was seen before, of what it is there to mend")
    void mended() {
        Tried told = tried(", 'outcome': 'helped', 'told': '2026-11-19'", "");
        assertTrue(told.mended(Sign.SOGGY, LocalDate.of(2026, 11, 18)));
        assertFalse(told.mended(Sign.SOGGY, LocalDate.of(2026, 11, 19)), "seen in spite of it");
        assertFalse(told.mended(Sign.SMELLS_AMMONIA, LocalDate.of(2026, 11, 18)));
        Tried undated = tried(", 'outcome': 'helped'", "");
        assertTrue(undated.mended(Sign.SOGGY, LocalDate.of(2026, 11, 5)));
        assertFalse(undated.mended(Sign.SOGGY, LocalDate.of(2026, 11, 6)), "it may have been told before");
        assertFalse(tried(", 'outcome': 'did-not-help'", "").mended(Sign.SOGGY, LocalDate.of(2026, 11, 1)));
    }

    @Test
    @DisplayName("in vain leaves a sign standing, whatever work is on record")
    void stands() {
        Tried failed = tried(", 'outcome': 'did-not-help', 'told': '2026-11-19'", "");
        assertTrue(failed.stands(Sign.SOGGY, LocalDate.of(2026, 11, 5)));
        assertFalse(failed.stands(Sign.SMELLS_AMMONIA, LocalDate.of(2026, 11, 5)));
        assertFalse(failed.stands(Sign.SOGGY, LocalDate.of(2026, 11, 20)), "of what was seen later it says nothing");
        assertFalse(tried(", 'outcome': 'helped'", "").stands(Sign.SOGGY, LocalDate.of(2026, 11, 5)));
    }
}
