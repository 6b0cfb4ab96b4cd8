package heapwright.advice.winter;

import static org.junit.jupiter.api.Assertions.assertEquals;

import heapwright.process.heat.Event;
import heapwright.process.heat.LimitingFactor;
import heapwright.process.heat.StateMark;
import heapwright.process.heat.Stretch;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ways of invented piles; the limits are those of docs/method/winter.md. */
@DisplayName("What held a pile back")
class HeldBackTest {

    private static final StateMark SOAKED = moisture(0.7);
    private static final StateMark DRY = moisture(0.3);
    private static final StateMark SOUR = new StateMark(5, OptionalDouble.empty(), OptionalDouble.of(0.6));

    private static StateMark moisture(double share) {
        return new StateMark(5, OptionalDouble.of(share), OptionalDouble.empty());
    }

    /** As fast as its recipe explains. */
    private static Stretch stretch(int from, int to, LimitingFactor factor, double left) {
        return stretch(from, to, factor, left, 1);
    }

    private static Stretch stretch(int from, int to, LimitingFactor factor, double left, double rate) {
        return new Stretch(from, to, factor, left, rate, 0);
    }

    private static Factor fault(HeldBack held, StateMark... marks) {
        return held.fault(List.of(), List.of(marks));
    }

    @Test
    @DisplayName("most is what cost most days, not what lasted longest or was worst for a day")
    void worst() {
        List<Stretch> way = List.of(
                stretch(0, 9, LimitingFactor.COLD, 0.8),
                stretch(10, 14, LimitingFactor.FROZEN, 0.2),
                stretch(15, 15, LimitingFactor.HEAT, 0));
        assertEquals(Factor.FROZEN, new HeldBack(way, 0, 15).worst(), "4 days lost to 2 and 1");
        List<Stretch> twice = List.of(
                stretch(0, 9, LimitingFactor.COLD, 0.8),
                stretch(10, 14, LimitingFactor.FROZEN, 0.2),
                stretch(15, 39, LimitingFactor.COLD, 0.9));
        assertEquals(Factor.COLD, new HeldBack(twice, 0, 39).worst(), "2 and 2.5 days lost to 4");
    }

    @Test
    @DisplayName("is looked for between the two days, both included, and nowhere else")
    void between() {
        List<Stretch> way = List.of(
                stretch(0, 9, LimitingFactor.WATER, 0.1),
                stretch(10, 12, LimitingFactor.AIR, 0.5),
                stretch(13, 30, LimitingFactor.COLD, 0.1));
        assertEquals(Factor.WATER, new HeldBack(way, 0, 12).worst());
        assertEquals(Factor.AIR, new HeldBack(way, 10, 12).worst());
        assertEquals(Factor.AIR, new HeldBack(way, 12, 12).worst(), "one day");
        assertEquals(Factor.COLD, new HeldBack(way, 11, 14).worst(), "1 day lost to 1.8");
        assertEquals(Factor.AIR, new HeldBack(way, 10, 13).worst(), "1.5 days lost to 0.9");
        assertEquals(Factor.WATER, new HeldBack(way, 9, 10).worst(), "0.9 days lost to 0.5");
        assertEquals(Factor.WATER, new HeldBack(way, 8, 12).worst(), "1.8 days lost to 1.5");
        assertEquals(Factor.AIR, new HeldBack(way, 9, 12).worst(), "0.9 days lost to 1.5");
        assertEquals(Factor.NONE, new HeldBack(way, 40, 50).worst(), "there was no such time");
        assertEquals(Factor.NONE, new HeldBack(List.of(), 0, 10).worst());
    }

    @Test
    @DisplayName("is a fault that can be mended before the cold that cannot, if it held for 3 days of 10")
    void mendable() {
        List<Stretch> three =
                List.of(stretch(0, 2, LimitingFactor.NITROGEN, 0.5), stretch(3, 9, LimitingFactor.COLD, 0.1));
        assertEquals(Factor.NITROGEN, fault(new HeldBack(three, 0, 9)));
        assertEquals(Factor.COLD, new HeldBack(three, 0, 9).worst());
        List<Stretch> two =
                List.of(stretch(0, 2, LimitingFactor.NITROGEN, 0.5), stretch(3, 10, LimitingFactor.COLD, 0.1));
        assertEquals(Factor.COLD, fault(new HeldBack(two, 0, 10)), "3 days of 11");
    }

