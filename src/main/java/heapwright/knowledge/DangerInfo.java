package heapwright.knowledge;

import java.util.List;
import java.util.function.UnaryOperator;

/**
 * What the table of dangers says of one danger.
 *
 * @param id the danger
 * @param name what may be the matter, to follow the word danger
 * @param cause the finding it stands for, of kind danger
 * @param summary what to do, in a sentence or two
 * @param closes whether the pile stays closed: then none of its steps opens, turns, wets or feeds it, and the steps of
 *     dangers that do not close it wait
 * @param steps what to do, in order
 * @param overrules dangers whose steps its own replace
 * @param cautions what to beware of
 * @param asks what to find out, the most telling first; all of it can be answered from outside
 * @param over when it is over, and what to answer then
 * @param sources keys of sources
 * @param known how it is known
 */
public record DangerInfo(
        Danger id,
        String name,
        Cause cause,
        String summary,
        boolean closes,
        List<Remedy> steps,
        List<Danger> overrules,
        List<Caution> cautions,
        List<Sign> asks,
        String over,
        List<String> sources,
        Known known) {
    /** The same with its sentences put another way; ids, names and figures stay. */
    DangerInfo reworded(UnaryOperator<String> wording) {
        return new DangerInfo(
                id,
                name,
                cause,
                wording.apply(summary),
                closes,
                steps,
                overrules,
                cautions,
                asks,
                wording.apply(over),
                sources,
                known);
    }
}
