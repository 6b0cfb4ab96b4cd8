package heapwright.advice.engine;

import heapwright.advice.fact.Grade;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Weights;
import java.util.List;
import java.util.Map;

/**
 * A cause with the evidence that was added up on its base rate.
 *
 * @param cause the cause
 * @param baseRate prior chance, 0 to 1
 * @param likelihood the chance after the evidence, 0 to 1: the logistic of the summed decibans
 * @param supports what speaks for it, strongest first
 * @param opposes what speaks against it, strongest first
 */
public record Weighed(
        Cause cause, double baseRate, double likelihood, List<EvidencePiece> supports, List<EvidencePiece> opposes) {

    /** What the same evidence makes of it when the strengths weigh otherwise. */
    public Weighed under(Weights weights) {
        return new EvidenceSum(Map.of(), weights).reweighed(this);
    }

    /**
     * The same without one row of evidence.
     *
     * @param row id of a row; one that does not speak here changes nothing
     * @param weights what the strengths weigh, as they did here
     */
    public Weighed without(String row, Weights weights) {
        return new EvidenceSum(Map.of(), weights)
                .reweighed(new Weighed(cause, baseRate, likelihood, others(supports, row), others(opposes, row)));
    }

    private static List<EvidencePiece> others(List<EvidencePiece> pieces, String row) {
        return pieces.stream().filter(p -> !p.rule().id().equals(row)).toList();
    }

    public Grade grade() {
        return Grade.of(likelihood);
    }
}
