package heapwright.process.heat;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Factors at the points their documentation names, layers one upon the other, and what is refused. */
class ValuesTest {

    private static final Envelope OPEN = new Envelope(0.2, 0.4, 0.1, 1, 0.5, 0.25, 0.9, 0.3);

    /** 1 up to 30, 0.53 at 78 (derived from GOT56), never below 0.15. */
    @ParameterizedTest
    @CsvSource({"10, 1", "30, 1", "85, 0.5", "78, 0.534", "100000, 0.15"})
    void nitrogenHoldsBackByNoMoreThanItIsKnownTo(double ratio, double factor) {
        assertEquals(factor, Factors.nitrogen(ratio), 0.0005);
    }

    /** 1 at 2.5 cm (SASK08), half as fast where twice as much surface is missing. */
    @Test
    void piecesCountFromThePreferredSize() {
        assertEquals(1, Factors.pieces(2.5, 5), 1e-12);
        assertEquals(0.5, Factors.pieces(10, 5), 1e-12);
        assertEquals(1.5, Factors.pieces(0, 5), 1e-12);
    }

    /** Full at pH 6.5, from there mild below 38 °C and severe above 42 °C (SUND05). */
    @ParameterizedTest
    @CsvSource({
        "7, 50, 1",
        "6.5, 50, 1",
        "5.5, 20, 0.65",
        "4, 38, 0.65",
        "5.5, 42, 0.02",
        "5.5, 60, 0.02",
        "6, 40, 0.6675"
    })
    void acidHoldsBackMostWhereItIsHot(double ph, double celsius, double factor) {
        assertEquals(factor, Factors.acid(ph, celsius), 1e-9);
    }

    /** 7.4 neutral, 4.4 fully sour, 8.7 where ammonium is six in a thousand of the dry matter. */
    @ParameterizedTest
    @CsvSource({"0, 0, 7.4", "1, 0, 4.4", "0, 0.006, 8.7", "0, 0.1, 8.7", "0, 0.003, 8.05"})
    void acidAndAmmoniaMakeThePh(double acid, double ammonium, double ph) {
        assertEquals(ph, Factors.ph(acid, ammonium), 1e-12);
    }

    @Test
    void aPileWithoutRoomStillHoldsATrace() {
        assertEquals(0.005, Factors.airFilled(1, 2000, 0, 0, 0));
        assertEquals(
                1 - 100 / 1000.0 - 91.7 / 917 - 160 / 1600.0 - 250 / 2500.0,
                Factors.airFilled(1, 100, 91.7, 160, 250),
                1e-12);
    }

    @Test
    void filmsThickenAboveSixtyPercent() {
        assertEquals(2, Factors.oxygenHalf(0.60), 1e-12);
        assertEquals(4, Factors.oxygenHalf(0.70), 1e-9);
    }

    @Test
    void layersAddTheirResistanceAndShareTheirOpenings() {
        Layer straw = new Layer(4, 0.9, 0.8);
        Envelope topped = OPEN.topped(straw);
        assertEquals(new Envelope(4.2, 0.4, 0.1, 0.9, 0.5, 0.25, 0.9 * 0.8, 0.3), topped);
        assertEquals(new Envelope(0.2, 4.4, 0.1, 1, 0.45, 0.25, 0.9, 0.3), OPEN.wrapped(straw));
        assertEquals(0.85, OPEN.wrapped(new Layer(1, 0.15, 0.1)).shelter(), 1e-12, "a tight wrap keeps the wind off");
        assertEquals(new Envelope(0.2, 0.4, 4.1, 1, 0.5, 0.9, 0.9, 0.3), OPEN.bedded(straw));
        assertEquals(0.25, OPEN.bedded(new Layer(1, 0.1, 1)).groundOpen(), "a mat does not close the ground");
    }

