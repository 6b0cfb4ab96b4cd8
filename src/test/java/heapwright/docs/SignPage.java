package heapwright.docs;

import heapwright.advice.engine.RuleInfo;
import heapwright.advice.fact.Denied;
import heapwright.advice.fact.Seen;
import heapwright.knowledge.Figure;
import heapwright.knowledge.Sign;
import heapwright.knowledge.SignInfo;
import heapwright.knowledge.SignInfo.Sense;
import heapwright.knowledge.When;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Every sign: what is asked, how to check it, and which rules and rows of evidence read the answer. */
final class SignPage {

    private final Doctrine doctrine;

    SignPage(Doctrine doctrine) {
        this.doctrine = doctrine;
    }

    String write() {
        Page page = new Page("Signs");
        page.paragraph("What can be noticed at a pile. A pile document names signs by their ids. Yes, no and not looked"
                + " for are three different things: only answers are evidence.");
        for (Sense sense : Sense.values()) {
            page.section(doctrine.catalogue.text("sense." + sense.id()));
            page.head("Id", "Question", "How to check", "Met", "Rules and rows on a yes", "Rules and rows on a no");
            doctrine.knowledge.signs().values().stream()
                    .filter(s -> s.sense() == sense)
                    .forEach(s -> sign(page, s));
        }
        return page.write();
    }

    private void sign(Page page, SignInfo info) {
        String id = info.id().id();
        page.row(
                "<a id=\"" + id + "\"></a>`" + id + "`",
                info.ask(),
                info.how() + info.moisturePct().map(SignPage::stands).orElse(""),
                info.met().id(),
                rules(
                        Seen.class,
                        info.id(),
                        w -> w instanceof When.Seen s && s.anyOf().contains(info.id())),
                rules(
                        Denied.class,
                        info.id(),
                        w -> w instanceof When.Denied d && d.anyOf().contains(info.id())));
    }

    private static String stands(Figure moisture) {
        return " Stands for " + Doctrine.number(moisture.low()) + "–" + Doctrine.number(moisture.high())
                + " % moisture (" + Doctrine.source(moisture.source()) + ").";
    }

    private String rules(Class<?> answer, Sign sign, Predicate<When> waits) {
        Stream<String> rules = doctrine.rules().stream()
                .filter(r -> doctrine.text(r).matches(answer, sign))
                .map(RuleInfo::id);
        return Stream.concat(rules, doctrine.rows(waits)).collect(Collectors.joining(", "));
    }
}
