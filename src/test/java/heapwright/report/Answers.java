package heapwright.report;

import heapwright.advice.Advice;
import heapwright.advice.TestPile;
import heapwright.advice.ready.Ready;
import heapwright.advice.winter.PileOutlook;
import heapwright.advice.winter.QuickLook;
import heapwright.advice.winter.ReadyAhead;
import heapwright.pile.Pile;
import heapwright.process.sanitation.HeatLedger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** All that is told of one pile, in full, as text of one line each. */
public final class Answers {

    private static final Words WORDS = new Words(TestPile.KNOWLEDGE, Catalogue.english(), Units.METRIC);

    /** One answer. */
    public record Answer(String door, String text) {}

    private Answers() {}

    /** The answers of every door that has one for this pile; {@code ways}: with what other ways would bring. */
    public static List<Answer> of(Advice advice, boolean ways) {
        List<Answer> all = new ArrayList<>();
        Pile pile = advice.pile();
        all.add(new Answer("checkup", new TextReport(WORDS, false).write(advice)));
        all.add(new Answer("first page", new FirstPage(WORDS, false).write(advice)));
        all.add(new Answer("why", new WhyReport(WORDS, false).write(advice)));
        all.add(new Answer("first page of why", new FirstPageOfWhy(WORDS, false).write(advice)));
        if (advice.alarm().isPresent()) {
            return all;
        }
        Optional<PileOutlook> ahead = QuickLook.of(advice, ways);
        ahead.ifPresent(a -> {
            all.add(new Answer("outlook", new OutlookReport(WORDS, false).write(a)));
            all.add(new Answer("first page of outlook", new FirstPageOfOutlook(WORDS, false).write(a)));
        });
        TestPile.ADVISOR.audit(pile, OptionalDouble.empty()).ifPresent(audit -> {
            Optional<ReadyAhead> ready =
                    audit.asTold() ? ahead.filter(PileOutlook::fits).map(PileOutlook::ready) : Optional.empty();
            all.add(new Answer("audit", new AuditReport(WORDS, false).write(audit.ready(ready))));
            all.add(new Answer("first page of audit", new FirstPageOfAudit(WORDS, false).write(audit.ready(ready))));
        });
        var ready = Ready.of(advice, TestPile.KNOWLEDGE);
        all.add(new Answer("ready", new ReadyReport(WORDS, false).write(ready)));
        all.add(new Answer("first page of ready", new FirstPageOfReady(WORDS, false).write(ready)));
        HeatLedger ledger = HeatLedger.of(pile, TestPile.KNOWLEDGE);
        all.add(new Answer("sanitise", new SanitationReport(WORDS, false).write(pile, ledger)));
        all.add(new Answer("first page of sanitise", new FirstPageOfSanitation(WORDS, false).write(pile, ledger)));
        return all;
    }
}
