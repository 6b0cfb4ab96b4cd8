package heapwright.process.heat;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ensembles and outlooks of courses written by hand, and what a spread does to the samples. */
class SamplesTest {

    private static Day day(int number, double core, double outdoor, double ice, double left, double respiration) {
        return new Day(
                number,
                core,
                core,
                core,
                outdoor,
                ice,
                ice,
                0.5,
                0.5,
                20,
                0.4,
                7,
                20,
                left,
                left,
                400 * left,
                200,
                0.5,
                left / 10,
                0,
                respiration);
    }

    private static Course course(Day... days) {
        return new Course(List.of(days), null);
    }

    /** Three samples of three days; the second freezes, the first and the third are ready on day 0 and 2, and then rest. */
    private static final Ensemble THREE = new Ensemble(List.of(
            course(day(0, 60, 0, 0, 1, 3), day(1, 56, 0, 0, 0.9, 3), day(2, 30, 0, 0, 0.5, 3)),
            course(day(0, 10, 0, 0, 1, 9), day(1, 0, 0, 0.6, 1, 9), day(2, -2, 0, 1, 1, 9)),
            course(day(0, 42, 0, 0, 0.8, 9), day(1, 41, 0, 0, 0.8, 9), day(2, 55, 0, 0, 0.6, 4))));

    /** Of three figures the tenth percentile lies a fifth of the way from the lowest to the middle one. */
    private static Range range(double low, double mid, double high) {
        return new Range(low + 0.2 * (mid - low), mid, high - 0.2 * (high - mid));
    }

    /** The same of temperatures, whose likely value is the mean of the middle half: of three, of all. */
    private static Range warmth(double low, double mid, double high) {
        Range range = range(low, mid, high);
        return new Range(range.low(), (low + mid + high) / 3, range.high());
    }

    private static void near(Range expected, Range told) {
        assertEquals(expected.low(), told.low(), 1e-9, told.toString());
        assertEquals(expected.likely(), told.likely(), 1e-9, told.toString());
        assertEquals(expected.high(), told.high(), 1e-9, told.toString());
    }

    @Test
    void anOutlookIsTheFiguresOfItsCourses() {
        Outlook outlook = Outlook.of(THREE, new Readiness(4, 25, 2));
        assertEquals(1.0 / 3, outlook.freezesThrough(), 1e-12);
        near(range(0, 2, 3), outlook.daysAbove40());
        near(range(0, 1, 2), outlook.daysAbove55());
        near(range(2, 4, 5), outlook.readyDay());
        assertEquals(1.0 / 3, outlook.readyChance(), 1e-12, "day 2 is within the run, day 4 is not");
        near(range(0.5, 0.75, 1), outlook.massLeft());
        near(range(0.5, 0.75, 1), outlook.volumeLeft());
        near(range(0.05, 0.06, 0.1), outlook.nitrogenLost());
        near(warmth(10, 55, 60), outlook.peakC());
        assertEquals(0, Outlook.of(THREE, new Readiness(4, 25, 3)).readyChance(), "day 3 is past its three days");
    }

    /** Three samples that agree at 50 °C, 50 K above outdoors: the peak may be 5 K higher (MASON06). */
    @Test
    void thePeakIsNoSurerThanTheModel() {
        Course same = course(day(0, 50, 0, 0, 1, 9), day(1, 50, 0, 0, 1, 9));
        Range peak = Outlook.of(new Ensemble(List.of(same, same, same)), Readiness.standard())
                .peakC();
        assertEquals(new Range(50, 50, 55), peak);
    }

    /** 5 K each way from 30 K above outdoors on, a sixth of the excess below; colder than outdoors counts as well. */
    @ParameterizedTest
    @CsvSource({"50, 0, 5", "30, 0, 5", "15, 0, 2.5", "6, 0, 1", "-12, 0, 2", "0, 0, 0", "20, 8, 2"})
    void theBandOfTheCoreIsNoNarrowerThanTheModelErrs(double core, double outdoor, double least) {
        Course same = course(day(0, core, outdoor, 0, 1, 9));
        Bands bands = new Ensemble(List.of(same, same)).core();
        assertEquals(core - least, bands.low()[0], 1e-9);
        assertEquals(core, bands.likely()[0]);
        assertEquals(core + least, bands.high()[0], 1e-9);
    }

