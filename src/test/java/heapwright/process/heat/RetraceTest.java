package heapwright.process.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Measured courses, made by the model itself with a known fault, read back. */
class RetraceTest {
    private static final Weather AUTUMN = Weather.monthly(Fixtures.NORTHERN, 290, 200);
    private static final PileState TOLD = PileState.cube(Fixtures.good(1), 12, Envelope.slatted());
    private static final Matter DRY = Matter.of(1, 300, 0.30, 0.25, 0.40, 0.25, 30, 4);

    private static List<CoreReading> measured(Matter truth, int days, int every) {
        Course course = Fixtures.run(TOLD.with(truth), AUTUMN, days);
        return IntStream.iterate(every, d -> d < days, d -> d + every)
                .mapToObj(d -> new CoreReading(d, course.days().get(d).coreC()))
                .toList();
    }

    private static Retrace read(List<CoreReading> readings, List<StateMark> marks, int days) {
        return Retrace.of(new Setup(TOLD, AUTUMN, List.of(), marks, days), readings, Fixtures.STANDARD);
    }

    @Test
    void whatTheRecipeExplainsIsLeftAsItIs() {
        Retrace r = read(measured(Fixtures.good(1), 20, 3), List.of(), 20);
        Course alone = Fixtures.run(TOLD, AUTUMN, 20);
        for (int d = 0; d < 20; d++) {
            assertEquals(Fixtures.core(alone, d), Fixtures.core(r.course(), d), 1e-6, "day " + d);
        }
        assertEquals(1, r.now().stage().rate(), 1e-9);
        assertTrue(r.stalledOn().isEmpty());
    }

    @Test
    void withoutReadingsTheRecipeAloneTellsTheWay() {
        Retrace r = read(List.of(), List.of(), 40);
        Course alone = Fixtures.run(TOLD, AUTUMN, 40);
        assertEquals(alone.days(), r.course().days());
        assertEquals(alone.last().foodLeftShare(), r.course().last().foodLeftShare());
    }

    @Test
    void aDryPileIsFarSlowerThanItsRecipeTellsAndColder() {
        List<CoreReading> readings = measured(DRY, 30, 3);
        Retrace r = read(readings, List.of(), 30);
        assertTrue(r.now().stage().rate() < 0.8, "rate " + r.now().stage().rate());
        for (CoreReading m : readings) {
            assertEquals(m.celsius(), Fixtures.core(r.course(), m.day()), 0.6, "day " + m.day());
        }
        assertEquals(0, r.course().ledger().heatGap(), 1e-3);
    }

    @Test
    void theLastOfTwoReadingsOfADayStands() {
        Retrace r = read(List.of(new CoreReading(10, 50), new CoreReading(10, 20)), List.of(), 11);
        assertEquals(20, r.course().last().coreC(), 1e-6);
        assertEquals(11, r.course().days().size());
    }

    @Test
    void aReadingAfterTheLastDayIsNotYetKnown() {
        assertEquals(
                read(List.of(), List.of(), 20).course().days(),
                read(List.of(new CoreReading(20, 5)), List.of(), 20).course().days());
    }

    @Test
    void itStalledOnTheDayAfterItWasLastWarm() {
        Retrace r = read(measured(Fixtures.good(1), 100, 5), List.of(), 100);
        int day = r.stalledOn().orElseThrow();
        assertTrue(Fixtures.core(r.course(), day - 1) >= Retrace.STALLED_C);
        for (int d = day; d < 100; d++) {
            assertTrue(Fixtures.core(r.course(), d) < Retrace.STALLED_C, "day " + d);
        }
    }

    @Test
    void whatWasFeltOfWaterAndAcidIsSoFromThatDay() {
        StateMark soaked = new StateMark(10, OptionalDouble.of(0.75), OptionalDouble.empty());
        StateMark sour = new StateMark(5, OptionalDouble.empty(), OptionalDouble.of(0.9));
        Retrace r = read(List.of(), List.of(soaked, sour), 12);
        Course alone = Fixtures.run(TOLD, AUTUMN, 12);
        assertEquals(alone.days().get(4), r.course().days().get(4));
        assertTrue(r.course().days().get(5).phCore() < alone.days().get(5).phCore() - 1);
        assertEquals(0.75, r.course().days().get(10).moistureMean(), 0.02);
        assertEquals(0, r.course().ledger().waterGap(), 1e-3);
    }

    /** The pile lies in frost, so that nothing but the marks changes its water and acid. */
    private static Retrace frozen(List<CoreReading> readings, List<StateMark> marks, int days) {
        PileState start = PileState.cube(Fixtures.good(1), -20, Envelope.slatted());
        return Retrace.of(
                new Setup(start, Weather.constant(-20, 20), List.of(), marks, days), readings, Fixtures.STANDARD);
    }

