package heapwright.report;

import heapwright.advice.winter.Factor;
import heapwright.advice.winter.HeldBack;
import heapwright.advice.winter.PileModel;
import heapwright.advice.winter.PileOutlook;
import heapwright.advice.winter.Story;
import heapwright.process.heat.Bands;
import heapwright.process.heat.Event;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * A course as it is drawn. All temperatures in °C, all days counted from the first.
 *
 * @param first date of day 0
 * @param core expected core, 10th to 90th percentile a day
 * @param outdoor outdoors a day
 * @param measured measured cores
 * @param marks what was done, in order
 * @param strip what held it back, in order and without gaps
 */
public record CourseView(
        LocalDate first, Bands core, double[] outdoor, List<Point> measured, List<Mark> marks, List<Held> strip) {

    public CourseView {
        measured = List.copyOf(measured);
        marks = List.copyOf(marks);
        strip = List.copyOf(strip);
    }

    /** A measured core. */
    public record Point(int day, double celsius) {}

    /** Kinds of what was done. */
    public enum Kind {
        TURNED,
        ADDED
    }

    /** Something done. */
    public record Mark(int day, Kind kind) {}

    /** From one day to another, both included, this held it back. */
    public record Held(int from, int to, Factor factor) {}

    /** The past of a pile beside a healthy one. */
    public static CourseView of(Story story) {
        PileModel model = story.model();
        int days = model.age() + 1;
        double[] outdoor = new double[days];
        for (int d = 0; d < days; d++) {
            outdoor[d] = model.climate().weather().airC(d);
        }
        return new CourseView(
                model.date(0),
                story.healthy(),
                outdoor,
                model.cores().stream().map(c -> new Point(c.day(), c.celsius())).toList(),
                marks(model.events()),
                strip(story.held()));
    }

    /** What lies ahead. */
    public static CourseView of(PileOutlook ahead) {
        LocalDate first = ahead.firstDay();
        return new CourseView(
                first, ahead.core(), ahead.outdoor().likely().clone(), List.of(), List.of(), strip(ahead.held()));
    }

    private static List<Held> strip(HeldBack held) {
        return held.held().stream()
                .map(one -> new Held(one.from(), one.to(), one.factor()))
                .toList();
    }

    private static List<Mark> marks(List<Event> events) {
        List<Mark> all = new ArrayList<>();
        for (Event event : events) {
            if (event instanceof Event.Turn || event instanceof Event.Loosen) {
                all.add(new Mark(event.day(), Kind.TURNED));
            } else if (event instanceof Event.Add || event instanceof Event.Water) {
                all.add(new Mark(event.day(), Kind.ADDED));
            }
        }
        all.sort(java.util.Comparator.comparingInt(Mark::day).thenComparing(Mark::kind));
        return all.stream().distinct().toList();
    }

    /** Days drawn, 1 or more. */
    public int days() {
        return outdoor.length;
    }

    /** Lowest temperature drawn, °C. */
    public double lowest() {
        double low = 0;
        for (int d = 0; d < days(); d++) {
            low = Math.min(low, Math.min(outdoor[d], core.low()[d]));
        }
        for (Point point : measured) {
            low = Math.min(low, point.celsius());
        }
        return low;
    }

    /** Highest temperature drawn, °C, at least 40. */
    public double highest() {
        double high = 40;
        for (int d = 0; d < days(); d++) {
            high = Math.max(high, Math.max(outdoor[d], core.high()[d]));
        }
        for (Point point : measured) {
            high = Math.max(high, point.celsius());
        }
        return high;
    }

    /** What held it back on a day. */
    Factor factor(int day) {
        return strip.stream()
                .filter(h -> day >= h.from() && day <= h.to())
                .map(Held::factor)
                .findFirst()
                .orElse(Factor.NONE);
    }
}
