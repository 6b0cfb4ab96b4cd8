package heapwright.advice.audit;

import heapwright.knowledge.Material;
import heapwright.process.mend.ReadyRange;
import heapwright.process.mend.Yield;
import heapwright.process.mixture.Mixture;
import java.util.List;

/**
 * How to mend and build what may go in.
 *
 * @param kept the numbers of the recipe without what is left out
 * @param leftOut what of the recipe the mend and the plan leave out
 * @param trimmed what of the recipe is cut back to a sprinkle or a dusting
 * @param mend how it could be mended from what is at hand
 * @param plan how to build it, with the mend
 * @param times how many times everything is wanted for a pile that can hold heat; 1 where it is large enough
 * @param becomes what it will give
 * @param ready when it is likely ready, coarsely
 */
public record Proposal(
        Mixture kept,
        List<Material> leftOut,
        List<Trimming.Trimmed> trimmed,
        Mend mend,
        BuildPlan plan,
        double times,
        Yield becomes,
        ReadyRange ready) {
    public Proposal {
        leftOut = List.copyOf(leftOut);
        trimmed = List.copyOf(trimmed);
    }
}
