package heapwright.process.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Measured courses, made by the model itself with a known fault, read back. */
class ReconstructionTest {
    private static final Weather AUTUMN = Weather.monthly(Fixtures.NORTHERN, 290, 200);
    private static final PileState TOLD = PileState.cube(Fixtures.good(1), 12, Envelope.slatted());

    private static List<CoreReading> measured(Matter truth, int days, int every) {
        Course course = Fixtures.run(TOLD.with(truth), AUTUMN, days);
        return IntStream.iterate(every, d -> d < days, d -> d + every)
                .mapToObj(d -> new CoreReading(d, course.days().get(d).coreC()))
                .toList();
    }

    private static Reconstruction read(List<CoreReading> readings, int days) {
        return Reconstruction.of(TOLD, AUTUMN, List.of(), readings, days, Fixtures.STANDARD, Readiness.standard());
    }

    @Test
    void aHealthyPileWorks() {
        Reconstruction r = read(measured(Fixtures.good(1), 20, 3), 20);
        assertEquals(CourseVerdict.WORKING, r.verdict());
        assertTrue(r.stalledOn().isEmpty());
        assertEquals(LimitingFactor.NONE, r.suspects().get(0).factor());
    }

    @Test
    void aDryPileIsFoundOut() {
        Matter dry = Matter.of(1, 300, 0.30, 0.25, 0.40, 0.25, 30, 4);
        Reconstruction r = read(measured(dry, 30, 3), 30);
        assertEquals(CourseVerdict.SOMETHING_WRONG, r.verdict());
        assertTrue(r.stretches().get(0).colderThanHealthy() > 20, r.stretches().toString());
        assertTrue(
                r.stretches().stream().anyMatch(Stretch::unexplained),
                r.stretches().toString());
        // A thermometer alone cannot tell slow from slow; dryness must be among the best, the recipe as told far off.
        assertTrue(
                miss(r, LimitingFactor.WATER) < r.suspects().get(0).missK() + 3,
                r.suspects().toString());
        assertTrue(
                miss(r, LimitingFactor.NONE) > miss(r, LimitingFactor.WATER) + 15,
                r.suspects().toString());
    }

    @Test
    void aSoakedPileIsFoundOut() {
        Matter soaked = Matter.of(1, 820, 0.72, 0.25, 0.40, 0.25, 30, 4);
        Reconstruction r = read(measured(soaked, 30, 3), 30);
        assertEquals(CourseVerdict.SOMETHING_WRONG, r.verdict());
        assertTrue(rank(r, LimitingFactor.AIR) <= 1, r.suspects().toString());
    }

    @Test
    void aStarvedPileIsTellable() {
        Matter starved = Matter.of(1, 500, 0.58, 0.25, 0.40, 0.25, 100, 4);
        Reconstruction r = read(measured(starved, 25, 3), 25);
        assertTrue(rank(r, LimitingFactor.NITROGEN) <= 2, r.suspects().toString());
    }

    private static int rank(Reconstruction r, LimitingFactor factor) {
        return r.suspects().stream().map(Suspect::factor).toList().indexOf(factor);
    }

    private static double miss(Reconstruction r, LimitingFactor factor) {
        return r.suspects().get(rank(r, factor)).missK();
    }

    @Test
    void inDeepWinterAColdPileMayBeJustCold() {
        Reconstruction r = read(measured(Fixtures.good(1), 100, 5), 100);
        assertTrue(r.course().last().coreC() < 5);
        assertEquals(CourseVerdict.JUST_WINTER, r.verdict());
        assertTrue(r.stalledOn().orElseThrow() > 10);
    }

    @Test
    void anOldPileIsFinished() {
        Weather warm = Weather.constant(18, 300);
        PileState old =
                PileState.cube(Matter.of(0.5, 600, 0.5, 0.0, 0.12, 0.45, 14, 2).withAcid(0), 18, Envelope.slatted());
        Reconstruction r = Reconstruction.of(
                old, warm, List.of(), List.of(new CoreReading(5, 19)), 20, Fixtures.STANDARD, Readiness.standard());
        assertEquals(CourseVerdict.FINISHED, r.verdict());
    }

    @Test
    void theFittedCourseComesCloseToEveryMeasurement() {
        Matter dry = Matter.of(1, 300, 0.30, 0.25, 0.40, 0.25, 30, 4);
        List<CoreReading> readings = measured(dry, 30, 3);
        Reconstruction r = read(readings, 30);
        for (CoreReading m : readings) {
            assertEquals(m.celsius(), r.course().days().get(m.day()).coreC(), 0.6, "day " + m.day());
        }
        assertEquals(0, r.course().ledger().heatGap(), 1e-3);
        assertEquals(0, r.stretches().get(0).from());
        assertEquals(29, r.stretches().get(r.stretches().size() - 1).to());
    }

    @Test
    void needsAReadingWithinItsDays() {
        assertThrows(IllegalArgumentException.class, () -> read(List.of(), 20));
        assertThrows(IllegalArgumentException.class, () -> read(List.of(new CoreReading(20, 5)), 20));
    }
}
