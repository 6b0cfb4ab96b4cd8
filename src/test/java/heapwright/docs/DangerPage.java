package heapwright.docs;

import heapwright.advice.fact.Stands;
import heapwright.knowledge.DangerInfo;
import java.util.stream.Collectors;

/** Every danger: what it is, when it stands, what to do, and when it is over. */
final class DangerPage {

    private final Doctrine doctrine;

    DangerPage(Doctrine doctrine) {
        this.doctrine = doctrine;
    }

    String write() {
        Page page = new Page("Dangers");
        page.paragraph("What comes before all other advice, the gravest first: see"
                + " [the danger gate](../method/danger.md).");
        doctrine.knowledge.dangers().values().forEach(d -> danger(page, d));
        return page.write();
    }

    private void danger(Page page, DangerInfo danger) {
        page.entry(danger.id().id(), danger.name());
        page.paragraph(danger.summary());
        page.named("Closes the pile", danger.closes() ? "yes" : "no");
        page.named("Steps", danger.steps().stream().map(doctrine::remedy).collect(Collectors.joining(" · ")));
        page.named(
                "Asked from outside",
                danger.asks().stream()
                        .map(s -> Doctrine.link(
                                "signs.md",
                                s.id(),
                                doctrine.knowledge.signs().get(s).shortName()))
                        .collect(Collectors.joining(" · ")));
        page.named("Over when", danger.over());
        page.named(
                "Cautions",
                danger.cautions().stream()
                        .map(c -> Doctrine.link(
                                "cautions.md",
                                c.id(),
                                doctrine.knowledge.cautions().get(c).title()))
                        .collect(Collectors.joining(" · ")));
        page.named("Sources", doctrine.sources(danger.sources(), danger.known()));
        page.head("It stands when", "Why", "Rests on", "Rule");
        doctrine.teaching(Stands.class, (t, i) -> i.names(danger.id()))
                .forEach(t -> page.row(
                        t.on(),
                        t.info().rationale(),
                        doctrine.ground(t.info()),
                        t.info().id()));
    }
}
