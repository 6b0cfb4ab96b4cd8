package heapwright.advice.engine;

import heapwright.knowledge.Cause;
import heapwright.knowledge.Origin;
import java.util.List;

/**
 * One piece of evidence for or against a cause.
 *
 * @param rule the rule that speaks
 * @param cause the cause it speaks of
 * @param origin where the observation comes from
 * @param decibans its weight; negative when it speaks against
 * @param counted whether it was added up: within one origin only the strongest for and the strongest against count
 * @param because the facts that made the rule speak
 */
public record Piece(RuleInfo rule, Cause cause, Origin origin, int decibans, boolean counted, List<Object> because) {}
