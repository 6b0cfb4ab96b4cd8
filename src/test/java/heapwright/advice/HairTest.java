package heapwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.casebook.JudgedCases;
import heapwright.casebook.JudgedCases.Judged;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Remedy;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** {@link HairSurvey} changes every figure of every case; here a sample of them is, and single figures go all their way. */
@DisplayName("A hair's difference in a figure")
@Tag("thorough")
class HairTest {

    private static final double HAIR = 0.001;

    /** A likelihood may move by this. */
    private static final double MOST = 0.02;

    /** Two steps whose worth differs by less than this part may change places. */
    private static final double EQUAL = 0.01;

    /** One in so many changes is tried, always the same ones, so that a new case does not change the sample of the others. */
    private static final int ONE_IN = 29;

    /** In how many places of its range a figure is changed. */
    private static final int PLACES = 120;

    /** The least change of a figure near zero. */
    private static final double LEAST = 0.005;

    private record Changed(Judged judged, Hairs.Hair hair) {}

    @Test
    @DisplayName("is a hair's difference in the advice on a case")
    void cases() {
        List<Changed> all = new ArrayList<>();
        for (Judged judged : JudgedCases.all()) {
            for (double factor : new double[] {1 - HAIR, 1 + HAIR}) {
                Hairs.of(judged.tested().pile(), factor).forEach(h -> all.add(new Changed(judged, h)));
            }
        }
        assertTrue(all.size() > 2000, "only " + all.size() + " figures to change");
        List<String> jumps = new ArrayList<>();
        for (Changed one : all.stream().filter(HairTest::sampled).toList()) {
            Advice told = one.judged().advice();
            Advice other = TestPile.ADVISOR.diagnose(one.hair().pile());
            String where = one.judged().tested().file() + " " + one.hair().figure();
            jump(told, other, where, jumps);
            if (!first(told).equals(first(other)) && !close(told) && !close(other)) {
                jumps.add(where + " first step " + first(told) + " -> " + first(other));
            }
        }
        assertEquals("", String.join("\n", jumps));
    }

    private static boolean sampled(Changed one) {
        String name = one.judged().tested().file() + one.hair().figure();
        return Math.floorMod(name.hashCode(), ONE_IN) == 0;
    }

    static Stream<Arguments> figures() {
        return Stream.of(
                Arguments.of("moisture of a sample", 20, 85, document("'moisture': {'value': %.4f, 'unit': '%%'}")),
                Arguments.of("core", -10, 70, document("'core': {'value': %.4f, 'unit': 'C'}")),
                Arguments.of(
                        "core beside a cold day",
                        -10,
                        70,
                        document("'core': {'value': %.4f, 'unit': 'C'}, 'outdoor': {'value': 3, 'unit': 'C'}")),
                Arguments.of(
                        "outdoors",
                        -20,
                        25,
                        document("'outdoor': {'value': %.4f, 'unit': 'C'}, 'core': {'value': 12, 'unit': 'C'}")),
                Arguments.of("pH", 4, 9, document("'ph': {'value': %.4f, 'unit': 'pH'}")),
                Arguments.of(
                        "weight by volume", 200, 1000, document("'bulkDensity': {'value': %.4f, 'unit': 'kg/m3'}")));
    }

    @ParameterizedTest(name = "is one all the way of the {0}")
    @MethodSource("figures")
    @DisplayName("is a hair's difference in every likelihood, wherever a figure stands")
    void allTheWay(String figure, double from, double to, DoubleFunction<String> document) {
        List<String> jumps = new ArrayList<>();
        for (int i = 0; i <= PLACES; i++) {
            double value = from + (to - from) * i / PLACES;
            double more = value + Math.max(LEAST, HAIR * Math.abs(value));
            jump(
                    TestPile.ADVISOR.diagnose(TestPile.of(document.apply(value))),
                    TestPile.ADVISOR.diagnose(TestPile.of(document.apply(more))),
                    String.format(Locale.ROOT, "%s %.3f", figure, value),
                    jumps);
        }
        assertEquals("", String.join("\n", jumps));
    }

    private static DoubleFunction<String> document(String measured) {
        return value -> "'built': '2026-09-01', 'container': {'kind': 'slatted-bin',"
                + " 'length': {'value': 1, 'unit': 'm'}, 'width': {'value': 1, 'unit': 'm'},"
                + " 'height': {'value': 1, 'unit': 'm'}},"
                + " 'log': [{'date': '2026-11-21', 'seen': ['not-shrinking'], 'measured': {"
                + String.format(Locale.ROOT, measured, value) + "}}]";
    }

    private static void jump(Advice one, Advice other, String where, List<String> jumps) {
        for (Cause cause : one.outcome().weighed().keySet()) {
            double moved = Math.abs(one.outcome().weighed().get(cause).likelihood()
                    - other.outcome().weighed().get(cause).likelihood());
            if (moved > MOST) {
                jumps.add(String.format(Locale.ROOT, "%s: %s by %.3f", where, cause.id(), moved));
            }
        }
    }

    private static List<Remedy> first(Advice advice) {
        return advice.steps().stream().limit(1).map(s -> s.main().remedy()).toList();
    }

    /** Whether the two best steps are worth the same, but for a hair. */
    private static boolean close(Advice advice) {
        if (advice.steps().size() < 2) {
            return false;
        }
        double best = advice.steps().get(0).main().worth();
        double next = advice.steps().get(1).main().worth();
        return Math.abs(best - next) <= EQUAL * Math.abs(best);
    }
}
