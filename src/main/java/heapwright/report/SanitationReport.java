package heapwright.report;

import heapwright.knowledge.HeatRule;
import heapwright.pile.Pile;
import heapwright.process.sanitation.Fate;
import heapwright.process.sanitation.HeatLedger;
import heapwright.process.sanitation.RuleCheck;
import java.util.List;
import java.util.OptionalDouble;

/** The heat ledger in full: every stretch, every rule with its source, every weed and disease with its trials. */
public final class SanitationReport {

    private final Words words;
    private final SanitationWords said;
    private final boolean marked;

    public SanitationReport(Words words, boolean marked) {
        this.words = words;
        this.said = new SanitationWords(words);
        this.marked = marked;
    }

    public String write(Pile pile, HeatLedger ledger) {
        Layout page = new Layout(marked);
        page.title(said.title(pile));
        page.paragraph(0, 0, said.headline(ledger));
        words.toCheck(pile).forEach(told -> page.paragraph(0, 0, told));
        page.paragraph(0, 0, words.text("sanitise.core-warning"));
        page.paragraph(0, 0, said.gaps());
        if (ledger.record().measured()) {
            page.heading(words.text("sanitise.days-heading"));
            ledger.levels().forEach(l -> page.paragraph(0, 2, said.level(l)));
            page.heading(words.text("sanitise.between-heading"));
            ledger.between().forEach(b -> page.paragraph(0, 2, said.between(ledger, b)));
        } else {
            page.paragraph(0, 0, words.text("sanitise.measure"));
        }
        page.heading(words.text("sanitise.rules-heading"));
        ledger.rules().forEach(r -> rule(page, r));
        page.heading(words.text("sanitise.equations-heading"));
        words.knowledge().sanitation().equations().values().forEach(e -> {
            OptionalDouble share = ledger.equations().get(e.id());
            page.paragraph(
                    0,
                    2,
                    words.text(
                            share.isPresent() ? "sanitise.equation" : "sanitise.equation-none",
                            e.name(),
                            words.figures().temperature(e.lowestCelsius()),
                            share.isPresent() ? words.figures().times(share.getAsDouble()) : ""));
        });
        page.paragraph(0, 0, words.text("sanitise.equations-warning"));
        page.heading(words.text("sanitise.here-heading"));
        List<Fate> here = ledger.inThisPile();
        if (here.isEmpty()) {
            page.paragraph(0, 0, words.text("sanitise.nothing-here"));
        }
        here.forEach(f -> fate(page, f));
        page.heading(words.text("sanitise.others-heading"));
        ledger.fates().stream().filter(f -> !f.inThisPile()).forEach(f -> fate(page, f));
        page.blank();
        page.paragraph(0, 0, words.text("sanitise.ask-locally"));
        return page.toString();
    }

    private void rule(Layout page, RuleCheck check) {
        HeatRule rule = check.rule();
        page.paragraph(0, 2, words.text("sanitise.rule", rule.name(), said.needs(rule), said.verdict(check)));
        page.paragraph(2, 0, said.also(rule));
    }

    private void fate(Layout page, Fate fate) {
        page.paragraph(0, 2, words.text("sanitise.fate", fate.survivor().name(), said.fateWithNever(fate)));
        fate.survivor().trials().forEach(t -> page.paragraph(2, 2, said.trial(t)));
        page.paragraph(2, 0, fate.survivor().then());
    }
}
