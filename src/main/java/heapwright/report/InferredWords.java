package heapwright.report;

import heapwright.advice.fact.Concluded;
import heapwright.advice.fact.Disputed;
import heapwright.advice.fact.Failed;
import heapwright.advice.fact.Helped;
import heapwright.advice.fact.Holds;
import heapwright.advice.fact.Offered;
import heapwright.advice.fact.Once;
import heapwright.advice.fact.Planned;
import heapwright.advice.fact.Proposes;
import heapwright.advice.fact.Stands;
import heapwright.advice.fact.Suspected;
import heapwright.advice.fact.Underway;
import java.util.Optional;

/** Puts what the rules inferred, and what came of the steps that were tried, into words. */
final class InferredWords {

    private InferredWords() {}

    /** A fact that rules inferred, in words; empty for one that says nothing to a reader. */
    static Optional<String> of(Words words, Object fact) {
        if (fact instanceof Holds h) {
            return Optional.of(words.word("condition", h.condition()));
        }
        if (fact instanceof Once o) {
            return Optional.of(words.text("fact.seen-days", words.says(o.sign()), o.daysAgo()));
        }
        if (fact instanceof Stands s) {
            return Optional.of(words.text(
                    "fact.danger", words.knowledge().dangers().get(s.danger()).name()));
        }
        if (fact instanceof Suspected s) {
            return Optional.of(words.text("fact.cause", words.cause(s.cause()), words.chance(s.likelihood())));
        }
        if (fact instanceof Concluded c) {
            return Optional.of(words.text("fact.cause", words.cause(c.cause()), words.chance(c.likelihood())));
        }
        if (fact instanceof Helped h) {
            return Optional.of(words.text("fact.helped", words.remedy(h.remedy()), h.daysAgo()));
        }
        if (fact instanceof Failed f) {
            return Optional.of(words.text("fact.failed", words.remedy(f.remedy()), f.daysAgo()));
        }
        if (fact instanceof Underway u) {
            return Optional.of(words.text("fact.underway", words.remedy(u.remedy())));
        }
        if (fact instanceof Proposes p) {
            return Optional.of(words.text("fact.proposed", words.remedy(p.remedy())));
        }
        if (fact instanceof Planned p) {
            return Optional.of(words.text("fact.proposed", words.remedy(p.remedy())));
        }
        if (fact instanceof Offered o) {
            return Optional.of(words.text("fact.proposed", words.remedy(o.remedy())));
        }
        if (fact instanceof Disputed d) {
            return Optional.of(words.text("fact.disputed", words.word("matter", d.matter())));
        }
        return Optional.empty();
    }
}
