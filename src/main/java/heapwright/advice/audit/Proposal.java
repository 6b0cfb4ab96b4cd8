package heapwright.advice.audit;

import heapwright.knowledge.Material;
import heapwright.process.mend.ReadyRange;
import heapwright.process.mend.Yield;
import heapwright.process.mixture.Mixture;
import java.util.List;
import java.util.Optional;

/**
 * How to mend and build what may go in.
 *
 * @param kept the numbers of the recipe without what is left out
 * @param leftOut what of the recipe the mend and the plan leave out
 * @param trimmed what of the recipe is cut back to a sprinkle or a dusting
 * @param less of what less is taken than told, where that brings the rest in range and nothing at hand does
 * @param mend how it could be mended from what is at hand
 * @param times how many times everything is wanted for a pile that can hold heat; 1 where it is large enough
 * @param build how to build it, and what it becomes; empty where it would rot or reek and no two things more mend it
 */
public record Proposal(
        Mixture kept,
        List<Material> leftOut,
        List<Trimming.Trimmed> trimmed,
        Optional<Trimming.Trimmed> less,
        Mend mend,
        double times,
        Optional<Build> build) {
    public Proposal {
        leftOut = List.copyOf(leftOut);
        trimmed = List.copyOf(trimmed);
    }

    /** Whether it is built as told: nothing is left out, cut back, added or has to be got first. */
    boolean asTold() {
        return leftOut.isEmpty()
                && trimmed.isEmpty()
                && less.isEmpty()
                && mend.chosen().additions().isEmpty()
                && build.filter(b -> b.countsOn().isEmpty()).isPresent();
    }

    /**
     * How to build it, and what it becomes.
     *
     * @param plan the layers, with the mend
     * @param countsOn ids of what has to be got first, without which it would rot or reek
     * @param becomes what it will give
     * @param ready when it is likely ready, coarsely
     */
    public record Build(BuildPlan plan, List<String> countsOn, Yield becomes, ReadyRange ready) {}
}
