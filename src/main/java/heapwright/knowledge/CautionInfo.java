package heapwright.knowledge;

import java.util.List;
import java.util.Optional;

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

    /** How much is at stake. */
    public enum Severity implements Id {
        DANGER,
        WARNING,
        CARE
    }
}
