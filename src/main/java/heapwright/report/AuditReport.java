package heapwright.report;

import heapwright.advice.audit.Audit;
import heapwright.advice.audit.Proposal;
import heapwright.advice.audit.Trimming;
import heapwright.advice.fact.Mark;
import heapwright.knowledge.Caution;
import heapwright.knowledge.CautionInfo;
import heapwright.knowledge.CautionInfo.Severity;
import heapwright.knowledge.Material;
import heapwright.process.mixture.Band;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Writes an audit as plain text, a page to print: what must stay out, the mend, the plan, what it becomes, and what the
 * numbers say; after the page the cautions in full.
 */
public final class AuditReport {

    private static final int INDENT = 3;

    /** A headline with more reasons than this is not read. */
    private static final int MOST_REASONS = 3;

    private final Words words;
    private final boolean marked;

    /**
     * Prepares.
     *
     * @param words the texts
     * @param marked whether headings may be set in bold by terminal codes
     */
    public AuditReport(Words words, boolean marked) {
        this.words = words;
        this.marked = marked;
    }

    /** The whole audit as text. */
    public String write(Audit audit) {
        Layout page = new Layout(marked);
        page.title(words.text("audit.title", audit.pile().name()));
        if (audit.alarm().isPresent()) {
            new AlarmText(words).write(page, audit.alarm().get());
            page.blank();
            page.paragraph(0, 0, words.text("footer.limits"));
            return page.toString();
        }
        page.paragraph(0, 0, headline(audit));
        words.toCheck(audit.pile()).forEach(told -> page.paragraph(0, 0, told));
        words.assumed(audit.pile()).ifPresent(told -> page.paragraph(0, 0, told));
        plan(page, audit);
        Set<Caution> cautions = cautions(audit);
        titles(page, cautions);
        new JudgementText(words).write(page, audit);
        inFull(page, cautions);
        page.blank();
        page.paragraph(0, 0, words.text("footer.limits"));
        return page.toString();
    }

    /** What it comes to, in sections for a page that sets them in its own way; without the cautions. */
    public List<Sections.Section> sections(Audit audit) {
        Sections sections = new Sections();
        if (audit.alarm().isPresent()) {
            new AlarmText(words).body(sections, audit.alarm().get());
            return sections.all();
        }
        plan(sections, audit);
        new JudgementText(words).write(sections, audit);
        return sections.all();
    }

    private void plan(ReportWriter page, Audit audit) {
        out(page, audit, true);
        if (audit.pile().container().kind().worksCold()) {
            page.paragraph(0, 0, words.text("audit.not-built"));
        }
        audit.proposal().ifPresent(p -> {
            new MendText(words, audit.pile()).write(page, p);
            if (p.build().isEmpty()) {
                page.paragraph(0, 0, words.text("audit.no-plan"));
            }
            p.build().ifPresent(b -> {
                new BuildText(words, audit.pile()).write(page, b);
                becomes(page, audit, b);
            });
        });
    }

    /** The verdict in a sentence, with the first reasons. */
    public String headline(Audit audit) {
        if (audit.alarm().isPresent()) {
            return new AlarmText(words).headline(audit.alarm().get());
        }
        String told = words.text("audit.mark." + audit.mark().id());
        String reasons = audit.judgements().stream()
                .filter(j -> j.mark() == audit.mark())
                .map(j -> j.firing().rule().name())
                .distinct()
                .limit(MOST_REASONS)
                .collect(Collectors.joining("; "));
        return reasons.isEmpty() || audit.mark() == Mark.FITS
                ? told
                : told + " " + words.text("audit.reasons." + audit.mark().id(), reasons);
    }

    /** The step for what is in a pile already, by the table that the checkup reads too. */
    private String alreadyIn(Material.KeepOut bar) {
        return words.knowledge().keepOuts().get(bar.kind()).step().stream()
                .map(r -> " " + words.text("audit.already-in", words.remedy(r)))
                .findFirst()
                .orElse("");
    }

