package heapwright.process.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What a course follows from, with one thing otherwise. */
class SetupTest {

    private static final PileState PILE = PileState.cube(Fixtures.good(1), 12, Envelope.slatted());
    private static final Weather MILD = Weather.constant(8, 10);
    private static final List<Event> TURNED = List.of(new Event.Turn(3));
    private static final List<StateMark> DAMP =
            List.of(new StateMark(2, OptionalDouble.of(0.5), OptionalDouble.empty()));
    private static final Setup TOLD = new Setup(PILE, MILD, TURNED, DAMP, 6);

    @Test
    void oneThingIsOtherwiseAndTheRestAsItWas() {
        PileState other = PILE.losing(0.5);
        assertEquals(new Setup(other, MILD, TURNED, DAMP, 6), TOLD.with(other));
        Matter rich = Fixtures.rich(1);
        assertEquals(new Setup(PILE.with(rich), MILD, TURNED, DAMP, 6), TOLD.with(rich));
        Weather cold = Weather.constant(-5, 10);
        assertEquals(new Setup(PILE, cold, TURNED, DAMP, 6), TOLD.in(cold));
        assertEquals(new Setup(PILE, MILD, List.of(), DAMP, 6), TOLD.doing(List.of()));
        assertEquals(new Setup(PILE, MILD, TURNED, List.of(), 6), TOLD.marked(List.of()));
    }

    /** Without marks that is what a run of the same pile makes of it; the marks are set on the way. */
    @Test
    void itsCourseIsThatOfThePileAsTold() {
        assertEquals(
                HeatModel.run(PILE, MILD, TURNED, 6, Fixtures.STANDARD),
                TOLD.marked(List.of()).course());
        assertEquals(0.5, TOLD.course().days().get(2).moistureMean(), 0.01);
    }
}
