package heapwright.process.heat;

import heapwright.process.heat.PublishedCourse.Climate;
import heapwright.process.heat.PublishedCourse.Cover;
import heapwright.process.heat.PublishedCourse.Deed;
import heapwright.process.heat.PublishedCourse.Pile;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * A published course set up in the model. Day d of a source is the end of day d − 1 of the model: the pile is built at
 * the start of day 0, and what is done on day d is done before the reading of the next day.
 */
final class CourseRun {
    /** Enough for steady percentiles of a score over many courses. */
    private static final int SAMPLES = 32;
    /** How near to the air counts as cold, K. */
    private static final double NEAR_K = 5;

    /** The same floor as {@link Ensemble#core()} has: reviewed models missed the peak by more (MASON06). */
    private static final double MODEL_ERROR_K = 5;

    private static final double FULL_EXCESS_K = 30;

    private final PublishedCourse course;
    private final Ensemble ensemble;
    private final List<Event> events;

    /**
     * A figure beside the model's.
     *
     * @param course whose it is
     * @param figure what was published
     * @param model low, likely and high of the model, in the unit of the figure
     */
    record Scored(PublishedCourse course, PublishedFigure figure, Range model) {
        /** Whether the band and the published span meet. */
        boolean overlaps() {
            return model.low() <= figure.most() && model.high() >= figure.least();
        }

        /** Whether the band holds the middle of the span; false where the span has an open end. */
        boolean holdsMiddle() {
            return figure.middle().isPresent()
                    && model.low() <= figure.middle().getAsDouble()
                    && model.high() >= figure.middle().getAsDouble();
        }

        /** How far the likely course lies outside the span, above (positive) or below it; 0 within. */
        double miss() {
            return Math.max(0, model.likely() - figure.most()) - Math.max(0, figure.least() - model.likely());
        }

        /** How far the likely course lies from the middle of the span; where it has an open end, from that end. */
        double off() {
            return figure.middle().isPresent()
                    ? model.likely() - figure.middle().getAsDouble()
                    : miss();
        }
    }

    private CourseRun(PublishedCourse course) {
        this.course = course;
        this.events = events(course);
        this.ensemble = ensemble(course);
    }

    /** The samples of a course. */
    static Ensemble ensemble(PublishedCourse course) {
        return Ensemble.run(
                start(course),
                weather(course),
                events(course),
                course.days(),
                Constants.standard(),
                Spread.usual(),
                SAMPLES);
    }

    /** The figures of a course beside those of the model as it stands. */
    static List<Scored> of(PublishedCourse course) {
        CourseRun run = new CourseRun(course);
        return course.figures().stream()
                .map(f -> new Scored(course, f, run.range(f)))
                .toList();
    }

    static PileState start(PublishedCourse course) {
        Pile p = course.pile();
        Envelope round = p.walls().envelope();
        if (p.base().equals("pallet")) {
            round = round.bedded(Layer.brush());
        }
        for (Cover cover : p.round()) {
            round = round.wrapped(cover.layer());
        }
        return new PileState(
                p.lengthM(),
                p.widthM(),
                course.mix().matter(course.volumeM3()),
                p.startC(),
                p.startC(),
                topped(round, p.top()));
    }

    private static Envelope topped(Envelope round, List<Cover> top) {
        Envelope all = round;
        for (Cover cover : top) {
            all = all.topped(cover.layer());
        }
        return all;
    }

    static Weather weather(PublishedCourse course) {
        Climate air = course.weather();
        if (air.monthlyC() != null) {
            MonthDay built = MonthDay.parse("--" + air.built());
            return Weather.monthly(air.monthlyC(), built.atYear(2001).getDayOfYear(), course.days());
        }
        double[] days = new double[course.days()];
        Arrays.setAll(days, d -> between(air.points(), d));
        return Weather.daily(days);
    }

    private static double between(List<List<Double>> points, double day) {
        List<Double> before = points.get(0);
        for (List<Double> point : points) {
            if (point.get(0) > day) {
                double share = (day - before.get(0)) / (point.get(0) - before.get(0));
                return before.get(1) + share * (point.get(1) - before.get(1));
            }
            before = point;
        }
        return before.get(1);
    }

