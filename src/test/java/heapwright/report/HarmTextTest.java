package heapwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.Advice;
import heapwright.advice.Step;
import heapwright.advice.TestPile;
import heapwright.knowledge.Remedy;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Harm that followed from work on the pile")
class HarmTextTest {

    private static final Words WORDS = new Words(TestPile.KNOWLEDGE, Catalogue.english(), Units.METRIC);

    private static String headline(Advice advice) {
        return new HeadlineText(WORDS).of(advice);
    }

    private static Advice advice(String log) {
        return TestPile.advice(
                "'built': '2026-10-10', 'asOf': '2026-11-21', 'place': {'latitude': 60}, 'log': [" + log + "]");
    }

    private static String turned(String outdoor, int after) {
        return "{'date': '2026-11-08', 'measured': {'core': {'value': 38, 'unit': 'C'}}},"
                + "{'date': '2026-11-10', 'done': ['turned-fully'], 'measured': {'outdoor': {'value': " + outdoor
                + ", 'unit': 'C'}}}, {'date': '2026-11-21', 'measured': {'core': {'value': " + after
                + ", 'unit': 'C'}}}";
    }

    @ParameterizedTest
    @CsvSource({"-3, 14, true", "6, 14, false", "-3, 34, false"})
    @DisplayName("is told of a core that fell after a turn in frost, and not of one in mild weather or that came back")
    void frost(String outdoor, int after, boolean told) {
        Advice advice = advice(turned(outdoor, after));
        assertEquals(
                told,
                headline(advice)
                        .contains("The core cooled after it was turned in frost on 10 November 2026: leave the middle"),
                headline(advice));
        if (told) {
            List<Remedy> steps =
                    advice.steps().stream().map(Step::main).map(o -> o.remedy()).toList();
            assertFalse(steps.contains(Remedy.TURN_FULLY), steps.toString());
        }
    }

    @ParameterizedTest
    @CsvSource({"2026-11-15, true", "2026-11-21, false", "2026-11-03, false", "2026-10-10, false"})
    @DisplayName(
            "is told of ammonia shortly after manure went into the standing pile, and not of what it was built from")
    void ammonia(String day, boolean told) {
        Advice advice = advice("{'date': '" + day
                + "', 'added': [{'material': 'manure-hen-home', 'amount': 2, 'unit': 'bucket'}]},"
                + "{'date': '2026-11-21', 'seen': ['smells-ammonia']}");
        assertEquals(told, headline(advice).contains("It has smelt of ammonia since"), headline(advice));
    }

    @ParameterizedTest
    @CsvSource({"soggy, true", "soggy dust-dry, false", "leachate, false"})
    @DisplayName("is told of a pile that is soggy after it was watered, and not of water that ran past dry stuff")
    void wet(String seen, boolean told) {
        Advice advice = advice("{'date': '2026-11-15', 'done': ['watered']}, {'date': '2026-11-21', 'seen': ['"
                + seen.replace(" ", "','") + "']}");
        assertEquals(told, headline(advice).contains("It has been soggy since it was watered on 15 November"), seen);
    }

    @ParameterizedTest
    @CsvSource({"72.5, true", "66, false"})
    @DisplayName("is told of a pile that is above 70 °C after it was fed")
    void hot(String core, boolean told) {
        Advice advice = TestPile.advice("'built': '2026-10-01', 'asOf': '2026-10-14', 'container': {'kind': "
                + "'slatted-bin', 'length': {'value': 1, 'unit': 'm'}, 'width': {'value': 1, 'unit': 'm'}, 'height': "
                + "{'value': 1, 'unit': 'm'}}, 'log': [{'date': '2026-10-10', 'added': [{'material': "
                + "'grass-clippings', 'amount': 3, 'unit': 'wheelbarrow'}]}, {'date': '2026-10-14', 'seen': "
                + "['squeeze-drops'], 'measured': {'core': {'value': " + core + ", 'unit': 'C'}}}]");
        assertTrue(advice.alarm().isEmpty(), "a moist pile of a cubic metre is no fire yet");
        assertEquals(told, headline(advice).contains("It has been too hot since it was fed on 10 October"), core);
    }

    @Test
    @DisplayName("and waiting days are told as a date where a step waits for them")
    void until() {
        Advice advice = advice("{'date': '2026-11-15', 'added': [{'material': 'wood-ash', 'amount': 1, 'unit': 'L'}]},"
                + "{'date': '2026-11-21', 'seen': ['only-browns', 'core-cold', 'not-shrinking', 'squeeze-drops']}");
        String held = new HeldText(WORDS)
                .of(advice.withheld()).stream().map(HeldText.Together::steps).reduce("", (a, b) -> a + "; " + b);
        assertTrue(held.contains("not before 29 November 2026"), "two weeks after the ash: " + held);
    }

    @Test
    @DisplayName("tells likelier germs after what troubles the pile as what counts when it is used")
    void germsBeforeUse() {
        Advice advice = TestPile.ADVISOR.diagnose(TestPile.of("'asOf': '2026-12-10', 'built': '2026-10-10',"
                + "'recipe': [{'material': 'manure-horse', 'amount': 10, 'unit': 'bucket'},"
                + " {'material': 'leaves-mixed', 'amount': 40, 'unit': 'bucket'}],"
                + "'log': [{'date': '2026-12-10', 'seen': ['core-cold'],"
                + " 'measured': {'core': {'value': 6, 'unit': 'C'}, 'outdoor': {'value': 3, 'unit': 'C'}}}]"));
        String said = new HeadlineText(WORDS).of(advice);
        assertTrue(
                said.matches(
                        "(?:Possible|Likely|Very likely): .*Before you use it: germs that may be alive \\(very likely\\)\\."),
                said);
    }
}
