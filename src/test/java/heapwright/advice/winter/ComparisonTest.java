package heapwright.advice.winter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.process.heat.Course;
import heapwright.process.heat.Day;
import heapwright.process.heat.Ensemble;
import heapwright.process.heat.Envelope;
import heapwright.process.heat.Event;
import heapwright.process.heat.Layer;
import heapwright.process.heat.Matter;
import heapwright.process.heat.PileState;
import heapwright.process.heat.Range;
import heapwright.process.heat.Spread;
import heapwright.process.heat.Weather;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("A pile treated, beside the same pile left alone")
class ComparisonTest {

    /** An invented northern place. */
    private static final Weather WINTER =
            Weather.monthly(new double[] {-5, -6, -2, 4, 10, 15, 17, 16, 11, 6, 1, -3}, 304, 180);

    private static final int DAYS = 120;

    private static final PileState PILE =
            PileState.cube(Matter.of(1, 500, 0.58, 0.25, 0.40, 0.25, 30, 4), 12, Envelope.slatted());

    private static final Comparison ALONE = new Comparison(PILE, WINTER, List.of(), DAYS, Spread.usual(), 12);

    private static Gain gain(Event... events) {
        return ALONE.gain(ALONE.with(PILE, List.of(events)));
    }

    @Test
    @DisplayName("wins nothing where nothing is done")
    void nothing() {
        Gain none = gain();
        Range nothing = new Range(0, 0, 0);
        assertEquals(nothing, none.warmerC());
        assertEquals(nothing, none.moreWarmDays());
        assertEquals(0, none.daysWon().likely(), 1e-6);
        assertEquals(none.without(), none.with());
        assertEquals(DAYS, none.days());
        assertEquals(DAYS, ALONE.days());
    }

    @Test
    @DisplayName("says the same whether its samples were run at once or one after another")
    void taken() {
        Envelope kept = Envelope.slatted().topped(Layer.straw(0.25));
        Comparison few = new Comparison(PILE, WINTER, List.of(), DAYS, Spread.usual(), 5);
        PileState other = PILE.with(kept);
        Comparison more = few.of(12);
        Ensemble begun = few.instead(other, WINTER, List.of());
        assertEquals(ALONE.alone(), more.alone());
        assertEquals(few.alone(), ALONE.of(5).alone());
        assertEquals(ALONE.instead(other, WINTER, List.of()), more.instead(begun, other, WINTER, List.of()));
        double most =
                Comparison.warmer(few.alone().courses().get(0), begun.courses().get(0));
        for (int i = 1; i < 5; i++) {
            most = Math.max(
                    most,
                    Comparison.warmer(
                            few.alone().courses().get(i), begun.courses().get(i)));
        }
        assertTrue(few.reaches(most, begun, Comparison::warmer));
        assertFalse(few.reaches(Math.nextUp(most), begun, Comparison::warmer));
    }

    @Test
    @DisplayName("over its first days looks at no others, neither of it nor of what it is held against")
    void cut() {
        Comparison half = ALONE.cut(60);
        assertEquals(60, half.days());
        assertEquals(ALONE.alone().cut(60), half.alone());
        assertEquals(60, half.with(PILE, List.of()).courses().get(0).days().size());
        assertEquals(60, half.gain(half.with(PILE, List.of(new Event.Turn(20)))).days());
        assertEquals(DAYS, ALONE.cut(DAYS).days());
        assertEquals(DAYS, ALONE.cut(DAYS + 1).days(), "it has no more");
    }

    @Test
    @DisplayName("counts the days by which the other was begun earlier as won")
    void earlier() {
        Ensemble other = ALONE.with(PILE, List.of(new Event.Turn(20)));
        assertEquals(
                ALONE.gain(other).daysWon().likely() + 7,
                ALONE.gain(other, 7).daysWon().likely(),
                1e-9);
    }

