package heapwright.advice.winter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.advice.fact.ModelSays;
import heapwright.knowledge.Limit;
import heapwright.knowledge.ModelFinding;
import heapwright.process.climate.LocalYear;
import heapwright.process.heat.Bands;
import heapwright.process.heat.CoreReading;
import heapwright.process.heat.Course;
import heapwright.process.heat.Day;
import heapwright.process.heat.Envelope;
import heapwright.process.heat.Matter;
import heapwright.process.heat.PileState;
import heapwright.process.heat.Retrace;
import heapwright.process.heat.Weather;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The edges and their widths are those of docs/method/winter.md; the band of the healthy pile is invented. */
@DisplayName("A verdict on a pile's past")
class VerdictDegreesTest {

    private static final int AGE = 20;
    private static final double LOW = 25;
    private static final Retrace UNASKED = new Retrace(null, OptionalInt.empty(), null);

    private static PileModel model(double air, int age, CoreReading... cores) {
        return new PileModel(
                WinterPiles.good(""),
                PileState.cube(Matter.of(1, 500, 0.58, 0.25, 0.40, 0.25, 30, 4), 12, Envelope.slatted()),
                new Climate(LocalYear.Known.MONTHS, -9, Weather.constant(air, age + 61)),
                List.of(),
                List.of(cores),
                List.of(),
                age,
                60,
                Warmth.unknown(),
                false,
                WarmOnce.UNTOLD);
    }

    /** With a healthy pile whose band begins at 25 °C every day. */
    private static VerdictDegrees leaning(double air, int age, boolean mendable, CoreReading... cores) {
        double[] low = new double[age + 1];
        Arrays.fill(low, LOW);
        return VerdictDegrees.of(model(air, age, cores), UNASKED, new Bands(low, low, low), mendable);
    }

    @Test
    @DisplayName("takes the same warmth above the air for work as the findings do")
    void oneFigure() {
        assertEquals(TestPile.KNOWLEDGE.limits().get(Limit.EXCESS_WORKING).value(), VerdictDegrees.WARM_EXCESS_K);
    }

    private static CoreReading today(double celsius) {
        return new CoreReading(AGE, celsius);
    }

    @ParameterizedTest(name = "outdoors {0} °C, core {1} °C: {2}")
    @CsvSource({
        "35, 37.5, 0",
        "35, 38.75, 0.25",
        "35, 40, 0.5",
        "35, 42.5, 1",
        "35, 60, 1",
        "5, 17.5, 0",
        "5, 20, 0.5",
        "5, 21.25, 0.75",
        "5, 22.5, 1"
    })
    @DisplayName("is by degrees that it works, 5 K from not at all to in full")
    void working(double air, double core, double degree) {
        VerdictDegrees leaning = leaning(air, AGE, false, today(core));
        assertEquals(degree, leaning.working(), 1e-9);
        assertTrue(leaning.somethingWrong() <= 1 - degree + 1e-9, "as far as it works nothing is wrong");
        assertTrue(leaning.justWinter() <= 1 - degree + 1e-9);
    }

    @ParameterizedTest(name = "core {0} °C: wrong {1}, winter {2}")
    @CsvSource({"24, 0, 1", "23, 0.25, 0.75", "22, 0.5, 0.5", "21, 0.75, 0.25", "20, 1, 0", "5, 1, 0"})
    @DisplayName("turns from winter to a fault over 4 K about 3 K below the healthy band")
    void wrong(double core, double wrong, double winter) {
        VerdictDegrees leaning = leaning(8.5, AGE, false, today(core));
        assertEquals(0, leaning(8.5, AGE, false, today(LOW)).somethingWrong(), 1e-9);
        double cool = 1 - leaning.working();
        assertEquals(Math.min(cool, wrong), leaning.somethingWrong(), 1e-9);
        assertEquals(Math.min(cool, Math.min(winter, 1)), leaning.justWinter(), 1e-9);
    }

    @ParameterizedTest(name = "outdoors {0} °C: winter {1}")
    @CsvSource({"9, 1", "9.5, 0.75", "10, 0.5", "10.5, 0.25", "11, 0"})
    @DisplayName("blames winter the less the milder it is, and instead what can be mended")
    void winter(double air, double winter) {
        VerdictDegrees mended = leaning(air, AGE, true, today(LOW - 1));
        double cool = 1 - mended.working();
        assertEquals(Math.min(cool, winter), mended.justWinter(), 1e-9);
        assertEquals(Math.min(cool, 1 - winter), mended.somethingWrong(), 1e-9);
        assertEquals(0, leaning(air, AGE, false, today(LOW - 1)).somethingWrong(), 1e-9, "nothing that can be mended");
        VerdictDegrees young = leaning(air, 4, true, new CoreReading(4, LOW - 1));
        assertEquals(0, young.justWinter(), 1e-9, "too early to say");
        assertEquals(0, young.somethingWrong(), 1e-9, "too early to say");
        assertEquals(
                mended.justWinter(),
                leaning(air, 5, true, new CoreReading(5, LOW - 1)).justWinter(),
                1e-9);
    }

    @ParameterizedTest(name = "then {0} °C: {1}")
    @CsvSource({"37.5, 1", "38.75, 0.75", "40, 0.5", "41.25, 0.25", "42.5, 0"})
    @DisplayName("counts what was before the pile was last hot the less the hotter it was")
    void since(double then, double degree) {
        VerdictDegrees leaning = leaning(20, AGE, false, new CoreReading(4, 5), new CoreReading(9, then), today(LOW));
        assertEquals(degree, leaning.somethingWrong(), 1e-9);
        assertEquals(
                1,
                leaning(20, AGE, false, new CoreReading(4, 60), new CoreReading(9, 5), today(LOW))
                        .somethingWrong(),
                1e-9,
                "heat before the cold hides nothing");
        assertEquals(
                0,
                leaning(20, AGE, false, new CoreReading(4, 5), new CoreReading(9, then), today(45))
                        .somethingWrong(),
                1e-9,
                "it is hot now");
    }