    static List<Event> events(PublishedCourse course) {
        List<Event> all = new ArrayList<>();
        for (Deed deed : course.events()) {
            int last = deed.until() == null ? deed.day() : deed.until();
            int step = deed.every() == null ? 1 : deed.every();
            for (int day = deed.day(); day <= last; day += step) {
                all.add(event(course, deed, day));
            }
        }
        all.sort(Comparator.comparingInt(Event::day));
        return all;
    }

    private static Event event(PublishedCourse course, Deed deed, int day) {
        return switch (deed.what()) {
            case "turn" -> new Event.Turn(day);
            case "water" -> new Event.Water(day, deed.litres(), 10);
            case "add" ->
                new Event.Add(day, deed.mix().matter(deed.litres() / 1000), deed.temperatureC(), deed.mixed());
            case "cover" -> new Event.Cover(day, topped(course.pile().walls().envelope(), deed.top()));
            default -> throw new IllegalArgumentException(course.id() + ": no such deed: " + deed.what());
        };
    }

    private Range range(PublishedFigure f) {
        if (!f.what().isTemperature()) {
            return ensemble.range(c -> figure(c, f));
        }
        Range plain = ensemble.temperature(c -> figure(c, f));
        double air = weather(course).airC(f.day() == null ? 0 : f.day() - 1);
        double least = MODEL_ERROR_K * Math.min(1, Math.abs(plain.likely() - air) / FULL_EXCESS_K);
        return new Range(
                Math.min(plain.low(), plain.likely() - least),
                plain.likely(),
                Math.max(plain.high(), plain.likely() + least));
    }

    private double figure(Course run, PublishedFigure f) {
        return switch (f.what()) {
            case PEAK -> run.peakC();
            case PEAK_DAY -> peakDay(run) + 1;
            case CORE_ON_DAY -> on(run, f).coreC();
            case SKIN_ON_DAY -> on(run, f).skinC();
            case LOWEST_CORE ->
                stretch(run, f).stream().mapToDouble(Day::coreC).min().orElseThrow();
            case HIGHEST_CORE ->
                stretch(run, f).stream().mapToDouble(Day::coreC).max().orElseThrow();
            case DAY_AT -> run.firstAtLeast(f.celsius()).orElse(course.days()) + 1;
            case DAYS_OVER -> run.daysAtLeast(f.celsius());
            case NEAR_OUTDOORS_DAY ->
                run.days().stream()
                                .filter(d -> d.day() > peakDay(run) && d.coreC() <= d.outdoorC() + NEAR_K)
                                .mapToInt(Day::day)
                                .findFirst()
                                .orElse(course.days())
                        + 1;
            case VOLUME_LEFT -> on(run, f).volumeM3() / (course.volumeM3() + added(f.day(), Matter::volumeM3));
            case HEIGHT_LEFT -> on(run, f).heightM() / course.pile().heightM();
            case MASS_LEFT ->
                on(run, f).massKg()
                        / (dryIn(run, f.day()) + run.ledger().waterStart() + added(f.day(), Matter::waterKg));
            case DRY_LEFT -> on(run, f).dryKg() / dryIn(run, f.day());
            case CARBON_LOST ->
                (1 - on(run, f).dryKg() / dryIn(run, f.day())) / course.mix().organic();
            case NITROGEN_LOST -> on(run, f).nitrogenLostShare();
        };
    }

    private static Day on(Course run, PublishedFigure f) {
        return run.days().get(f.day() - 1);
    }

    private static List<Day> stretch(Course run, PublishedFigure f) {
        return run.days().subList(f.day() - 1, f.to());
    }

    private static int peakDay(Course run) {
        return run.days().stream()
                .max(Comparator.comparingDouble(Day::coreC))
                .orElseThrow()
                .day();
    }

    private double dryIn(Course run, int day) {
        return run.ledger().dryStart() + added(day, Matter::dryKg);
    }

    private double added(int day, java.util.function.ToDoubleFunction<Matter> what) {
        return events.stream()
                .filter(e -> e.day() < day)
                .filter(Event.Add.class::isInstance)
                .mapToDouble(e -> what.applyAsDouble(((Event.Add) e).matter()))
                .sum();
    }
}
