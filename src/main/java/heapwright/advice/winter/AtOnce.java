package heapwright.advice.winter;

import heapwright.process.heat.Course;
import heapwright.process.heat.Day;
import heapwright.process.heat.Setup;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A fault that holds a pile back at once with its size or the weather. Of two things that each suffice, neither put right
 * alone wins anything, and the one that costs a little by chance would be named. So the fault is looked at where nothing
 * else holds the pile back, in a cubic metre in mild weather: what it costs there it would cost any pile.
 *
 * @param factor the fault
 * @param kelvin by which that pile would be warmer in its warmest fortnight without it
 */
public record AtOnce(Factor factor, double kelvin) {

    /** What is no fault of the pile. */
    static final Set<Factor> NO_FAULT = EnumSet.of(Factor.SIZE, Factor.SHELTER, Factor.TIME, Factor.COLD);

    private static final Set<Factor> WEATHER_ALONE = EnumSet.of(Factor.TIME, Factor.COLD);

    /** Not handling: the model reheats faster than life after a turning. */
    private static final List<Factor> FAULTS =
            List.of(Factor.WATER, Factor.AIR, Factor.NITROGEN, Factor.ACID, Factor.PIECES);

    /** Twice the error of such models, K: what a sound pile would lose by it beyond doubt (judgement). */
    private static final double CLEARLY_K = 2 * HeldBack.LEAST_K;

    /**
     * The fault that costs most there, of those that are there on the last day; none in a pile that is frozen, which
     * nothing but thawing helps.
     *
     * @param named what is no fault and would be named; the weather alone only where no fault costs anything at all
     */
    static Optional<AtOnce> of(Setup told, Course lived, Factor named, int from, int to) {
        if (!NO_FAULT.contains(named) || lived.days().get(to).coreC() <= 0) {
            return Optional.empty();
        }
        PutRight right = new PutRight(told, told.course());
        List<Factor> faults = FAULTS.stream().filter(f -> right.there(f, to)).toList();
        if (faults.isEmpty()) {
            return Optional.empty();
        }
        Setup ground = right.onGoodGround();
        Course plain = ground.course();
        PutRight there = new PutRight(ground, plain);
        double least = WEATHER_ALONE.contains(named) ? HeldBack.LEAST_K : CLEARLY_K;
        double with = atBest(plain, from, to);
        return faults.stream()
                .flatMap(f -> there.of(f).stream().map(s -> new AtOnce(f, atBest(s.course(), from, to) - with)))
                .filter(one -> one.kelvin() >= least)
                .max(Comparator.comparingDouble(AtOnce::kelvin));
    }

    /** In its warmest fortnight: a sound pile that burns out sooner loses nothing. */
    private static double atBest(Course course, int from, int to) {
        return HeldBack.warmestFortnight(course.series(Day::coreC), from, to);
    }
}
