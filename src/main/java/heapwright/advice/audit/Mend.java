package heapwright.advice.audit;

import heapwright.knowledge.Material;
import heapwright.process.mend.Addition;
import heapwright.process.mend.MissedGoal;
import heapwright.process.mend.Offer;
import heapwright.process.mend.Plan;
import heapwright.process.mixture.Materials;
import java.util.List;
import java.util.Optional;

/**
 * How a recipe could be mended.
 *
 * @param offers what may be added: what is at hand, and water
 * @param opening coarse stuff added first where too little holds the mix open; part of every plan below
 * @param exact the plan with the least work; it may miss goals
 * @param buckets the same in whole buckets, where whole buckets reach all goals
 * @param unlock the one or two more materials that would make it possible, where nothing at hand does
 * @param needed whether the recipe misses a goal as it stands, or lacks coarse stuff that is at hand
 * @param coarseLitres coarse stuff that it still lacks to stay open, litres; 0 where it has enough
 * @param richAtFirst whether nitrogen is to spare until the carbon of its wood comes, for which nothing is fetched
 */
public record Mend(
        List<Offer> offers,
        Optional<Addition> opening,
        Plan exact,
        Optional<Plan> buckets,
        Optional<Unlock> unlock,
        boolean needed,
        double coarseLitres,
        boolean richAtFirst) {
    public Mend {
        offers = List.copyOf(offers);
    }

    /**
     * What would have to be got, and the whole plan with it.
     *
     * @param materials ids of the one, or of the two that do it together
     * @param plan the plan that meets all goals
     */
    public record Unlock(List<String> materials, Plan plan) {
        public Unlock {
            materials = List.copyOf(materials);
        }
    }

    /**
     * The same where it can be built as it comes: to put its one fault quite right nobody is sent for what does nothing
     * against that fault, such as droppings for a heap a little too wet.
     */
    Mend goodEnough(Materials materials) {
        if (chosen().misses().size() > 1) {
            return this;
        }
        return new Mend(
                offers,
                opening,
                exact,
                buckets,
                unlock.filter(u -> u.materials().stream().allMatch(id -> serves(materials.get(id)))),
                needed,
                coarseLitres,
                richAtFirst);
    }

    /** Whether a material works against what the chosen plan misses: browns where it is wet, rich or dense, else no browns. */
    private boolean serves(Material material) {
        boolean brown = material.group() == Material.Group.CARBON_RICH || material.group() == Material.Group.WOODY;
        return brown != chosen().misses().contains(MissedGoal.TOO_LITTLE_NITROGEN);
    }

    /** The plan to follow: whole buckets where they do, else the exact one. */
    public Plan chosen() {
        return buckets.orElse(exact);
    }

    /** Whether anything was at hand besides water. */
    public boolean anythingAtHand() {
        return offers.stream().anyMatch(o -> !o.id().equals(Offer.WATER));
    }
}
