package heapwright.process.mend;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * What to add, and what the pile is like then.
 *
 * @param additions what to add; empty where nothing is needed or nothing helps
 * @param after the pile with all of it
 * @param effort work of all additions, in the unit of the offers
 * @param misses the goals it does not reach; empty for a plan that meets all
 */
public record Plan(List<Addition> additions, Heap after, double effort, Set<MissedGoal> misses) {

    // A goal passed by no more than this share of itself counts as reached.
    private static final double EDGE = 1e-6;

    public Plan {
        additions = List.copyOf(additions);
        misses = Set.copyOf(misses);
    }

    /** True when moisture, C:N and density all end in their ranges. */
    public boolean meetsAll() {
        return misses.isEmpty();
    }

    static Set<MissedGoal> misses(Heap heap, Goals goals) {
        Set<MissedGoal> misses = EnumSet.noneOf(MissedGoal.class);
        if (heap.moisturePct() < goals.moistureLowPct() - EDGE) {
            misses.add(MissedGoal.TOO_DRY);
        }
        if (heap.moisturePct() > goals.moistureHighPct() + EDGE) {
            misses.add(MissedGoal.TOO_WET);
        }
        if (heap.carbonKg() < (goals.ratioLow() - EDGE) * heap.nitrogenKg()) {
            misses.add(MissedGoal.TOO_MUCH_NITROGEN);
        }
        if (heap.carbonKg() > (goals.ratioHigh() + EDGE) * heap.nitrogenKg()) {
            misses.add(MissedGoal.TOO_LITTLE_NITROGEN);
        }
        if (heap.wetKg() > (goals.densityMostKgM3() + EDGE) * heap.volumeM3()) {
            misses.add(MissedGoal.TOO_DENSE);
        }
        return misses;
    }
}
