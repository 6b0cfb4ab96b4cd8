package heapwright.casebook;

import heapwright.advice.Advice;
import heapwright.advice.Advisor;
import heapwright.advice.audit.Audit;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.KnowledgeReader;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Every case of the folder with the advice on it, worked out once for all tests that look at it. */
public final class JudgedCases {

    private static final Path FOLDER = Path.of(System.getProperty("cases.dir", "cases"));

    private JudgedCases() {}

    /**
     * A case with its advice.
     *
     * @param tested the case
     * @param advice the advice on its pile
     * @param audit the audit of its recipe, where the case demands something of it
     */
    public record Judged(Case tested, Advice advice, Optional<Audit> audit) {}

    /** All cases, in order of file. */
    public static List<Judged> all() {
        return Once.ALL;
    }

    /** The cases of one folder below the folder of cases. */
    public static List<Judged> below(String folder) {
        return all().stream()
                .filter(j -> j.tested().file().startsWith(folder + "/"))
                .toList();
    }

    /** Holds the work until a test asks for it. */
    private static final class Once {

        static final List<Judged> ALL = judged();

        private static List<Judged> judged() {
            Knowledge knowledge = KnowledgeReader.packed();
            Advisor advisor = Advisor.packed(knowledge);
            return new Casebook(knowledge)
                    .below(FOLDER).stream()
                            .map(c -> new Judged(c, advisor.diagnose(c.pile()), Verdict.audit(c, advisor)))
                            .toList();
        }
    }
}
