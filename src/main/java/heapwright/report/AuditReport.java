package heapwright.report;

import heapwright.advice.audit.Audit;
import heapwright.advice.audit.BuildPlan;
import heapwright.advice.audit.BuildPlan.Layer;
import heapwright.advice.audit.Judgement;
import heapwright.advice.audit.Mend;
import heapwright.advice.fact.LimitIs;
import heapwright.knowledge.Caution;
import heapwright.knowledge.CautionInfo;
import heapwright.knowledge.Material;
import heapwright.process.dose.Household.Rounding;
import heapwright.process.mend.Addition;
import heapwright.process.mend.Offer;
import heapwright.process.mend.Plan;
import heapwright.process.mixture.Band;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Writes an audit as plain text: what must stay out, what the numbers say, the mend, the plan, what it becomes. */
public final class AuditReport {

    private static final int INDENT = 3;

    private final Words words;
    private final boolean marked;

    public AuditReport(Words words, boolean marked) {
        this.words = words;
        this.marked = marked;
    }

    /** The whole audit as text. */
    public String write(Audit audit) {
        Layout page = new Layout(marked);
        page.line(0, page.strong(words.text("audit.title", audit.pile().name())));
        page.paragraph(0, 0, words.text("audit.mark." + audit.mark().id()));
        barred(page, audit);
        mend(page, audit);
        judgements(page, audit);
        plan(page, audit);
        becomes(page, audit);
        cautions(page, audit.plan().cautions());
        page.blank();
        page.paragraph(0, 0, words.text("footer.limits"));
        return page.toString();
    }

    private void barred(Layout page, Audit audit) {
        if (audit.barred().isEmpty()) {
            return;
        }
        page.heading(words.text("audit.section.out"));
        for (Material m : audit.barred()) {
            Material.KeepOut out = m.keepOut().orElseThrow();
            page.paragraph(
                    0,
                    INDENT,
                    "- " + words.word("bar", out.bar()) + ": " + m.name() + ". " + out.reason() + " " + out.instead());
        }
    }

    private void judgements(Layout page, Audit audit) {
        page.heading(words.text("audit.section.numbers"));
        for (Judgement j : audit.judgements()) {
            String facts = j.firing().because().stream()
                    .filter(f -> !(f instanceof LimitIs))
                    .map(words::fact)
                    .flatMap(Optional::stream)
                    .distinct()
                    .collect(Collectors.joining("; "));
            page.paragraph(
                    0,
                    INDENT,
                    "- " + words.word("mark", j.mark()) + ": "
                            + (facts.isEmpty() ? words.word("topic", j.topic()) : facts)
                            + ". " + j.firing().rule().rationale());
        }
        audit.ownFigure()
                .ifPresent(own -> page.paragraph(
                        0,
                        INDENT,
                        "- "
                                + words.text(
                                        "audit.own." + own.shortcut().name().toLowerCase(Locale.ROOT),
                                        words.figures().round(own.average()),
                                        words.figures().round(own.balanced()))));
    }

    private void mend(Layout page, Audit audit) {
        Mend mend = audit.mend();
        page.heading(words.text("audit.section.mend"));
        if (!mend.needed()) {
            page.paragraph(0, 0, words.text("audit.mend.none"));
            return;
        }
        Plan plan = mend.chosen();
        if (!plan.meetsAll()) {
            page.paragraph(
                    0,
                    0,
                    words.text(
                            plan.additions().isEmpty() ? "audit.mend.cannot" : "audit.mend.nearest",
                            plan.misses().stream()
                                    .sorted()
                                    .map(m -> words.text("miss." + m.name().toLowerCase(Locale.ROOT)))
                                    .collect(Collectors.joining(", "))));
        }
        plan.additions().forEach(a -> page.paragraph(0, INDENT, "- " + addition(audit, a)));
        if (!plan.additions().isEmpty()) {
            page.paragraph(
                    0,
                    0,
                    words.text(
                            "audit.mend.after",
                            words.figures().round(plan.after().moisturePct()),
                            words.figures().round(plan.after().carbonToNitrogen()),
                            words.figures().density(plan.after().densityKgM3())));
        }
        mend.unlock().ifPresent(o -> page.paragraph(0, 0, words.text("audit.mend.unlock", name(o.id()))));
    }

