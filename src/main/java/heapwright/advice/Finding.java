package heapwright.advice;

import heapwright.advice.engine.Firing;
import heapwright.advice.engine.Weighed;
import heapwright.advice.fact.Grade;
import heapwright.knowledge.Cause;
import java.util.Optional;

/**
 * A cause that is at least possible, with what speaks for and against it.
 *
 * @param weighed the cause with its evidence
 * @param setAside the rule that explains it away by another finding, if one does
 */
public record Finding(Weighed weighed, Optional<Firing> setAside) {

    public Cause cause() {
        return weighed.cause();
    }

    /** 0 to 1. */
    public double likelihood() {
        return weighed.likelihood();
    }

    public Grade grade() {
        return weighed.grade();
    }
}
