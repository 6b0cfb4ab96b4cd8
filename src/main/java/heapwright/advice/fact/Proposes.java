package heapwright.advice.fact;

import heapwright.knowledge.Cause;
import heapwright.knowledge.Remedy;

/** A remedy proposed for a cause. How firmly is the strength of the rule that inserted it. */
public record Proposes(Remedy remedy, Cause cause) {

    /**
     * Whether it means digging into the pile and moving what lies inside. That is wider than losing heat: it is what
     * steam, gas, dust, germs and sleeping animals depend on.
     */
    public boolean digsIn() {
        return switch (remedy) {
            case SPREAD_AND_WET,
                    MIX_IN_DRY_CARBON,
                    RAISE_AND_DRAIN,
                    TURN_FULLY,
                    LOOSEN_SIDES_AND_TOP,
                    BREAK_UP_MATS,
                    ADD_COARSE_BULKING,
                    MIX_THOROUGHLY,
                    BIND_WITH_CARBON,
                    SPREAD_OUT_ACID_FOOD,
                    CHOP_COARSE,
                    SPLIT_PILE,
                    COOL_BY_TURNING,
                    TURN_AGAINST_FLIES,
                    CUT_ROOTS_AND_LINE,
                    REMOVE_CONTAMINATED,
                    REMOVE_DISEASED,
                    SIEVE_AND_RETURN,
                    USE_IT -> true;
            default -> false;
        };
    }
}
