package heapwright.advice.winter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.knowledge.Remedy;
import heapwright.pile.Pile;
import heapwright.process.heat.Range;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What a step wins")
class GainTest {

    private static final Range NONE = new Range(0, 0, 0);

    private static Gain.Back never() {
        return new Gain.Back(false, 0, new Range(90, 90, 90));
    }

    private static Gain gain(Range won, Gain.Back with, Gain.Back without, double worked) {
        return gain(won, with, without, worked, new Gain.Frost(0, 0));
    }

    private static Gain gain(Range won, Gain.Back with, Gain.Back without, double worked, Gain.Frost frost) {
        return new Gain(90, won, NONE, NONE, with, without, frost, new Range(worked, worked, worked));
    }

    /** Frozen through in January, looked at until the middle of March. */
    static Pile frozen() {
        return TestPile.of("'built': '2026-10-10', 'asOf': '2027-01-10', 'place': {" + WinterPiles.COLD_YEAR
                + "}, 'container': {" + WinterPiles.bin("none", "none") + "}, 'recipe': [" + WinterPiles.GOOD
                + "], 'log': [{'date': '2027-01-10', 'measured': {'core': {'value': -2, 'unit': 'C'},"
                + " 'outdoor': {'value': -9, 'unit': 'C'}}}], 'aim': {'readyBy': '2027-03-05'}");
    }

    @Test
    @DisplayName("is not counted in days on a pile that sleeps, however many the reckoning gives")
    void asleep() {
        Gain stirred = gain(new Range(40, 80, 88), never(), never(), 0.01);
        assertTrue(stirred.asleep());
        assertEquals(0, stirred.share(), "what wakes nothing wins nothing");
        Gain woken = gain(new Range(40, 80, 88), new Gain.Back(false, 0.9, new Range(20, 30, 60)), never(), 0.01);
        assertEquals(60.0 / 90, woken.share(), 1e-12);
    }

    @Test
    @DisplayName("is counted in days on a pile that works, cool or warm")
    void awake() {
        Gain cool = gain(new Range(10, 45, 60), never(), never(), 0.2);
        assertFalse(cool.asleep());
        assertEquals(0.5, cool.share(), 1e-12);
        Gain warm = gain(new Range(10, 45, 60), never(), new Gain.Back(true, 1, NONE), 0.01);
        assertFalse(warm.asleep());
    }

    @Test
    @DisplayName("speaks for the step where all of the band is won or it wakes what sleeps")
    void tells() {
        assertTrue(gain(new Range(0.1, 1, 5), never(), never(), 0.2).tells());
        assertFalse(gain(new Range(0, 1, 5), never(), never(), 0.2).tells(), "it may win nothing");
        assertFalse(gain(new Range(-59, 11, 84), never(), never(), 0.2).useless(), "but it may");
        Gain lost = gain(new Range(-5, -1, 0), never(), never(), 0.2);
        assertTrue(lost.useless());
        assertFalse(lost.tells());
        Range won = new Range(40, 80, 88);
        assertFalse(gain(won, never(), never(), 0.01).tells(), "it sleeps on");
        assertTrue(gain(won, new Gain.Back(false, 0.51, new Range(20, 30, 60)), never(), 0.01)
                .tells());
        assertFalse(gain(won, new Gain.Back(false, 0.5, new Range(20, 30, 60)), never(), 0.01)
                .tells());
        assertFalse(gain(won, never(), never(), 0.05).asleep(), "a twentieth of its food is a pace");
    }

    @Test
    @DisplayName("is no days on a pile that freezes through for certain, but what brings it back to 40 °C still tells")
    void iced() {
        Range won = new Range(10, 20, 30);
        Gain.Frost certain = new Gain.Frost(1, 1);
        Gain.Back back = new Gain.Back(false, 0.9, new Range(20, 30, 60));
        assertTrue(gain(won, never(), never(), 0.5).tells());
        assertFalse(gain(won, never(), never(), 0.5, certain).tells());
        assertTrue(gain(won, never(), never(), 0.5, new Gain.Frost(0.9, 1)).tells(), "not for certain");
        assertTrue(gain(won, back, never(), 0.5, certain).tells());
        assertFalse(gain(won, back, back, 0.5, certain).tells(), "it would be back without the step too");
    }

    @Test
    @DisplayName("is known to sleep where the pile is frozen until after the time looked at")
    void frozenPile() {
        Story story = Story.of(WinterPiles.model(frozen()));
        Gain turned =
                new StepTrials(story.now()).of(Remedy.TURN_FULLY, List.of()).orElseThrow();
        assertTrue(turned.asleep(), turned.toString());
        assertEquals(0, turned.share());
        assertTrue(turned.workedAlone().high() < 0.2 && turned.workedAlone().low() >= 0, turned.toString());
    }
}
