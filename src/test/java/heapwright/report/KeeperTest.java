package heapwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.Advice;
import heapwright.advice.Afternoon;
import heapwright.advice.Option;
import heapwright.advice.Step;
import heapwright.advice.TestPile;
import heapwright.knowledge.RemedyInfo;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Work is told so that the person who looks after the pile can do it; common practice, no source. */
@DisplayName("Who looks after a pile")
class KeeperTest {

    private static final Words WORDS = new Words(TestPile.KNOWLEDGE, Catalogue.english(), Units.METRIC);

    private static Advice advice(String keeper, String people) {
        return TestPile.advice("'built': '2026-10-12', " + keeper
                + "'atHand': [{'material': 'corrugated cardboard', 'amount': 5, 'unit': 'wheelbarrow'}], 'log': ["
                + "{'date': '2026-11-12', 'seen': ['smells-sour', 'soggy'" + people + "]}]");
    }

    private static String page(Advice advice) {
        return new FirstPage(WORDS, false).write(advice).replaceAll("\\s+", " ");
    }

    @Test
    @DisplayName("is told what does instead of a tool that they lack")
    void standIn() {
        assertTrue(page(advice("", "")).contains("Fetch: corrugated cardboard, a fork, "));
        String without = page(advice("'keeper': {'lacks': ['fork']}, ", ""));
        assertTrue(
                without.contains("Fetch: corrugated cardboard, a spade, hoe or strong stick (for a fork), "), without);
    }

    @Test
    @DisplayName("is given no more than they have time for, and a long job in goes")
    void goes() {
        assertTrue(Afternoon.of(advice("", ""), TestPile.KNOWLEDGE).jobs().size() > 1);
        Advice hurried = advice("'keeper': {'minutes': 25}, ", "");
        assertEquals(1, Afternoon.of(hurried, TestPile.KNOWLEDGE).jobs().size());
        assertTrue(page(hurried).contains("It takes about 60 minutes: spread it over 3 days."), page(hurried));
        assertFalse(page(advice("'keeper': {'minutes': 60}, ", "")).contains("spread it over"));
    }

    @Test
    @DisplayName("is told another way of all heavy work if they cannot lift, and the usual one once they can again")
    void gently() {
        assertTrue(page(advice("", "")).contains("Fork the wet parts apart"));
        String gently = page(advice("", ", 'cannot-lift'"));
        assertFalse(gently.contains("Fork the wet parts apart"), gently);
        assertTrue(gently.contains("a hand fork at a time"), gently);
        Advice again = TestPile.advice("'built': '2026-10-12', 'log': [{'date': '2026-11-01', 'seen': ['cannot-lift']},"
                + "{'date': '2026-11-12', 'seen': ['smells-sour', 'soggy'], 'notSeen': ['cannot-lift']}]");
        assertTrue(page(again).contains("Fork the wet parts apart"));
        int heavy = 0;
        for (RemedyInfo info : TestPile.KNOWLEDGE.remedies().values()) {
            assertEquals(info.effort().heavy(), !info.withoutLifting().how().equals(info.how()), info.name());
            heavy += info.effort().heavy() ? 1 : 0;
        }
        assertTrue(heavy > 20, "only " + heavy);
    }

    @Test
    @DisplayName("is led to the lighter of two ways if they cannot lift")
    void lighterWay() {
        String fields = "'built': '2026-08-20', 'log': [{'date': '2026-09-20',"
                + "'seen': ['smells-sour', 'slumped-dense'%s], 'notSeen': ['soggy', 'smells-ammonia']}]";
        List<String> usual = new ArrayList<>();
        TestPile.advice(String.format(fields, ""))
                .steps()
                .forEach(s -> usual.add(s.main().remedy().id()));
        List<String> light = new ArrayList<>();
        for (Step step :
                TestPile.advice(String.format(fields, ", 'cannot-lift'")).steps()) {
            light.add(step.main().remedy().id());
            if (heavy(step.main())) {
                assertEquals(
                        List.of(),
                        step.alternatives().stream().filter(o -> !heavy(o)).toList());
            }
        }
        assertNotEquals(usual, light);
    }

    private static boolean heavy(Option option) {
        return TestPile.KNOWLEDGE.remedies().get(option.remedy()).effort().heavy();
    }

    @Test
    @DisplayName("is told to leave digging to others if spores are grave for them")
    void others() {
        String said = "Leave the digging to somebody else";
        assertFalse(page(advice("", "")).contains(said));
        assertTrue(page(advice("", ", 'lungs-or-immunity'")).contains(said));
        assertTrue(page(advice("", ", 'pregnant'")).contains(said));
    }
}
