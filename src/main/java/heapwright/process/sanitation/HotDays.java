package heapwright.process.sanitation;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a record shows at one temperature.
 *
 * @param celsius the temperature
 * @param stretches the days on end at it or above, in order
 */
public record HotDays(double celsius, List<Stretch> stretches) {
    public HotDays {
        stretches = List.copyOf(stretches);
    }

    /** All days that count. */
    public int total() {
        return stretches.stream().mapToInt(s -> s.days().size()).sum();
    }

    /** All hours that count. */
    public double hours() {
        return stretches.stream().mapToDouble(Stretch::hours).sum();
    }

    /** The stretch with the most days, of equals the first. */
    public Optional<Stretch> longest() {
        return stretches.stream()
                .max(Comparator.<Stretch>comparingInt(s -> s.days().size())
                        .thenComparing(Stretch::first, Comparator.reverseOrder()));
    }

    /** The stretch that lacks the fewest days and turns of so many, of equals the longest. */
    public Optional<Stretch> nearest(double days, int turns) {
        return stretches.stream()
                .min(Comparator.<Stretch>comparingDouble(
                                s -> Math.max(0, days - s.days().size())
                                        + Math.max(0, turns - s.turns().size()))
                        .thenComparingInt(s -> -s.days().size())
                        .thenComparing(Stretch::first));
    }
}
