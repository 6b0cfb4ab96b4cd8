package heapwright.docs;

import heapwright.knowledge.UsualDoseInfo;
import java.util.stream.Collectors;

/** Every home remedy that people give by habit, and what to make of it. */
final class HomeRemedyPage {

    private final Doctrine doctrine;

    HomeRemedyPage(Doctrine doctrine) {
        this.doctrine = doctrine;
    }

    String write() {
        Page page = new Page("Home remedies");
        page.paragraph(
                "What people give by habit, and what to make of it. An advice sets the figures for the pile beside"
                        + " it where the cause stands.");
        page.head("What people do", "What to make of it", "For", "Rests on");
        doctrine.knowledge.usualDoses().values().forEach(d -> home(page, d));
        return page.write();
    }

    private void home(Page page, UsualDoseInfo info) {
        page.row(
                "<a id=\"" + info.id().id() + "\"></a>" + info.name(),
                info.verdict(),
                info.forCauses().stream()
                        .map(c -> Doctrine.link(
                                "causes.md",
                                c.id(),
                                doctrine.knowledge.causes().get(c).name()))
                        .collect(Collectors.joining(" · ")),
                doctrine.sources(info.sources(), info.known()));
    }
}
