package heapwright.advice.winter;

import static heapwright.advice.winter.Courses.DAYS;
import static heapwright.advice.winter.Courses.core;
import static org.junit.jupiter.api.Assertions.assertEquals;

import heapwright.process.heat.Bounds;
import heapwright.process.heat.Course;
import heapwright.process.heat.StateMark;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** On courses written by hand, at the limits of docs/method/winter.md: 5 K, 40 °C, 65 °C, and 10 or 5 °C outdoors. */
@DisplayName("What held a pile back, by day")
class HeldBackByDayTest {

    private static final int LAST = DAYS - 1;
    private static final double COOL = 12;
    private static final double FROST = -3;

    /** A pile at 20 °C that would have been so much warmer with each thing put right. */
    private static HeldBack held(double outdoorC, Map<Factor, Double> warmer) {
        return held(core(20, outdoorC), core(20, outdoorC), warmer);
    }

    private static HeldBack held(Course lived, Course plain, Map<Factor, Double> warmer) {
        Map<Factor, Course> right = new EnumMap<>(Factor.class);
        warmer.forEach((factor, k) -> right.put(
                factor,
                core(day -> plain.days().get(day).coreC() + k, plain.last().outdoorC())));
        return new HeldBack(lived, plain, right, Set.of());
    }

    private static Factor fault(HeldBack held, StateMark... marks) {
        return held.fault(0, LAST, List.of(), List.of(marks));
    }

    @Test
    @DisplayName("costs what it would have been warmer, from 5 K, on days of 5 K, and the warm days that were missed")
    void costs() {
        assertEquals(List.of(), held(COOL, Map.of(Factor.WATER, 4.99)).costs(0, LAST));
        assertEquals(
                List.of(new HeldBack.Cost(Factor.WATER, 5, DAYS, 0)),
                held(COOL, Map.of(Factor.WATER, 5.0)).costs(0, LAST));
        Course plain = core(day -> day < 2 ? 40 : 20, COOL);
        Course right = core(day -> day < 16 ? 40 : 24, COOL);
        HeldBack held = new HeldBack(plain, plain, Map.of(Factor.WATER, right), Set.of());
        HeldBack.Cost cost = new HeldBack.Cost(Factor.WATER, 20, 14, 14);
        assertEquals(List.of(cost), held.costs(0, LAST), "by its best fortnight; 4 K on the other days are none");
        assertEquals(List.of(cost), held.blaming(Factor.AIR, 0, LAST).costs(0, LAST));
        assertEquals(List.of(new HeldBack.Cost(Factor.WATER, 20, 1, 14)), held.costs(7, 7), "one day");
        assertEquals(List.of(), held.costs(8, 7), "no day");
    }

    @ParameterizedTest
    @CsvSource({
        "WATER, 25, true",
        "SIZE, 9.9, true",
        "SIZE, 10, false",
        "TIME, 10, false",
        "SHELTER, 4.9, true",
        "SHELTER, 5, false"
    })
    @DisplayName("counts a fault in any weather, size and time below 10 °C, a wrapping below 5 °C")
    void inTheCold(Factor factor, double outdoorC, boolean counts) {
        assertEquals(counts, !held(outdoorC, Map.of(factor, 9.0)).costs(0, LAST).isEmpty());
    }

    @Test
    @DisplayName(
            "is the dearest of the pile itself, then what its file does not tell, then the late start, then the cold")
    void worst() {
        Course colder = core(20, FROST);
        Course plain = core(32, FROST);
        Map<Factor, Double> size = Map.of(Factor.SIZE, 10.0);
        assertEquals(Factor.UNKNOWN, held(colder, plain, size).worst(0, LAST));
        assertEquals(
                Factor.WATER, held(colder, plain, Map.of(Factor.WATER, 6.0)).worst(0, LAST));
        assertEquals(Factor.SIZE, held(colder, core(30, FROST), size).worst(0, LAST), "as dear as what is not told");
        assertEquals(
                Factor.SIZE,
                held(FROST, Map.of(Factor.SIZE, 10.0, Factor.TIME, 20.0, Factor.COLD, 30.0))
                        .worst(0, LAST));
        assertEquals(
                Factor.TIME,
                held(FROST, Map.of(Factor.TIME, 20.0, Factor.COLD, 30.0)).worst(0, LAST));
        assertEquals(Factor.COLD, held(FROST, Map.of(Factor.COLD, 30.0)).worst(0, LAST));
        assertEquals(Factor.NONE, held(FROST, Map.of()).worst(0, LAST));
    }