    @Test
    void aWiderBandStaysAsItIs() {
        Bands bands = THREE.core();
        near(warmth(10, 42, 60), new Range(bands.low()[0], bands.likely()[0], bands.high()[0]));
        assertEquals(2.0 / 3, THREE.share(c -> c.peakC() > 50), 1e-12);
        near(range(-2, 30, 55), THREE.range(c -> c.last().coreC()));
    }

    private static final PileState PILE = PileState.cube(Fixtures.good(1), 12, Envelope.slatted());
    private static final Weather MILD = Weather.constant(10, 5);

    private static Ensemble run(Spread spread, int samples) {
        return Ensemble.run(PILE, MILD, List.of(), 3, Fixtures.STANDARD, spread, samples);
    }

    private static double[] sorted(Ensemble ensemble, ToDoubleFunction<Day> figure) {
        return ensemble.courses().stream()
                .mapToDouble(c -> figure.applyAsDouble(c.days().get(0)))
                .sorted()
                .toArray();
    }

    /** The figure of the first day over 32 samples lies evenly between the two ends. */
    private static void even(Spread spread, ToDoubleFunction<Day> figure, double low, double high, double within) {
        double[] all = sorted(run(spread, 32), figure);
        for (int i = 0; i < 32; i++) {
            double expected = low + (high - low) * (i + 0.5) / 32;
            assertEquals(expected, all[i], within + Math.abs(high - low) / 32, i + " of " + Arrays.toString(all));
        }
    }

    /** One spread at a time, in the order of {@link Spread}; the passage of air as a factor, the others as widths. */
    private static Spread only(int which, double width) {
        double[] w = new double[11];
        w[8] = 1;
        w[which] = width;
        return new Spread(w[0], w[1], w[2], w[3], w[4], w[5], w[6], w[7], w[8], w[9], w[10]);
    }

    @Test
    void withoutSpreadEverySampleIsThePileItself() {
        Course alone = Fixtures.run(PILE, MILD, 3);
        for (Course course : run(Spread.none(), 3).courses()) {
            for (int d = 0; d < 3; d++) {
                assertEquals(alone.days().get(d).coreC(), course.days().get(d).coreC(), 1e-6);
                assertEquals(alone.days().get(d).massKg(), course.days().get(d).massKg(), 1e-6);
                assertEquals(
                        alone.days().get(d).carbonToNitrogen(),
                        course.days().get(d).carbonToNitrogen(),
                        1e-6);
            }
        }
    }

    /** 500 kg at 58 %; on the first day decay and draught take less than a kilogram or two, and half a point. */
    @Test
    void whatIsNotKnownOfTheStuffIsSpreadEvenly() {
        even(only(0, 0.05), Day::moistureMean, 0.53, 0.63, 0.005);
        even(only(0, 0.05), Day::massKg, 500, 500, 3);
        even(only(1, 0.10), Day::massKg, 450, 550, 1.5);
        even(only(1, 0.10), Day::moistureMean, 0.58, 0.58, 0.005);
        even(only(1, 0.10), Day::carbonToNitrogen, 30, 30, 0.3);
    }

    @Test
    void outdoorsIsWarmerOrColderThroughout() {
        even(only(9, 2), Day::outdoorC, 8, 12, 0);
        for (Course course : run(only(9, 2), 4).courses()) {
            assertEquals(course.days().get(0).outdoorC(), course.days().get(2).outdoorC(), 1e-12);
        }
    }

    /** Twice the nitrogen is half the C:N: evenly between 30 / 1.2 and 30 / 0.8 by its inverse. */
    @Test
    void nitrogenIsSpreadByItsMass() {
        even(only(3, 0.2), d -> 30 / d.carbonToNitrogen(), 0.8, 1.2, 0.02);
    }

    @Test
    void mineralNitrogenIsSpreadWithAllOfIt() {
        Matter fed = new Matter(210, 290, 0.25, 0.40, 0.25, 5, 5, 1, 4, 0.1);
        Spread both = new Spread(0, 0.15, 0, 0.2, 0, 0, 0, 0, 1, 0, 0);
        Ensemble samples = Ensemble.run(PILE.with(fed), MILD, List.of(), 1, Fixtures.STANDARD, both, 8);
        assertEquals(8, samples.courses().size(), "in no sample is more of it mineral than there is");
    }

