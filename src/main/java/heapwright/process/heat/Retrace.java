package heapwright.process.heat;

import java.util.List;
import java.util.OptionalInt;

/**
 * The way of a pile up to now, corrected by what was measured: between two core temperatures the rate of decay, and where
 * that is not enough the loss of heat, is set so that the reckoned core comes near the later one, and what still misses
 * is added; water and acid are set on the days of the marks. Without measurements it is what the recipe alone makes of it.
 *
 * @param course the course
 * @param stalledOn first day since when the core has not been at 30 °C again; empty when it is now
 * @param now the pile at the end, all its shells taken together
 */
public record Retrace(Course course, OptionalInt stalledOn, PileState now) {

    /** A pile has stalled since its core was last at this, °C; judgement. */
    public static final double STALLED_C = 30;

    /**
     * Retraces.
     *
     * @param told the pile, up to now
     * @param cores measured core temperatures, any order, each before its last day
     */
    public static Retrace of(Setup told, List<CoreReading> cores, Constants constants) {
        RetracedCourse way = RetracedCourse.nearest(told, cores, constants);
        Course course = way.course();
        return new Retrace(course, stalled(course), way.now());
    }

    private static OptionalInt stalled(Course course) {
        int day = course.days().size();
        while (day > 0 && course.days().get(day - 1).coreC() < STALLED_C) {
            day--;
        }
        return day == course.days().size() ? OptionalInt.empty() : OptionalInt.of(day);
    }

    /** The same pile, damp, airy, with nitrogen enough, not sour and not coarse. */
    public static PileState healthy(PileState start) {
        return start.with(Variants.healthy(start.matter()));
    }

    /**
     * Of what was learned of the loss of heat, what is so of the pile made healthy too: that it stands snugger than told.
     * That it loses more may be its very trouble.
     */
    private static double snug(double loss) {
        return Math.min(1, loss);
    }

    /** The same pile made healthy, standing as snug as the readings say. */
    public PileState healthyAs(PileState start) {
        return asSnug(healthy(start));
    }

    /** A pile standing as snug as the readings say. */
    public PileState asSnug(PileState start) {
        return start.losing(snug(now.stage().loss()));
    }

    /** What would be done to a healthy pile too: material and covers, but no turning, water or snow. */
    public static List<Event> harmless(List<Event> events) {
        return Variants.harmless(events);
    }
}
