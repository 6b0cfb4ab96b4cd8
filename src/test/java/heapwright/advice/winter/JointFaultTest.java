package heapwright.advice.winter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.process.heat.Bounds;
import heapwright.process.heat.Course;
import heapwright.process.heat.Envelope;
import heapwright.process.heat.Event;
import heapwright.process.heat.Matter;
import heapwright.process.heat.PileState;
import heapwright.process.heat.Setup;
import heapwright.process.heat.StateMark;
import heapwright.process.heat.Weather;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Invented piles that are small, out in the cold and otherwise sound or not. */
@DisplayName("A fault beside what is none")
class JointFaultTest {

    private static final int DAYS = 40;
    private static final double SOGGY = 0.74;
    private static final double DAMP = 0.58;

    private static Setup small(double moisture, double ratio, double outdoorC) {
        double density = moisture > 0.7 ? 850 : 500;
        Matter matter = Matter.of(0.08, density, moisture, 0.25, 0.40, 0.25, ratio, 3);
        return new Setup(
                PileState.cube(matter, 8, Envelope.slatted()),
                Weather.constant(outdoorC, DAYS),
                List.of(),
                List.of(),
                DAYS);
    }

    private static Optional<Factor> fault(Setup told, Factor named) {
        return fault(told, told.course(), named);
    }

    private static Optional<Factor> fault(Setup told, Course lived, Factor named) {
        return JointFault.of(told, lived, named, 0, DAYS - 1).map(JointFault::factor);
    }

    @Test
    @DisplayName("is named where it would hold back a cubic metre in mild weather too")
    void named() {
        Setup soggy = small(SOGGY, 25, 5);
        Factor alone = HeldBack.of(soggy).worst(0, DAYS - 1);
        assertTrue(JointFault.NO_FAULT.contains(alone), "neither helps alone: " + alone);
        assertEquals(Optional.of(Factor.AIR), fault(soggy, alone));
        assertTrue(
                JointFault.of(soggy, soggy.course(), alone, 0, DAYS - 1).get().kelvin() >= 2 * HeldBack.LEAST_K);
    }

    @Test
    @DisplayName("is none of a sound pile that is only small and cold, nor one that would cost next to nothing")
    void sound() {
        for (Factor named : JointFault.NO_FAULT) {
            assertEquals(Optional.empty(), fault(small(DAMP, 28, 2), named), "sound");
            assertEquals(Optional.empty(), fault(small(DAMP, 33, 2), named), "C:N 33");
        }
    }

    @Test
    @DisplayName("is not looked for where a fault is named already, nor in a pile that is frozen")
    void notLookedFor() {
        Setup soggy = small(SOGGY, 25, 5);
        for (Factor named : List.of(Factor.AIR, Factor.FOOD, Factor.NITROGEN, Factor.NONE, Factor.UNKNOWN)) {
            assertEquals(Optional.empty(), fault(soggy, named), named.toString());
        }
        Setup frozen = small(SOGGY, 25, -8);
        assertTrue(frozen.course().last().coreC() <= 0);
        assertEquals(Optional.empty(), fault(frozen, Factor.SIZE));
    }

    @Test
    @DisplayName("counts only while it is there")
    void gone() {
        Setup soggy = small(SOGGY, 25, 5);
        StateMark dried = StateMark.noticed(DAYS - 2, Bounds.moisture(0.45, DAMP));
        assertEquals(Optional.empty(), fault(soggy.marked(List.of(dried)), Factor.SIZE));
        Setup matted = small(DAMP, 25, 5);
        List<StateMark> foul = new ArrayList<>();
        for (int day = 0; day < DAYS; day += 7) {
            foul.add(StateMark.noticed(day, Bounds.reach(0.1)));
        }
        assertEquals(Optional.of(Factor.AIR), fault(matted.marked(foul), Factor.SIZE));
        foul.add(StateMark.noticed(DAYS - 1, Bounds.reach(1)));
        assertEquals(Optional.empty(), fault(matted.marked(foul), Factor.SIZE));
    }

