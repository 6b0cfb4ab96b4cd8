package heapwright.report;

import heapwright.advice.danger.Alarm;
import heapwright.pile.Pile;
import heapwright.process.sanitation.Fate;
import heapwright.process.sanitation.HeatLedger;
import heapwright.process.sanitation.RuleCheck;
import java.util.ArrayList;
import java.util.List;

/** The first page of the heat ledger: the days, the rules that differ, and what that means for what went in. */
public final class FirstPageOfSanitation {

    private static final int RULES = 7;
    private static final int FATES = 4;

    private final Words words;
    private final SanitationWords said;
    private final boolean marked;

    public FirstPageOfSanitation(Words words, boolean marked) {
        this.words = words;
        this.said = new SanitationWords(words);
        this.marked = marked;
    }

    /** The page. */
    public String write(Pile pile, HeatLedger ledger) {
        return FirstPageSize.fullest(RULES, less -> page(pile, ledger, RULES - less, Math.max(2, FATES - less)));
    }

    private String page(Pile pile, HeatLedger ledger, int rules, int fates) {
        Layout page = new Layout(marked);
        page.title(said.title(pile));
        page.paragraph(0, 0, said.headline(ledger));
        words.toCheck(pile).forEach(told -> page.paragraph(0, 0, told));
        if (ledger.record().measured()) {
            page.paragraph(0, 0, words.text("sanitise.core-warning"));
            page.heading(words.text("sanitise.days-heading"));
            ledger.levels().forEach(l -> page.paragraph(0, 2, said.level(l)));
            page.heading(words.text("sanitise.rules-heading"));
            differing(ledger).stream()
                    .limit(rules)
                    .forEach(r -> page.paragraph(
                            0, 2, words.text("sanitise.rule", r.rule().name(), said.needs(r.rule()), said.verdict(r))));
        } else {
            page.paragraph(0, 0, words.text("sanitise.measure"));
        }
        List<Fate> here = ledger.inThisPile();
        if (!here.isEmpty()) {
            page.heading(words.text("sanitise.here-heading"));
            here.stream()
                    .limit(fates)
                    .forEach(f -> page.paragraph(
                            0,
                            2,
                            words.text(
                                    "sanitise.here",
                                    f.survivor().name(),
                                    said.fate(f),
                                    f.survivor().then())));
            if (here.size() > fates) {
                page.paragraph(0, 0, words.text("sanitise.more-here", here.size() - fates));
            }
        }
        page.blank();
        page.paragraph(0, 0, words.text("sanitise.more"));
        return page.toString();
    }

    /** Of rules that ask the same the first; those for other kinds of composting are left away. */
    private List<RuleCheck> differing(HeatLedger ledger) {
        List<RuleCheck> all = new ArrayList<>();
        for (RuleCheck check : ledger.rules()) {
            boolean told =
                    all.stream().anyMatch(other -> said.needs(other.rule()).equals(said.needs(check.rule())));
            if (!told && check.verdict() != RuleCheck.Verdict.OTHER_METHOD) {
                all.add(check);
            }
        }
        return all;
    }

    /** What is said in its place while a danger stands. */
    public String alarmed(Pile pile, Alarm alarm) {
        return new AlarmText(words).page(pile, alarm, marked);
    }
}
