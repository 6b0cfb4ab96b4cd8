package heapwright.advice.winter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.knowledge.Sign;
import heapwright.pile.Pile;
import heapwright.process.heat.CoreReading;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Invented piles; a good one heats in the model. */
@DisplayName("A pile of which nobody says that it was warm")
class NeverWarmTest {

    /** What is no warmer than a hand does not feel warm. */
    private static final double HAND_C = 37;

    private static final String COLD_TODAY = "{'date': '2026-11-05', 'measured': {'core': {'value': 12, 'unit': 'C'}}}";

    private static PileModel model(List<Sign> seen) {
        Pile pile = WinterPiles.good(COLD_TODAY);
        return PileModel.of(pile, WinterPiles.materials(pile), List.of(), seen).orElseThrow();
    }

    @Test
    @DisplayName("was warm once by what was measured or felt, and not by the model")
    void warmOnce() {
        assertEquals(WarmOnce.UNTOLD, WarmOnce.of(List.of(), List.of(new CoreReading(3, 29.9))));
        assertEquals(WarmOnce.YES, WarmOnce.of(List.of(), List.of(new CoreReading(3, 30))));
        assertEquals(WarmOnce.YES, WarmOnce.of(List.of(Sign.HEATED_THEN_COOLED), List.of()));
        assertEquals(WarmOnce.NO, WarmOnce.of(List.of(Sign.NEVER_HEATED), List.of(new CoreReading(3, 20))));
        assertEquals(
                WarmOnce.YES,
                WarmOnce.of(List.of(Sign.NEVER_HEATED), List.of(new CoreReading(3, 50))),
                "the thermometer beats the hand");
    }

    @Test
    @DisplayName("was warm in the model, unless the hand says that it never was; what lies ahead is slower then")
    void never() {
        PileNow untold = PileNow.of(model(List.of()));
        PileNow never = PileNow.of(model(List.of(Sign.NEVER_HEATED)));
        assertTrue(
                untold.past().course().peakC() > 45, "" + untold.past().course().peakC());
        assertTrue(
                never.past().course().peakC() < HAND_C,
                "" + never.past().course().peakC());
        assertTrue(never.state().stage().rate() < untold.state().stage().rate());
        assertEquals(12, never.past().course().last().coreC(), 0.5);
    }
}
