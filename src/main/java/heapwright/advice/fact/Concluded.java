package heapwright.advice.fact;

import heapwright.knowledge.Cause;

/** A cause that stands after the conclude pass; the remedy rules read it. */
public record Concluded(Cause cause, double likelihood) {

    /** At least likely, not only possible. */
    public boolean likely() {
        return Grade.of(likelihood).atLeast(Grade.LIKELY);
    }
}
