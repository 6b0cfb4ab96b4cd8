package heapwright.advice.engine;

import heapwright.knowledge.Cause;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

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

    /** The same with firings of an earlier run that led to this one. */
    public Outcome with(List<Firing> earlier) {
        return new Outcome(
                facts,
                Stream.concat(firings.stream(), earlier.stream())
                        .sorted(Comparator.comparing((Firing f) -> f.rule().pass())
                                .thenComparing(f -> f.rule().id()))
                        .toList(),
                weighed);
    }

    /** The firings whose result is of this kind. */
    public List<Firing> of(Class<?> kind) {
        return firings.stream().filter(f -> kind.isInstance(f.result())).toList();
    }
}
