package heapwright.advice.audit;

import heapwright.knowledge.Limit;
import heapwright.process.dose.Limits;
import heapwright.process.mend.Plan;
import heapwright.process.mixture.Mixture;
import java.util.List;

/**
 * What would be built.
 *
 * @param mend what is added to the recipe
 * @param mixture the recipe with it, but for its water
 * @param countsOn ids of what has to be got first; empty for nothing
 */
record Batch(Plan mend, Mixture mixture, List<String> countsOn) {

    /**
     * Whether it would rot or reek from the start: soaked, dense, or so rich that ammonia is lost. Wood holds some nitrogen
     * too, late as its carbon comes, so a mix that is only rich without it counts as slow here and in the rules; and so
     * does a wet one that is mostly air.
     */
    boolean goesWrong(Limits limits) {
        boolean reeks = mixture.carbonToNitrogen().likely() < limits.of(Limit.CN_AMMONIA)
                && mixture.allCarbonToNitrogen().likely() < limits.of(Limit.CN_GOOD_LOW);
        boolean airy = mixture.freeAirSpacePct().likely() > limits.of(Limit.FAS_DRAUGHTY);
        return reeks
                || mend.after().moisturePct() > limits.of(Limit.MOISTURE_OK_HIGH) && !airy
                || mend.after().densityKgM3() > limits.of(Limit.DENSITY_DENSE);
    }
}
