package heapwright.advice;

import heapwright.advice.engine.RuleInfo;
import heapwright.knowledge.Remedy;
import java.util.List;
import java.util.Optional;

/**
 * A step that is held back.
 *
 * @param remedy the step
 * @param rules the rules that hold it back; their rationale is the reason
 * @param undoes the step of this advice that it would undo, when that is the reason
 */
public record Held(Remedy remedy, List<RuleInfo> rules, Optional<Remedy> undoes) {
    public Held {
        rules = List.copyOf(rules);
    }
}
