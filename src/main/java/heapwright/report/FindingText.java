package heapwright.report;

import heapwright.advice.Advice;
import heapwright.advice.Finding;
import heapwright.advice.engine.EvidencePiece;
import heapwright.advice.fact.Grade;
import heapwright.advice.fact.Seen;
import heapwright.knowledge.CauseInfo;
import heapwright.knowledge.CauseInfo.Kind;
import java.util.List;

/** Puts the findings of an advice into words, each with the evidence that counts most. */
final class FindingText {

    private static final int PIECES = 4;

    /** Evidence that counts for less than this part of its weight is not worth a line; judgement. */
    private static final double WORTH_TELLING = 0.1;

    private static final int INDENT = 3;

    private final Words words;

    FindingText(Words words) {
        this.words = words;
    }

    /** The findings of an advice; nothing where there are none. */
    void write(Layout page, Advice advice) {
        if (advice.findings().isEmpty()) {
            return;
        }
        boolean wrong = advice.findings().stream().anyMatch(f -> info(f).kind() != Kind.WELL);
        page.heading(words.text(wrong ? "section.wrong" : "section.well"));
        for (Finding finding : advice.findings()) {
            CauseInfo info = info(finding);
            page.paragraph(
                    0,
                    INDENT,
                    page.strong(words.text(
                            "finding.line",
                            info.name(),
                            words.word("grade", finding.grade()),
                            words.inHundred(finding.likelihood()))));
            page.paragraph(INDENT, 0, info.summary());
            pieces(page, words.text("finding.for"), finding.weighed().supports());
            pieces(page, words.text("finding.against"), finding.weighed().opposes());
            if (!finding.grade().atLeast(Grade.VERY_LIKELY)) {
                page.paragraph(INDENT, 0, words.text("finding.tell-apart", info.tellApart()));
            }
        }
    }

    private void pieces(Layout page, String side, List<EvidencePiece> pieces) {
        pieces.stream()
                .filter(p -> p.counted() && p.degree() >= WORTH_TELLING)
                .limit(PIECES)
                .forEach(p -> page.paragraph(
                        INDENT,
                        2,
                        words.word("strength", p.rule().strength()) + " " + side + ": "
                                + new AdviceWords(words).because(p) + partly(p)
                                + " → "
                                + words.rationale(p.rule())));
    }

    private String partly(EvidencePiece piece) {
        boolean outlived = piece.because().stream().anyMatch(f -> f instanceof Seen s && s.outlived());
        return piece.degree() < 1 && !outlived ? " " + words.text("finding.partly") : "";
    }

    private CauseInfo info(Finding finding) {
        return words.knowledge().causes().get(finding.cause());
    }
}
