package heapwright.advice.winter;

import heapwright.process.heat.Course;
import heapwright.process.heat.Day;
import heapwright.process.heat.Setup;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A fault that holds a pile back at once with its size or the weather. Of two things that each suffice, neither put right
 * alone wins anything, and the one that costs a little by chance would be named. So the fault is looked at beside that
 * other thing put right, and where nothing else holds the pile back, in a cubic metre in mild weather.
 *
 * @param factor the fault
 * @param beside what was put right besides it; {@link Factor#NONE} for a cubic metre in mild weather
 * @param kelvin by which that pile would be warmer in its warmest fortnight without the fault
 */
public record JointFault(Factor factor, Factor beside, double kelvin) {

    /** What is no fault of the pile. */
    static final Set<Factor> NO_FAULT = EnumSet.of(Factor.SIZE, Factor.SHELTER, Factor.TIME, Factor.COLD);

    private static final Set<Factor> WEATHER_ALONE = EnumSet.of(Factor.TIME, Factor.COLD);

    /** Not handling: the model reheats faster than life after a turning. */
    private static final List<Factor> FAULTS =
            List.of(Factor.WATER, Factor.AIR, Factor.NITROGEN, Factor.ACID, Factor.PIECES);

    /** Told by the recipe. What the model alone makes of water and acid is no fault that anybody saw. */
    private static final Set<Factor> BY_RECIPE = EnumSet.of(Factor.NITROGEN, Factor.PIECES);

    /** Twice the error of such models, K: what a sound pile would lose by it beyond doubt (judgement). */
    private static final double CLEARLY_K = 2 * HeldBack.LEAST_K;

    /** A pile on which a fault is looked at. */
    private record Ground(Factor beside, Setup setup) {}

    /**
     * The fault that costs most there, of those that are there on the last day; none in a pile that is frozen, which
     * nothing but thawing helps. What nose, hand or measurement tell of counts from the day on which it came. Beside size
     * or shelter put right a pile may stand at the edge of warming, where a little tells much: there only what they or the
     * recipe tell of is looked at.
     *
     * @param named what is no fault and would be named; the weather alone only where no fault costs anything at all
     */
    static Optional<JointFault> of(Setup told, Course lived, Factor named, int from, int to) {
        if (!NO_FAULT.contains(named) || lived.days().get(to).coreC() <= 0) {
            return Optional.empty();
        }
        Correction right = new Correction(told, told.course());
        List<Factor> faults = FAULTS.stream().filter(f -> right.there(f, to)).toList();
        if (faults.isEmpty()) {
            return Optional.empty();
        }
        Set<Factor> seen = RecordedFaults.seen(told.marks());
        Map<Factor, Integer> all = new EnumMap<>(Factor.class);
        Map<Factor, Integer> sure = new EnumMap<>(Factor.class);
        for (Factor fault : faults) {
            boolean was = seen.contains(fault);
            all.put(fault, was ? right.since(fault, from, to) : from);
            if (was || BY_RECIPE.contains(fault)) {
                sure.put(fault, all.get(fault));
            }
        }
        List<JointFault> costs = new ArrayList<>(on(new Ground(Factor.NONE, right.onGoodGround()), right, all, to));
        if (!WEATHER_ALONE.contains(named) && !sure.isEmpty()) {
            right.of(named).ifPresent(s -> costs.addAll(on(new Ground(named, s), right, sure, to)));
        }
        return costs.stream()
                .filter(one -> one.kelvin() >= least(one, named, seen))
                .max(Comparator.comparingDouble(JointFault::kelvin));
    }

    /** What each fault costs on a ground from its first day that counts to the last. */
    private static List<JointFault> on(Ground ground, Correction right, Map<Factor, Integer> since, int to) {
        Course plain = ground.setup().course();
        Correction there = right.on(ground.setup(), plain);
        List<JointFault> all = new ArrayList<>();
        since.forEach((fault, from) -> there.of(fault)
                .map(s -> atBest(s.course(), from, to) - atBest(plain, from, to))
                .ifPresent(kelvin -> all.add(new JointFault(fault, ground.beside(), kelvin))));
        return all;
    }

    /**
     * On good ground no pile is at the edge of warming, so that what was seen there, and any fault before the weather
     * alone, counts from the error of such models on.
     */
    private static double least(JointFault one, Factor named, Set<Factor> seen) {
        boolean sure = WEATHER_ALONE.contains(named) || seen.contains(one.factor());
        return one.beside() == Factor.NONE && sure ? HeldBack.LEAST_K : CLEARLY_K;
    }

    /** In its warmest fortnight: a sound pile that burns out sooner loses nothing. */
    private static double atBest(Course course, int from, int to) {
        return HeldBack.warmestFortnight(course.series(Day::coreC), from, to);
    }
}
