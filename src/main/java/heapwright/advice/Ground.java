package heapwright.advice;

import heapwright.advice.engine.RuleInfo;
import heapwright.knowledge.Cause;

/**
 * Why a step is proposed: for which cause and by which rule.
 *
 * @param cause the cause it mends
 * @param likelihood how likely that cause is, 0 to 1
 * @param rule the rule that proposes it
 */
public record Ground(Cause cause, double likelihood, RuleInfo rule) {}