    /** In at the sides and below, out at the top and the sides, one after the other: the tighter of the two rules. */
    @Test
    void theDraughtGoesThroughInletAndOutlet() {
        double in = 0.6 * 0.5 + 0.4 * 0.25;
        double out = 0.7 * 1 + 0.3 * 0.5;
        assertEquals(2 / (1 / in + 1 / out), OPEN.draught(), 1e-12);
        assertEquals(1, new Envelope(0, 0, 0, 1, 1, 1, 1, 0).draught(), 1e-12);
        assertEquals(0, new Envelope(0, 0, 0, 0, 0, 0, 1, 0).draught());
        assertEquals(0, new Envelope(0, 0, 0, 0, 0, 1, 1, 0).draught(), "no way out");
        assertEquals(0.6 * 0.5 + 0.3 + 0.1 * 0.25, OPEN.skinOpen(), 1e-12);
    }

    /** Usual trade figures of conductivity, W/m·K: straw 0.06, foam 0.035, boards 0.13, compost 0.25. */
    @Test
    void twiceAsThickIsTwiceAsWarm() {
        assertEquals(0.25 / 0.06, Layer.straw(0.25).resistance(), 1e-12);
        assertEquals(0.05 / 0.035, Layer.foam(0.05).resistance(), 1e-12);
        assertEquals(0.026 / 0.13, Layer.boards(0.026).resistance(), 1e-12);
        assertEquals(0.2 / 0.25, Layer.finishedCompost(0.2).resistance(), 1e-12);
        assertEquals(0.2 / Layer.snowConductivity(0.2), Layer.snow(0.2).resistance(), 1e-12);
        assertEquals(Layer.snowConductivity(0.1559), Layer.snowConductivity(0.1561), 0.001, "the two forms meet");
        assertTrue(Layer.sealedSheet().open() < Layer.looseTarp().open());
        assertTrue(Layer.brush().open() > Layer.boards(0.02).open());
    }

    static List<Arguments> spans() {
        List<Arguments> spans = new ArrayList<>();
        add(spans, "top resistance", 0, 100, x -> new Envelope(x, 0, 0, 1, 1, 1, 1, 0));
        add(spans, "side resistance", 0, 100, x -> new Envelope(0, x, 0, 1, 1, 1, 1, 0));
        add(spans, "ground resistance", 0, 100, x -> new Envelope(0, 0, x, 1, 1, 1, 1, 0));
        add(spans, "top", 0, 1, x -> new Envelope(0, 0, 0, x, 1, 1, 1, 0));
        add(spans, "sides", 0, 1, x -> new Envelope(0, 0, 0, 1, x, 1, 1, 0));
        add(spans, "ground", 0, 1, x -> new Envelope(0, 0, 0, 1, 1, x, 1, 0));
        add(spans, "rain", 0, 1, x -> new Envelope(0, 0, 0, 1, 1, 1, x, 0));
        add(spans, "shelter", 0, 1, x -> new Envelope(0, 0, 0, 1, 1, 1, 1, x));
        add(spans, "layer", 0, 100, x -> new Layer(x, 1, 1));
        add(spans, "layer open", 0, 1, x -> new Layer(1, x, 1));
        add(spans, "layer rain", 0, 1, x -> new Layer(1, 1, x));
        add(spans, "water temperature", 0, 100, x -> new Event.Water(0, 10, x));
        add(spans, "snow temperature", -40, 0, x -> new Event.SnowIn(0, 10, x));
        add(spans, "feed temperature", 0, 100, x -> new Event.Feed(0, 1, 10, x));
        add(spans, "matter's temperature", -40, 80, x -> new Event.Add(0, Fixtures.good(1), x, true));
        add(spans, "water of matter", 0, 1e6, x -> new Matter(1, x, 0.2, 0.3, 0.1, 1, 0, 1, 5, 0));
        add(spans, "quick", 0, 0.6, x -> new Matter(1, 1, x, 0.3, 0.1, 1, 0, 1, 5, 0));
        add(spans, "slow", 0, 0.7, x -> new Matter(1, 1, 0.2, x, 0.1, 1, 0, 1, 5, 0));
        add(spans, "lignin", 0, 0.5, x -> new Matter(1, 1, 0.2, 0.3, x, 1, 0, 1, 5, 0));
        add(spans, "nitrogen", 0, 1e5, x -> new Matter(1, 1, 0.2, 0.3, 0.1, x, 0, 1, 5, 0));
        add(spans, "mineral nitrogen", 0, 2, x -> new Matter(1, 1, 0.2, 0.3, 0.1, 2, x, 1, 5, 0));
        add(spans, "acid", 0, 1, x -> new Matter(1, 1, 0.2, 0.3, 0.1, 1, 0, 1, 5, x));
        add(spans, "moisture", 0, 0.99, x -> Matter.of(1, 500, x, 0.2, 0.3, 0.1, 30, 5));
        add(spans, "mark's day", 0, 3650, x -> new StateMark((int) Math.floor(x), NONE, NONE));
        add(spans, "mark's moisture", 0.01, 0.95, x -> new StateMark(0, OptionalDouble.of(x), NONE));
        add(spans, "loose", 0, 2, Stage::fresh);
        add(spans, "mesophiles", 0, 1, x -> new Vigour(x, 0, 1));
        add(spans, "thermophiles", 0, 1, x -> new Vigour(0, x, 1));
        add(spans, "reach", 0, 1, x -> new Vigour(0, 0, x));
        add(spans, "mark's acid", 0, 1, x -> new StateMark(0, NONE, OptionalDouble.of(x)));
        add(spans, "air", -70, 60, x -> Weather.daily(x));
        add(spans, "rain a day", 0, 500, x -> Weather.constant(1, 3).withPrecipitation(x));
        add(spans, "wind", 0, 30, x -> Weather.constant(1, 3).withWind(x));
        return spans;
    }

