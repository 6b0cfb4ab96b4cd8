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
 * @param decibans its weight, the rule's strength in the degree in which it holds; negative when it speaks against
 * @param degree how far what it rests on is so, above 0 to 1
 * @param counted whether it was added up: within one origin only the strongest for and the strongest against count
 * @param because the facts that made the rule speak
 */
public record Piece(
        RuleInfo rule,
        Cause cause,
        Origin origin,
        double decibans,
        double degree,
        boolean counted,
        List<Object> because) {

    /** The same, counted or not. */
    Piece with(boolean counted) {
        return new Piece(rule, cause, origin, decibans, degree, counted, because);
    }
}