    @Test
    void aMarkBetweenReadingsIsSetOnItsDayAndOnce() {
        List<CoreReading> readings = List.of(new CoreReading(2, -20), new CoreReading(6, -20), new CoreReading(9, -20));
        StateMark wet = new StateMark(4, OptionalDouble.of(0.64), OptionalDouble.empty());
        StateMark dry = new StateMark(6, OptionalDouble.of(0.45), OptionalDouble.empty());
        StateMark last = new StateMark(11, OptionalDouble.of(0.55), OptionalDouble.empty());
        double[] later = frozen(readings, List.of(last, dry, wet), 12).course().series(Day::moistureMean);
        assertEquals(0.55, later[11], 0.003, "one after the last reading as well");
        Retrace r = frozen(readings, List.of(dry, wet), 12);
        double[] moisture = r.course().series(Day::moistureMean);
        for (int d = 0; d < 12; d++) {
            assertEquals(d < 4 ? 0.58 : d < 6 ? 0.64 : 0.45, moisture[d], 0.003, "day " + d);
            assertEquals(d < 11 ? moisture[d] : 0.55, later[d], 0.003, "day " + d);
        }
        double dryKg = r.course().days().get(0).dryKg();
        assertEquals(
                dryKg * (0.45 / 0.55 - 0.58 / 0.42),
                r.course().ledger().waterBrought(),
                0.01 * dryKg,
                "up and down again");
        assertEquals(12, r.course().days().size());
    }

    @Test
    void aMarkOfADayThatHasNotComeIsNotYetKnown() {
        StateMark later = new StateMark(12, OptionalDouble.of(0.64), OptionalDouble.of(0.9));
        assertEquals(
                frozen(List.of(), List.of(), 12).course().days(),
                frozen(List.of(), List.of(later), 12).course().days());
        assertEquals(0, frozen(List.of(), List.of(later), 12).course().ledger().waterBrought());
        StateMark last = new StateMark(11, OptionalDouble.of(0.64), OptionalDouble.empty());
        Day now = frozen(List.of(), List.of(last), 12).course().last();
        assertEquals(0.64, now.moistureMean(), 0.003);
    }

    @Test
    void theAcidNowIsThatOfAllShellsTogether() {
        StateMark sour = new StateMark(11, OptionalDouble.empty(), OptionalDouble.of(0.7));
        assertEquals(0.7, frozen(List.of(), List.of(sour), 12).now().matter().acidIndex(), 1e-6);
    }

    @Test
    void thePileNowHoldsWhatTheWayLeft() {
        Retrace r = read(measured(DRY, 30, 3), List.of(), 30);
        Day last = r.course().last();
        Matter now = r.now().matter();
        assertEquals(last.dryKg(), now.dryKg(), 1e-9 * last.dryKg());
        assertEquals(last.moistureMean(), now.moisture(), 1e-9);
        assertEquals(last.volumeM3(), now.volumeM3(), 1e-9);
        Day today = HeatModel.run(r.now(), Weather.constant(5, 10), List.of(), 2, Fixtures.STANDARD)
                .days()
                .get(0);
        assertEquals(last.coreC(), today.coreC(), 0.01, "the next run begins with today as it is");
        assertEquals(last.skinC(), today.skinC(), 0.01);
        assertEquals(last.volumeM3(), today.volumeM3(), 1e-9);
        assertEquals(
                r.course().ledger().nitrogenEnd(),
                now.nitrogenKg(),
                1e-9 * r.course().ledger().nitrogenEnd());
    }

    @Test
    void whatIsDoneTodayTellsFromTomorrowOn() {
        PileState now = read(measured(DRY, 30, 3), List.of(), 30).now();
        List<Event> wet = List.of(new Event.Water(0, 50, 20));
        Course plain = HeatModel.run(now, Weather.constant(5, 10), List.of(), 2, Fixtures.STANDARD);
        Course watered = HeatModel.run(now, Weather.constant(5, 10), wet, 2, Fixtures.STANDARD);
        assertEquals(plain.days().get(0), watered.days().get(0));
        assertTrue(watered.last().massKg() > plain.last().massKg() + 20);
    }

