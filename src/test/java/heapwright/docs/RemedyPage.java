package heapwright.docs;

import heapwright.advice.fact.Precedes;
import heapwright.advice.fact.Proposes;
import heapwright.advice.fact.Replaces;
import heapwright.advice.fact.Spares;
import heapwright.advice.fact.Warns;
import heapwright.advice.fact.Withholds;
import heapwright.docs.Doctrine.Teaching;
import heapwright.knowledge.Caution;
import heapwright.knowledge.Remedy;
import heapwright.knowledge.RemedyInfo;
import heapwright.knowledge.RemedyInfo.Urgency;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Every remedy: how, when not, what to look for, and the rules about it. */
final class RemedyPage {

    private static final String CAUSES = "causes.md";
    private static final String CAUTIONS = "cautions.md";

    private final Doctrine doctrine;

    RemedyPage(Doctrine doctrine) {
        this.doctrine = doctrine;
    }

    String write() {
        Page page = new Page("Remedies");
        page.paragraph("What can be done, each with its rules. Days of progress and minutes of work are judgement; they"
                + " only order the steps. Amounts are worked out for each pile.");
        page.entry("many", "Rules about many steps at once");
        page.paragraph("They are told here once; under each remedy stands what speaks of it in particular.");
        rows(
                page,
                "Held back when",
                "Which",
                doctrine.broad(Withholds.class, 0),
                t -> doctrine.breadth(t, 0).orElseThrow());
        rows(
                page,
                "Gives way when",
                "Which",
                doctrine.broad(Replaces.class, 1),
                t -> doctrine.breadth(t, 1).orElseThrow());
        rows(
                page,
                "Comes after",
                "Which",
                doctrine.broad(Precedes.class, 1),
                t -> doctrine.breadth(t, 1).orElseThrow() + " after " + others(t, 0));
        rows(
                page,
                "Caution when",
                "Which",
                doctrine.broad(Warns.class, 0),
                t -> doctrine.breadth(t, 0).orElseThrow() + ": " + warned(t));
        rows(
                page,
                "Caution left out when",
                "Which",
                doctrine.broad(Spares.class, 0),
                t -> doctrine.breadth(t, 0).orElseThrow() + ": " + warned(t));
        for (Urgency urgency : Urgency.values()) {
            page.section(capital(doctrine.catalogue.text("urgency." + urgency.id())));
            doctrine.knowledge.remedies().values().stream()
                    .filter(r -> r.urgency() == urgency)
                    .forEach(r -> remedy(page, r));
        }
        return page.write();
    }

    private void remedy(Page page, RemedyInfo info) {
        page.entry(info.id().id(), info.name());
        page.paragraph(info.how());
        info.ways()
                .forEach(w -> page.named(
                        w.kinds().stream()
                                .map(k -> doctrine.catalogue.text("web.kind." + k.token()))
                                .collect(Collectors.joining(" · ")),
                        w.name() + ". " + w.how()));
        info.gently().ifPresent(light -> page.named("Without lifting", light));
        page.named("When not", info.notWhen());
        page.named(
                "Look for",
                info.expect() + " After " + info.expectDays().from() + "–"
                        + info.expectDays().to() + " days. If not: " + info.otherwise());
        page.named("Amount", info.dose().map(d -> "worked out (" + d.id() + ")").orElse(""));
        page.named("Costs and gains", costs(info));
        page.named(
                "Always with it",
                info.cautions().stream().map(this::caution).distinct().collect(Collectors.joining(" · ")));
        page.named("Would undo", info.undoes().stream().map(doctrine::remedy).collect(Collectors.joining(" · ")));
        page.named("One of these is enough", group(info));
        page.named("Sources", doctrine.sources(info.sources(), info.known()));
        table(page, "Proposed when", "For", doctrine.teaching(Proposes.class, info.id(), 0), 0, this::cause);
        table(page, "Held back when", "", doctrine.teaching(Withholds.class, info.id(), 0), 0, t -> "");
        table(page, "Gives way when", "To", doctrine.teaching(Replaces.class, info.id(), 1), 1, t -> others(t, 0));
        table(page, "Comes after", "What", doctrine.teaching(Precedes.class, info.id(), 1), 1, t -> others(t, 0));
        table(page, "Caution when", "Caution", doctrine.teaching(Warns.class, info.id(), 0), 0, this::warned);
        table(page, "Caution left out when", "Caution", doctrine.teaching(Spares.class, info.id(), 0), 0, this::warned);
    }

    /** The rules that name the remedy; those about many steps stand at the top of the page. */
    private void table(
            Page page, String title, String second, List<Teaching> rules, int part, Function<Teaching, String> what) {
        rows(
                page,
                title,
                second,
                rules.stream().filter(t -> doctrine.breadth(t, part).isEmpty()).toList(),
                what);
    }

    private void rows(Page page, String title, String second, List<Teaching> rules, Function<Teaching, String> what) {
        if (rules.isEmpty()) {
            return;
        }
        boolean plain = second.isEmpty();
        page.head(
                plain
                        ? new String[] {title, "Why", "Rests on", "Rule"}
                        : new String[] {title, second, "How firmly", "Why", "Rests on", "Rule"});
        for (Teaching t : rules) {
            String why = t.info().rationale();
            String ground = doctrine.ground(t.info());
            String id = t.info().id();
            page.row(
                    plain
                            ? new String[] {t.on(), why, ground, id}
                            : new String[] {
                                t.on(), what.apply(t), t.info().strength().id(), why, ground, id
                            });
        }
    }

    private String cause(Teaching t) {
        String constant = t.insertion().parts().get(1).replace("Cause.", "");
        if (constant.startsWith("$")) {
            return "what that step is for";
        }
        String id = constant.toLowerCase(Locale.ROOT).replace('_', '-');
        return doctrine.knowledge.causes().values().stream()
                .filter(c -> c.id().name().equals(constant))
                .findFirst()
                .map(c -> Doctrine.link(CAUSES, id, c.name()))
                .orElseThrow();
    }

    private String others(Teaching t, int part) {
        return t.text().remedies(t.insertion().parts().get(part)).stream()
                .map(doctrine::remedy)
                .collect(Collectors.joining(" · "));
    }

    private String warned(Teaching t) {
        Optional<Caution> caution = Arrays.stream(Caution.values())
                .filter(c -> t.insertion().names(c))
                .findFirst();
        return caution.map(this::caution).orElseThrow();
    }

    private String caution(Caution caution) {
        return Doctrine.link(
                CAUTIONS,
                caution.id(),
                doctrine.knowledge.cautions().get(caution).title());
    }

    private static String costs(RemedyInfo info) {
        return info.effort().minutes() + " minutes" + (info.effort().heavy() ? " of heavy work" : "") + "; risk "
                + info.risk().id() + "; wins about "
                + Doctrine.number(info.effectDays().likely()) + " days ("
                + Doctrine.number(info.effectDays().low()) + "–"
                + Doctrine.number(info.effectDays().high()) + ")"
                + (info.does().opens() ? "; opens the pile" : "");
    }

    private String group(RemedyInfo info) {
        return info.alternatives()
                .map(group -> Arrays.stream(Remedy.values())
                        .filter(r -> r != info.id())
                        .filter(r -> doctrine.knowledge
                                .remedies()
                                .get(r)
                                .alternatives()
                                .equals(Optional.of(group)))
                        .map(doctrine::remedy)
                        .collect(Collectors.joining(" · ")))
                .orElse("");
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
