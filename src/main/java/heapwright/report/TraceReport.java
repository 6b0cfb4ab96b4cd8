package heapwright.report;

import heapwright.advice.Advice;
import heapwright.advice.Finding;
import heapwright.advice.engine.EvidencePiece;
import heapwright.advice.engine.Firing;
import heapwright.advice.engine.Pass;
import heapwright.advice.engine.Weighed;
import heapwright.advice.fact.Contradicts;
import heapwright.advice.fact.Disputed;
import heapwright.advice.fact.Harmed;
import heapwright.advice.fact.Holds;
import heapwright.advice.fact.Outdated;
import heapwright.advice.fact.Precedes;
import heapwright.advice.fact.Proposes;
import heapwright.advice.fact.Replaces;
import heapwright.advice.fact.SetAside;
import heapwright.advice.fact.Spares;
import heapwright.advice.fact.Speaks;
import heapwright.advice.fact.Stands;
import heapwright.advice.fact.Warns;
import heapwright.advice.fact.WarnsAlways;
import heapwright.advice.fact.Withholds;
import heapwright.knowledge.Cause;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Shows the whole chain from answers to advice, and what spoke for and against one cause. */
public final class TraceReport {

    private final Words words;

    public TraceReport(Words words) {
        this.words = words;
    }

    /** Every rule that fired, by pass: on what, with what result, how strong and on what authority. */
    public String whole(Advice advice) {
        Layout page = new Layout(false);
        page.heading(words.text("section.trace"));
        Pass pass = null;
        for (Firing firing : advice.outcome().firings()) {
            if (firing.rule().pass() != pass) {
                pass = firing.rule().pass();
                page.line(0, pass.id());
            }
            page.paragraph(
                    2,
                    4,
                    firing.rule().id() + " " + facts(firing.because()) + partly(firing.degree()) + " → "
                            + result(firing.result()) + " ["
                            + firing.rule().strength().id() + "; "
                            + words.word("known", firing.rule().evidence()) + ", "
                            + firing.rule().source() + "] " + words.rationale(firing.rule()));
        }
        return page.toString();
    }

    /** What spoke for and against a cause, and whether another finding explains it. */
    public String whyNot(Advice advice, Cause cause) {
        Layout page = new Layout(false);
        Weighed weighed = advice.outcome().weighed().get(cause);
        page.paragraph(
                0,
                4,
                words.text(
                        "finding.line",
                        words.cause(cause),
                        words.word("grade", weighed.grade()),
                        words.inHundred(weighed.likelihood())));
        page.paragraph(2, 0, words.text("whynot.base", words.inHundred(weighed.baseRate())));
        pieces(page, "finding.for", weighed.supports());
        pieces(page, "finding.against", weighed.opposes());
        if (weighed.supports().isEmpty()) {
            page.paragraph(2, 0, words.text("whynot.nothing-for"));
        }
        if (weighed.opposes().isEmpty()) {
            page.paragraph(2, 0, words.text("finding.nothing-against"));
        }
        Optional<Finding> aside =
                advice.setAside().stream().filter(f -> f.cause() == cause).findFirst();
        aside.flatMap(Finding::setAside)
                .ifPresent(f -> page.paragraph(2, 0, words.text("whynot.aside", words.rationale(f.rule()))));
        page.paragraph(
                2,
                0,
                words.text(
                        "finding.tell-apart",
                        words.knowledge().causes().get(cause).tellApart()));
        return page.toString();
    }

    private void pieces(Layout page, String side, List<EvidencePiece> pieces) {
        for (EvidencePiece piece : pieces) {
            page.paragraph(
                    2,
                    4,
                    words.text(side) + " ("
                            + words.word("strength", piece.rule().strength())
                            + ", " + weight(piece) + " dB"
                            + (piece.counted() ? "" : ", " + words.text("whynot.not-counted")) + "): "
                            + facts(piece.because()) + partly(piece.degree()) + " → " + words.rationale(piece.rule())
                            + " ["
                            + piece.rule().id()
                            + "; " + words.word("known", piece.rule().evidence()) + ", "
                            + piece.rule().source() + "]");
        }
    }

    /** A weight as a whole number, with a decimal only where the piece holds in part. */
    private String weight(EvidencePiece piece) {
        String figure = words.figures().number(Math.abs(piece.decibans()), piece.degree() < 1 ? 1 : 0);
        return (piece.decibans() > 0 ? "+" : "-") + figure;
    }

    /** In what degree a rule's conditions hold, where that is less than in full. */
    private String partly(double degree) {
        return degree < 1 ? " (" + words.text("trace.partly", words.inHundred(degree)) + ")" : "";
    }

    private String facts(List<Object> facts) {
        return facts.stream()
                .map(words::fact)
                .flatMap(Optional::stream)
                .distinct()
                .collect(Collectors.joining("; "));
    }

    /** A result of a rule in ids, for readers who write rules. */
    static String result(Object fact) {
        if (fact instanceof Holds h) {
            return h.condition().id();
        }
        if (fact instanceof Stands s) {
            return "danger " + s.danger().id();
        }
        if (fact instanceof Speaks s) {
            return s.row().speaks().id() + " " + s.cause().id();
        }
        if (fact instanceof SetAside s) {
            return "sets aside " + s.cause().id();
        }
        if (fact instanceof Contradicts c) {
            return c.one().id() + " contradicts " + c.other().id();
        }
        if (fact instanceof Outdated o) {
            return o.sign().id() + " is out of date";
        }
        if (fact instanceof Harmed h) {
            return "harm: " + h.harm().id() + ", " + h.daysAgo() + " days ago";
        }
        if (fact instanceof Disputed d) {
            return d.matter().id() + " is in dispute";
        }
        if (fact instanceof Proposes p) {
            return "proposes " + p.remedy().id() + " for " + p.cause().id();
        }
        if (fact instanceof Withholds w) {
            return "withholds " + w.remedy().id();
        }
        if (fact instanceof Warns w) {
            return "warns " + w.caution().id() + " with " + w.remedy().id();
        }
        if (fact instanceof Spares s) {
            return "spares " + s.caution().id() + " with " + s.remedy().id();
        }
        if (fact instanceof WarnsAlways w) {
            return "warns " + w.caution().id();
        }
        if (fact instanceof Replaces r) {
            return r.better().id() + " replaces " + r.other().id();
        }
        if (fact instanceof Precedes p) {
            return p.first().id() + " comes before " + p.second().id();
        }
        return String.valueOf(fact);
    }
}
