package heapwright.cli;

import heapwright.advice.engine.Pass;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Id;
import heapwright.pile.Closest;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Finds constants by the ids that a person types. */
final class Ids {

    private Ids() {}

    /**
     * The cause with this id.
     *
     * @throws UsageFault when there is none; the message names the closest
     */
    static Cause cause(String id) {
        return of(Cause.values(), id, "cause");
    }

    /**
     * The pass with this id.
     *
     * @throws UsageFault when there is none; the message names the closest
     */
    static Pass pass(String id) {
        return of(Pass.values(), id, "pass");
    }

    private static <T extends Id> T of(T[] values, String id, String what) {
        List<String> ids = Arrays.stream(values).map(Id::id).toList();
        return find(values, id)
                .orElseThrow(() -> new UsageFault("heapwright: \"" + id + "\" is not a " + what + "."
                        + Closest.to(id, ids)
                                .map(near -> " Did you mean \"" + near + "\"?")
                                .orElse("")
                        + " Allowed: " + String.join(", ", ids) + "."));
    }

    /** The constant with this id, if there is one. */
    static <T extends Id> Optional<T> find(T[] values, String id) {
        return Arrays.stream(values).filter(v -> v.id().equals(id)).findFirst();
    }
}
