package heapwright.advice.winter;

import static org.junit.jupiter.api.Assertions.assertEquals;

import heapwright.advice.winter.HeldBack.Cost;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Which of several things is named is our own choice; the figures are made up. */
@DisplayName("What is named as holding a pile back")
class LeadingFaultTest {

    private static Cost cost(Factor factor, double kelvin) {
        return new Cost(factor, kelvin, 0, 0);
    }

    private static Factor first(Cost... dearestFirst) {
        return LeadingFault.faultFirst(List.of(dearestFirst), Set.of())
                .map(Cost::factor)
                .orElse(Factor.NONE);
    }

    @Test
    @DisplayName("is a fault from half of what would help a sound pile too, and else that")
    void faultFirst() {
        assertEquals(Factor.WATER, first(cost(Factor.SIZE, 20), cost(Factor.WATER, 10)));
        assertEquals(Factor.SIZE, first(cost(Factor.SIZE, 20), cost(Factor.WATER, 9.9)));
        assertEquals(Factor.AIR, first(cost(Factor.AIR, 12), cost(Factor.SIZE, 11), cost(Factor.WATER, 10)));
        assertEquals(Factor.TIME, first(cost(Factor.TIME, 8), cost(Factor.FOOD, 7)));
        assertEquals(Factor.NONE, first());
    }

    @Test
    @DisplayName("is a fault that was seen wherever it costs anything at all")
    void seenFirst() {
        List<Cost> costs = List.of(cost(Factor.SIZE, 39), cost(Factor.WATER, 12), cost(Factor.AIR, 6));
        assertEquals(Optional.of(costs.get(2)), LeadingFault.faultFirst(costs, Set.of(Factor.AIR)));
        assertEquals(Optional.of(costs.get(0)), LeadingFault.faultFirst(costs, Set.of(Factor.ACID)));
        List<Cost> dear = List.of(cost(Factor.SIZE, 20), cost(Factor.WATER, 12), cost(Factor.AIR, 6));
        assertEquals(Optional.of(dear.get(1)), LeadingFault.faultFirst(dear, Set.of(Factor.AIR)), "half is enough");
        Map<Factor, Double> day = Map.of(Factor.SIZE, 39.0, Factor.AIR, HeldBack.LEAST_K);
        assertEquals(Factor.SIZE, on(day));
        assertEquals(Factor.AIR, on(day, Set.of(Factor.AIR)));
        assertEquals(
                Factor.SIZE, on(Map.of(Factor.SIZE, 39.0, Factor.AIR, HeldBack.LEAST_K - 0.1), Set.of(Factor.AIR)));
    }

    @Test
    @DisplayName("is on a day the dearest of what is of the pile, a sound pile's wants counting half")
    void dearest() {
        double least = HeldBack.LEAST_K;
        assertEquals(Factor.WATER, on(Map.of(Factor.WATER, 11.0, Factor.AIR, 10.0)));
        assertEquals(Factor.AIR, on(Map.of(Factor.WATER, 10.0, Factor.AIR, 11.0)));
        assertEquals(Factor.WATER, on(Map.of(Factor.WATER, 11.0, Factor.SIZE, 21.0)));
        assertEquals(Factor.SIZE, on(Map.of(Factor.WATER, 10.0, Factor.SIZE, 21.0)));
        // Alone it is named even where half of it is less than the error of such models.
        assertEquals(Factor.SIZE, on(Map.of(Factor.SIZE, least)));
        assertEquals(Factor.NONE, on(Map.of(Factor.SIZE, least - 0.1, Factor.WATER, least - 0.1)));
        assertEquals(Factor.WATER, on(Map.of(Factor.WATER, least)));
    }

    @Test
    @DisplayName("is never the weather, an early start or what nobody told, by this reckoning")
    void notOfThePile() {
        for (Factor factor : List.of(Factor.COLD, Factor.TIME, Factor.UNKNOWN)) {
            assertEquals(Factor.NONE, on(Map.of(factor, 30.0)));
            assertEquals(Factor.WATER, on(Map.of(factor, 30.0, Factor.WATER, 8.0)));
        }
    }

    @Test
    @DisplayName("costs by its best fortnight, or by all days where there are fewer")
    void fortnight() {
        double[] days = new double[20];
        for (int day = 0; day < days.length; day++) {
            days[day] = day;
        }
        assertEquals(12.5, HeldBack.warmestFortnight(days, 0, 19));
        assertEquals(6.5, HeldBack.warmestFortnight(days, 0, 13));
        assertEquals(9.5, HeldBack.warmestFortnight(days, 3, 16));
        assertEquals(11, HeldBack.warmestFortnight(days, 10, 12));
        assertEquals(0, HeldBack.warmestFortnight(new double[] {-3, -2}, 0, 1));
    }

    private static Factor on(Map<Factor, Double> kelvin) {
        return on(kelvin, Set.of());
    }

    private static Factor on(Map<Factor, Double> kelvin, Set<Factor> seen) {
        Map<Factor, double[]> smooth = new EnumMap<>(Factor.class);
        kelvin.forEach((factor, k) -> smooth.put(factor, new double[] {0, k}));
        assertEquals(Factor.NONE, LeadingFault.dearest(0, smooth, seen));
        return LeadingFault.dearest(1, smooth, seen);
    }
}