    /** What is quicker breathes more in a warm sample: by the rates of the two pools. */
    @Test
    void theQuickPartTakesFromTheSlowOne() {
        Constants.Kinetics k = Fixtures.STANDARD.kinetics();
        double usual = 0.25 * k.quickPerDay() + 0.40 * k.slowPerDay() + 0.25 * k.ligninPerDay();
        double more = 0.05 * (k.quickPerDay() - k.slowPerDay());
        double per = sorted(run(Spread.none(), 2), Day::respiration)[0] / usual;
        even(only(2, 0.2), Day::respiration, per * (usual - more), per * (usual + more), 0.06 * per * usual);
    }

    @Test
    void ratesAreSpreadByTheirLogarithm() {
        double usual = sorted(run(Spread.none(), 2), Day::respiration)[0];
        even(only(5, 0.4), d -> Math.log(d.respiration() / usual), -0.4, 0.4, 0.03);
    }

    /** What a sample is not sure of lies between the two ends of its spread, and so does the core of the first day; both are come near to. */
    private static void between(Spread spread, Course low, Course high) {
        double[] all = run(spread, 64).courses().stream()
                .mapToDouble(c -> c.days().get(0).coreC())
                .sorted()
                .toArray();
        double least = Math.min(low.days().get(0).coreC(), high.days().get(0).coreC());
        double most = Math.max(low.days().get(0).coreC(), high.days().get(0).coreC());
        double hair = 1e-3;
        String told = least + " to " + most + ": " + Arrays.toString(all);
        assertTrue(all[0] >= least - hair && all[63] <= most + hair, told);
        assertTrue(all[63] - all[0] > 0.9 * (most - least), told);
    }

    private static Course course(PileState pile, Constants constants) {
        return HeatModel.run(pile, MILD, List.of(), 1, constants);
    }

    @Test
    void noSampleLiesBeyondTheEndsOfASpread() {
        Constants.Kinetics k = Fixtures.STANDARD.kinetics();
        Constants.Transport t = Fixtures.STANDARD.transport();
        Matter m = PILE.matter();
        between(
                only(4, 0.5),
                course(PILE.with(m.withPieces(4 * Math.exp(-0.5))), Fixtures.STANDARD),
                course(PILE.with(m.withPieces(4 * Math.exp(0.5))), Fixtures.STANDARD));
        between(
                only(6, 5),
                course(PILE, Fixtures.STANDARD.with(k.varied(1, 1, k.shiftC() - 5))),
                course(PILE, Fixtures.STANDARD.with(k.varied(1, 1, k.shiftC() + 5))));
        between(
                only(7, 0.5),
                course(PILE, Fixtures.STANDARD.with(t.varied(0.5, 1))),
                course(PILE, Fixtures.STANDARD.with(t.varied(1.5, 1))));
        between(
                only(8, 5),
                course(PILE, Fixtures.STANDARD.with(t.varied(1, 0.2))),
                course(PILE, Fixtures.STANDARD.with(t.varied(1, 5))));
    }

    private static double spreadOf(Spread spread) {
        Range core = run(spread, 32).range(c -> c.last().coreC());
        return core.high() - core.low();
    }

    @ParameterizedTest
    @CsvSource({"4, 0.5", "6, 5", "7, 0.5", "8, 5", "10, 4"})
    void alsoPiecesCurveConductionAirAndUnrestMatter(int which, double width) {
        double wide = spreadOf(only(which, width));
        double narrow = spreadOf(only(which, which == 8 ? 1 + (width - 1) / 10 : width / 10));
        assertTrue(wide > 0.02, "spread of the core: " + wide);
        assertTrue(narrow < wide / 2, narrow + " against " + wide);
    }

    @Test
    void unrestIsAnotherInEverySampleAndTheSameAgain() {
        Ensemble one = run(only(10, 4), 4);
        assertEquals(
                4,
                one.courses().stream()
                        .map(c -> c.days().get(0).outdoorC())
                        .distinct()
                        .count());
        assertEquals(one, run(only(10, 4), 4));
    }