    /** The same pile, standing twice as snug as told, measured every nine days and once more after seven weeks. */
    @Test
    void theLossOfHeatIsLearnedAndCarriedOn() {
        Course truth = HeatModel.run(TOLD.losing(0.4), AUTUMN, List.of(), 80, Fixtures.STANDARD);
        List<CoreReading> readings = IntStream.of(8, 20, 34, 48)
                .mapToObj(d -> new CoreReading(d, Fixtures.core(truth, d)))
                .toList();
        Retrace r = read(readings, List.of(), 49);
        Stage taught = r.now().stage();
        assertTrue(taught.loss() < 0.8, "loss " + taught.loss());
        assertTrue(taught.fits(), "missed by " + taught.missK());
        assertEquals(taught.loss(), r.healthyAs(TOLD).stage().loss(), "the healthy one stands as snug");
        Course carried = HeatModel.run(r.now(), AUTUMN.from(48), List.of(), 20, Fixtures.STANDARD);
        Course forgot = HeatModel.run(r.now().losing(1), AUTUMN.from(48), List.of(), 20, Fixtures.STANDARD);
        double real = Fixtures.core(truth, 62);
        assertTrue(
                Math.abs(Fixtures.core(carried, 14) - real) < Math.abs(Fixtures.core(forgot, 14) - real),
                "carried " + Fixtures.core(carried, 14) + ", forgotten " + Fixtures.core(forgot, 14) + ", real "
                        + real);
    }

    /** A draughty pile may be so for its trouble: the healthy one is not. */
    @Test
    void theHealthyPileLosesNoMoreThanTold() {
        Retrace r = read(List.of(new CoreReading(6, 12), new CoreReading(12, 6)), List.of(), 13);
        assertTrue(
                r.healthyAs(TOLD).stage().loss() <= 1, r.healthyAs(TOLD).stage().toString());
    }

    @Test
    void whatWasMeasuredOnTheDayOfATurnIsTheCoreBeforeIt() {
        List<Event> turned = List.of(new Event.Turn(10));
        Course truth = HeatModel.run(TOLD, AUTUMN, turned, 20, Fixtures.STANDARD);
        List<CoreReading> readings = List.of(new CoreReading(10, Fixtures.core(truth, 9)));
        Retrace r = Retrace.of(new Setup(TOLD, AUTUMN, turned, List.of(), 20), readings, Fixtures.STANDARD);
        assertEquals(Fixtures.core(truth, 9), Fixtures.core(r.course(), 9), 1e-6);
        assertEquals(Fixtures.core(truth, 10), Fixtures.core(r.course(), 10), 1e-6);
        assertEquals(1, r.now().stage().rate(), 1e-9);
    }

    /** Only what is done inside the pile on the very day puts a reading back to the evening before. */
    @Test
    void aReadingStaysOnItsDayUnlessThePileWasDugThatDay() {
        CoreReading cool = new CoreReading(10, 20);
        assertEquals(20, withReading(cool, new Event.Turn(10)).days().get(9).coreC(), 1e-6);
        for (Event other : List.of(
                new Event.Turn(9), new Event.Turn(11), new Event.Cover(10, Envelope.bare()), new Event.Loosen(10))) {
            Course course = withReading(cool, other);
            assertEquals(20, course.days().get(10).coreC(), 1e-6, other.toString());
            assertTrue(Math.abs(course.days().get(9).coreC() - 20) > 0.01, other + ": the evening before was another");
        }
        Course first = withReading(new CoreReading(0, 20), new Event.Turn(0));
        assertEquals(20, first.days().get(0).coreC(), 0.05, "there is no evening before the first day");
    }

    private static Course withReading(CoreReading reading, Event event) {
        return Retrace.of(new Setup(TOLD, AUTUMN, List.of(event), List.of(), 14), List.of(reading), Fixtures.STANDARD)
                .course();
    }

    /** One reading after twenty days: the rate it asks for, drawn to that of the recipe, which counts as five days. */
    @Test
    void theRecipeCountsAsFiveDaysOfReadings() {
        CoreReading reading = new CoreReading(20, 25);
        Run run = new Run(TOLD, AUTUMN, List.of(), Fixtures.STANDARD, Run.SHELLS);
        double rate = new Fit(run).match(run, reading, List.of()).rate();
        assertTrue(rate < 0.9, "rate " + rate);
        double days = IntStream.rangeClosed(0, 20)
                .mapToDouble(d -> Math.exp(-d / 21.0))
                .sum();
        double expected = Math.pow(rate, days / (days + 5));
        assertEquals(
                expected, read(List.of(reading), List.of(), 40).now().stage().rate(), 1e-9);
    }

    /** What is so of the innermost shell alone is so of its share of the volume. */
    @Test
    void whatLivesInThePileIsTakenTogetherByVolume() {
        PileState large = PileState.cube(Fixtures.good(1.5), 12, Envelope.slatted());
        Run run = new Run(large, AUTUMN, List.of(), Fixtures.STANDARD, Run.SHELLS);
        double[][] all = {run.s.mesophiles, run.s.thermophiles, run.s.reach, run.s.acid};
        for (int k = 0; k < all.length; k++) {
            Arrays.fill(all[k], 0);
            all[k][k] = 0.5;
        }
        PileState now = new RetracedCourse(run, List.of(), List.of(), List.of()).now();
        Vigour vigour = now.stage().vigour().orElseThrow();
        double[] told = {
            vigour.mesophiles(),
            vigour.thermophiles(),
            vigour.reach(),
            now.matter().acidIndex()
        };
        for (int k = 0; k < all.length; k++) {
            assertEquals(0.5 * run.s.volume[k] / 1.5, told[k], 1e-12, "figure " + k);
        }
    }

