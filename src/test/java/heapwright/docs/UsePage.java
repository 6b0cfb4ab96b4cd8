package heapwright.docs;

import heapwright.knowledge.HomeTestInfo;
import heapwright.knowledge.RipeReasonInfo;
import heapwright.knowledge.UseInfo;
import heapwright.knowledge.WaitInfo;
import heapwright.report.Catalogue;
import heapwright.report.Units;
import heapwright.report.UseWords;
import heapwright.report.Words;
import java.util.stream.Collectors;

/** Home tests, uses, waiting times, and what holds compost back. */
final class UsePage {

    private final Doctrine doctrine;
    private final UseWords said;

    UsePage(Doctrine doctrine) {
        this.doctrine = doctrine;
        this.said = new UseWords(new Words(doctrine.knowledge, Catalogue.english(), Units.METRIC));
    }

    String write() {
        Page page = new Page("Ready and use: tests, amounts and waits");
        page.paragraph("`heapwright ready FILE` reads them beside the record of a pile; how it judges stands in"
                + " [the method](../method/ready.md). Local rules come first.");
        page.section("Home tests");
        page.head("Test", "Tells", "Needs", "How", "Days", "Read", "Rests on");
        doctrine.knowledge.endUse().tests().values().forEach(t -> test(page, t));
        page.section("Uses");
        page.paragraph("A depth of 1 cm is 10 L/m².");
        page.head("Use", "Amount", "From, to", "How often", "Ripe for", "Note", "Rests on");
        doctrine.knowledge.endUse().uses().values().forEach(u -> use(page, u));
        page.section("Waiting times");
        page.head("For", "Days", "Others say", "Rests on");
        doctrine.knowledge.endUse().waits().values().forEach(w -> wait(page, w));
        page.section("What holds it back");
        page.head("Reason", "Allows", "Gate", "Then", "Rests on");
        doctrine.knowledge.endUse().reasons().values().forEach(r -> reason(page, r));
        return page.write();
    }

    private static String span(int from, int to) {
        return from == to ? String.valueOf(from) : from + "–" + to;
    }

    private void test(Page page, HomeTestInfo t) {
        page.row(
                t.name(),
                t.tells(),
                t.needs(),
                t.how(),
                span(t.fromDays(), t.toDays()),
                said.readings(t) + "<br>"
                        + t.limits().stream()
                                .map(l -> l.name() + ": " + Doctrine.number(l.value()) + " " + l.unit())
                                .collect(Collectors.joining("<br>")),
                doctrine.sources(t.sources(), t.known()));
    }

    private void use(Page page, UseInfo u) {
        page.row(
                u.name(),
                said.amount(u),
                said.range(u),
                u.often(),
                u.needs().id(),
                u.note(),
                doctrine.sources(u.sources(), u.known()));
    }

    private void wait(Page page, WaitInfo w) {
        page.row(w.name(), span(w.days(), w.toDays()), w.note(), doctrine.sources(w.sources(), w.known()));
    }

    private void reason(Page page, RipeReasonInfo r) {
        page.row(
                r.says(), r.allows().id(), r.danger() ? "yes" : "", r.then(), doctrine.sources(r.sources(), r.known()));
    }
}
