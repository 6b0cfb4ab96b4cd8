package heapwright.advice.engine;

import heapwright.advice.fact.ModelSays;
import heapwright.advice.fact.Placed;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Witness;
import java.util.List;

/**
 * One piece of evidence for or against a cause.
 *
 * @param rule the rule that speaks
 * @param cause the cause it speaks of
 * @param witness what of the pile it tells
 * @param decibans its own weight, the strength in the degree in which it holds; negative when it speaks against
 * @param degree how far what it rests on is so, above 0 to 1
 * @param share the part of its weight that was added up, above 0 to 1: of one witness the strongest for and the strongest
 *     against count in full, what tells the same again counts little
 * @param because the facts that made the rule speak
 */
public record EvidencePiece(
        RuleInfo rule,
        Cause cause,
        Witness witness,
        double decibans,
        double degree,
        double share,
        List<Object> because) {

    /** Whether it counts in full, and does not tell again what a stronger one of the same witness tells. */
    public boolean counted() {
        return share == 1;
    }

    /** Whether it was reckoned, by the model or from the recipe, and not told by nose, hand, eye or instrument. */
    boolean reckoned() {
        return because.stream()
                .anyMatch(fact -> fact instanceof ModelSays || fact instanceof Placed placed && !placed.measured());
    }

    EvidencePiece with(double share) {
        return new EvidencePiece(rule, cause, witness, decibans, degree, share, because);
    }
}
