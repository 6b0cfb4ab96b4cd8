package heapwright.process.heat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The way of a pile through its readings, for {@link Retrace}.
 *
 * @param run the run at its end
 * @param lived what it lived through
 * @param biases times the decay rates, of each day
 * @param misses what the readings still missed by
 */
record RetracedCourse(Run run, List<Day> lived, List<Double> biases, List<Miss> misses) {

    /** The recipe counts as much as so many days of readings, and what was learned so long ago a third; judgement. */
    private static final double RECIPE_DAYS = 5;

    private static final double FORGETS_DAYS = 21;
    /** A reading so long ago no longer says whether the model fits; judgement. */
    private static final int LATELY_DAYS = 21;

    /** Losses of heat tried from the first day, times that of size and covers; judgement. */
    private static final double[] SNUG = {0.7, 0.5, 0.35};

    /** With more readings than these no reading leaves much to explain, and each way takes long. */
    private static final int MOST_READINGS = 100;

    /** A pile older than this has changed too much to be one throughout, and each way takes long. */
    private static final int MOST_DAYS = 400;

    /** What a reading still missed by after the fit, K. */
    record Miss(int day, double kelvin) {}

    /**
     * The way that comes nearest to the readings. Reading by reading the fit looks back no further than to the one before;
     * a pile that still kept far more heat than it can has kept it better from the first, and so is tried snugger.
     */
    static RetracedCourse nearest(Setup told, List<CoreReading> cores, Constants constants) {
        RetracedCourse best = way(told, cores, constants);
        boolean tooLong = cores.size() > MOST_READINGS || told.days() > MOST_DAYS;
        if (best.missed() <= Stage.MISFIT_K || tooLong) {
            return best;
        }
        for (double loss : SNUG) {
            RetracedCourse other = way(told.with(told.start().losing(loss)), cores, constants);
            if (Math.abs(other.missed()) < Math.abs(best.missed())) {
                best = other;
            }
        }
        return best;
    }

    private static RetracedCourse way(Setup told, List<CoreReading> cores, Constants constants) {
        int days = told.days();
        Checks.within("days", days, 1, 3650);
        List<Event> events = told.events();
        List<StateMark> marks = told.marks();
        List<CoreReading> sorted = cores.stream()
                .filter(c -> c.day() < days)
                .sorted(Comparator.comparingInt(CoreReading::day))
                .map(c -> beforeDeeds(c, events))
                .toList();
        Run run = new Run(told.start(), told.weather(), events, constants, Run.SHELLS);
        List<Day> lived = new ArrayList<>(days);
        List<Double> biases = new ArrayList<>(days);
        List<Miss> misses = new ArrayList<>();
        Fit fit = new Fit(run);
        for (CoreReading reading : sorted) {
            if (reading.day() >= run.day) {
                List<StateMark> known = between(marks, run.day, reading.day());
                run.standsM3 = standsLater(marks, events, run.day);
                Search.Match match = fit.match(run, reading, known);
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
        return new RetracedCourse(run, lived, biases, misses);
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

    private static List<StateMark> between(List<StateMark> marks, int from, int to) {
        return marks.stream()
                .filter(m -> m.day() >= from && m.day() <= to)
                .sorted(Comparator.comparingInt(StateMark::day))
                .toList();
    }

    /** What was lived through. */
    Course course() {
        return new Course(lived, run.tally.close(run.s));
    }

    /** The rate that the readings taught: that of late counts most, and a few days say little. */
    private double learned() {
        if (misses.isEmpty()) {
            return 1;
        }
        int last = misses.get(misses.size() - 1).day();
        double sum = 0;
        double weight = RECIPE_DAYS;
        for (int d = 0; d <= last; d++) {
            double here = Math.exp((d - last) / FORGETS_DAYS);
            sum += here * Math.log(biases.get(d));
            weight += here;
        }
        return Math.exp(sum / weight);
    }

    /** Of the readings of late the one that fits worst. */
    private double missed() {
        double worst = 0;
        for (Miss miss : misses) {
            boolean late = miss.day() > run.day - LATELY_DAYS;
            if (late && Math.abs(miss.kelvin()) > Math.abs(worst)) {
                worst = miss.kelvin();
            }
        }
        return worst;
    }

    /** The pile at its end, all its shells taken together. */
    PileState now() {
        Shells s = run.s;
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
                        learned(),
                        run.lossTimes,
                        missed()));
    }

    /** Its temperature; just below freezing where most of it is ice, since 0 °C would mean that it is water. */
    private static double standing(Shells s, int i) {
        double celsius = s.ice[i] >= 0.5 ? Math.min(s.temperature[i], -0.05) : s.temperature[i];
        return Math.max(-40, Math.min(80, celsius));
    }
}
