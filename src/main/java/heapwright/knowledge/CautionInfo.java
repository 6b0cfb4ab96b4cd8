package heapwright.knowledge;

import java.util.Collection;
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
 * @param fits on which piles and days it is worth saying
 * @param localRules whose rules come first, if any may exist
 * @param localNote what a person wrote of the rules of their own place, also among the local rules
 * @param sources keys of sources
 * @param known how it is known
 */
public record CautionInfo(
        Caution id,
        String title,
        String text,
        String why,
        Severity severity,
        Fits fits,
        Optional<String> localRules,
        Optional<String> localNote,
        List<String> sources,
        Known known) {

    /** The same with a note on the rules of a place, which is told before what else is said of local rules. */
    CautionInfo noted(String note) {
        return new CautionInfo(
                id,
                title,
                text,
                why,
                severity,
                fits,
                Optional.of(localRules.map(rules -> note + " " + rules).orElse(note)),
                Optional.of(localNote.map(other -> other + " " + note).orElse(note)),
                sources,
                known);
    }

    /** The same with its sentences put another way; ids, names and figures stay. */
    CautionInfo reworded(UnaryOperator<String> wording) {
        return new CautionInfo(
                id,
                wording.apply(title),
                wording.apply(text),
                wording.apply(why),
                severity,
                fits,
                localRules.map(wording),
                localNote,
                sources,
                known);
    }

    /**
     * How much is at stake, as ISO 3864 and ANSI Z535 define the words: danger will, warning could end in death or
     * grave injury if it is not avoided; caution could end in a lesser injury; a notice is about animals, plants,
     * ground or law, and about no injury.
     */
    public enum Severity implements Id {
        DANGER,
        WARNING,
        CAUTION,
        NOTICE
    }

    /**
     * When a caution that goes with a step is worth saying.
     *
     * @param onlyIf states of which one must hold; empty if none is needed
     * @param neverIf states under which it has no point
     */
    public record Fits(List<Condition> onlyIf, List<Condition> neverIf) {
        public Fits {
            onlyIf = List.copyOf(onlyIf);
            neverIf = List.copyOf(neverIf);
        }

        /** Whether it is worth saying while these states hold. */
        public boolean under(Collection<Condition> holding) {
            return (onlyIf.isEmpty() || onlyIf.stream().anyMatch(holding::contains))
                    && neverIf.stream().noneMatch(holding::contains);
        }
    }
}
