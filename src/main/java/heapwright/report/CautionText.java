package heapwright.report;

import heapwright.advice.Advice;
import heapwright.knowledge.CautionInfo;
import java.util.List;

/** Puts the cautions of an advice into words, the gravest first. */
final class CautionText {

    private static final int INDENT = 3;

    private final Words words;

    CautionText(Words words) {
        this.words = words;
    }

    /** The cautions of an advice and of its first steps; nothing where there are none. */
    void write(Layout page, Advice advice) {
        List<CautionInfo> all = new AdviceWords(words).cautions(advice);
        if (!all.isEmpty()) {
            page.heading(words.text("section.careful"));
            all.forEach(c -> caution(page, c));
        }
    }

    private void caution(Layout page, CautionInfo caution) {
        String rules = caution.localRules()
                .map(r -> " " + words.text("local.rules", r))
                .orElse("");
        page.paragraph(
                0,
                INDENT,
                "- " + words.word("severity", caution.severity()) + ": " + Words.withoutStop(caution.title()) + ". "
                        + caution.text() + rules);
    }
}