    /** Forty litres through sixty days at -15 °C, and the same at 12 °C. */
    @Test
    @DisplayName("tells whether it freezes through, with and without")
    void frost() {
        PileState small = PileState.cube(Matter.of(0.04, 500, 0.58, 0.02, 0.10, 0.80, 60, 4), 5, Envelope.slatted());
        Weather cold = Weather.constant(-15, 60);
        Comparison out = new Comparison(small, cold, List.of(), 60, Spread.usual(), 8);
        Ensemble in = out.instead(small, Weather.constant(12, 60), List.of());
        assertEquals(new Gain.Frost(0, 1), out.gain(in).frost());
        assertEquals(new Gain.Frost(1, 1), out.gain(out.alone()).frost());
    }

    @Test
    @DisplayName("is warmer for longer in straw and gets on sooner")
    void straw() {
        Envelope kept = Envelope.slatted().topped(Layer.straw(0.25)).wrapped(Layer.straw(0.25));
        Gain straw = gain(new Event.Cover(0, kept));
        assertTrue(straw.moreWarmDays().likely() > 5, straw.toString());
        assertTrue(straw.warmerC().likely() > 2, straw.toString());
        assertTrue(straw.daysWon().likely() > 0, straw.toString());
        assertTrue(straw.with().chance() >= straw.without().chance());
    }

    @Test
    @DisplayName("is colder with snow in it and loses days")
    void snow() {
        Gain snow = gain(new Event.SnowIn(30, 80, -5));
        assertTrue(snow.moreWarmDays().likely() <= 0, snow.toString());
        assertTrue(snow.warmerC().likely() < 0, snow.toString());
        assertTrue(snow.daysWon().likely() < 0, snow.toString());
        assertTrue(snow.useless() || snow.daysWon().high() > 0);
    }

    @Test
    @DisplayName("wins in warmth what the means of the pairs differ by")
    void means() {
        Ensemble other = ALONE.with(PILE, List.of(new Event.Turn(20)));
        Range own = ALONE.pairs(
                other,
                (a, b) -> (b.days().stream().mapToDouble(Day::coreC).sum()
                                - a.days().stream().mapToDouble(Day::coreC).sum())
                        / DAYS);
        assertEquals(own.likely(), ALONE.gain(other).warmerC().likely(), 1e-9);
        assertEquals(own.low(), ALONE.gain(other).warmerC().low(), 1e-9);
    }