    private static final OptionalDouble NONE = OptionalDouble.empty();

    private static void add(List<Arguments> spans, String name, double low, double high, DoubleFunction<?> make) {
        spans.add(Arguments.of(name, low, high, make));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("spans")
    void aSpanIsTakenToItsEndsAndNotBeyond(String name, double low, double high, DoubleFunction<?> make) {
        assertDoesNotThrow(() -> make.apply(low));
        assertDoesNotThrow(() -> make.apply(high));
        assertThrows(IllegalArgumentException.class, () -> make.apply(low - 0.001));
        assertThrows(
                IllegalArgumentException.class, () -> make.apply(name.equals("mark's day") ? high + 1 : high + 0.001));
    }

    /** What is poured over runs off, so there may be any amount of it. */
    @Test
    void whatIsPouredHasNoUpperEnd() {
        List<DoubleFunction<Event>> poured = List.of(
                x -> new Event.Water(0, x, 10),
                x -> new Event.SnowIn(0, x, -5),
                x -> new Event.Feed(0, x, 10, 10),
                x -> new Event.Feed(0, 1, x, 10));
        for (DoubleFunction<Event> pour : poured) {
            assertDoesNotThrow(() -> pour.apply(0));
            assertDoesNotThrow(() -> pour.apply(1e9));
            assertThrows(IllegalArgumentException.class, () -> pour.apply(-0.001));
            assertThrows(IllegalArgumentException.class, () -> pour.apply(Double.POSITIVE_INFINITY));
            assertThrows(IllegalArgumentException.class, () -> pour.apply(Double.NaN));
        }
    }

    static List<Arguments> above() {
        return List.of(
                Arguments.of((DoubleFunction<?>) x -> new Matter(x, 1, 0.2, 0.3, 0.1, 1, 0, 1, 5, 0)),
                Arguments.of((DoubleFunction<?>) x -> new Matter(1, 1, 0.2, 0.3, 0.1, 1, 0, x, 5, 0)),
                Arguments.of((DoubleFunction<?>) x -> new Matter(1, 1, 0.2, 0.3, 0.1, 1, 0, 1, x, 0)),
                Arguments.of((DoubleFunction<?>) x -> Matter.of(1, 500, 0.5, 0.2, 0.3, 0.1, x, 5)));
    }

    @ParameterizedTest
    @MethodSource("above")
    void whatMustBeThereIsMoreThanNothing(DoubleFunction<?> make) {
        assertDoesNotThrow(() -> make.apply(0.001));
        for (double bad : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThrows(IllegalArgumentException.class, () -> make.apply(bad));
        }
    }

    /** A cubic metre of 500 kg at 60 %: 200 kg dry, six tenths of it organic, half of that carbon, at C:N 30. */
    @Test
    void matterOfAVolumeAddsUp() {
        Matter matter = Matter.of(2, 500, 0.6, 0.2, 0.3, 0.1, 30, 5);
        assertEquals(400, matter.dryKg(), 1e-9);
        assertEquals(600, matter.waterKg(), 1e-9);
        assertEquals(400 * 0.6 * 0.5 / 30, matter.nitrogenKg(), 1e-9);
        assertEquals(0.6, matter.moisture(), 1e-12);
        assertEquals(0.7, matter.withAcid(0.7).acidIndex());
        assertEquals(9, matter.withPieces(9).pieceCm());
        assertEquals(matter.dryKg(), matter.withPieces(9).dryKg());
    }

    private static Day day(int number, double core, double ice, double ratio, double respiration) {
        return new Day(
                number,
                core,
                core,
                core,
                0,
                ice,
                ice,
                0.5,
                0.5,
                20,
                0.4,
                7,
                ratio,
                1,
                1,
                500,
                200,
                0.5,
                0,
                0,
                respiration);
    }

    private static Course course(Day... days) {
        return new Course(List.of(days), null);
    }

    /** At most 4 mg and at most 25 (CCME05, CCQC01), both, and three weeks of rest from then. */
    @Test
    void compostIsReadyThreeWeeksAfterItsLimitsAreMet() {
        Readiness ready = Readiness.standard();
        assertEquals(OptionalInt.of(23), ready.day(course(day(1, 20, 0, 25, 4.1), day(2, 20, 0, 25, 4))));
        assertEquals(OptionalInt.of(23), ready.day(course(day(1, 20, 0, 25.1, 4), day(2, 20, 0, 25, 4))));
        assertEquals(OptionalInt.empty(), ready.day(course(day(1, 20, 0, 25.1, 4), day(2, 20, 0, 25, 4.1))));
        assertTrue(ready.spent(day(1, 20, 0, 40, 4)));
        assertEquals(false, ready.spent(day(1, 20, 0, 20, 4.1)));
    }

    @Test
    void aCourseKnowsItsWarmAndItsFrozenDays() {
        Course course =
                course(day(0, 39.9, 0, 30, 9), day(1, 40, 0, 30, 9), day(2, 55, 0.49, 30, 9), day(3, 40, 0.5, 30, 9));
        assertEquals(3, course.daysAtLeast(40));
        assertEquals(OptionalInt.of(1), course.firstAtLeast(40));
        assertEquals(OptionalInt.empty(), course.firstAtLeast(55.1));
        assertEquals(OptionalInt.of(3), course.firstFrozenThrough());
        assertEquals(55, course.peakC());
        assertEquals(3, course.last().day());
        assertEquals(0.49, course.series(Day::iceShare)[2]);
    }

    /** Saturated air (Magnus form; ASHRAE handbook, from memory): 14.7 g of water a kilogram of dry air at 20 °C, 49 g at 40 °C. */
    @Test
    void saturatedAirHoldsWhatTheHandbookSays() {
        assertEquals(0.0147, Curves.water(20), 0.0001);
        assertEquals(0.0491, Curves.water(40), 0.0003);
        assertEquals(0.00379, Curves.water(0), 0.00003);
        assertEquals(0.0147 * 2.538e6, Curves.vapourHeat(20), 400);
        assertEquals((Curves.water(20.5) - Curves.water(20)) / 0.5, Curves.waterSlope(20.1), 2e-5);
        assertEquals(
                (Curves.vapourHeat(20.5) - Curves.vapourHeat(20)) / 0.5,
                Curves.vapourHeatSlope(Curves.index(20.1)),
                50);
        assertEquals(1, Curves.rate(20), 1e-9);
        assertEquals(
                (Curves.mesophiles(20.5) - Curves.mesophiles(20)) / 0.5,
                Curves.mesophilesSlope(Curves.index(20.1)),
                0.001);
        assertEquals(
                (Curves.thermophiles(50.2) - Curves.thermophiles(50)) / 0.2,
                Curves.thermophilesSlope(Curves.index(50.1)),
                1e-9);
        assertEquals(Factors.temperature(33.1), Curves.rate(33.1), 0.001, "between the points of the table");
    }
}
