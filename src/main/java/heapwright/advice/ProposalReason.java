package heapwright.advice;

import heapwright.advice.engine.Firing;
import heapwright.advice.engine.Outcome;
import heapwright.advice.engine.RuleInfo;
import heapwright.advice.fact.Proposes;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Remedy;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Why a step is proposed: for which cause and by which rule.
 *
 * @param cause the cause it mends
 * @param likelihood how likely that cause is, 0 to 1
 * @param rule the rule that proposes it
 */
public record ProposalReason(Cause cause, double likelihood, RuleInfo rule) {

    /** The grounds of every step that is proposed, the firmest first; each rule counts once. */
    static Map<Remedy, List<ProposalReason>> byRemedy(Outcome outcome) {
        Map<Remedy, Map<String, ProposalReason>> byRule = new TreeMap<>();
        for (Firing firing : outcome.of(Proposes.class)) {
            Proposes proposal = (Proposes) firing.result();
            double likelihood = outcome.weighed().get(proposal.cause()).likelihood();
            byRule.computeIfAbsent(proposal.remedy(), r -> new TreeMap<>())
                    .put(firing.rule().id(), new ProposalReason(proposal.cause(), likelihood, firing.rule()));
        }
        Map<Remedy, List<ProposalReason>> grounds = new EnumMap<>(Remedy.class);
        byRule.forEach((remedy, rules) -> grounds.put(
                remedy,
                rules.values().stream()
                        .sorted(Comparator.comparingDouble(
                                        (ProposalReason g) -> -g.likelihood() * StepValue.firmness(g))
                                .thenComparing(g -> g.rule().id()))
                        .toList()));
        return grounds;
    }
}
