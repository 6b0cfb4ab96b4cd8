package heapwright.process.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What a day of a run does: the sky, what is done, what runs off, and what becomes known. */
class RunTest {

    private static final Weather MILD = Weather.constant(8, 10);

    private static Run run(Matter matter, Weather weather, Event... events) {
        return new Run(
                PileState.cube(matter, 10, Envelope.bare()), weather, List.of(events), Fixtures.STANDARD, Run.SHELLS);
    }

    /** A litre of rain on a square metre of bare top is a kilogram, less what runs off or dries again the same day. */
    @Test
    void rainGoesIntoTheBooks() {
        Run wet = run(Fixtures.good(1), MILD.withPrecipitation(10));
        Run dry = run(Fixtures.good(1), MILD);
        wet.live();
        dry.live();
        assertTrue(wet.tally.waterBrought > 5 && wet.tally.waterBrought <= 10, "kg " + wet.tally.waterBrought);
        assertEquals(0, dry.tally.waterBrought);
    }

    /** Wetter than any heap holds (docs/method/heat.md), it runs out by itself on the first day. */
    @Test
    void whatNoPileHoldsRunsOff() {
        Run soup = run(Matter.of(1, 800, 0.90, 0.25, 0.40, 0.25, 30, 4), MILD);
        Run damp = run(Fixtures.good(1), MILD);
        soup.live();
        damp.live();
        assertTrue(soup.tally.waterDrained > 0, "kg " + soup.tally.waterDrained);
        assertEquals(0, damp.tally.waterDrained);
    }

    @Test
    void whatWasDoneOnADayThatIsOverIsDoneAtTheNext() {
        Run stood = run(Fixtures.good(1), MILD, new Event.Water(0, 20, 10), new Event.Water(1, 5, 10));
        stood.stand();
        assertEquals(0, stood.tally.waterBrought, "nothing happens on the day that is over");
        stood.live();
        assertEquals(25, stood.tally.waterBrought, 1e-9);
        stood.live();
        assertEquals(25, stood.tally.waterBrought, 1e-9, "and nothing twice");
    }

    /** A pile known to stand as high later on does not settle below that, until its size is told. */
    @Test
    void aKnownSizeHoldsUntilItIsTold() {
        double known = 0.97;
        StateMark felt = new StateMark(2, OptionalDouble.of(0.55), OptionalDouble.empty());
        Run run = run(Fixtures.good(1), MILD);
        run.standsM3 = known;
        List<Double> sizes = new ArrayList<>();
        run.liveOn(8, List.of(felt, StateMark.size(6, known)), day -> sizes.add(Shells.sum(day.s.volume)));
        for (int d = 1; d < 6; d++) {
            assertEquals(known, sizes.get(d), 1e-9, "on day " + d);
        }
        assertTrue(sizes.get(7) < known - 1e-4, "and settles on: " + sizes);
    }

    /** A run that goes on from another is at the same place and takes the same way, with its own sums. */
    @Test
    void aForkTakesTheSameWay() {
        Run run = run(Fixtures.good(1), MILD);
        run.rateTimes = 0.5;
        run.lossTimes = 1.4;
        run.live();
        Run fork = new Run(run);
        Run other = run(Fixtures.good(1), MILD);
        other.goOnFrom(run);
        run.live();
        fork.live();
        other.live();
        assertEquals(run.read(), fork.read());
        assertEquals(run.read().coreC(), other.read().coreC());
        assertEquals(run.read().heatW(), other.read().heatW());
    }
}