    /** Some now and the rest later are all of them, so that what is known already need not be run again. */
    @Test
    void samplesCanBeTakenInParts() {
        Ensemble whole = run(Spread.usual(), 8);
        Ensemble begun = run(Spread.usual(), 3);
        Ensemble rest = Ensemble.run(PILE, MILD, List.of(), 3, Fixtures.STANDARD, Spread.usual(), 3, 8);
        assertEquals(5, rest.courses().size());
        assertEquals(whole, begun.and(rest));
        assertEquals(begun, whole.first(3));
        assertEquals(
                8,
                whole.courses().stream().map(c -> c.last().massKg()).distinct().count(),
                "no sample twice");
        Ensemble cut = whole.cut(2);
        assertEquals(8, cut.courses().size());
        for (int i = 0; i < 8; i++) {
            assertEquals(
                    whole.courses().get(i).days().subList(0, 2),
                    cut.courses().get(i).days());
        }
        assertEquals(whole, whole.cut(9), "there are only three days");
        assertThrows(
                IllegalArgumentException.class,
                () -> Ensemble.run(PILE, MILD, List.of(), 3, Fixtures.STANDARD, Spread.none(), 3, 3));
        assertThrows(
                IllegalArgumentException.class,
                () -> Ensemble.run(PILE, MILD, List.of(), 3, Fixtures.STANDARD, Spread.none(), 3, 4097));
        assertEquals(
                1,
                Ensemble.run(PILE, MILD, List.of(), 1, Fixtures.STANDARD, Spread.none(), 3, 4)
                        .courses()
                        .size());
    }

    @Test
    void samplesAreTwoToFourThousand() {
        assertThrows(IllegalArgumentException.class, () -> run(Spread.none(), 1));
        assertEquals(2, run(Spread.none(), 2).courses().size());
    }

    /** Nothing is drier than 5 % nor wetter than 92 %, however unsure it is. */
    @Test
    void noSampleIsDryAsDustOrSoup() {
        double[] all = sorted(run(only(0, 0.9), 64), Day::moistureMean);
        assertEquals(0.05, all[0], 0.01, Arrays.toString(all));
        assertTrue(all[63] < 0.925, "and what is too wet drains: " + Arrays.toString(all));
    }

    @Test
    void variedConstantsAreMultiplied() {
        Constants.Kinetics k = Fixtures.STANDARD.kinetics();
        Constants.Kinetics varied = k.varied(2, 3, 1.5);
        assertArrayEquals(
                new double[] {2 * k.quickPerDay(), 3 * k.slowPerDay(), 3 * k.ligninPerDay(), 1.5},
                new double[] {varied.quickPerDay(), varied.slowPerDay(), varied.ligninPerDay(), varied.shiftC()},
                1e-12);
        Constants.Transport t = Fixtures.STANDARD.transport();
        Constants.Transport other = t.varied(2, 3);
        assertArrayEquals(
                new double[] {
                    2 * t.conductivityBase(),
                    2 * t.conductivityWater(),
                    2 * t.conductivityIce(),
                    2 * t.conductivityDry(),
                    3 * t.permeability(),
                    t.heatRecovery()
                },
                new double[] {
                    other.conductivityBase(),
                    other.conductivityWater(),
                    other.conductivityIce(),
                    other.conductivityDry(),
                    other.permeability(),
                    other.heatRecovery()
                },
                1e-15);
        Constants both = Fixtures.STANDARD.with(varied).with(other);
        assertEquals(varied, both.kinetics());
        assertEquals(other, both.transport());
        assertEquals(Fixtures.STANDARD.nitrogen(), both.nitrogen());
    }

    /** Between two points of a table, a quarter of a kelvin apart, on the line; beyond its ends on the last line. */
    @Test
    void curvesAreLinesBetweenTheirPoints() {
        for (double c : new double[] {-30, 0, 20, 55, 95}) {
            double slope = (Curves.water(c + 0.25) - Curves.water(c)) * 4;
            assertEquals(slope, Curves.waterSlope(c + 0.1), 1e-9);
            assertEquals(Curves.water(c) + slope * 0.1, Curves.water(c + 0.1), 1e-12);
            assertEquals(Curves.water(c) * (2.501e6 + 1860 * c), Curves.vapourHeat(c), 1e-6 * Curves.vapourHeat(c));
            assertEquals(Factors.temperature(c), Curves.rate(c), 1e-12);
        }
        assertEquals(
                Curves.mesophiles(100) + 10 * Curves.mesophilesSlope(Curves.index(99.9)), Curves.mesophiles(110), 1e-9);
        assertEquals(Curves.water(-60) - 5 * Curves.waterSlope(-60), Curves.water(-65), 1e-12);
        assertEquals(Curves.waterSlope(-60), Curves.waterSlope(-70));
        IntStream.range(-55, 99).forEach(c -> assertTrue(Curves.water(c + 1) > Curves.water(c), "at " + c));
        for (double c : new double[] {-10.1, 48.3, 61.9}) {
            int place = Curves.index(c);
            double beyond = Curves.beyond(c, place);
            assertEquals(Curves.mesophiles(c), Curves.mesophiles(place, beyond), "looked up once, used for several");
            assertEquals(Curves.thermophiles(c), Curves.thermophiles(place, beyond));
            assertEquals(Curves.vapourHeat(c), Curves.vapourHeat(place, beyond));
        }
        double damp = Factors.moistureAround(0.35);
        double step = Factors.moistureAround(0.3525) - damp;
        assertEquals(damp, Curves.moisture(0.35), 1e-9, "one of 401 points");
        assertEquals(damp + 0.4 * step, Curves.moisture(0.351), 1e-9, "two fifths of the way to the next");
    }

