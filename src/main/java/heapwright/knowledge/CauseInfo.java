package heapwright.knowledge;

import java.util.List;
import java.util.function.UnaryOperator;

/**
 * What the table of causes says of one cause.
 *
 * @param id the cause
 * @param name short name
 * @param kind danger, must not be used, trouble, or nothing to mend
 * @param summary one sentence to the person
 * @param why the mechanism
 * @param baseRate prior chance among piles that people ask about, 0 to 1 exclusive; judgement
 * @param tellApart what would settle it
 * @param sources keys of sources
 * @param known how it is known
 */
public record CauseInfo(
        Cause id,
        String name,
        Kind kind,
        String summary,
        String why,
        double baseRate,
        String tellApart,
        List<String> sources,
        Known known) {
    /** The same with its sentences put another way; ids, names and figures stay. */
    CauseInfo reworded(UnaryOperator<String> wording) {
        return new CauseInfo(
                id,
                name,
                kind,
                wording.apply(summary),
                wording.apply(why),
                baseRate,
                wording.apply(tellApart),
                sources,
                known);
    }

    /** What sort of finding a cause is. */
    public enum Kind implements Id {
        /** It can hurt somebody now. */
        DANGER,
        /** Nothing is done with the stuff until it is known what became of it. */
        MUST_NOT_BE_USED,
        /** Something to mend. */
        TROUBLE,
        /** Nothing to put right. */
        WELL
    }
}
