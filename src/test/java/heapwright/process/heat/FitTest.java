package heapwright.process.heat;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A run that is made to meet a measured core. */
class FitTest {

    /** Every rate that is tried, in no order that matters (docs/method/heat.md: 0.02 to 3). */
    private static final double[] RATES = {0.02, 0.05, 0.1, 0.18, 0.3, 0.5, 0.7, 0.85, 1, 1.2, 1.5, 2, 3};

    private static final Weather AUTUMN = Weather.monthly(Fixtures.NORTHERN, 290, 200);
    private static final PileState TOLD = PileState.cube(Fixtures.good(1), 12, Envelope.slatted());

    /** Kitchen waste in a mild spell: within weeks its food is spent, and faster is then colder. */
    private static final PileState RICH = PileState.cube(Fixtures.rich(1), 20, Envelope.slatted());

    /** Lies cold; its microbes have grown little. */
    private static final PileState COLD = PileState.cube(Fixtures.good(0.5), 3, Envelope.slatted());

    private static Run run(PileState start, Weather weather, int lived) {
        Run run = new Run(start, weather, List.of(), Fixtures.STANDARD, Run.SHELLS);
        while (run.day < lived) {
            run.live();
        }
        return run;
    }

    private static double cost(Run from, double rate, CoreReading reading) {
        Run run = new Run(from);
        run.rateTimes = rate;
        while (run.day <= reading.day()) {
            run.live();
        }
        return Math.pow(run.s.temperature[0] - reading.celsius(), 2) + Math.pow(4 * Math.log(rate), 2);
    }

    private static double rate(Run run, CoreReading reading) {
        return new Fit(run)
                .search(run, reading, List.of())
                .rate(run.lossTimes, Fit.steady(run, reading))
                .rate();
    }

    /** The search ends early where nothing can be nearer; it must find what a search through all rates finds. */
    private static void findsTheBest(Run run, CoreReading reading) {
        int day = run.day;
        double best = DoubleStream.of(RATES)
                .boxed()
                .min(Comparator.comparingDouble(rate -> cost(run, rate, reading)))
                .orElseThrow();
        assertEquals(best, rate(run, reading), reading.toString());
        assertEquals(day, run.day, "the run itself does not go on");
    }

    @ParameterizedTest
    @ValueSource(doubles = {2, 8, 15, 24, 33, 42, 50, 58, 66})
    void theRateIsTheBestOfAll(double celsius) {
        for (int day : new int[] {1, 4, 15}) {
            findsTheBest(run(TOLD, AUTUMN, 0), new CoreReading(day, celsius));
        }
    }

    /** A pile that is told bare but keeps its heat twice as well: no rate meets it in its fourth week. */
    @Test
    void whereNoRateMeetsAReadingTheLossIsFound() {
        Run snug = run(TOLD.losing(0.5), AUTUMN, 30);
        Run told = run(TOLD, AUTUMN, 4);
        CoreReading reading = new CoreReading(29, snug.s.temperature[0]);
        Search.Match match = new Fit(told).match(told, reading, List.of());
        assertTrue(match.loss() >= 0.3 && match.loss() < 0.8, match.toString());
        Run fitted = new Run(told);
        fitted.rateTimes = match.rate();
        fitted.lossTimes = match.loss();
        fitted.liveOn(30, List.of(), day -> {});
        assertEquals(reading.celsius(), fitted.s.temperature[0], 10, match.toString());
    }

    /** A miss, a rate and a loss by a factor e count as 1 and 4 and 4 K (docs/method/heat.md, section 7). */
    private static double cost(Run from, double rate, double loss, CoreReading reading) {
        Run run = new Run(from);
        run.lossTimes = loss;
        return cost(run, rate, reading) + Math.pow(4 * Math.log(loss), 2);
    }

    /** Neither leaving the loss as it was nor any other that is tried, with any of four rates, would be better. */
    @ParameterizedTest
    @CsvSource({
        "0.4, 12, 25", "0.4, 29, 31", "0.5, 16, 38", "0.5, 29, 70", "0.7, 22, 31", "0.7, 29, 60", "1, 12, 70",
        "1, 16, 38", "1, 29, 50", "1, 12, 45", "1.5, 12, 38", "1.5, 12, 70", "1.5, 16, 70", "2, 12, 25"
    })
    void theLossIsTheBestOfThoseTried(double learned, int day, double celsius) {
        Run told = run(TOLD, AUTUMN, 4);
        told.lossTimes = learned;
        CoreReading reading = new CoreReading(day, celsius);
        double rate = rate(told, reading);
        Search.Match match = new Fit(told).match(told, reading, List.of());
        assertEquals(learned, told.lossTimes, "the run itself is left alone");
        double found = cost(told, match.rate(), match.loss(), reading);
        assertTrue(found <= cost(told, rate, learned, reading) + 1e-9, "the loss as it was: " + match);
        Run plain = new Run(told);
        plain.rateTimes = rate;
        plain.liveOn(day + 1, List.of(), one -> {});
        double left = plain.s.temperature[0] - celsius;
        if (Math.abs(left) <= 8 || left > 0 && celsius >= 40) {
            assertEquals(learned, match.loss(), "near enough, or warm");
            return;
        }
        double[] factors = left < 0 ? new double[] {0.8, 0.6, 0.4} : new double[] {1.3, 1.7, 2.5};
        for (double factor : factors) {
            double loss = Math.max(0.3, Math.min(2.5, learned * factor));
            for (double other : new double[] {rate, 0.6, 1, 1.6}) {
                assertTrue(found <= cost(told, other, loss, reading) + 1e-9, other + " and " + loss + ": " + match);
            }
        }
    }

