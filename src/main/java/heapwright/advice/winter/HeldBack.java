package heapwright.advice.winter;

import heapwright.process.heat.Course;
import heapwright.process.heat.Day;
import heapwright.process.heat.Event;
import heapwright.process.heat.Readiness;
import heapwright.process.heat.Setup;
import heapwright.process.heat.StateMark;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What held a pile back, day by day: the course is run again from its beginning with one thing put right alone, see
 * {@link Correction}, and what the core would have been warmer is what that thing cost. Cold is named only where nothing of
 * the pile itself would have helped, so that the weather alone is to blame.
 */
public final class HeldBack {

    /** Less than this is within the error of such models (MASON06), K. */
    static final double LEAST_K = 5;

    private static final Set<Factor> WEATHER = EnumSet.of(Factor.SIZE, Factor.SHELTER, Factor.TIME);
    /** What is counted for the whole: the fortnight in which it would have helped most. */
    private static final int FORTNIGHT = 14;

    private static final double COLD_BELOW_C = 10;
    /** Nobody wraps a pile where it is milder (judgement). */
    private static final double WRAPPED_BELOW_C = 5;

    private static final double WARM_C = 40;
    /** Above this organisms die (CORNPHYS), °C. */
    private static final double HOT_C = 65;

    private static final double HALF = 0.5;

    private final Course lived;
    private final Set<Factor> seen;
    private final Map<Factor, double[]> warmer = new EnumMap<>(Factor.class);
    private final Map<Factor, Integer> warmDays = new EnumMap<>(Factor.class);
    private final List<Held> stretches;

    /**
     * From one day to another, both included, this held it back most.
     *
     * @param kelvin by which the core would have been warmer on average with it put right alone; of what the file does not
     *     show, by which the core was colder than the file has it; 0 for nothing, heat and food that is spent
     */
    public record Held(int from, int to, Factor factor, double kelvin) {}

    /**
     * What one thing cost.
     *
     * @param factor what
     * @param kelvin by which the core would have been warmer in the fortnight in which putting it right would have helped most
     * @param days days on which it would have been warmer by more than the error of such models
     * @param moreWarmDays more days with the core at 40 °C or above
     */
    public record Cost(Factor factor, double kelvin, int days, int moreWarmDays) {}

    /**
     * By courses that are reckoned.
     *
     * @param lived the way it took by what was measured
     * @param plain the way it would have taken as told, fitted to nothing
     * @param right the same with one thing put right
     * @param seen faults of which nose, hand or measurement tell
     */
    HeldBack(Course lived, Course plain, Map<Factor, Course> right, Set<Factor> seen) {
        this.lived = lived;
        this.seen = seen;
        right.forEach((factor, course) -> {
            warmer.put(factor, difference(course, plain));
            warmDays.put(factor, course.daysAtLeast(WARM_C) - plain.daysAtLeast(WARM_C));
        });
        warmer.put(Factor.UNKNOWN, difference(plain, lived));
        this.stretches = stretches(byDay());
    }

    private HeldBack(HeldBack other, Factor[] by) {
        this.lived = other.lived;
        this.seen = other.seen;
        warmer.putAll(other.warmer);
        warmDays.putAll(other.warmDays);
        this.stretches = stretches(by);
    }

    /** The same where between two days, both included, a fault is named in place of what is none of the pile. */
    HeldBack blaming(Factor fault, int from, int to) {
        Factor[] by = new Factor[lived.days().size()];
        for (Held one : stretches) {
            for (int day = one.from(); day <= one.to(); day++) {
                boolean instead = day >= from && day <= to && JointFault.NO_FAULT.contains(one.factor());
                by[day] = instead ? fault : one.factor();
            }
        }
        return new HeldBack(this, by);
    }

    /**
     * Reckons.
     *
     * @param told the pile as the file has it
     * @param lived the way it took by what was measured
     * @param more things put right that need more than the pile
     */
    static HeldBack of(Setup told, Course lived, Map<Factor, Setup> more) {
        return of(told, lived, told.course(), more);
    }

    /** The same of a pile of which nothing was measured. */
    static HeldBack of(Setup told) {
        Course plain = told.course();
        return of(told, plain, plain, Map.of());
    }

    private static HeldBack of(Setup told, Course lived, Course plain, Map<Factor, Setup> more) {
        Map<Factor, Setup> setups = new EnumMap<>(Factor.class);
        setups.putAll(more);
        Correction right = new Correction(told, plain);
        for (Factor factor : Factor.values()) {
            if (lived.days().stream().noneMatch(d -> d.outdoorC() < countsBelow(factor))) {
                setups.remove(factor);
                continue;
            }
            right.of(factor).ifPresent(setup -> setups.put(factor, setup));
        }
        Map<Factor, Course> courses = new EnumMap<>(Factor.class);
        List<Factor> factors = List.copyOf(setups.keySet());
        List<Course> all =
                factors.parallelStream().map(f -> setups.get(f).course()).toList();
        for (int i = 0; i < factors.size(); i++) {
            courses.put(factors.get(i), all.get(i));
        }
        return new HeldBack(lived, plain, courses, RecordedFaults.seen(told.marks()));
    }

    private static double[] difference(Course a, Course b) {
        double[] all = new double[b.days().size()];
        Arrays.setAll(all, d -> a.days().get(d).coreC() - b.days().get(d).coreC());
        return all;
    }

    /** What held it back, in order and without gaps. */
    public List<Held> held() {
        return stretches;
    }

    /** What each thing cost between two days, both included, the dearest first; without what the file does not show. */
    public List<Cost> costs(int from, int to) {
        return warmer.keySet().stream()
                .filter(f -> f != Factor.COLD && f != Factor.UNKNOWN)
                .flatMap(f -> cost(f, from, to).stream())
                .sorted(Comparator.comparingDouble(Cost::kelvin).reversed().thenComparing(Cost::factor))
                .toList();
    }

