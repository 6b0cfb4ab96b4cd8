package heapwright.report;

import heapwright.advice.audit.Audit;
import heapwright.advice.audit.Proposal;
import heapwright.knowledge.CautionInfo;
import java.util.Comparator;

/** The first page of an audit: the verdict, what stays out, the mend, how to build it, and when it will be ready. */
public final class FirstPageOfAudit {

    private static final int INDENT = 3;

    /** What is left away first where the page is too full. */
    private enum Less {
        NOTHING,
        INSTEAD,
        LATER_CHECKS,
        SIZE,
        MIXING,
        CARE_HALF
    }

    private final Words words;
    private final AuditReport report;
    private final boolean marked;

    public FirstPageOfAudit(Words words, boolean marked) {
        this.words = words;
        this.report = new AuditReport(words, marked);
        this.marked = marked;
    }

    /** The page. */
    public String write(Audit audit) {
        return FirstPageSize.fullest(Less.values().length, less -> page(audit, Less.values()[less]));
    }

    private String page(Audit audit, Less less) {
        Layout page = new Layout(marked);
        page.title(words.text("audit.title", audit.pile().name()));
        if (audit.alarm().isPresent()) {
            new AlarmText(words).inShort(page, audit.alarm().get());
        } else {
            page.paragraph(0, 0, report.headline(audit));
            words.toCheck(audit.pile()).forEach(told -> page.paragraph(0, 0, told));
            words.assumed(audit.pile()).ifPresent(told -> page.paragraph(0, 0, told));
            new JudgementText(words).own(audit).ifPresent(told -> page.paragraph(0, 0, told));
            report.out(page, audit, less == Less.NOTHING);
            plan(page, audit, less);
            care(page, audit, less);
        }
        page.blank();
        page.paragraph(0, 0, words.text("first.more", words.text("first.more-audit")));
        return page.toString();
    }

    private void plan(Layout page, Audit audit, Less less) {
        if (audit.pile().container().kind().worksCold()) {
            page.paragraph(0, 0, words.text("audit.not-built"));
        }
        audit.proposal().ifPresent(p -> {
            new MendText(words, audit.pile()).write(page, p);
            if (p.build().isEmpty()) {
                page.paragraph(0, 0, words.text("audit.no-plan"));
            }
            p.build().ifPresent(b -> build(page, audit, b, less));
        });
    }

    private void build(Layout page, Audit audit, Proposal.Build build, Less less) {
        BuildText.Part part = less.compareTo(Less.MIXING) >= 0
                ? BuildText.Part.LAYERS
                : less.compareTo(Less.LATER_CHECKS) >= 0 ? BuildText.Part.BUILDING : BuildText.Part.ALL;
        new BuildText(words, audit.pile()).write(page, build, part, less.compareTo(Less.SIZE) < 0);
        page.blank();
        page.paragraph(
                0,
                0,
                words.text(
                                "first.makes",
                                words.figures()
                                        .volume(
                                                build.becomes().litres().low(),
                                                build.becomes().litres().high()))
                        + " " + new ReadyWords(words).ready(audit, build)
                        + new ReadyWords(words).wish(audit, build));
    }

    private void care(Layout page, Audit audit, Less less) {
        int most = less.compareTo(Less.CARE_HALF) < 0 ? JobText.CARE : JobText.CARE / 2;
        var care = AuditReport.cautions(audit).stream()
                .map(c -> words.knowledge().cautions().get(c))
                .sorted(Comparator.comparing(CautionInfo::severity))
                .toList();
        long dangers = care.stream()
                .filter(c -> c.severity() == CautionInfo.Severity.DANGER)
                .count();
        if (care.isEmpty()) {
            return;
        }
        page.heading(words.text("section.careful"));
        care.stream().limit(Math.max(dangers, most)).forEach(c -> page.paragraph(0, INDENT, "- " + words.caution(c)));
    }
}