    /** Two days tell a slow loss from a fast decay, one does not. */
    @Test
    void theLossIsLookedAtFromTwoDaysOn() {
        Run from = run(TOLD, AUTUMN, 40);
        Fit fit = new Fit(from);
        assertEquals(1, fit.match(from, new CoreReading(41, 75), List.of()).loss());
        assertTrue(fit.match(from, new CoreReading(42, 75), List.of()).loss() < 1);
    }

    /** A core of 40 °C is too warm for a pile to be called draughty, a hair less is not. */
    @Test
    void aWarmPileIsNotCalledDraughty() {
        PileState small = PileState.cube(Fixtures.good(0.3), 12, Envelope.slatted());
        Run hot = run(small.losing(0.3), Weather.constant(8, 20), 8);
        hot.lossTimes = 1;
        Fit fit = new Fit(hot);
        assertEquals(1, fit.match(hot, new CoreReading(11, 40), List.of()).loss());
        assertTrue(fit.match(hot, new CoreReading(11, 39.9), List.of()).loss() > 1);
    }

    @Test
    void aRateThatMeetsItLeavesTheLossAlone() {
        Run from = run(TOLD, AUTUMN, 0);
        CoreReading reading = new CoreReading(12, run(TOLD, AUTUMN, 13).s.temperature[0]);
        assertEquals(new Search.Match(1, 1, 0), new Fit(from).match(from, reading, List.of()));
    }

    /** Over a day a slow loss and a fast decay look the same; and a hot pile is not called draughty. */
    @Test
    void theLossIsLeftAloneWhereItCannotBeTold() {
        Run day = run(TOLD, AUTUMN, 40);
        assertEquals(
                1, new Fit(day).match(day, new CoreReading(40, 55), List.of()).loss());
        Run hot = run(TOLD.losing(0.3), AUTUMN, 8);
        hot.lossTimes = 1;
        assertEquals(
                1, new Fit(hot).match(hot, new CoreReading(14, 45), List.of()).loss());
    }

    @ParameterizedTest
    @ValueSource(doubles = {16, 30, 36, 38, 40, 43, 50, 60})
    void soItIsWhereAFasterRateEndsInAColderCore(double celsius) {
        Weather mild = Weather.constant(15, 60);
        findsTheBest(run(RICH, mild, 0), new CoreReading(20, celsius));
        findsTheBest(run(RICH, mild, 18), new CoreReading(19, celsius));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 3, 3.5, 4, 5, 7, 12, 39, 41})
    void soItIsFromOneColdDayToTheNext(double celsius) {
        Weather cool = Weather.constant(4, 60);
        findsTheBest(run(COLD, cool, 0), new CoreReading(0, celsius));
        findsTheBest(run(COLD, cool, 2), new CoreReading(3, celsius));
        findsTheBest(run(COLD, cool, 2), new CoreReading(4, celsius));
    }

    /** All of the shift at the core, a fifth of it at the skin, evenly less between. */
    @ParameterizedTest
    @ValueSource(doubles = {8, -8})
    void whatIsStillMissingIsAddedLessFurtherOut(double shift) {
        Run run = run(TOLD, AUTUMN, 1);
        double[] before = run.s.temperature.clone();
        double heat = Shells.sum(run.s.heat);
        run.tally.heatBrought = 11;
        Fit.nudge(run, before[0] + shift);
        for (int i = 0; i < Run.SHELLS; i++) {
            double expected = before[i] + shift * (1 - 0.8 * i / (Run.SHELLS - 1));
            assertEquals(expected, run.s.temperature[i], 1e-9, "shell " + i);
        }
        assertEquals(before[7] + shift / 5, run.s.temperature[7], 1e-9);
        assertEquals(Shells.sum(run.s.heat) - heat, run.tally.heatBrought - 11, 1e-3);
    }

    /** Less than a twentieth of a kelvin is no miss, in no shell. */
    @Test
    void aHairIsLeftAlone() {
        Run run = run(TOLD, AUTUMN, 1);
        double[] before = run.s.temperature.clone();
        Fit.nudge(run, before[0] + 0.049);
        assertArrayEquals(before, run.s.temperature, 1e-12);
        Fit.nudge(run, before[0] + 0.1);
        assertEquals(before[0] + 0.1, run.s.temperature[0], 1e-9);
        assertEquals(before[7], run.s.temperature[7], 1e-12, "a fiftieth at the skin");
    }

    /** Two readings a day apart, both below 40 °C. */
    @Test
    void aDayInTheCoolIsSteady() {
        Run from = run(TOLD, Weather.constant(8, 20), 5);
        from.s.temperature[0] = 39.9;
        assertTrue(Fit.steady(from, new CoreReading(6, 39.9)));
        assertFalse(Fit.steady(from, new CoreReading(7, 39.9)), "food may run out in two");
        assertFalse(Fit.steady(from, new CoreReading(6, 40)), "the reading");
        from.s.temperature[0] = 40;
        assertFalse(Fit.steady(from, new CoreReading(6, 39.9)), "the reading before");
    }
}
