package heapwright.advice.winter;

import heapwright.knowledge.Cause;
import heapwright.knowledge.Remedy;
import heapwright.process.dose.DoseAmount;
import java.util.List;
import java.util.Optional;

/** What each step would win on one pile, where that can be worked out. */
public interface Effects {

    /**
     * What a step would win.
     *
     * @param remedy the step
     * @param doses its amounts
     * @return empty where nothing can be said
     */
    Optional<Gain> of(Remedy remedy, List<DoseAmount> doses);

    /** Whether a cause is one of pace: what a step wins in days is what it is proposed for, not hygiene, order or danger. */
    static boolean ofPace(Cause cause) {
        Factor factor = Factor.behind(cause);
        return factor != Factor.UNKNOWN && factor != Factor.HEAT;
    }

    /** Of a pile of which nothing can be worked out. */
    static Effects unknown() {
        return (remedy, doses) -> Optional.empty();
    }
}
