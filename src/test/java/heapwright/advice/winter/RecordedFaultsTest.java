package heapwright.advice.winter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.process.heat.Bounds;
import heapwright.process.heat.Event;
import heapwright.process.heat.StateMark;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("What a record says is amiss")
class RecordedFaultsTest {

    private static final OptionalDouble NONE = OptionalDouble.empty();

    private static StateMark measured(int day, double moisture) {
        return new StateMark(day, OptionalDouble.of(moisture), NONE);
    }

    private static StateMark felt(int day, double least, double most) {
        return StateMark.noticed(day, Bounds.moisture(least, most));
    }

    private static StateMark foul(int day) {
        return StateMark.noticed(day, Bounds.reach(0.25));
    }

    private static StateMark acid(int day, double index) {
        return new StateMark(day, NONE, OptionalDouble.of(index));
    }

    @Test
    @DisplayName("is what nose, hand and measurement tell of by their last word")
    void seen() {
        StateMark dry = felt(3, 0.26, 0.36);
        StateMark soggy = felt(5, 0.655, 0.72);
        StateMark right = felt(7, 0.52, 0.57);
        StateMark foul = foul(9);
        StateMark sour = acid(9, 0.55);
        StateMark sweet = acid(11, 0.2);
        assertEquals(Set.of(), RecordedFaults.seen(List.of()));
        assertEquals(Set.of(Factor.WATER), RecordedFaults.seen(List.of(dry)));
        assertEquals(Set.of(Factor.AIR), RecordedFaults.seen(List.of(dry, soggy)));
        assertEquals(Set.of(), RecordedFaults.seen(List.of(dry, soggy, right)));
        assertEquals(Set.of(Factor.AIR, Factor.ACID), RecordedFaults.seen(List.of(right, foul, sour)));
        assertEquals(Set.of(Factor.AIR), RecordedFaults.seen(List.of(right, foul, sour, sweet)));
    }

    @Test
    @DisplayName("of water is not taken back by a nose that tells of air or acid alone")
    void otherWords() {
        StateMark dry = felt(3, 0, 0.36);
        assertEquals(Set.of(Factor.WATER, Factor.AIR), RecordedFaults.seen(List.of(dry, foul(9))));
        assertEquals(Set.of(Factor.WATER, Factor.ACID), RecordedFaults.seen(List.of(dry, acid(9, 0.55))));
        assertEquals(Set.of(Factor.AIR), RecordedFaults.seen(List.of(dry, felt(9, 0.64, 0.95))), "but by a wet hand");
        assertEquals(
                Set.of(),
                RecordedFaults.seen(List.of(felt(3, 0.64, 0.95), felt(9, 0, 0.60))),
                "and by one that is not");
    }

    /** Good is 50 to 62 % and an acid index of up to 0.3 (docs/method/winter.md): the edges are good still. */
    @Test
    @DisplayName("is nothing at the very edge of good")
    void edges() {
        assertEquals(Set.of(), RecordedFaults.seen(List.of(measured(1, 0.50))));
        assertEquals(Set.of(Factor.WATER), RecordedFaults.seen(List.of(measured(1, 0.499))));
        assertEquals(Set.of(), RecordedFaults.seen(List.of(measured(1, 0.62))));
        assertEquals(Set.of(Factor.AIR), RecordedFaults.seen(List.of(measured(1, 0.621))));
        assertEquals(Set.of(), RecordedFaults.seen(List.of(acid(1, 0.3))));
        assertEquals(Set.of(Factor.ACID), RecordedFaults.seen(List.of(acid(1, 0.301))));
    }

    @Test
    @DisplayName("of air stands from the day on which it was smelt until a nose finds none")
    void airless() {
        List<StateMark> marks = List.of(foul(4), StateMark.noticed(9, Bounds.reach(1)));
        assertFalse(RecordedFaults.airlessOn(3, marks));
        assertTrue(RecordedFaults.airlessOn(4, marks));
        assertTrue(RecordedFaults.airlessOn(8, marks));
        assertFalse(RecordedFaults.airlessOn(9, marks));
        assertFalse(RecordedFaults.airless(acid(1, 0.5)));
    }

    @ParameterizedTest
    @CsvSource({"0.66, AIR", "0.659, UNKNOWN", "0.42, WATER", "0.421, UNKNOWN"})
    @DisplayName("explains what the recipe does not from 66 % and from 42 % on")
    void water(double moisture, Factor factor) {
        assertEquals(factor, RecordedFaults.by(List.of(measured(1, moisture))));
    }

    @Test
    @DisplayName("explains what the recipe does not by acid, and by the last mark that tells")
    void last() {
        assertEquals(Factor.ACID, RecordedFaults.by(List.of(acid(1, 0.47))));
        assertEquals(Factor.UNKNOWN, RecordedFaults.by(List.of(acid(1, 0.46))));
        assertEquals(Factor.AIR, RecordedFaults.by(List.of(foul(1))));
        assertEquals(Factor.UNKNOWN, RecordedFaults.by(List.of()));
        assertEquals(Factor.WATER, RecordedFaults.by(List.of(measured(1, 0.7), measured(2, 0.4))));
        assertEquals(
                Factor.WATER, RecordedFaults.by(List.of(measured(1, 0.4), measured(2, 0.55))), "55 % tells of nothing");
    }

    /** Often is three times at least, and on the whole at least every fourth day. */
    @ParameterizedTest
    @CsvSource({
        "'10,16,22', true",
        "'10,16,23', false",
        "'22,10,16', true",
        "'10,14', false",
        "'10,10,14', false",
        "'0,4,8,12', true",
        "'3,3,9,9,15', true",
        "'', false"
    })
    @DisplayName("is that it was opened often, by the days on which it was")
    void disturbed(String days, boolean often) {
        List<Event> turned = new ArrayList<>();
        List<Event> either = new ArrayList<>();
        List<Event> watered = new ArrayList<>();
        for (String day : days.isEmpty() ? new String[0] : days.split(",")) {
            int on = Integer.parseInt(day);
            turned.add(new Event.Turn(on));
            either.add(either.size() % 2 == 0 ? new Event.Loosen(on) : new Event.Turn(on));
            watered.add(new Event.Water(on, 10, 10));
        }
        assertEquals(often, RecordedFaults.disturbed(turned));
        assertEquals(often, RecordedFaults.disturbed(either));
        assertFalse(RecordedFaults.disturbed(watered), "water opens nothing");
    }
}
