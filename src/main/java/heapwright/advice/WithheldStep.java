package heapwright.advice;

import heapwright.advice.engine.RuleInfo;
import heapwright.knowledge.Remedy;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A step that is held back.
 *
 * @param remedy the step
 * @param rules the rules that hold it back; their rationale is the reason. Where there are none and it would undo nothing,
 *     the pile has had as much of it this season as it may
 * @param undoes the step of this advice that it would undo, when that is the reason
 * @param until the first day on which waiting days of a rule are over, where it counts them
 */
public record WithheldStep(Remedy remedy, List<RuleInfo> rules, Optional<Remedy> undoes, Optional<LocalDate> until) {
    public WithheldStep {
        rules = List.copyOf(rules);
    }
}
