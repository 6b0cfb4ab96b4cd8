package heapwright.docs;

import heapwright.advice.engine.RuleInfo;
import heapwright.advice.fact.Proposes;
import heapwright.advice.fact.SetAside;
import heapwright.docs.Doctrine.Teaching;
import heapwright.knowledge.CauseInfo;
import heapwright.knowledge.CauseInfo.Kind;
import heapwright.knowledge.Evidence;
import heapwright.knowledge.Evidence.Speaks;
import heapwright.knowledge.Remedy;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Every cause: what it is, what speaks for and against it, and what mends it. */
final class CausePage {

    private static final Map<Kind, String> KINDS = Map.of(
            Kind.DANGER,
            "Dangers",
            Kind.MUST_NOT_BE_USED,
            "What must not be used",
            Kind.TROUBLE,
            "Troubles",
            Kind.WELL,
            "Nothing to put right");

    private final Doctrine doctrine;

    CausePage(Doctrine doctrine) {
        this.doctrine = doctrine;
    }

    String write() {
        Page page = new Page("Causes");
        page.paragraph("What may be wrong with a pile, or right. The base rate is the chance among piles that people"
                + " ask about before anything is known of this one; it is judgement. Strengths stand for weights of"
                + " evidence: see [how advice is worked out](../method/advice.md).");
        for (Kind kind : Kind.values()) {
            page.section(KINDS.get(kind));
            doctrine.knowledge.causes().values().stream()
                    .filter(c -> c.kind() == kind)
                    .forEach(c -> cause(page, c));
        }
        return page.write();
    }

    private void cause(Page page, CauseInfo cause) {
        page.entry(cause.id().id(), cause.name());
        page.paragraph(cause.summary() + " " + cause.why());
        page.named("To tell it apart", cause.tellApart());
        page.named("Base rate", Math.round(cause.baseRate() * 100) + " in 100");
        page.named("Sources", doctrine.sources(cause.sources(), cause.known()));
        evidence(page, "For it", cause, Speaks.FOR);
        evidence(page, "Against it", cause, Speaks.AGAINST);
        List<Teaching> aside = doctrine.teaching(SetAside.class, (t, i) -> i.names(cause.id()));
        if (!aside.isEmpty()) {
            page.head("Explained away when", "Why", "Rests on", "Rule");
            aside.forEach(t -> page.row(
                    t.on(),
                    t.info().rationale(),
                    doctrine.ground(t.info()),
                    t.info().id()));
        }
        remedies(page, cause);
    }

    private void evidence(Page page, String title, CauseInfo cause, Speaks speaks) {
        List<Evidence> rows = doctrine.knowledge.evidence().stream()
                .filter(row -> row.cause() == cause.id() && row.speaks() == speaks)
                .sorted(Comparator.comparingInt(
                                (Evidence row) -> -row.strength().ordinal())
                        .thenComparing(Evidence::id))
                .toList();
        if (rows.isEmpty()) {
            return;
        }
        page.head(title, "How firmly", "Witness", "Why", "Rests on", "Row");
        rows.forEach(row -> page.row(
                doctrine.words(row.when()),
                row.strength().id(),
                row.witness().id(),
                row.because(),
                doctrine.ground(row),
                row.id()));
    }

    private void remedies(Page page, CauseInfo cause) {
        Map<Remedy, List<RuleInfo>> rules = new TreeMap<>();
        for (Teaching t : doctrine.teaching(Proposes.class, (text, i) -> i.names(cause.id()))) {
            Set<Remedy> remedies = t.text().remedies(t.insertion().parts().get(0));
            remedies.forEach(
                    r -> rules.computeIfAbsent(r, x -> new ArrayList<>()).add(t.info()));
        }
        page.named(
                "What mends it",
                rules.entrySet().stream()
                        .map(e -> doctrine.remedy(e.getKey()) + " ("
                                + e.getValue().stream()
                                        .map(r -> r.strength().id() + ", " + r.id())
                                        .distinct()
                                        .collect(Collectors.joining("; "))
                                + ")")
                        .collect(Collectors.joining(" · ")));
    }
}