    @Test
    void percentilesReachFromTheLowestToTheHighest() {
        assertEquals(3, Bands.percentile(new double[] {1, 2, 3}, 1));
        assertEquals(1, Bands.percentile(new double[] {1, 2, 3}, 0));
        assertEquals(7, Bands.percentile(new double[] {7}, 0.9));
    }

    /** Of eight the outer two on either side are left out, of seven one. */
    @Test
    void theMiddleHalfIsWithoutTheOuterQuarters() {
        assertEquals((3 + 4 + 50 + 60) / 4.0, Bands.middle(new double[] {-900, 2, 3, 4, 50, 60, 70, 8000}), 1e-12);
        assertEquals((2 + 3 + 4 + 50 + 60) / 5.0, Bands.middle(new double[] {-900, 2, 3, 4, 50, 60, 8000}), 1e-12);
        assertEquals(7, Bands.middle(new double[] {7}));
    }

    /** Four days to the full width: none of it on the first, a quarter on the second, all from the fifth on. */
    @Test
    void whatIsMeasuredTodayIsSureTodayAndLessSoEachDay() {
        double[] likely = {10, 10, 20, 20, 30, 30};
        Bands known = new Bands(new double[] {6, 6, 12, 16, 20, 21}, likely, new double[] {18, 18, 28, 24, 50, 52});
        Bands growing = known.growing(4);
        assertArrayEquals(new double[] {10, 9, 16, 17, 20, 21}, growing.low(), 1e-12);
        assertArrayEquals(likely, growing.likely(), 1e-12);
        assertArrayEquals(new double[] {10, 12, 24, 23, 50, 52}, growing.high(), 1e-12);
        assertEquals(6, known.low()[0], "the bands themselves are left as they were");
        assertArrayEquals(
                new double[] {10, 9.5, 18},
                new Bands(new double[] {6, 6, 12}, new double[] {10, 10, 20}, new double[] {18, 18, 28})
                        .growing(8)
                        .low(),
                1e-12,
                "shorter than that");
    }

    /** Outdoors 85 % of what saturated air holds; a kilogram of dry air takes 1,006 J a kelvin. */
    @Test
    void outdoorAirIsHumid() {
        Outdoors out = Outdoors.of(20, 5);
        assertEquals(0.85 * Curves.water(20), out.airWater(), 1e-12);
        assertEquals(0.85 * Curves.vapourHeat(20), out.vapourHeat(), 1e-9);
        assertEquals(20 * 1006 + 0.85 * Curves.vapourHeat(20), out.airHeat(), 1e-9);
        assertEquals(5, out.groundC());
    }

    @Test
    void aPileIsAsHighAsItsVolumeOnItsGround() {
        PileState pile = new PileState(2, 1.5, Fixtures.good(3.6), 10, 5, Envelope.bare());
        assertEquals(1.2, pile.heightM(), 1e-12);
        assertEquals(0.6, pile.with(Fixtures.good(1.8)).heightM(), 1e-12);
        assertEquals(
                new PileState(2, 1.5, Fixtures.good(3.6), 10, 5, Envelope.slatted()), pile.with(Envelope.slatted()));
        assertThrows(IllegalArgumentException.class, () -> new PileState(0, 1, PILE.matter(), 1, 1, Envelope.bare()));
        assertThrows(IllegalArgumentException.class, () -> new PileState(1, 0, PILE.matter(), 1, 1, Envelope.bare()));
        assertThrows(IllegalArgumentException.class, () -> new PileState(1, 1, PILE.matter(), 81, 1, Envelope.bare()));
        assertThrows(IllegalArgumentException.class, () -> new PileState(1, 1, PILE.matter(), 1, -41, Envelope.bare()));
    }
}
