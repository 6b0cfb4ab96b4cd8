package heapwright.advice.engine;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * One rule that fired: on what facts, in what degree and with what result.
 *
 * @param rule the rule
 * @param because the facts it matched, in the order of its conditions; an absence leaves no fact
 * @param result the fact it inserted
 * @param degree how far its conditions hold, above 0 to 1; below 1 only near a soft edge
 */
public record Firing(RuleInfo rule, List<Object> because, Object result, double degree) {
    public Firing {
        because = List.copyOf(because);
    }

    /** A rule whose conditions hold in full. */
    public Firing(RuleInfo rule, List<Object> because, Object result) {
        this(rule, because, result, 1);
    }

    /** Whether its conditions rather hold than not. */
    public boolean rather() {
        return Edges.rather(degree);
    }

    /** The same rule and result with the other firing's ground added; it holds as far as the better ground. */
    Firing with(Firing other) {
        Set<Object> grounds = new LinkedHashSet<>(because);
        grounds.addAll(other.because);
        return new Firing(
                rule,
                grounds.stream().sorted(Comparator.comparing(Object::toString)).toList(),
                result,
                Math.max(degree, other.degree));
    }
}
