package heapwright.report;

import heapwright.advice.Advice;
import heapwright.knowledge.Caution;
import heapwright.knowledge.CautionInfo;
import java.util.LinkedHashSet;
import java.util.Set;

/** Puts the cautions of an advice into words, the gravest first. */
final class CautionText {

    private static final int INDENT = 3;

    private final Words words;

    CautionText(Words words) {
        this.words = words;
    }

    /** The cautions of an advice and of its first steps; nothing where there are none. */
    void write(Layout page, Advice advice) {
        Set<Caution> all = new LinkedHashSet<>(advice.cautions());
        advice.steps().stream()
                .limit(StepText.STEPS_IN_FULL)
                .forEach(s -> all.addAll(s.main().cautions()));
        if (all.isEmpty()) {
            return;
        }
        page.heading(words.text("section.careful"));
        words.knowledge().cautions().values().stream()
                .filter(c -> all.contains(c.id()))
                .sorted((a, b) -> a.severity().compareTo(b.severity()))
                .forEach(c -> caution(page, c));
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