    @Test
    @DisplayName("stands in the strip in place of size, shelter, time and cold, on the days that count")
    void strip() {
        Setup soggy = small(SOGGY, 25, 5);
        HeldBack held = HeldBack.of(soggy);
        HeldBack blamed = held.blaming(Factor.AIR, 10, 30);
        for (int day = 0; day < DAYS; day++) {
            Factor before = on(held, day);
            boolean instead = day >= 10 && day <= 30 && JointFault.NO_FAULT.contains(before);
            assertEquals(instead ? Factor.AIR : before, on(blamed, day), "day " + day);
        }
        assertTrue(blamed.held().stream().anyMatch(h -> h.factor() == Factor.AIR));
        assertEquals(held.costs(0, DAYS - 1), blamed.costs(0, DAYS - 1));
    }

    private static Factor on(HeldBack held, int day) {
        return held.held().stream()
                .filter(h -> h.from() <= day && day <= h.to())
                .findFirst()
                .orElseThrow()
                .factor();
    }

    @Test
    @DisplayName("that was felt or measured is named before food, which would help a sound pile too")
    void feltBeforeFood() {
        Matter poor = Matter.of(0.5, 400, DAMP, 0.05, 0.20, 0.60, 30, 3);
        Setup told = new Setup(
                PileState.cube(poor, 10, Envelope.bare()), Weather.constant(12, DAYS), List.of(), List.of(), DAYS);
        HeldBack held = HeldBack.of(told, told.course(), Map.of());
        List<Event> none = List.of();
        assertEquals(Factor.FOOD, held.fault(0, DAYS - 1, none, List.of()));
        List<StateMark> dry = List.of(StateMark.noticed(DAYS - 1, Bounds.moisture(0.26, 0.36)));
        assertEquals(Factor.WATER, held.fault(0, DAYS - 1, none, dry));
        List<StateMark> damp = List.of(StateMark.noticed(DAYS - 1, Bounds.moisture(0.50, 0.60)));
        assertEquals(Factor.FOOD, held.fault(0, DAYS - 1, none, damp));
    }

    @Test
    @DisplayName("is looked at beside the shelter put right, where recipe, nose, hand or measurement tell of it")
    void beside() {
        Setup poor = small(DAMP, 75, 2);
        Optional<JointFault> cost = JointFault.of(poor, poor.course(), Factor.SHELTER, 0, DAYS - 1);
        assertEquals(Factor.NITROGEN, cost.orElseThrow().factor());
        assertEquals(Factor.SHELTER, cost.get().beside());
        assertTrue(cost.get().kelvin() >= 2 * HeldBack.LEAST_K);
    }

    /** In a cubic metre in mild weather this mix would lose 7 to 8 K for want of air: more than one error of the model, less than two. */
    @Test
    @DisplayName("counts from one error of the model on before the weather alone and where it was felt, else from two")
    void oneErrorOrTwo() {
        Matter close = Matter.of(0.08, 570, 0.68, 0.25, 0.40, 0.25, 25, 3);
        Setup told = new Setup(
                PileState.cube(close, 8, Envelope.slatted()), Weather.constant(5, DAYS), List.of(), List.of(), DAYS);
        JointFault cold =
                JointFault.of(told, told.course(), Factor.COLD, 0, DAYS - 1).orElseThrow();
        assertEquals(Factor.AIR, cold.factor());
        assertTrue(cold.kelvin() > HeldBack.LEAST_K && cold.kelvin() < 2 * HeldBack.LEAST_K, cold.toString());
        assertEquals(Optional.empty(), fault(told, Factor.SIZE), "that nobody felt");
        Setup felt = told.marked(List.of(StateMark.noticed(0, Bounds.moisture(0.63, 0.95))));
        JointFault size =
                JointFault.of(felt, felt.course(), Factor.SIZE, 0, DAYS - 1).orElseThrow();
        assertEquals(Factor.AIR, size.factor());
        assertEquals(Factor.NONE, size.beside(), "beside a size put right it counts from two, though it was felt");
    }
}
