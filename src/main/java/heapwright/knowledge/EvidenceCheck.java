package heapwright.knowledge;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/** Checks that the rows of evidence are told apart, say why, and wait only for what can come. */
final class EvidenceCheck {

    private static final Pattern SENTENCE = Pattern.compile("[\\p{Lu}\\d].*\\.");
    private static final Pattern SECOND_SENTENCE = Pattern.compile("[.!?] \\p{Lu}");

    /** What the ids of shipped rows begin with. */
    static final String SHIPPED = "WEIGH";

    private final Knowledge knowledge;
    private final String prefixes;
    private final List<String> faults = new ArrayList<>();
    private final References references;
    private final Set<String> ids = new HashSet<>();
    private final Map<Object, String> said = new HashMap<>();

    /** @param prefixes what the ids may begin with, as alternatives of a pattern */
    EvidenceCheck(Knowledge knowledge, String prefixes) {
        this.knowledge = knowledge;
        this.prefixes = prefixes;
        this.references = new References(knowledge, faults);
    }

    List<String> faults() {
        knowledge.evidence().forEach(this::row);
        return List.copyOf(faults);
    }

    private void row(Evidence row) {
        String where = "evidence/" + row.cause().id() + ".json " + row.id();
        if (!row.id().matches("(" + prefixes + ")-[1-9]\\d{2,3}(-" + row.cause().id() + ")?")) {
            faults.add(where + ": an id is " + prefixes.replace("|", "- or ")
                    + "- and a number of three or four digits, with -"
                    + row.cause().id() + " behind it where several causes share the number");
        }
        if (!ids.add(row.id())) {
            faults.add(where + ": the id stands twice");
        }
        String same = said.put(List.of(row.cause(), row.speaks(), row.witness(), row.when()), row.id());
        if (same != null) {
            faults.add(where + ": " + same + " already speaks on the same");
        }
        if (!SENTENCE.matcher(row.because()).matches()
                || SECOND_SENTENCE.matcher(row.because()).find()) {
            faults.add(where + ": because is \"" + row.because()
                    + "\", but must be one sentence with a capital and a full stop");
        }
        references.sources(where, List.of(row.source()));
        if (row.when() instanceof When.HoldsNot not && not.condition().forEvidence()) {
            faults.add(where + ": " + not.condition().id()
                    + " is a name for several parts, whose absence is not known; name what is meant by a derive rule");
        }
    }
}