    private String addition(Audit audit, Addition addition) {
        Measures measures = new Measures(words, audit.pile());
        boolean water = addition.material().equals(Offer.WATER);
        String amount = water
                ? words.figures().volume(addition.litres())
                : words.figures().mass(addition.kg());
        Measures.Kind kind = water ? Measures.Kind.WATER : Measures.Kind.BUCKETS;
        String told = words.text(
                "audit.mend.add",
                measures.tell(addition.litres(), kind, Rounding.NEAREST),
                name(addition.material()),
                amount);
        return addition.parts() > 1 ? told + " " + words.text("audit.mend.parts", addition.parts()) : told;
    }

    private String name(String material) {
        return material.equals(Offer.WATER)
                ? words.text("dose.thing.water")
                : words.knowledge().material(material).map(words::thing).orElse(material);
    }

    private void plan(Layout page, Audit audit) {
        BuildPlan plan = audit.plan();
        Figures figures = words.figures();
        page.heading(words.text("audit.section.build"));
        page.paragraph(
                0,
                0,
                words.text(
                        "audit.build.size",
                        figures.length(plan.lengthM() * 100),
                        figures.length(plan.widthM() * 100),
                        figures.length(plan.heightM() * 100)));
        int step = 1;
        if (!plan.cut().isEmpty()) {
            page.paragraph(0, INDENT, step++ + ". " + words.text("audit.build.cut", names(plan.cut())));
        }
        if (!plan.soak().isEmpty()) {
            page.paragraph(0, INDENT, step++ + ". " + words.text("audit.build.soak", names(plan.soak())));
        }
        page.paragraph(
                0,
                INDENT,
                step++ + ". "
                        + (plan.base().isEmpty()
                                ? words.text("audit.build.no-base")
                                : words.text("audit.build.base", layers(audit, plan.base()))));
        page.paragraph(
                0,
                INDENT,
                step++ + ". " + words.text("audit.build.round", layers(audit, plan.layers()), plan.rounds()));
        if (plan.waterPerRound().likely() > 0) {
            page.paragraph(
                    0,
                    INDENT,
                    step++ + ". "
                            + words.text(
                                    "audit.build.water",
                                    figures.volume(plan.waterPerRound().likely())));
        }
        page.paragraph(0, INDENT, step++ + ". " + words.text("audit.build.mix"));
        page.paragraph(0, INDENT, step++ + ". " + words.text("audit.build.cover"));
        page.paragraph(0, INDENT, step + ". " + words.text("audit.build.check"));
    }

    private String names(List<String> materials) {
        return materials.stream().map(this::name).collect(Collectors.joining("; "));
    }

    private String layers(Audit audit, List<Layer> layers) {
        Measures measures = new Measures(words, audit.pile());
        return layers.stream()
                .map(l -> words.text(
                        "audit.build.layer",
                        measures.tell(l.litres(), Measures.Kind.BUCKETS, Rounding.NEAREST),
                        name(l.material()),
                        words.figures().length(Math.max(0.5, l.thicknessCm()))))
                .collect(Collectors.joining("; "));
    }

    private void becomes(Layout page, Audit audit) {
        Figures figures = words.figures();
        DateTimeFormatter month =
                DateTimeFormatter.ofPattern("MMMM yyyy", words.catalogue().locale());
        page.heading(words.text("audit.section.becomes"));
        page.paragraph(
                0,
                0,
                words.text(
                        "audit.becomes",
                        figures.volume(
                                audit.becomes().litres().low(),
                                audit.becomes().litres().high()),
                        figures.mass(
                                audit.becomes().kgWet().low(),
                                audit.becomes().kgWet().high()),
                        figures.area(
                                audit.becomes().coversM2().low(),
                                audit.becomes().coversM2().high()),
                        audit.ready().earliest().format(month),
                        audit.ready().latest().format(month)));
        page.paragraph(
                0,
                0,
                words.text(
                        "audit.nutrients",
                        mass(audit.becomes().nitrogenKg()),
                        mass(audit.becomes().phosphorusKg()),
                        mass(audit.becomes().potassiumKg())));
    }

    private String mass(Band kg) {
        return words.figures().mass(kg.low(), kg.high());
    }

    private void cautions(Layout page, List<Caution> cautions) {
        page.heading(words.text("section.careful"));
        for (Caution caution : cautions) {
            CautionInfo info = words.knowledge().cautions().get(caution);
            page.paragraph(
                    0,
                    INDENT,
                    "- " + words.word("severity", info.severity()) + ": " + Words.withoutStop(info.title()) + ". "
                            + info.text()
                            + info.localRules()
                                    .map(r -> " " + words.text("local.rules", r))
                                    .orElse(""));
        }
    }
}
