package heapwright.knowledge;

import java.util.List;
import java.util.function.UnaryOperator;

/**
 * What the table says of a home remedy that people give without reckoning.
 *
 * @param id the home remedy
 * @param name what people do
 * @param verdict what to make of it, in a sentence or two, beside its figures for the pile
 * @param forCauses the causes people give it for; its figures are told when one of them stands
 * @param sources keys of sources
 * @param known how the verdict is known
 */
public record UsualDoseInfo(
        UsualDose id, String name, String verdict, List<Cause> forCauses, List<String> sources, Known known) {
    /** The same with its sentences put another way; ids, names and figures stay. */
    UsualDoseInfo reworded(UnaryOperator<String> wording) {
        return new UsualDoseInfo(id, wording.apply(name), wording.apply(verdict), forCauses, sources, known);
    }
}
