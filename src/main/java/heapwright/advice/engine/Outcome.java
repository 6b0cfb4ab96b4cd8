package heapwright.advice.engine;

import heapwright.knowledge.Cause;
import java.util.List;
import java.util.Map;

/**
 * What one run of the rules came to.
 *
 * @param facts the facts that went in
 * @param firings every rule that fired, in order of pass and rule id
 * @param weighed every cause with its evidence
 */
public record Outcome(List<Object> facts, List<Firing> firings, Map<Cause, Weighed> weighed) {
    public Outcome {
        facts = List.copyOf(facts);
        firings = List.copyOf(firings);
        weighed = Map.copyOf(weighed);
    }

    /** The firings whose result is of this kind. */
    public List<Firing> of(Class<?> kind) {
        return firings.stream().filter(f -> kind.isInstance(f.result())).toList();
    }
}
