package heapwright.process.heat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * The way of a pile up to now, corrected by what was measured: between two core temperatures the rate of decay, and where
 * that is not enough the loss of heat, is set so that the reckoned core comes near the later one, and what still misses
 * is added; water and acid are set on the days of the marks. Without measurements it is what the recipe alone makes of it.
 *
 * @param course the course
 * @param stretches what held it back, when; the gap is to the same pile made healthy
 * @param stalledOn first day since when the core has not been at 30 °C again; empty when it is now
 * @param now the pile at the end, all its shells taken together
 */
public record Retrace(Course course, List<Stretch> stretches, OptionalInt stalledOn, PileState now) {

    /** A pile has stalled since its core was last at this, °C; judgement. */
    public static final double STALLED_C = 30;

    /** A rate that differs by more than this from that of a stretch, as a logarithm, begins another; judgement. */
    private static final double ANOTHER = 0.8;

    public Retrace {
        stretches = List.copyOf(stretches);
    }

    /**
     * Retraces.
     *
     * @param cores measured core temperatures, any order, each before {@code days}
     * @param marks what is known of water and acid, any order
     * @param days days up to now, 1–3,650
     */
    public static Retrace of(
            PileState start,
            Weather weather,
            List<Event> events,
            List<CoreReading> cores,
            List<StateMark> marks,
            int days,
            Constants constants) {
        Way way = Way.nearest(start, weather, events, cores, marks, days, constants);
        Course course = way.course();
        PileState sound = healthy(start).losing(snug(way.lossTimes()));
        Course healthy = HeatModel.run(sound, weather, Variants.harmless(events), days, constants);
        return new Retrace(course, stretches(course, healthy, way.biases()), stalled(course), way.now());
    }

    /** The pile at the end of its way, all its shells taken together; the same as {@link #now}, with less work. */
    public static PileState reached(
            PileState start,
            Weather weather,
            List<Event> events,
            List<CoreReading> cores,
            List<StateMark> marks,
            int days,
            Constants constants) {
        return Way.nearest(start, weather, events, cores, marks, days, constants)
                .now();
    }

    private static List<Stretch> stretches(Course course, Course healthy, List<Double> biases) {
        List<Stretch> all = new ArrayList<>();
        int from = 0;
        int days = course.days().size();
        for (int d = 1; d <= days; d++) {
            boolean ends = d == days
                    || course.days().get(d).limitation().factor()
                            != course.days().get(from).limitation().factor()
                    || Math.abs(Math.log(biases.get(d) / biases.get(from))) > ANOTHER;
            if (ends) {
                all.add(stretch(course, healthy, biases, from, d));
                from = d;
            }
        }
        return List.copyOf(all);
    }

    private static Stretch stretch(Course course, Course healthy, List<Double> biases, int from, int end) {
        double value = 0;
        double bias = 0;
        double gap = 0;
        for (int d = from; d < end; d++) {
            value += course.days().get(d).limitation().value();
            bias += Math.log(biases.get(d));
            gap += healthy.days().get(d).coreC() - course.days().get(d).coreC();
        }
        int n = end - from;
        LimitingFactor factor = course.days().get(from).limitation().factor();
        return new Stretch(from, end - 1, factor, value / n, Math.exp(bias / n), gap / n);
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
        return healthy(start).losing(snug(now.stage().loss()));
    }

    /** What would be done to a healthy pile too: material and covers, but no turning, water or snow. */
    public static List<Event> harmless(List<Event> events) {
        return Variants.harmless(events);
    }
}