    /** What stays out and why; at length also what to do in its place. */
    void out(ReportWriter page, Audit audit, boolean atLength) {
        List<Material> also = audit.proposal().map(Proposal::leftOut).orElse(List.of()).stream()
                .filter(m -> !audit.barred().contains(m))
                .toList();
        List<Trimming.Trimmed> trimmed = audit.proposal().map(Proposal::trimmed).orElse(List.of());
        if (audit.barred().isEmpty() && also.isEmpty() && trimmed.isEmpty()) {
            return;
        }
        page.heading(words.text("audit.section.out"));
        for (Material m : audit.barred()) {
            Material.KeepOut bar = m.keepOut().orElseThrow();
            String rules = hasLocalRules(m) ? " " + words.text("audit.local-rules") : "";
            String instead = atLength ? " " + bar.instead() + alreadyIn(bar) + rules : "";
            page.paragraph(
                    0, INDENT, "- " + words.word("bar", bar.bar()) + ": " + m.name() + ". " + bar.reason() + instead);
        }
        if (!also.isEmpty()) {
            String names = also.stream().map(words::thing).collect(Collectors.joining("; "));
            page.paragraph(0, INDENT, "- " + words.text("audit.left-out", names));
        }
        Portions portions = new Portions(words, audit.pile());
        trimmed.forEach(t -> page.paragraph(0, INDENT, "- " + cutBack(t, portions)));
        if (audit.proposal().isEmpty() && !audit.pile().container().kind().worksCold()) {
            page.paragraph(0, 0, words.text("audit.nothing-left"));
        }
    }

    private String cutBack(Trimming.Trimmed t, Portions portions) {
        boolean rinsed = t.material().group() == Material.Group.NITROGEN_RICH
                && t.material().saltShare() > 0;
        return words.text(
                rinsed ? "audit.trimmed.rinse" : "audit.trimmed",
                words.thing(t.material()),
                portions.atMost(t.material().id(), t.litres()));
    }

    private boolean hasLocalRules(Material material) {
        return material.cautions().stream()
                .anyMatch(c -> words.knowledge().cautions().get(c).localRules().isPresent());
    }

    private void becomes(ReportWriter page, Audit audit, Proposal.Build build) {
        Figures figures = words.figures();
        page.heading(words.text("audit.section.becomes"));
        String told = words.text(
                "audit.becomes",
                figures.volume(
                        build.becomes().litres().low(), build.becomes().litres().high()),
                figures.mass(
                        build.becomes().kgWet().low(), build.becomes().kgWet().high()),
                figures.area(
                        build.becomes().coversM2().low(),
                        build.becomes().coversM2().high()));
        ReadyWords ready = new ReadyWords(words);
        page.paragraph(
                0,
                0,
                told + " "
                        + ready.ready(audit, build) + " "
                        + words.text(
                                "audit.nutrients",
                                mass(build.becomes().nitrogenKg()),
                                mass(build.becomes().phosphorusKg()),
                                mass(build.becomes().potassiumKg()))
                        + ready.wish(audit, build));
    }

    private String mass(Band kg) {
        return words.figures().mass(kg.low(), kg.high());
    }

    /** What to beware of while building. */
    public static Set<Caution> cautions(Audit audit) {
        Set<Caution> all = EnumSet.noneOf(Caution.class);
        audit.alarm().ifPresent(a -> all.addAll(a.cautions()));
        audit.proposal()
                .flatMap(Proposal::build)
                .ifPresent(b -> all.addAll(b.plan().cautions()));
        audit.barred().forEach(m -> all.addAll(m.cautions()));
        return all;
    }

    private void titles(Layout page, Set<Caution> cautions) {
        if (cautions.isEmpty()) {
            return;
        }
        page.heading(words.text("audit.section.careful"));
        for (Severity severity : Severity.values()) {
            List<String> told = cautions.stream()
                    .map(c -> words.knowledge().cautions().get(c))
                    .filter(c -> c.severity() == severity)
                    .map(c -> Words.withoutStop(c.title()))
                    .toList();
            if (!told.isEmpty()) {
                page.paragraph(
                        0, INDENT, "- " + words.word("severity", severity) + ": " + String.join("; ", told) + ".");
            }
        }
    }

    private void inFull(Layout page, Set<Caution> cautions) {
        if (cautions.isEmpty()) {
            return;
        }
        page.heading(words.text("audit.section.cautions"));
        for (Severity severity : Severity.values()) {
            cautions.stream()
                    .map(c -> words.knowledge().cautions().get(c))
                    .filter(c -> c.severity() == severity)
                    .forEach(c -> page.paragraph(0, INDENT, inFull(c)));
        }
    }

    private String inFull(CautionInfo info) {
        return "- " + words.word("severity", info.severity()) + ": " + Words.withoutStop(info.title()) + ". "
                + info.text()
                + info.localRules().map(r -> " " + words.text("local.rules", r)).orElse("");
    }
}
