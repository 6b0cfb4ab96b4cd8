package heapwright.knowledge;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * What the table of cautions says of one caution.
 *
 * @param id the caution
 * @param title its title
 * @param text what to do
 * @param why why
 * @param severity how much is at stake
 * @param localRules whose rules come first, if any may exist
 * @param sources keys of sources
 * @param known how it is known
 */
public record CautionInfo(
        Caution id,
        String title,
        String text,
        String why,
        Severity severity,
        Optional<String> localRules,
        List<String> sources,
        Known known) {
    /** The same with its sentences put another way; ids, names and figures stay. */
    CautionInfo reworded(UnaryOperator<String> wording) {
        return new CautionInfo(
                id,
                wording.apply(title),
                wording.apply(text),
                wording.apply(why),
                severity,
                localRules.map(wording),
                sources,
                known);
    }

    /** How much is at stake. */
    public enum Severity implements Id {
        DANGER,
        WARNING,
        CARE
    }
}