    /** What cost most between two days, both included: the weather only where nothing else did. */
    Factor worst(int from, int to) {
        // A late start is the weather by another name, so it is named where nothing of the pile itself would have
        // helped.
        Optional<Cost> dearest = LeadingFault.faultFirst(
                costs(from, to).stream().filter(c -> c.factor() != Factor.TIME).toList(), seen);
        boolean fault = dearest.filter(c -> !WEATHER.contains(c.factor())).isPresent();
        Optional<Cost> untold = cost(Factor.UNKNOWN, from, to);
        if (!fault
                && untold.isPresent()
                && untold.get().kelvin() > dearest.map(Cost::kelvin).orElse(0.0)) {
            return Factor.UNKNOWN;
        }
        if (dearest.isEmpty() && Readiness.standard().spent(lived.days().get(to))) {
            return Factor.FOOD;
        }
        return dearest.or(() -> cost(Factor.TIME, from, to))
                .or(() -> cost(Factor.COLD, from, to))
                .map(Cost::factor)
                .orElse(Factor.NONE);
    }

    /** The same, taken that something is wrong with the pile itself; where the file does not show it, by what the record tells. */
    Factor fault(int from, int to, List<Event> events, List<StateMark> marks) {
        Optional<Factor> dearest = LeadingFault.faultFirst(
                        costs(from, to).stream()
                                .filter(c -> c.factor().mendable() || c.factor() == Factor.HANDLING)
                                .toList(),
                        seen)
                .map(Cost::factor);
        if (dearest.isPresent()) {
            // More food would help a sound pile too, and what was measured or felt comes before the model.
            Factor felt = dearest.get() == Factor.FOOD ? RecordedFaults.by(marks) : Factor.UNKNOWN;
            return felt == Factor.UNKNOWN ? dearest.get() : felt;
        }
        if (RecordedFaults.disturbed(events)) {
            return Factor.HANDLING;
        }
        return cost(Factor.UNKNOWN, from, to).isPresent() ? RecordedFaults.by(marks) : worst(from, to);
    }

    private Optional<Cost> cost(Factor factor, int from, int to) {
        double[] by = counted(factor);
        if (by == null || to < from) {
            return Optional.empty();
        }
        double best = warmestFortnight(by, from, to);
        int days =
                (int) Arrays.stream(by, from, to + 1).filter(k -> k >= LEAST_K).count();
        return best < LEAST_K
                ? Optional.empty()
                : Optional.of(new Cost(factor, best, days, warmDays.getOrDefault(factor, 0)));
    }

    /** The highest mean of a fortnight between two days, both included; 0 where none is above. */
    static double warmestFortnight(double[] by, int from, int to) {
        int length = Math.min(FORTNIGHT, to - from + 1);
        double best = 0;
        for (int day = from; day + length - 1 <= to; day++) {
            best = Math.max(best, Arrays.stream(by, day, day + length).average().orElse(0));
        }
        return best;
    }

    private static double countsBelow(Factor factor) {
        if (factor == Factor.SHELTER) {
            return WRAPPED_BELOW_C;
        }
        return WEATHER.contains(factor) || factor == Factor.COLD ? COLD_BELOW_C : Double.POSITIVE_INFINITY;
    }

    /** By day; what helps against the cold counts in the cold only. */
    private double[] counted(Factor factor) {
        double[] by = warmer.get(factor);
        if (by == null || !WEATHER.contains(factor) && factor != Factor.COLD) {
            return by;
        }
        double[] cold = by.clone();
        double below = countsBelow(factor);
        for (int day = 0; day < cold.length; day++) {
            cold[day] = lived.days().get(day).outdoorC() < below ? cold[day] : 0;
        }
        return cold;
    }

    private Factor[] byDay() {
        Map<Factor, double[]> smooth = new EnumMap<>(Factor.class);
        warmer.keySet().forEach(f -> smooth.put(f, Smoothing.smoothed(counted(f))));
        int days = lived.days().size();
        Factor[] by = new Factor[days];
        for (int day = 0; day < days; day++) {
            by[day] = onDay(day, smooth);
        }
        Smoothing.withoutBrief(by);
        return by;
    }

    private List<Held> stretches(Factor[] by) {
        int days = by.length;
        List<Held> all = new ArrayList<>();
        int from = 0;
        for (int day = 1; day <= days; day++) {
            if (day == days || by[day] != by[from]) {
                all.add(new Held(from, day - 1, by[from], mean(by[from], from, day)));
                from = day;
            }
        }
        return List.copyOf(all);
    }

    private double mean(Factor factor, int from, int end) {
        double[] by = warmer.get(factor == Factor.FROZEN ? Factor.COLD : factor);
        return by == null
                ? 0
                : Math.max(0, Arrays.stream(by, from, end).average().orElse(0));
    }

    private Factor onDay(int number, Map<Factor, double[]> smooth) {
        Day day = lived.days().get(number);
        if (day.coreC() >= WARM_C) {
            return day.coreC() > HOT_C ? Factor.HEAT : Factor.NONE;
        }
        Factor most = LeadingFault.dearest(number, smooth, seen);
        if (most != Factor.NONE) {
            return most;
        }
        if (smooth.get(Factor.UNKNOWN)[number] >= LEAST_K) {
            return Factor.UNKNOWN;
        }
        if (Readiness.standard().spent(day)) {
            return Factor.FOOD;
        }
        boolean cold = smooth.containsKey(Factor.COLD) && smooth.get(Factor.COLD)[number] >= LEAST_K;
        return !cold ? Factor.NONE : day.coreIceShare() >= HALF ? Factor.FROZEN : Factor.COLD;
    }
}