    /** The same courses so many days ahead, or behind, from the second day on. */
    private static Ensemble shifted(int days) {
        return new Ensemble(ALONE.alone().courses().stream()
                .map(c -> new Course(
                        IntStream.range(0, DAYS)
                                .mapToObj(d -> c.days().get(d == 0 ? 0 : Math.max(0, Math.min(DAYS - 1, d + days))))
                                .toList(),
                        c.ledger()))
                .toList());
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 10, 25, -1, -10, -25})
    @DisplayName("wins the days that it is ahead and loses those that it is behind")
    void shift(int days) {
        Range won = ALONE.gain(shifted(days)).daysWon();
        assertEquals(days, won.low(), 1e-6);
        assertEquals(days, won.likely(), 1e-6);
        assertEquals(days, won.high(), 1e-6);
    }

    /** The same courses, but for the food, which goes evenly by the logarithm, so far that this much has gone in the end. */
    private static Ensemble evenly(Ensemble of, ToDoubleFunction<Course> farInTheEnd) {
        return new Ensemble(of.courses().stream()
                .map(c -> {
                    double aDay = farInTheEnd.applyAsDouble(c) / (c.days().size() - 1);
                    double first = c.days().get(0).foodLeftShare();
                    return new Course(
                            c.days().stream()
                                    .map(d -> withFood(d, first * Math.exp(-aDay * d.day())))
                                    .toList(),
                            c.ledger());
                })
                .toList());
    }

    private static double far(Course course) {
        return Math.log(course.days().get(0).foodLeftShare() / course.last().foodLeftShare());
    }

    private static Day withFood(Day d, double left) {
        return new Day(
                d.day(),
                d.coreC(),
                d.midC(),
                d.skinC(),
                d.outdoorC(),
                d.iceShare(),
                d.coreIceShare(),
                d.moistureCore(),
                d.moistureMean(),
                d.oxygenCore(),
                d.airSpaceCore(),
                d.phCore(),
                d.carbonToNitrogen(),
                d.volumeM3(),
                d.heightM(),
                d.massKg(),
                d.dryKg(),
                left,
                d.nitrogenLostShare(),
                d.heatW(),
                d.respiration());
    }

    @ParameterizedTest(name = "{0} times as fast: on day {1}")
    @CsvSource({"2, 29.5", "4, 14.75", "1, 59"})
    @DisplayName("wins the days to its end that the other does not need, parts of a day told")
    void partsOfADay(double times, double day) {
        Comparison mild = new Comparison(PILE, Weather.constant(10, 70), List.of(), 60, Spread.measured(), 4);
        Range won = mild.gain(evenly(mild.alone(), c -> times * far(c))).daysWon();
        assertEquals(59 - day, won.low(), 1e-6);
        assertEquals(59 - day, won.high(), 1e-6);
    }

    @Test
    @DisplayName(
            "wins nothing where neither gets on, and no more than a day against one that has come to its end on the first")
    void asleep() {
        PileState frozen = PileState.cube(Matter.of(0.3, 500, 0.58, 0.25, 0.40, 0.25, 30, 4), -15, Envelope.bare());
        Comparison cold = new Comparison(frozen, Weather.constant(-20, 60), List.of(), 41, Spread.measured(), 4);
        double most = cold.alone().range(ComparisonTest::far).high();
        assertTrue(most < 0.0005, "it sleeps: " + most);
        Range nothing = new Range(0, 0, 0);
        assertEquals(nothing, cold.gain(evenly(cold.alone(), c -> 0.0009)).daysWon());
        Range woken = cold.gain(evenly(cold.alone(), c -> 0.5)).daysWon();
        assertEquals(1, woken.low(), 1e-6);
        assertEquals(1, woken.high(), 1e-6);
    }

    @Test
    @DisplayName("says whether it is at 40 °C already")
    void already() {
        PileState hot = PileState.cube(PILE.matter(), 60, Envelope.slatted());
        Comparison warm = new Comparison(hot, Weather.constant(10, 10), List.of(), 5, Spread.measured(), 4);
        Gain gain = warm.gain(warm.alone());
        assertTrue(gain.without().already() && gain.with().already(), gain.toString());
        assertEquals(1, gain.without().chance());
        assertEquals(new Range(0, 0, 0), gain.without().days());
        assertFalse(gain().without().already());
    }

    @Test
    @DisplayName("tells the day on which the core is back at 40 °C, and the end where it never is")
    void back() {
        Gain.Back without = gain().without();
        double first = ALONE.alone()
                .range(c -> c.days().stream()
                        .filter(d -> d.coreC() >= 40)
                        .findFirst()
                        .map(d -> (double) d.day())
                        .orElse((double) DAYS))
                .likely();
        assertEquals(first, without.days().likely(), 1e-9);
        Weather frost = Weather.constant(-10, DAYS);
        PileState spent = PileState.cube(Matter.of(0.3, 500, 0.58, 0.01, 0.05, 0.5, 30, 4), 2, Envelope.bare());
        Comparison cold = new Comparison(spent, frost, List.of(), 40, Spread.measured(), 4);
        Gain.Back never = cold.gain(cold.alone()).without();
        assertEquals(new Gain.Back(false, 0, new Range(40, 40, 40)), never);
    }

    @Test
    @DisplayName("has worked through that part of its food which is no longer there")
    void worked() {
        double left = ALONE.alone()
                .range(c -> c.last().foodLeftShare() / c.days().get(0).foodLeftShare())
                .likely();
        assertEquals(1 - left, gain().workedAlone().likely(), 1e-3);
    }

    @Test
    @DisplayName("keeps what is done anyway")
    void anyway() {
        Event turn = new Event.Turn(10);
        Comparison turned = new Comparison(PILE, WINTER, List.of(turn), DAYS, Spread.usual(), 4);
        Comparison not = new Comparison(PILE, WINTER, List.of(), DAYS, Spread.usual(), 4);
        assertEquals(turned.alone(), not.with(PILE, List.of(turn)));
        assertEquals(turned.alone(), turned.with(PILE, List.of()));
    }
}
