package heapwright.process.use;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.knowledge.Ripeness;
import heapwright.pile.HomeTest;
import heapwright.pile.Pile;
import heapwright.pile.Tested;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Built on 20 August 2025 and asked on 2 May 2027; a test counts for 180 days. */
@DisplayName("Of home tests")
class TestResultsTest {

    private static TestResults results(String... entries) {
        Pile pile = pile(entries);
        return TestResults.of(pile, TestPile.KNOWLEDGE, new PileDays(pile, TestPile.KNOWLEDGE));
    }

    private static Pile pile(String... entries) {
        return TestPile.of(
                "'asOf': '2027-05-02', 'built': '2025-08-20', 'recipe': [{'material': 'leaves-mixed', 'amount': 30,"
                        + " 'unit': 'bucket'}], 'log': [" + String.join(",", entries) + "]");
    }

    private static String test(String day, String test, String result) {
        return "{'date': '" + day + "', 'tested': [{'test': '" + test + "', 'result': '" + result + "'}]}";
    }

    private static String told(String day, String list, String sign) {
        return "{'date': '" + day + "', '" + list + "': ['" + sign + "']}";
    }

    private static String fed(String day) {
        return "{'date': '" + day + "', 'added': [{'material': 'kitchen-scraps', 'amount': 1, 'unit': 'bucket'}]}";
    }

    @ParameterizedTest
    @CsvSource({
        "2026-11-03, bag, true",
        "2026-11-02, bag, false",
        "2026-11-02, seedlings, false",
        "2026-11-02, peas, true",
        "2025-11-02, peas, true"
    })
    @DisplayName("a result counts for half a year, that of weedkiller for ever")
    void holds(String day, String test, boolean counts) {
        TestResults good = results(test(day, test, "good"));
        TestResults poor = results(test(day, test, "poor"));
        HomeTest which = HomeTest.valueOf(test.toUpperCase(java.util.Locale.ROOT));
        assertEquals(
                Optional.of(new TestResults.OnDay(Tested.Result.GOOD, LocalDate.parse(day), counts)), good.of(which));
        assertEquals(counts, good.good(which));
        assertFalse(good.poor(which));
        assertEquals(counts, poor.poor(which));
        assertFalse(poor.good(which));
        assertEquals(counts ? 1 : 0, good.counting());
        assertEquals(counts, !poor.allows(TestPile.KNOWLEDGE).atLeast(Ripeness.POTS));
    }

    @Test
    @DisplayName("a result counts from the day on which something fresh went in last")
    void fresh() {
        assertTrue(results(test("2027-03-01", "bag", "good"), fed("2027-03-01")).good(HomeTest.BAG));
        assertFalse(
                results(test("2027-02-28", "bag", "good"), fed("2027-03-01")).good(HomeTest.BAG));
        assertTrue(
                results(test("2027-02-28", "peas", "good"), fed("2027-03-01")).good(HomeTest.PEAS));
        assertFalse(
                results(test("2026-11-01", "bag", "good"), fed("2026-10-01")).good(HomeTest.BAG), "too old");
    }

    @Test
    @DisplayName("the latest stands, of one day the worst, and an unclear one says nothing")
    void latest() {
        TestResults better = results(test("2027-04-01", "bag", "poor"), test("2027-04-10", "bag", "good"));
        assertTrue(better.good(HomeTest.BAG));
        TestResults worse = results(test("2027-04-10", "bag", "poor"), test("2027-04-01", "bag", "good"));
        assertTrue(worse.poor(HomeTest.BAG));
        for (String first : List.of("poor", "good")) {
            String second = first.equals("poor") ? "good" : "poor";
            assertTrue(results(test("2027-04-10", "bag", first), test("2027-04-10", "bag", second))
                    .poor(HomeTest.BAG));
        }
        assertTrue(results(test("2027-04-01", "bag", "good"), test("2027-04-10", "bag", "unclear"))
                .good(HomeTest.BAG));
        assertEquals(Optional.empty(), better.of(HomeTest.PEAS));
        Pile pile = pile(test("2027-04-01", "bag", "good"), test("2027-04-10", "bag", "poor"));
        Pile then = pile.with(pile.name(), LocalDate.of(2027, 4, 5), pile.recipe(), pile.log());
        assertTrue(
                TestResults.of(then, TestPile.KNOWLEDGE, new PileDays(then, TestPile.KNOWLEDGE))
                        .good(HomeTest.BAG),
                "what was tested later was not known then");
    }

    @Test
    @DisplayName("a sign that a test shows is its result, and that it was not seen is a good one")
    void signs() {
        assertTrue(results(told("2027-04-01", "seen", "bag-test-smells")).poor(HomeTest.BAG));
        assertTrue(results(told("2027-04-01", "notSeen", "bag-test-smells")).good(HomeTest.BAG));
        assertEquals(
                Optional.empty(),
                results(told("2027-04-01", "seen", "dark-crumbly")).of(HomeTest.BAG));
        assertTrue(results(told("2027-04-01", "seen", "test-leaves-cupped")).poor(HomeTest.PEAS));
    }

    @ParameterizedTest
    @CsvSource({
        "good, poor, true",
        "poor, good, true",
        "fair, poor, true",
        "poor, fair, true",
        "good, fair, false",
        "fair, good, false",
        "good, good, false",
        "poor, poor, false"
    })
    @DisplayName("one that says otherwise than the one before is told, where one of them was poor")
    void changed(String before, String after, boolean told) {
        List<HomeTest> expected = told ? List.of(HomeTest.SEEDLINGS) : List.of();
        String first = test("2027-04-01", "seedlings", before);
        String second = test("2027-04-10", "seedlings", after);
        assertEquals(expected, results(first, second).changed());
        assertEquals(
                List.of(),
                results(first, second, test("2027-04-20", "seedlings", after)).changed(),
                "said again");
    }

    /** By the shipped table: a poor bag leaves it rough, fair seedlings do for beds. */
    @Test
    @DisplayName("the least of all that count is what they allow, and weedkiller is no failed test")
    void allows() {
        TestResults none = results();
        assertEquals(Ripeness.POTS, none.allows(TestPile.KNOWLEDGE));
        assertFalse(none.failed(TestPile.KNOWLEDGE));
        assertEquals(0, none.counting());
        TestResults fair = results(test("2027-04-01", "seedlings", "fair"), test("2027-04-01", "bag", "good"));
        assertEquals(Ripeness.BEDS, fair.allows(TestPile.KNOWLEDGE));
        assertFalse(fair.failed(TestPile.KNOWLEDGE));
        assertEquals(2, fair.counting());
        TestResults poor = results(test("2027-04-01", "seedlings", "fair"), test("2027-04-01", "bag", "poor"));
        assertEquals(Ripeness.ROUGH, poor.allows(TestPile.KNOWLEDGE));
        assertTrue(poor.failed(TestPile.KNOWLEDGE));
        TestResults weedkiller = results(test("2027-04-01", "peas", "poor"));
        assertEquals(Ripeness.NOT_YET, weedkiller.allows(TestPile.KNOWLEDGE));
        assertFalse(weedkiller.failed(TestPile.KNOWLEDGE), "that is told by itself");
    }
}
