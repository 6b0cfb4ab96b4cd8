package heapwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.knowledge.Cause;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever else is known of a pile, more water in it never makes "too wet" less likely. The piles are invented. */
@DisplayName("A pile that is wetter")
@Tag("thorough")
class WetterTest {

    private static final double DRIEST = 40;
    private static final double WETTEST = 95;

    /** What a figure worked out by samples may waver by. */
    private static final double WAVERS = 1e-6;

    private static final List<String> SQUEEZES =
            List.of("", "'squeeze-streams'", "'squeeze-drops'", "'squeeze-holds'", "'squeeze-crumbles'", "'soggy'");

    private static final List<String> RECIPES = List.of(
            "",
            "{'material': 'leaves-mixed', 'amount': 30, 'unit': 'bucket'}, {'material': 'kitchen-scraps', 'amount': 40, 'unit': 'kg'}",
            "{'material': 'grass-clippings', 'amount': 120, 'unit': 'kg'}",
            "{'material': 'wood-chips', 'amount': 100, 'unit': 'kg'}, {'material': 'manure-horse', 'amount': 60, 'unit': 'kg'}");

    static Stream<Arguments> piles() {
        return RECIPES.stream().flatMap(recipe -> SQUEEZES.stream().map(squeeze -> Arguments.of(recipe, squeeze)));
    }

    @ParameterizedTest(name = "[{0}] {1}")
    @MethodSource("piles")
    @DisplayName("by a measured sample is no less likely to be too wet")
    void measured(String recipe, String squeeze) {
        rises(0.5, moisture -> document(recipe, squeeze, "", moisture));
    }

    @ParameterizedTest(name = "[{0}]")
    @ValueSource(strings = {"", "'squeeze-streams'", "'squeeze-drops'"})
    @DisplayName("is no less likely to be too wet where the model of heat has its say")
    void measuredBesideACore(String squeeze) {
        rises(2.5, moisture -> document(RECIPES.get(1), squeeze, "'core': {'value': 12, 'unit': 'C'}, ", moisture));
    }

    private static String document(String recipe, String squeeze, String core, double moisture) {
        return "'built': '2026-10-31', 'asOf': '2026-11-21', 'recipe': [" + recipe
                + "], 'log': [{'date': '2026-11-21', 'seen': [" + squeeze + "], 'measured': {" + core
                + String.format(Locale.ROOT, "'moisture': {'value': %.1f, 'unit': '%%'}}}]", moisture);
    }

    private static void rises(double step, DoubleFunction<String> document) {
        List<String> falls = new ArrayList<>();
        Told first = told(document.apply(DRIEST));
        Told before = first;
        for (double moisture = DRIEST + step; moisture <= WETTEST; moisture += step) {
            Told told = told(document.apply(moisture));
            if (told.likelihood() < before.likelihood() - WAVERS || before.stands() && !told.stands()) {
                falls.add(String.format(Locale.ROOT, "at %.1f %% from %s to %s", moisture, before, told));
            }
            before = told;
        }
        assertEquals("", String.join("\n", falls));
        assertTrue(before.likelihood() > first.likelihood(), "it does rise");
    }

    private static Told told(String document) {
        Advice advice = TestPile.ADVISOR.diagnose(TestPile.of(document));
        return new Told(
                advice.outcome().weighed().get(Cause.TOO_WET).likelihood(),
                advice.findings().stream().anyMatch(f -> f.cause() == Cause.TOO_WET));
    }

    /** How likely it is, and whether it is among the findings and not explained away. */
    private record Told(double likelihood, boolean stands) {}
}
