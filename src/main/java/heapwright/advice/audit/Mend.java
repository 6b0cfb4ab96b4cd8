package heapwright.advice.audit;

import heapwright.process.mend.Offer;
import heapwright.process.mend.Plan;
import java.util.List;
import java.util.Optional;

/**
 * How a recipe could be mended.
 *
 * @param offers what may be added: what is at hand, and water
 * @param exact the plan with the least work; it may miss goals
 * @param buckets the same in whole buckets, where whole buckets reach all goals
 * @param unlock the one more material that would make it possible, where nothing at hand does
 * @param needed whether the recipe misses a goal as it stands
 */
public record Mend(List<Offer> offers, Plan exact, Optional<Plan> buckets, Optional<Offer> unlock, boolean needed) {
    public Mend {
        offers = List.copyOf(offers);
    }

    /** The plan to follow: whole buckets where they do, else the exact one. */
    public Plan chosen() {
        return buckets.orElse(exact);
    }
}
