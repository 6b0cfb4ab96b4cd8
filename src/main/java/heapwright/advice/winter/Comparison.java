package heapwright.advice.winter;

import heapwright.process.heat.Constants;
import heapwright.process.heat.Course;
import heapwright.process.heat.Day;
import heapwright.process.heat.Ensemble;
import heapwright.process.heat.Event;
import heapwright.process.heat.PileState;
import heapwright.process.heat.Range;
import heapwright.process.heat.Spread;
import heapwright.process.heat.Weather;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.stream.IntStream;

/** The same samples of a pile left alone and treated otherwise. */
final class Comparison {

    private static final double WARM_C = 40;
    /** Below this no food to speak of has decayed: a thousandth. */
    private static final double NOTHING = 0.001;

    private final PileState start;
    private final Weather weather;
    private final List<Event> anyway;
    private final int days;
    private final Spread spread;
    private final Ensemble alone;

    /**
     * Runs the pile left alone.
     *
     * @param days time looked at, 2 or more
     * @param samples 2 or more
     */
    Comparison(PileState start, Weather weather, List<Event> anyway, int days, Spread spread, int samples) {
        this(
                start,
                weather,
                anyway,
                days,
                spread,
                Ensemble.run(start, weather, anyway, days, Constants.standard(), spread, samples));
    }

    private Comparison(PileState start, Weather weather, List<Event> anyway, int days, Spread spread, Ensemble alone) {
        this.start = start;
        this.weather = weather;
        this.anyway = List.copyOf(anyway);
        this.days = days;
        this.spread = spread;
        this.alone = alone;
    }

    /** The same by so many samples: the first of these, or these and those that follow. */
    Comparison of(int samples) {
        Ensemble other = samples <= samples() ? alone.first(samples) : further(alone, start, weather, anyway, samples);
        return new Comparison(start, weather, anyway, days, spread, other);
    }

    private int samples() {
        return alone.courses().size();
    }

    private Ensemble further(Ensemble begun, PileState from, Weather otherWeather, List<Event> events, int samples) {
        int first = begun.courses().size();
        return first == samples
                ? begun
                : begun.and(
                        Ensemble.run(from, otherWeather, events, days, Constants.standard(), spread, first, samples));
    }

    /** The same over its first days only. */
    Comparison cut(int first) {
        return first >= days ? this : new Comparison(start, weather, anyway, first, spread, alone.cut(first));
    }

    /** Time looked at. */
    int days() {
        return days;
    }

    /** The pile left alone. */
    Ensemble alone() {
        return alone;
    }

    /** The pile with other things done to it, from another start. */
    Ensemble with(PileState other, List<Event> more) {
        List<Event> events = new ArrayList<>(anyway);
        events.addAll(more);
        return instead(other, weather, events);
    }

    /** The pile in another weather, with other events. */
    Ensemble instead(PileState other, Weather otherWeather, List<Event> events) {
        return Ensemble.run(other, otherWeather, events, days, Constants.standard(), spread, samples());
    }

    /** The same, of which the first samples have been run. */
    Ensemble instead(Ensemble begun, PileState other, Weather otherWeather, List<Event> events) {
        return further(begun, other, otherWeather, events, samples());
    }

    /** What the other course wins over leaving it alone. */
    Gain gain(Ensemble other) {
        return gain(other, 0);
    }

    /** The same of a course that began so many days earlier. */
    Gain gain(Ensemble other, int earlier) {
        return new Gain(
                days,
                pairs(other, (a, b) -> daysWon(a, b) + earlier),
                pairs(other, Comparison::warmer),
                pairs(other, Comparison::moreWarmDays),
                back(other),
                back(alone),
                new Gain.Frost(freezes(other), freezes(alone)),
                alone.range(c -> 1 - Math.exp(-far(c, days - 1))));
    }

    /** Range of a figure over the pairs of samples. */
    Range pairs(Ensemble other, BiFunction<Course, Course, Double> figure) {
        int n = Math.min(alone.courses().size(), other.courses().size());
        double[] all = new double[n];
        for (int i = 0; i < n; i++) {
            all[i] = figure.apply(alone.courses().get(i), other.courses().get(i));
        }
        return Range.of(all);
    }

    /** Whether a figure comes up to an amount in any of the samples. */
    boolean reaches(double amount, Ensemble other, BiFunction<Course, Course, Double> figure) {
        return IntStream.range(0, samples())
                .anyMatch(i ->
                        figure.apply(alone.courses().get(i), other.courses().get(i)) >= amount);
    }

    private static double freezes(Ensemble ensemble) {
        return ensemble.share(c -> c.firstFrozenThrough().isPresent());
    }

    static double warmer(Course a, Course b) {
        return meanCore(b) - meanCore(a);
    }

    static double moreWarmDays(Course a, Course b) {
        return (double) b.daysAtLeast(WARM_C) - a.daysAtLeast(WARM_C);
    }

    private static double meanCore(Course course) {
        return course.days().stream().mapToDouble(Day::coreC).average().orElse(0);
    }

    /**
     * How much sooner the other course has worked its food through as far as both come in the time looked at. A pile that
     * froze got there before it did. How far is the logarithm of the food left of what was there after the first day, so that added food
     * counts as food and not as delay.
     */
    private double daysWon(Course a, Course b) {
        double farA = far(a, days - 1);
        double farB = far(b, days - 1);
        if (farA < NOTHING && farB < NOTHING) {
            return 0;
        }
        double both = Math.min(farA, farB);
        return dayOf(a, both) - dayOf(b, both);
    }

    private static double far(Course course, int day) {
        double first = course.days().get(0).foodLeftShare();
        double left = course.days().get(day).foodLeftShare();
        return first <= 0 ? 0 : -Math.log(Math.max(1e-9, left / first));
    }

    private double dayOf(Course course, double far) {
        for (int day = 1; day < days; day++) {
            double here = far(course, day);
            if (here >= far) {
                double before = far(course, day - 1);
                return here > before ? day - (here - far) / (here - before) : day;
            }
        }
        return days - 1.0;
    }

    private Gain.Back back(Ensemble ensemble) {
        boolean already = alone.bands(Day::coreC).likely()[0] >= WARM_C;
        double chance = ensemble.share(c -> c.firstAtLeast(WARM_C).isPresent());
        return new Gain.Back(
                already, chance, ensemble.range(c -> c.firstAtLeast(WARM_C).orElse(days)));
    }
}
