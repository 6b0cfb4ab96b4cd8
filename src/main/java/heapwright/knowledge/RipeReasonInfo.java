package heapwright.knowledge;

import java.util.List;
import java.util.function.UnaryOperator;

/**
 * How far a reason holds compost back.
 *
 * @param id the reason
 * @param allows what it may be used for at most
 * @param danger whether it is a gate: no good sign or test lifts it
 * @param says the reason in a sentence
 * @param then what to do then
 * @param sources keys of sources
 * @param known how it is known
 */
public record RipeReasonInfo(
        RipeReason id, Ripeness allows, boolean danger, String says, String then, List<String> sources, Known known) {
    public RipeReasonInfo {
        sources = List.copyOf(sources);
    }

    RipeReasonInfo reworded(UnaryOperator<String> wording) {
        return new RipeReasonInfo(id, allows, danger, wording.apply(says), wording.apply(then), sources, known);
    }
}
