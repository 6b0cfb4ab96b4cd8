package heapwright.docs;

import heapwright.advice.engine.RuleInfo;
import heapwright.knowledge.LimitInfo;
import heapwright.knowledge.When;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Every limit with what the sources say of it and where they differ. */
final class LimitPage {

    private final Doctrine doctrine;

    LimitPage(Doctrine doctrine) {
        this.doctrine = doctrine;
    }

    String write() {
        Page page = new Page("Limits");
        page.paragraph(
                "The edges of ranges that rules and doses read. A pile document may set its own figure within the"
                        + " span allowed. Where the sources differ, the last column says how.");
        page.head("Limit", "Figure", "Own figure", "Rests on", "What the sources say", "Rules and rows");
        doctrine.knowledge.limits().values().forEach(l -> limit(page, l));
        return page.write();
    }

    private void limit(Page page, LimitInfo info) {
        page.row(
                "<a id=\"" + info.id().id() + "\"></a>" + info.name() + "<br>`"
                        + info.id().id() + "`",
                Doctrine.number(info.value()) + " " + info.unit(),
                Doctrine.number(info.lowest()) + "–" + Doctrine.number(info.highest()),
                doctrine.sources(info.sources(), info.known()),
                info.spread(),
                Stream.concat(
                                doctrine.rules().stream()
                                        .filter(r -> doctrine.text(r).reads(info.id()))
                                        .map(RuleInfo::id),
                                doctrine.rows(w -> w instanceof When.Placed p && p.limit() == info.id()))
                        .collect(Collectors.joining(", ")));
    }
}
