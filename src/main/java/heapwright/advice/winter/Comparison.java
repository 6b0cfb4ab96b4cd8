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

/** The same samples of a pile left alone and treated otherwise. */
final class Comparison {

    private static final double WARM_C = 40;
    /** Below this no food to speak of has decayed: a thousandth. */
    private static final double NOTHING = 0.001;

    private final Weather weather;
    private final List<Event> anyway;
    private final int days;
    private final Spread spread;
    private final int samples;
    private final Ensemble alone;

    /**
     * Runs the pile left alone.
     *
     * @param days time looked at, 2 or more
     * @param samples 2 or more
     */
    Comparison(PileState start, Weather weather, List<Event> anyway, int days, Spread spread, int samples) {
        this.weather = weather;
        this.anyway = List.copyOf(anyway);
        this.days = days;
        this.spread = spread;
        this.samples = samples;
        this.alone = Ensemble.run(start, weather, anyway, days, Constants.standard(), spread, samples);
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
    Ensemble with(PileState start, List<Event> more) {
        List<Event> events = new ArrayList<>(anyway);
        events.addAll(more);
        return instead(start, weather, events);
    }

    /** The pile in another weather, with other events. */
    Ensemble instead(PileState start, Weather otherWeather, List<Event> events) {
        return Ensemble.run(start, otherWeather, events, days, Constants.standard(), spread, samples);
    }

    /** What the other course wins over leaving it alone. */
    Gain gain(Ensemble other) {
        return new Gain(
                days,
                pairs(other, this::daysWon),
                pairs(other, (a, b) -> meanCore(b) - meanCore(a)),
                pairs(other, (a, b) -> (double) b.daysAtLeast(WARM_C) - a.daysAtLeast(WARM_C)),
                back(other),
                back(alone),
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
