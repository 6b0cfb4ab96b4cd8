package heapwright.advice.winter;

import static org.junit.jupiter.api.Assertions.assertEquals;

import heapwright.process.heat.Envelope;
import heapwright.process.heat.Event;
import heapwright.process.heat.Matter;
import heapwright.process.heat.PileState;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Eight times as much is twice as long, wide and high. */
@DisplayName("A pile made eight times as large")
class LargerPileTest {

    private static final Matter SMALL = new Matter(50, 75, 0.2, 0.4, 0.25, 1.2, 0.1, 0.25, 5, 0.3);
    private static final Matter LARGE = new Matter(400, 600, 0.2, 0.4, 0.25, 9.6, 0.8, 2, 5, 0.3);

    @Test
    @DisplayName("is of the same stuff in the same shape")
    void pile() {
        PileState s = new PileState(0.5, 1, SMALL, 12, 8, Envelope.slatted());
        assertEquals(new PileState(1, 2, LARGE, 12, 8, Envelope.slatted(), s.stage()), LargerPile.pile(s, 8));
        assertEquals(2 * s.heightM(), LargerPile.pile(s, 8).heightM(), 1e-12);
    }

    @Test
    @DisplayName("is given as much more of all that goes in, and turned as before")
    void events() {
        assertEquals(new Event.Add(3, LARGE, 10, true), LargerPile.event(new Event.Add(3, SMALL, 10, true), 8));
        assertEquals(new Event.Water(4, 80, 9), LargerPile.event(new Event.Water(4, 10, 9), 8));
        assertEquals(new Event.Feed(5, 0.8, 40, 7), LargerPile.event(new Event.Feed(5, 0.1, 5, 7), 8));
        assertEquals(new Event.Turn(6), LargerPile.event(new Event.Turn(6), 8));
    }
}
