package heapwright.process.heat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
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

    /** The recipe counts as much as so many days of readings, and what was learned so long ago a third; judgement. */
    private static final double RECIPE_DAYS = 5;

    private static final double FORGETS_DAYS = 21;
    /** A reading so long ago no longer says whether the model fits; judgement. */
    private static final int LATELY_DAYS = 21;

    /** Losses of heat tried from the first day, times that of size and covers; judgement. */
    private static final double[] SNUG = {0.7, 0.5, 0.35};

    /** With more readings than these no reading leaves much to explain, and each way takes long. */
    private static final int MOST_READINGS = 100;

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
        Way way = nearest(start, weather, events, cores, marks, days, constants);
        Course course = new Course(way.lived, way.run.tally.close(way.run.s));
        PileState sound = healthy(start).losing(snug(way.run.lossTimes));
        Course healthy = HeatModel.run(sound, weather, Variants.harmless(events), days, constants);
        return new Retrace(course, stretches(course, healthy, way.biases), stalled(course), now(way));
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
        return now(nearest(start, weather, events, cores, marks, days, constants));
    }

    /**
     * The way that comes nearest to the readings. Reading by reading the fit looks back no further than to the one before;
     * a pile that still kept far more heat than it can has kept it better from the first, and so is tried snugger.
     */
    private static Way nearest(
            PileState start,
            Weather weather,
            List<Event> events,
            List<CoreReading> cores,
            List<StateMark> marks,
            int days,
            Constants constants) {
        Way best = way(start, weather, events, cores, marks, days, constants);
        if (missed(best) <= Stage.MISFIT_K || cores.size() > MOST_READINGS) {
            return best;
        }
        for (double loss : SNUG) {
            Way other = way(start.losing(loss), weather, events, cores, marks, days, constants);
            if (Math.abs(missed(other)) < Math.abs(missed(best))) {
                best = other;
            }
        }
        return best;
    }

    /** A run at its end, what it lived through and the bias of each day. */
    private record Way(Run run, List<Day> lived, List<Double> biases, List<Miss> misses) {}

    /** What a reading still missed by after the fit, K. */
    private record Miss(int day, double kelvin) {}

    private static Way way(
            PileState start,
            Weather weather,
            List<Event> events,
            List<CoreReading> cores,
            List<StateMark> marks,
            int days,
            Constants constants) {
        Checks.within("days", days, 1, 3650);
        List<CoreReading> sorted = cores.stream()
                .filter(c -> c.day() < days)
                .sorted(Comparator.comparingInt(CoreReading::day))
                .map(c -> beforeDeeds(c, events))
                .toList();
        Run run = new Run(start, weather, events, constants, Run.SHELLS);
        List<Day> lived = new ArrayList<>(days);
        List<Double> biases = new ArrayList<>(days);
        List<Miss> misses = new ArrayList<>();
        Fit fit = new Fit(run);
        for (CoreReading reading : sorted) {
            if (reading.day() >= run.day) {
                List<StateMark> known = between(marks, run.day, reading.day());
                run.standsM3 = standsLater(marks, events, run.day);
                Fit.Match match = fit.match(run, reading, known);
                run.rateTimes = match.rate();
                run.lossTimes = match.loss();
                live(run, reading.day() + 1, known, lived, biases);
            }
            misses.add(new Miss(reading.day(), reading.celsius() - run.s.temperature[0]));
            Fit.nudge(run, reading.celsius());
            lived.set(lived.size() - 1, run.read());
        }
        run.standsM3 = standsLater(marks, events, run.day);
        live(run, days, between(marks, run.day, days - 1), lived, biases);
        return new Way(run, lived, biases, misses);
    }

    /**
     * A pile to which nothing is added and that nobody loosens only settles: it has never been smaller than it was found
     * later. The size of the next mark, m³; 0 where there is none or something was done before it.
     */
    private static double standsLater(List<StateMark> marks, List<Event> events, int from) {
        StateMark next = marks.stream()
                .filter(m -> m.day() > from && m.volumeM3().isPresent())
                .min(Comparator.comparingInt(StateMark::day))
                .orElse(null);
        boolean grew = next != null
                && events.stream().anyMatch(e -> e.day() >= from && e.day() <= next.day() && Handling.changesSize(e));
        return next == null || grew ? 0 : next.volumeM3().getAsDouble();
    }

    /**
     * People measure, then turn or water: what was measured on a day on which something was done to the inside is the
     * core of the evening before (judgement).
     */
    private static CoreReading beforeDeeds(CoreReading reading, List<Event> events) {
        boolean done = events.stream().anyMatch(e -> e.day() == reading.day() && Handling.reachesCore(e));
        return done && reading.day() > 0 ? new CoreReading(reading.day() - 1, reading.celsius()) : reading;
    }

    private static void live(Run run, int until, List<StateMark> marks, List<Day> lived, List<Double> biases) {
        run.liveOn(until, marks, one -> {
            lived.add(one.read());
            biases.add(one.rateTimes);
        });
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

    private static List<StateMark> between(List<StateMark> marks, int from, int to) {
        return marks.stream()
                .filter(m -> m.day() >= from && m.day() <= to)
                .sorted(Comparator.comparingInt(StateMark::day))
                .toList();
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

    /** The rate that the readings taught: that of late counts most, and a few days say little. */
    private static double learned(Way way) {
        if (way.misses.isEmpty()) {
            return 1;
        }
        int last = way.misses.get(way.misses.size() - 1).day();
        double sum = 0;
        double weight = RECIPE_DAYS;
        for (int d = 0; d <= last; d++) {
            double here = Math.exp((d - last) / FORGETS_DAYS);
            sum += here * Math.log(way.biases.get(d));
            weight += here;
        }
        return Math.exp(sum / weight);
    }

    /** Of the readings of late the one that fits worst. */
    private static double missed(Way way) {
        double worst = 0;
        for (Miss miss : way.misses) {
            boolean late = miss.day() > way.run.day - LATELY_DAYS;
            if (late && Math.abs(miss.kelvin()) > Math.abs(worst)) {
                worst = miss.kelvin();
            }
        }
        return worst;
    }

    private static PileState now(Way way) {
        Shells s = way.run.s;
        double quick = Shells.sum(s.quick);
        double slow = Shells.sum(s.slow);
        double lignin = Shells.sum(s.lignin);
        double dry = Tally.dry(s);
        double acid = 0;
        double mesophiles = 0;
        double thermophiles = 0;
        double reach = 0;
        double volume = Shells.sum(s.volume);
        for (int i = 0; i < s.n; i++) {
            acid += s.acid[i] * s.volume[i] / volume;
            mesophiles += s.mesophiles[i] * s.volume[i] / volume;
            thermophiles += s.thermophiles[i] * s.volume[i] / volume;
            reach += s.reach[i] * s.volume[i] / volume;
        }
        double nitrogen = Tally.nitrogen(s);
        Matter matter = new Matter(
                dry,
                Shells.sum(s.water),
                quick / dry,
                slow / dry,
                lignin / dry,
                nitrogen,
                Math.min(nitrogen, Shells.sum(s.ammonium)),
                volume,
                s.pieceCm,
                Math.max(0, Math.min(1, acid)));
        return new PileState(
                s.length,
                s.width,
                matter,
                Math.max(-40, Math.min(80, Shells.coreC(standing(s, 0), standing(s, s.n - 1), s.n))),
                standing(s, s.n - 1),
                s.envelope,
                new Stage(
                        Math.min(2, s.loose),
                        Optional.of(
                                new Vigour(Factors.ramp(mesophiles), Factors.ramp(thermophiles), Factors.ramp(reach))),
                        learned(way),
                        way.run.lossTimes,
                        missed(way)));
    }

    /** Its temperature; just below freezing where most of it is ice, since 0 °C would mean that it is water. */
    private static double standing(Shells s, int i) {
        double celsius = s.ice[i] >= 0.5 ? Math.min(s.temperature[i], -0.05) : s.temperature[i];
        return Math.max(-40, Math.min(80, celsius));
    }
}