    @Test
    @DisplayName("is, where something is wrong, what can be mended or was done too often, whatever size would have won")
    void fault() {
        assertEquals(Factor.WATER, fault(held(FROST, Map.of(Factor.SIZE, 20.0, Factor.WATER, 6.0))));
        assertEquals(Factor.HANDLING, fault(held(FROST, Map.of(Factor.SIZE, 20.0, Factor.HANDLING, 6.0))));
        assertEquals(Factor.SIZE, fault(held(FROST, Map.of(Factor.SIZE, 20.0))));
        StateMark sour = new StateMark(3, OptionalDouble.empty(), OptionalDouble.of(0.6));
        assertEquals(Factor.FOOD, fault(held(FROST, Map.of(Factor.FOOD, 20.0))));
        assertEquals(Factor.ACID, fault(held(FROST, Map.of(Factor.FOOD, 20.0)), sour), "felt before reckoned");
        assertEquals(
                Factor.NITROGEN,
                fault(held(FROST, Map.of(Factor.NITROGEN, 20.0)), StateMark.noticed(3, Bounds.moisture(0.2, 0.3))));
    }

    private static List<HeldBack.Held> strip(Course lived, Map<Factor, Double> warmer) {
        return held(lived, lived, warmer).held();
    }

    private static HeldBack.Held all(Factor factor, double kelvin) {
        return new HeldBack.Held(0, LAST, factor, kelvin);
    }

    @ParameterizedTest
    @CsvSource({"39.9, WATER, 9", "40, NONE, 0", "65, NONE, 0", "65.1, HEAT, 0"})
    @DisplayName("is nothing from 40 °C on, and the heat above 65 °C")
    void warm(double coreC, Factor factor, double kelvin) {
        assertEquals(List.of(all(factor, kelvin)), strip(core(coreC, COOL), Map.of(Factor.WATER, 9.0)));
    }

    @Test
    @DisplayName(
            "is, of a cold pile, a fault, what is not told, food that is gone, the frost inside, the cold, or nothing")
    void cold() {
        assertEquals(List.of(all(Factor.COLD, 5)), strip(core(8, FROST), Map.of(Factor.COLD, 5.0)));
        assertEquals(List.of(all(Factor.NONE, 0)), strip(core(8, FROST), Map.of(Factor.COLD, 4.9)));
        Courses.Sample sample = new Courses.Sample();
        Course half = Courses.of(day -> sample.ice(0.5).on(day, 0, FROST));
        Course less = Courses.of(day -> sample.ice(0.49).on(day, 0, FROST));
        assertEquals(List.of(all(Factor.FROZEN, 9)), strip(half, Map.of(Factor.COLD, 9.0)));
        assertEquals(List.of(all(Factor.COLD, 9)), strip(less, Map.of(Factor.COLD, 9.0)));
        assertEquals(List.of(all(Factor.NONE, 0)), strip(half, Map.of()));
        Course spent = Courses.of(day -> sample.breathing(4).on(day, 8, FROST));
        assertEquals(List.of(all(Factor.FOOD, 0)), strip(spent, Map.of(Factor.COLD, 9.0)));
        assertEquals(Factor.FOOD, held(spent, spent, Map.of(Factor.COLD, 9.0)).worst(0, LAST), "for the whole too");
        assertEquals(
                Factor.SIZE,
                held(spent, spent, Map.of(Factor.COLD, 9.0, Factor.SIZE, 6.0)).worst(0, LAST));
        assertEquals(List.of(all(Factor.FOOD, 9)), strip(spent, Map.of(Factor.COLD, 12.0, Factor.FOOD, 9.0)));
        Course plain = core(13, FROST);
        assertEquals(
                List.of(all(Factor.UNKNOWN, 5)), held(spent, plain, Map.of()).held());
        assertEquals(
                List.of(all(Factor.FOOD, 0)),
                held(spent, core(12.9, FROST), Map.of()).held());
        assertEquals(
                List.of(all(Factor.WATER, 5)),
                held(spent, plain, Map.of(Factor.WATER, 5.0)).held());
    }

    @Test
    @DisplayName("changes only where it lasts three days, and from the first day to the last that is blamed")
    void stretches() {
        Course lived = core(day -> day == 4 || day >= 20 ? 50 : 20, FROST);
        HeldBack held = held(lived, lived, Map.of(Factor.SIZE, 9.0));
        assertEquals(
                List.of(new HeldBack.Held(0, 19, Factor.SIZE, 9), new HeldBack.Held(20, LAST, Factor.NONE, 0)),
                held.held());
        assertEquals(
                List.of(
                        new HeldBack.Held(0, 2, Factor.SIZE, 9),
                        new HeldBack.Held(3, 9, Factor.AIR, 0),
                        new HeldBack.Held(10, 19, Factor.SIZE, 9),
                        new HeldBack.Held(20, LAST, Factor.NONE, 0)),
                held.blaming(Factor.AIR, 3, 9).held());
    }
}
