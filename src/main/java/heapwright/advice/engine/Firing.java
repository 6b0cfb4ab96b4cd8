package heapwright.advice.engine;

import java.util.List;

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
}