    /** What is found on the day of a reading must not cut the fit off from the days before it. */
    @Test
    void aMarkOnTheDayOfAReadingLeavesTheFitItsDays() {
        List<CoreReading> readings = measured(DRY, 25, 24);
        double volume = TOLD.matter().volumeM3();
        Retrace without = read(readings, List.of(), 25);
        Retrace with = read(readings, List.of(StateMark.size(24, volume * 0.9)), 25);
        assertTrue(
                without.now().stage().rate() < 0.9,
                "rate " + without.now().stage().rate());
        assertTrue(with.now().stage().rate() < 0.9, "rate " + with.now().stage().rate());
        assertEquals(readings.get(0).celsius(), Fixtures.core(with.course(), 24), 0.6);
    }

    @Test
    void aPileHasNeverBeenSmallerThanItWasMeasuredLater() {
        double later = 0.93;
        Retrace r = read(List.of(), List.of(StateMark.size(30, later)), 40);
        for (int d = 0; d <= 29; d++) {
            assertTrue(r.course().days().get(d).volumeM3() >= later - 1e-9, "day " + d);
        }
        assertTrue(r.course().days().get(39).volumeM3() < later, "and settles on from there");
        Retrace turned = Retrace.of(
                new Setup(TOLD, AUTUMN, List.of(new Event.Turn(20)), List.of(StateMark.size(30, later)), 40),
                List.of(),
                Fixtures.STANDARD);
        assertTrue(turned.course().days().get(19).volumeM3() < later, "a turn may have made it larger since");
    }

    /** A turn after the later size, or before the reading from which the way is taken on, and a cover make no difference. */
    @Test
    void onlyWhatMakesThePileLargerMeanwhileLetsItHaveBeenSmaller() {
        double later = 0.93;
        List<StateMark> marks = List.of(StateMark.size(30, later));
        for (Event other : List.of(new Event.Turn(35), new Event.Cover(20, Envelope.bare()))) {
            Setup told = new Setup(TOLD, AUTUMN, List.of(other), marks, 40);
            Course course = Retrace.of(told, List.of(), Fixtures.STANDARD).course();
            for (int d = 0; d <= 29; d++) {
                assertTrue(course.days().get(d).volumeM3() >= later - 1e-9, other + ", day " + d);
            }
        }
        Setup early = new Setup(TOLD, AUTUMN, List.of(new Event.Turn(2)), marks, 40);
        CoreReading reading = new CoreReading(8, 45);
        Course course = Retrace.of(early, List.of(reading), Fixtures.STANDARD).course();
        for (int d = 9; d <= 29; d++) {
            assertTrue(course.days().get(d).volumeM3() >= later - 1e-9, "day " + d);
        }
        assertTrue(
                Retrace.of(early, List.of(), Fixtures.STANDARD)
                                .course()
                                .days()
                                .get(29)
                                .volumeM3()
                        < later,
                "without the reading the turn lies between");
    }

    @Test
    void aReadingThatNoRateMeetsIsAMiss() {
        Retrace fits = read(measured(Fixtures.good(0.7), 20, 3), List.of(), 25);
        assertTrue(fits.now().stage().fits());
        assertTrue(
                Math.abs(fits.now().stage().rate() - 1) < 0.5,
                "rate " + fits.now().stage().rate());
        Retrace hot = read(List.of(new CoreReading(0, 75)), List.of(), 10);
        assertTrue(!hot.now().stage().fits(), "missed by " + hot.now().stage().missK());
        assertTrue(hot.now().stage().missK() > 0, "the reading lies above the model");
        Retrace before = read(List.of(new CoreReading(0, 75)), List.of(), 40);
        assertTrue(before.now().stage().fits(), "what was missed long ago says nothing of today");
    }

    @Test
    void aFrozenPileStaysFrozenWhenItIsTakenOn() {
        PileState small = PileState.cube(Fixtures.good(0.3), 2, Envelope.bare());
        Retrace r = Retrace.of(
                new Setup(small, Weather.constant(-15, 150), List.of(), List.of(), 145),
                List.of(new CoreReading(140, -2)),
                Fixtures.STANDARD);
        assertTrue(r.now().coreC() < 0, "core " + r.now().coreC());
        assertTrue(r.now().skinC() < 0, "skin " + r.now().skinC());
    }

    @Test
    void needsADay() {
        assertThrows(IllegalArgumentException.class, () -> read(List.of(), List.of(), 0));
    }
}
