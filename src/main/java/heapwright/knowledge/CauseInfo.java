package heapwright.knowledge;

import java.util.List;

/**
 * What the table of causes says of one cause.
 *
 * @param id the cause
 * @param name short name
 * @param kind danger, trouble, or nothing to mend
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

    /** What sort of finding a cause is. */
    public enum Kind implements Id {
        DANGER,
        TROUBLE,
        WELL
    }
}
