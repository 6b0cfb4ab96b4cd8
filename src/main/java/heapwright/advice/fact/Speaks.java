package heapwright.advice.fact;

import heapwright.knowledge.Cause;
import heapwright.knowledge.Evidence;
import heapwright.knowledge.Witness;

/** What a row of evidence waits for is a fact, so it speaks for or against its cause with its own strength. */
public record Speaks(Evidence row) {

    public Cause cause() {
        return row.cause();
    }

    public Witness witness() {
        return row.witness();
    }

    /** Whether it speaks for its cause, not against it. */
    public boolean supports() {
        return row.speaks() == Evidence.Speaks.FOR;
    }

    /** The direction in which it counts: 1 for its cause, -1 against it. */
    public int direction() {
        return supports() ? 1 : -1;
    }
}
