package heapwright.advice.engine;

import heapwright.knowledge.Id;
import java.util.EnumSet;
import java.util.Set;

/**
 * One of the passes in which the rules run; the agenda group of its rules has its id as name. A checkup runs the first
 * six in order; an audit runs its own.
 */
public enum Pass implements Id {
    DERIVE,
    DANGER,
    WEIGH,
    CONCLUDE,
    REMEDY,
    GUARD,
    ARRANGE,
    AUDIT;

    /** The passes of a checkup. */
    public static Set<Pass> checkup() {
        return EnumSet.complementOf(EnumSet.of(AUDIT));
    }

    /** The passes that tell whether a danger stands. */
    public static Set<Pass> gate() {
        return EnumSet.of(DERIVE, DANGER);
    }
}
