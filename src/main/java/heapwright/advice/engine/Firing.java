package heapwright.advice.engine;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * One rule that fired: on what facts and with what result.
 *
 * @param rule the rule
 * @param because the facts it matched, in the order of its conditions; an absence leaves no fact
 * @param result the fact it inserted
 */
public record Firing(RuleInfo rule, List<Object> because, Object result) {
    public Firing {
        because = List.copyOf(because);
    }

    /** The same rule and result with the other firing's ground added. */
    Firing with(Firing other) {
        Set<Object> grounds = new LinkedHashSet<>(because);
        grounds.addAll(other.because);
        return new Firing(
                rule,
                grounds.stream().sorted(Comparator.comparing(Object::toString)).toList(),
                result);
    }
}