    @Test
    @DisplayName("is of two faults the one that cost more days")
    void two() {
        List<Stretch> way = List.of(
                stretch(0, 5, LimitingFactor.ACID, 0.6),
                stretch(6, 9, LimitingFactor.PIECE_SIZE, 0.2),
                stretch(10, 12, LimitingFactor.ACID, 0.9));
        assertEquals(Factor.PIECES, fault(new HeldBack(way, 0, 12)), "3.2 days lost to 2.7");
        assertEquals(Factor.ACID, fault(new HeldBack(way, 0, 7)), "2.4 days lost to 1.6");
    }

    @ParameterizedTest(name = "opened {0} times in {1} days: {2}")
    @CsvSource({"3, 12, HANDLING", "3, 13, COLD", "2, 3, COLD", "5, 20, HANDLING", "5, 21, COLD"})
    @DisplayName("is the opening, where it was opened three times or more and every four days")
    void opened(int times, int within, Factor factor) {
        HeldBack held = new HeldBack(List.of(stretch(0, 29, LimitingFactor.COLD, 0.5)), 0, 29);
        List<Event> events = IntStream.range(0, times)
                .mapToObj(i -> (Event) new Event.Turn(3 + (i == times - 1 ? within : i)))
                .toList();
        assertEquals(factor, held.fault(events, List.of(SOAKED)));
        HeldBack dry = new HeldBack(List.of(stretch(0, 29, LimitingFactor.WATER, 0.5)), 0, 29);
        assertEquals(Factor.WATER, dry.fault(events, List.of()), "what can be mended comes first");
    }

    @ParameterizedTest(name = "rates {0} and {1}: {2}")
    @CsvSource({"0.59, 0.59, AIR", "0.61, 0.61, COLD", "1, 0.35, AIR", "1, 0.37, COLD", "1, 1, COLD", "2, 0.17, AIR"})
    @DisplayName("is what was felt, where it went slower than 0.6 of what its recipe explains, in the geometric mean")
    void slow(double first, double then, Factor factor) {
        List<Stretch> way =
                List.of(stretch(0, 4, LimitingFactor.COLD, 0.5, first), stretch(5, 9, LimitingFactor.COLD, 0.5, then));
        assertEquals(factor, fault(new HeldBack(way, 0, 9), SOAKED));
    }

    @Test
    @DisplayName("weighs a rate by the days that it held")
    void slowDays() {
        List<Stretch> way =
                List.of(stretch(0, 1, LimitingFactor.COLD, 0.5, 0.1), stretch(2, 9, LimitingFactor.COLD, 0.5, 1));
        assertEquals(Factor.COLD, fault(new HeldBack(way, 0, 9), SOAKED), "0.63");
        assertEquals(Factor.AIR, fault(new HeldBack(way, 0, 8), SOAKED), "0.60, less by a hair");
    }

    @Test
    @DisplayName("is by what was felt the last that tells, and unknown where nothing does")
    void marks() {
        HeldBack slow = new HeldBack(List.of(stretch(0, 9, LimitingFactor.COLD, 0.5, 0.3)), 0, 9);
        assertEquals(Factor.UNKNOWN, fault(slow));
        assertEquals(Factor.AIR, fault(slow, SOAKED));
        assertEquals(Factor.WATER, fault(slow, DRY));
        assertEquals(Factor.ACID, fault(slow, SOUR));
        assertEquals(Factor.WATER, fault(slow, SOAKED, DRY));
        assertEquals(Factor.AIR, fault(slow, DRY, SOAKED));
        assertEquals(Factor.AIR, fault(slow, SOAKED, moisture(0.55)), "a sample that is well says nothing");
    }

    @ParameterizedTest(name = "moisture {0}: {1}")
    @CsvSource({"0.66, AIR", "0.659, UNKNOWN", "0.421, UNKNOWN", "0.42, WATER"})
    @DisplayName("is air from 66 % of moisture and water up to 42 %")
    void edges(double share, Factor factor) {
        HeldBack slow = new HeldBack(List.of(stretch(0, 9, LimitingFactor.NONE, 1, 0.3)), 0, 9);
        assertEquals(factor, fault(slow, moisture(share)));
        assertEquals(Factor.NONE, slow.worst(), "nothing was lost");
    }
}
