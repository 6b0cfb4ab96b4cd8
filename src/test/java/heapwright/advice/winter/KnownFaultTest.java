package heapwright.advice.winter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.process.heat.Bounds;
import heapwright.process.heat.Course;
import heapwright.process.heat.Envelope;
import heapwright.process.heat.Matter;
import heapwright.process.heat.PileState;
import heapwright.process.heat.Setup;
import heapwright.process.heat.StateMark;
import heapwright.process.heat.Weather;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Predicate;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Generated heaps of 80 to 640 litres that stand cold after five weeks at −4 to 8 °C, sound ones and ones with one fault
 * that the hand or the nose has found: what is amiss is known, and no case was looked at to choose them.
 */
@DisplayName("What held back a small heap in the cold of which the fault is known")
@Tag("thorough")
class KnownFaultTest {

    private static final int DAYS = 35;
    private static final int PILES = 60;
    /** As of 30 November 2026: 60, 36, 39 and 59 of 60; before what was seen came first 60, 9, 23 and 34. */
    private static final int LEAST_DRY = 34;

    private static final int LEAST_SOGGY = 37;
    private static final int LEAST_FOUL = 57;

    private final Random random = new Random(20261130);

    @Test
    @DisplayName("is never a fault of a sound one")
    void sound() {
        assertEquals(PILES, named(Bounds.moisture(0.52, 0.57), f -> f == Factor.SIZE || f == Factor.SHELTER));
    }

    @Test
    @DisplayName("is water of a dust-dry one, where the model does not have it warm in spite of that")
    void dry() {
        int right = named(Bounds.moisture(0.265, 0.365), f -> f == Factor.WATER);
        assertTrue(right >= LEAST_DRY, right + " of " + PILES);
    }

    @Test
    @DisplayName("is air of a soggy one")
    void soggy() {
        int right = named(Bounds.moisture(0.655, 0.72), f -> f == Factor.AIR);
        assertTrue(right >= LEAST_SOGGY, right + " of " + PILES);
    }

    @Test
    @DisplayName("is air of one that smells foul")
    void foul() {
        int right = named(Bounds.reach(0.25), f -> f == Factor.AIR);
        assertTrue(right >= LEAST_FOUL, right + " of " + PILES);
    }

    private int named(Bounds noticed, Predicate<Factor> right) {
        int count = 0;
        for (int piles = 0; piles < PILES; ) {
            Setup told = small(noticed);
            Course course = told.course();
            double core = course.last().coreC();
            if (core > 0 && core <= 25) {
                Factor alone = HeldBack.of(told).worst(0, DAYS - 1);
                Factor factor = JointFault.of(told, course, alone, 0, DAYS - 1)
                        .map(JointFault::factor)
                        .orElse(alone);
                count += right.test(factor) ? 1 : 0;
                piles++;
            }
        }
        return count;
    }

    private Setup small(Bounds noticed) {
        double volume = 0.08 * Math.pow(8, random.nextDouble());
        double outdoor = between(-4, 8);
        Matter matter = Matter.of(
                volume,
                between(300, 550),
                between(0.50, 0.61),
                between(0.15, 0.35),
                between(0.30, 0.42),
                0.2,
                between(18, 30),
                between(1, 4));
        List<StateMark> marks = new ArrayList<>();
        for (int day = 0; day < DAYS; day += 7) {
            marks.add(StateMark.noticed(day, noticed));
        }
        marks.add(StateMark.noticed(DAYS - 1, noticed));
        PileState start = PileState.cube(matter, Math.max(4, outdoor), Envelope.slatted());
        return new Setup(start, Weather.constant(outdoor, DAYS), List.of(), marks, DAYS);
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }
}
