package heapwright.docs;

import heapwright.advice.fact.Spares;
import heapwright.advice.fact.Warns;
import heapwright.advice.fact.WarnsAlways;
import heapwright.docs.Doctrine.Teaching;
import heapwright.knowledge.CautionInfo;
import heapwright.knowledge.CautionInfo.Severity;
import heapwright.knowledge.Material;
import heapwright.knowledge.RemedyInfo;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Every caution: what to do, why, and when it is given. */
final class CautionPage {

    private final Doctrine doctrine;

    CautionPage(Doctrine doctrine) {
        this.doctrine = doctrine;
    }

    String write() {
        Page page = new Page("Cautions");
        page.paragraph(
                "What can hurt people, animals or the ground, and when the advice says so. Where local rules or a"
                        + " licensed trade apply, they come first.");
        for (Severity severity : Severity.values()) {
            page.section(doctrine.catalogue.text("severity." + severity.id()));
            doctrine.knowledge.cautions().values().stream()
                    .filter(c -> c.severity() == severity)
                    .forEach(c -> caution(page, c));
        }
        return page.write();
    }

    private void caution(Page page, CautionInfo info) {
        page.entry(info.id().id(), info.title());
        page.paragraph(info.text() + " " + info.why());
        page.named("Local rules", info.localRules().orElse(""));
        page.named(
                "Always with",
                doctrine.knowledge.remedies().values().stream()
                        .filter(r -> r.cautions().contains(info.id()))
                        .map(RemedyInfo::id)
                        .map(doctrine::remedy)
                        .collect(Collectors.joining(" · ")));
        page.named(
                "With the materials",
                doctrine.knowledge.materials().values().stream()
                        .filter(m -> m.cautions().contains(info.id()))
                        .map(Material::id)
                        .map(id -> "`" + id + "`")
                        .collect(Collectors.joining(", ")));
        page.named("Sources", doctrine.sources(info.sources(), info.known()));
        List<Teaching> rules = Stream.concat(
                        doctrine.teaching(WarnsAlways.class, (t, i) -> i.names(info.id())).stream(),
                        doctrine.teaching(Warns.class, (t, i) -> i.names(info.id())).stream())
                .toList();
        if (!rules.isEmpty()) {
            page.head("Said when", "With", "Why", "Rests on", "Rule");
            rules.forEach(t -> page.row(
                    t.on(),
                    with(t),
                    t.info().rationale(),
                    doctrine.ground(t.info()),
                    t.info().id()));
        }
        List<Teaching> spared = doctrine.teaching(Spares.class, (t, i) -> i.names(info.id()));
        if (!spared.isEmpty()) {
            page.head("Left out when", "With", "Why", "Rests on", "Rule");
            spared.forEach(t -> page.row(
                    t.on(),
                    with(t),
                    t.info().rationale(),
                    doctrine.ground(t.info()),
                    t.info().id()));
        }
    }

    private String with(Teaching t) {
        return t.insertion().fact().equals(WarnsAlways.class.getSimpleName())
                ? "whatever is done"
                : doctrine.breadth(t, 0)
                        .orElseGet(() -> t.text().remedies(t.insertion().parts().get(0)).stream()
                                .map(doctrine::remedy)
                                .collect(Collectors.joining(" · ")));
    }
}