    /** A past that ends with a respiration, mg CO2-C a gram and day. */
    private static VerdictDegrees spent(double respiration, int age, double air, double core) {
        Day last = new Day(
                age, core, core, core, air, 0, 0, 0.5, 0.5, 20, 0.4, 7, 20, 1, 1, 500, 200, 0.5, 0, 0, respiration);
        double[] low = new double[age + 1];
        Arrays.fill(low, LOW);
        Retrace past = new Retrace(new Course(List.of(last), null), OptionalInt.empty(), null);
        return VerdictDegrees.of(model(air, age, new CoreReading(age, core)), past, new Bands(low, low, low), false);
    }

    /** 4 mg is the edge (CCME05), from a tenth above it to a tenth below. */
    @ParameterizedTest(name = "{0} mg: {1}")
    @CsvSource({"4.5, 0", "4.4, 0", "4.2, 0.25", "4, 0.5", "3.8, 0.75", "3.6, 1", "1, 1"})
    @DisplayName("is finished by the degree to which its food is spent, and so far nothing is wrong")
    void finished(double respiration, double degree) {
        VerdictDegrees cold = spent(respiration, 60, 20, 5);
        assertEquals(degree, cold.finished(), 1e-9);
        assertEquals(1 - degree, cold.somethingWrong(), 1e-9);
        assertEquals(0, spent(respiration, 59, 20, 5).finished(), 1e-9, "in two months at the soonest");
        VerdictDegrees half = spent(respiration, 60, 35, 40);
        assertEquals(0.5, half.working(), 1e-9);
        assertEquals(Math.min(0.5, degree), half.finished(), 1e-9, "what works to a half is spent to a half at most");
    }

    /** Two to three days (CORNPHYS). */
    @Test
    @DisplayName("finds no fault in a pile that cannot have warmed yet")
    void warming() {
        assertEquals(0, leaning(20, 2, false, new CoreReading(2, 5)).somethingWrong(), 1e-9);
        assertEquals(1, leaning(20, 3, false, new CoreReading(3, 5)).somethingWrong(), 1e-9);
    }

    @ParameterizedTest(name = "working {0}, finished {1}, wrong {2}, winter {3}, {4} days old: {5}")
    @CsvSource({
        "0.5, 0.5, 0.5, 0.5, 20, WORKING",
        "0.49, 0.5, 0.5, 0.5, 20, FINISHED",
        "0.49, 0.49, 0.5, 0.5, 20, SOMETHING_WRONG",
        "0.49, 0.49, 0.49, 0.51, 20, JUST_WINTER",
        "0.49, 0.49, 0.49, 0.5, 20, WORKING",
        "0, 0, 0.49, 0, 4, TOO_EARLY",
        "0, 0, 0.49, 0, 5, WORKING",
        "0, 0, 0.5, 0, 4, SOMETHING_WRONG"
    })
    @DisplayName("is the word for what is so to a half, in the order in which it is asked")
    void word(double working, double finished, double wrong, double winter, int age, Verdict word) {
        assertEquals(word, new VerdictDegrees(working, finished, wrong, winter).verdict(age));
    }

    /** A core measured a little warmer each time, on a pile that its own model follows: no piece of evidence jumps. */
    @Test
    @DisplayName("reaches the rules as evidence that grows and fades, never at once")
    void facts() {
        Matter dry = Matter.of(1, 300, 0.30, 0.25, 0.40, 0.25, 30, 4);
        double[] degrees = new double[2];
        for (int i = 0; i < 2; i++) {
            double core = i == 0 ? 28 : 26;
            Story story = Story.of(new PileModel(
                    WinterPiles.good(""),
                    PileState.cube(dry, 12, Envelope.slatted()),
                    new Climate(LocalYear.Known.MONTHS, -9, Weather.constant(12, AGE + 61)),
                    List.of(),
                    List.of(today(core)),
                    List.of(),
                    AGE,
                    60,
                    Warmth.unknown(),
                    false,
                    WarmOnce.UNTOLD));
            var says = ModelFacts.of(story).stream().collect(Collectors.toMap(ModelSays::says, ModelSays::degree));
            assertEquals(1 - story.leaning().working(), says.get(ModelFinding.COLDER_THAN_HEALTHY), 1e-9);
            assertEquals(says.get(ModelFinding.COLDER_THAN_HEALTHY), says.get(ModelFinding.SHORT_OF_WATER), 1e-9);
            assertEquals(2, says.size(), says.toString());
            degrees[i] = says.get(ModelFinding.SHORT_OF_WATER);
        }
        assertEquals(0.3, degrees[0], 1e-9, "1 K above the edge at 15 K over outdoors");
        assertEquals(0.7, degrees[1], 1e-9, "1 K below it");
    }

    @ParameterizedTest(name = "{0} days ago: {1}")
    @CsvSource({"0, 1", "14, 1", "21, 0.5", "28, 0", "50, 0"})
    @DisplayName("is working by a hot core in full for a fortnight, and after four weeks no more")
    void stale(int daysAgo, double degree) {
        int age = 50;
        assertEquals(
                degree,
                leaning(12, age, false, new CoreReading(age - daysAgo, 60)).working(),
                1e-9);
    }
}
