package heapwright.docs;

import heapwright.knowledge.HeatRule;
import heapwright.knowledge.Survivor;
import heapwright.report.Catalogue;
import heapwright.report.SanitationWords;
import heapwright.report.Units;
import heapwright.report.Words;
import java.util.List;
import java.util.stream.Collectors;

/** What heat kills and what outlives it, and the rules for how much of it. */
final class SurvivalPage {

    private final Doctrine doctrine;
    private final SanitationWords said;

    SurvivalPage(Doctrine doctrine) {
        this.doctrine = doctrine;
        this.said = new SanitationWords(new Words(doctrine.knowledge, Catalogue.english(), Units.METRIC));
    }

    String write() {
        Page page = new Page("Heat: what it kills, and the rules");
        page.paragraph("`heapwright sanitise FILE` lays them beside the record of a pile; how it counts stands in"
                + " [the method](../method/sanitation.md). Local rules come first; ask locally about notifiable"
                + " diseases.");
        page.section("What dies, what survives");
        page.head("What", "Heat", "Trials", "The compost then", "Brought by");
        doctrine.knowledge.sanitation().survivors().values().forEach(s -> survivor(page, s));
        page.section("Rules");
        page.paragraph("For professional sites; none binds a home heap. They show what counts as proof.");
        page.head("Rule", "For", "Asks", "Also", "Rests on");
        doctrine.knowledge.sanitation().rules().values().forEach(r -> rule(page, r));
        page.section("Equations");
        page.paragraph("Days that every particle must be kept at t °C: coefficient ÷ 10^(exponent × t), never less"
                + " than the floor, and nothing below the lowest temperature.");
        page.head("For", "Coefficient", "Exponent", "From °C", "Floor, minutes", "Rests on");
        doctrine.knowledge
                .sanitation()
                .equations()
                .values()
                .forEach(e -> page.row(
                        e.name(),
                        Doctrine.number(e.coefficient()),
                        Doctrine.number(e.exponent()),
                        Doctrine.number(e.lowestCelsius()),
                        Doctrine.number(e.leastMinutes()),
                        doctrine.sources(e.sources(), e.known())));
        return page.write();
    }

    private void survivor(Page page, Survivor s) {
        page.row(
                "<a id=\"" + s.id() + "\"></a>" + s.name() + (s.neverCompost() ? "<br>never at home" : "")
                        + (s.notifiable() ? "<br>may have to be reported" : ""),
                s.needs()
                        .map(n -> Doctrine.number(n.days()) + " days at " + Doctrine.number(n.celsius()) + " °C"
                                + (n.turns() > 0 ? ", " + n.turns() + " turns" : ""))
                        .orElse(s.fate().id()),
                s.trials().stream().map(said::trial).collect(Collectors.joining("<br>")),
                s.then(),
                s.materials().stream()
                        .map(m -> Doctrine.link(
                                "materials.md",
                                m,
                                doctrine.knowledge.materials().get(m).name()))
                        .collect(Collectors.joining(" · ")));
    }

    private void rule(Page page, HeatRule rule) {
        page.row(
                rule.name(),
                rule.method().id(),
                said.needs(rule),
                rule.also(),
                doctrine.sources(List.copyOf(rule.sources()), rule.known()));
    }
}
