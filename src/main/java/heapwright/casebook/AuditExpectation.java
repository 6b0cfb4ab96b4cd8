package heapwright.casebook;

import heapwright.advice.fact.Mark;
import heapwright.advice.fact.Topic;
import heapwright.process.mixture.Averaging.Shortcut;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a case demands of the audit of its recipe. What it leaves out it does not ask.
 *
 * @param mark the judgement as a whole
 * @param topics the worst judgement of each of these topics
 * @param rules ids of rules that must speak
 * @param notRules ids of rules that must be silent
 * @param keepOut materials that must be barred
 * @param leftOut materials that the plan must leave out
 * @param cutBack materials of which the plan must take less
 * @param mendMeets whether the mend reaches all goals
 * @param mendAdds materials that the mend must add
 * @param notMendAdds materials that the mend must not add
 * @param unlock the one or two more materials that would do it; empty for nothing would
 * @param figures likely values of the mixture by their name in the JSON document
 * @param ownRatio a C:N that the person worked out
 * @param shortcut the shortcut that must be recognised behind it
 */
public record AuditExpectation(
        Optional<Mark> mark,
        Map<Topic, Mark> topics,
        List<String> rules,
        List<String> notRules,
        List<String> keepOut,
        List<String> leftOut,
        List<String> cutBack,
        Optional<Boolean> mendMeets,
        List<String> mendAdds,
        List<String> notMendAdds,
        Optional<List<String>> unlock,
        Map<String, Within> figures,
        OptionalDouble ownRatio,
        Optional<Shortcut> shortcut) {

    /**
     * A figure with the tolerance that the rounding of its source allows.
     *
     * @param value the figure
     * @param within how far off it may be
     */
    public record Within(double value, double within) {}
}
