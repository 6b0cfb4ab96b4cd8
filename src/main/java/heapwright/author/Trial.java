package heapwright.author;

import heapwright.advice.Advice;
import heapwright.advice.Advisor;
import heapwright.casebook.Case;
import heapwright.casebook.Verdict;
import java.util.List;

/** Puts every case to what is shipped and to what is tried, and tells whose answer changes. */
public final class Trial {

    private final Advisor shipped;
    private final Advisor tried;

    /**
     * @param shipped advises with what is shipped
     * @param tried advises with what is tried
     */
    public Trial(Advisor shipped, Advisor tried) {
        this.shipped = shipped;
        this.tried = tried;
    }

    /**
     * A case with its two answers.
     *
     * @param tested the case
     * @param before the answer with what is shipped
     * @param after the answer with what is tried
     */
    public record Compared(Case tested, Answer before, Answer after) {

        /** Whether a person would be told something else. */
        public boolean changes() {
            return !before.told().equals(after.told()) || before.agrees() != after.agrees();
        }

        /** The most by which a finding becomes likelier or less likely, 0 to 1. */
        public double moves() {
            return before.furthest(after);
        }
    }

    /** The cases in their order. */
    public List<Compared> of(List<Case> cases) {
        return cases.parallelStream()
                .map(c -> new Compared(c, answer(c, shipped), answer(c, tried)))
                .toList();
    }

    private static Answer answer(Case tested, Advisor advisor) {
        Advice advice = advisor.diagnose(tested.pile());
        return Answer.of(advice, Verdict.of(tested, advice, Verdict.audit(tested, advisor)));
    }
}
