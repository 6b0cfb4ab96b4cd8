package heapwright.advice.fact;

import heapwright.knowledge.Cause;

/** A cause whose weighed likelihood is at least possible; the conclude rules read it. */
public record Suspected(Cause cause, double likelihood) {

    /** At least likely, not only possible. */
    public boolean likely() {
        return Grade.of(likelihood).atLeast(Grade.LIKELY);
    }
}
