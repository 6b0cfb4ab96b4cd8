package heapwright.process.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What nose, hand and eye say")
class BoundsTest {

    private static final PileState GOOD =
            PileState.cube(Matter.of(1, 500, 0.58, 0.25, 0.40, 0.25, 30, 4), 12, Envelope.slatted());
    private static final int DAYS = 30;

    private static Course course(Bounds... bounds) {
        List<StateMark> marks =
                List.of(bounds).stream().map(b -> StateMark.noticed(0, b)).toList();
        return Retrace.of(
                        new Setup(GOOD, Weather.constant(12, DAYS), List.of(), marks, DAYS),
                        List.of(),
                        Constants.standard())
                .course();
    }

    @Test
    @DisplayName("changes nothing where the model says the same")
    void within() {
        assertEquals(
                course().days(),
                course(Bounds.moisture(0.5, 0.6), Bounds.reach(0.9)).days());
    }

    @Test
    @DisplayName("moves the water to the nearer bound")
    void water() {
        assertEquals(0.36, course(Bounds.moisture(0.26, 0.36)).days().get(0).moistureMean(), 0.02);
        assertEquals(0.66, course(Bounds.moisture(0.66, 0.72)).days().get(0).moistureMean(), 0.02);
    }

    @Test
    @DisplayName("of food without air keeps a pile cooler")
    void air() {
        assertTrue(course(Bounds.reach(0.25)).peakC() < course().peakC() - 3);
    }

    @Test
    @DisplayName("of a pile that has rotted down leaves no food, and loses neither matter nor nitrogen")
    void rottedDown() {
        Course fresh = course();
        Course spent = course(Bounds.rottedDown());
        assertFalse(Readiness.standard().spent(fresh.days().get(0)));
        assertTrue(Readiness.standard().spent(spent.days().get(0)));
        assertTrue(spent.peakC() < 20);
        assertEquals(0, spent.ledger().dryGap(), 1e-9);
        assertEquals(0, spent.ledger().nitrogenGap(), 1e-9);
        assertEquals(0, spent.ledger().heatGap(), 1e-9);
    }
}
