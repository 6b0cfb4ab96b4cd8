package heapwright.advice;

import heapwright.advice.engine.RuleInfo;
import heapwright.advice.winter.Gain;
import heapwright.knowledge.Remedy;
import java.util.List;
import java.util.Optional;

/**
 * A step that is held back.
 *
 * @param remedy the step
 * @param rules the rules that hold it back; their rationale is the reason
 * @param undoes the step of this advice that it would undo, when that is the reason
 * @param useless what the model says it would win, when that is nothing and the reason
 */
public record Held(Remedy remedy, List<RuleInfo> rules, Optional<Remedy> undoes, Optional<Gain> useless) {
    public Held {
        rules = List.copyOf(rules);
    }
}
