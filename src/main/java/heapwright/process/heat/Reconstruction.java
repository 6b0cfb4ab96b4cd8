package heapwright.process.heat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;

/**
 * What a pile must have gone through for its core to be as measured, beside what a healthy pile of its size would have
 * done in the same weather.
 *
 * <p>Between two measurements the decay rate is multiplied by the bias that brings the core to the later one (searched on
 * a grid, with a mild pull towards 1); what still misses is then added to the shells' temperatures, all of it at the
 * core, less further out.
 *
 * @param course the course that fits
 * @param healthy the course of a healthy pile
 * @param stretches what held it back, when
 * @param suspects single faults, the one that explains the measurements best first
 * @param stalledOn first day since when the core has not been at 30 °C again; empty when it is now
 * @param verdict the comparison in a word
 */
public record Reconstruction(
        Course course,
        Course healthy,
        List<Stretch> stretches,
        List<Suspect> suspects,
        OptionalInt stalledOn,
        CourseVerdict verdict) {
    private static final double[] BIASES = {0.02, 0.05, 0.1, 0.18, 0.3, 0.5, 0.7, 0.85, 1, 1.2, 1.5, 2, 3};
    /** A pull towards the recipe: a rate wrong by a factor e counts like a miss of this, K (judgement). */
    private static final double PULL_K = 1.5;
    /** Colder than a healthy pile by this counts, K: twice what reviewed models miss by (MASON06). */
    private static final double CLEARLY_K = 10;

    private static final int CLEARLY_DAYS = 5;
    private static final double WINTER_C = 10;

    /**
     * Reconstructs.
     *
     * @param readings measured core temperatures, at least one, any order, each before {@code days}
     * @param days days up to now
     * @throws IllegalArgumentException when there is no reading, or one after the end
     */
    public static Reconstruction of(
            PileState start,
            Weather weather,
            List<Event> events,
            List<CoreReading> readings,
            int days,
            Constants constants,
            Readiness readiness) {
        if (readings.isEmpty()) {
            throw new IllegalArgumentException("at least one measured core temperature is needed");
        }
        List<CoreReading> sorted = readings.stream()
                .sorted(Comparator.comparingInt(CoreReading::day))
                .toList();
        Checks.within("day of the last reading", sorted.get(sorted.size() - 1).day(), 0, days - 1.0);
        Run run = new Run(start, weather, events, constants, Run.SHELLS);
        List<Day> lived = new ArrayList<>(days);
        List<Double> biases = new ArrayList<>(days);
        for (CoreReading reading : sorted) {
            if (reading.day() >= run.day) {
                run.rateTimes = bestBias(run, reading);
                live(run, reading.day() + 1, lived, biases);
            }
            nudge(run, reading.celsius());
            lived.set(lived.size() - 1, run.read());
        }
        live(run, days, lived, biases);
        Course course = new Course(lived, run.tally.close(run.s));
        Course healthy = HeatModel.run(
                start.with(Variants.healthy(start.matter())), weather, Variants.harmless(events), days, constants);
        return new Reconstruction(
                course,
                healthy,
                stretches(course, healthy, biases),
                Variants.suspects(start, weather, events, sorted, constants),
                stalled(course),
                verdict(course, healthy, readiness));
    }

    static void live(Run run, int until, List<Day> lived, List<Double> biases) {
        while (run.day < until) {
            run.live();
            lived.add(run.read());
            biases.add(run.rateTimes);
        }
    }

    static double bestBias(Run from, CoreReading reading) {
        double best = 1;
        double least = Double.MAX_VALUE;
        for (double bias : BIASES) {
            Run fork = new Run(from);
            fork.rateTimes = bias;
            while (fork.day <= reading.day()) {
                fork.live();
            }
            double miss = fork.s.temperature[0] - reading.celsius();
            double pull = PULL_K * Math.log(bias);
            double cost = miss * miss + pull * pull;
            if (cost < least) {
                least = cost;
                best = bias;
            }
        }
        return best;
    }

    static void nudge(Run run, double celsius) {
        Shells s = run.s;
        double shift = celsius - s.temperature[0];
        for (int i = 0; i < s.n; i++) {
            double part = shift * (1 - 0.8 * i / (s.n - 1));
            if (Math.abs(part) > 0.05) {
                double heat = Shells.heatAt(s.temperature[i] + part, s.dry(i), s.water[i]);
                run.tally.heatBrought += heat - s.heat[i];
                s.heat[i] = heat;
            }
        }
        s.derive();
    }

    static List<Stretch> stretches(Course course, Course healthy, List<Double> biases) {
        List<Stretch> all = new ArrayList<>();
        int from = 0;
        int days = course.days().size();
        for (int d = 1; d <= days; d++) {
            boolean ends = d == days
                    || course.days().get(d).limitation().factor()
                            != course.days().get(from).limitation().factor()
                    || Math.abs(Math.log(biases.get(d) / biases.get(from))) > 0.8;
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

    static OptionalInt stalled(Course course) {
        int day = course.days().size();
        while (day > 0 && course.days().get(day - 1).coreC() < Retrace.STALLED_C) {
            day--;
        }
        return day == course.days().size() ? OptionalInt.empty() : OptionalInt.of(day);
    }

    private static CourseVerdict verdict(Course course, Course healthy, Readiness readiness) {
        if (readiness.spent(course.last())) {
            return CourseVerdict.FINISHED;
        }
        int colder = 0;
        int longest = 0;
        for (int d = 0; d < course.days().size(); d++) {
            double gap = healthy.days().get(d).coreC() - course.days().get(d).coreC();
            colder = gap > CLEARLY_K ? colder + 1 : 0;
            longest = Math.max(longest, colder);
        }
        if (longest >= CLEARLY_DAYS) {
            return CourseVerdict.SOMETHING_WRONG;
        }
        Day last = course.last();
        return last.coreC() < Retrace.STALLED_C && last.outdoorC() < WINTER_C
                ? CourseVerdict.JUST_WINTER
                : CourseVerdict.WORKING;
    }
}
