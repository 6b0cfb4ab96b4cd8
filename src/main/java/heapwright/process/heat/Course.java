package heapwright.process.heat;

import java.util.List;
import java.util.OptionalInt;
import java.util.function.ToDoubleFunction;

/**
 * The course of a pile, day by day.
 *
 * @param days one a day, in order
 * @param ledger what came and went
 */
public record Course(List<Day> days, Ledger ledger) {
    public Course {
        days = List.copyOf(days);
    }

    /** The last day. */
    public Day last() {
        return days.get(days.size() - 1);
    }

    /** Highest core temperature, °C. */
    public double peakC() {
        return days.stream().mapToDouble(Day::coreC).max().orElseThrow();
    }

    /** Days with the core at or above a temperature, °C. */
    public int daysAtLeast(double celsius) {
        return (int) days.stream().filter(d -> d.coreC() >= celsius).count();
    }

    /** First day on which the core reaches a temperature, °C. */
    public OptionalInt firstAtLeast(double celsius) {
        return days.stream()
                .filter(d -> d.coreC() >= celsius)
                .mapToInt(Day::day)
                .findFirst();
    }

    /** First day on which half the core's water is ice. */
    public OptionalInt firstFrozenThrough() {
        return days.stream()
                .filter(d -> d.coreIceShare() >= 0.5)
                .mapToInt(Day::day)
                .findFirst();
    }

    /** One figure of every day. */
    public double[] series(ToDoubleFunction<Day> figure) {
        return days.stream().mapToDouble(figure).toArray();
    }
}
