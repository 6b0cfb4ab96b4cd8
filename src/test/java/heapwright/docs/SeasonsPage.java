package heapwright.docs;

import heapwright.knowledge.SeasonJob;
import heapwright.knowledge.TimeOfYear;
import heapwright.pile.Container;
import java.util.stream.Collectors;

/** What there is to do at each time of the year. */
final class SeasonsPage {

    private final Doctrine doctrine;

    SeasonsPage(Doctrine doctrine) {
        this.doctrine = doctrine;
    }

    String write() {
        Page page = new Page("The seasons");
        page.paragraph(
                "`heapwright season` tells what there is to do now and next, by the usual warmth of the months at the"
                        + " place of a pile: deep winter is a mean below 0 °C, summer one above 10 °C, and 5 °C parts the thaw from"
                        + " spring and leaf fall from the weeks before the frost. Local rules come first.");
        for (TimeOfYear time : TimeOfYear.values()) {
            page.section(doctrine.catalogue.text("season.time." + time.id()));
            page.head("For", "What to do", "Why", "Kinds of pile", "Rests on");
            doctrine.knowledge.season().values().stream()
                    .filter(job -> job.time() == time)
                    .forEach(job -> page.row(
                            doctrine.catalogue.text(
                                    "season.keeps." + job.keeps().id()),
                            job.job(),
                            job.why(),
                            kinds(job),
                            doctrine.sources(job.sources(), job.known())));
        }
        return page.write();
    }

    private static String kinds(SeasonJob job) {
        return job.kinds().isEmpty()
                ? "all"
                : job.kinds().stream().sorted().map(Container.Kind::token).collect(Collectors.joining(", "));
    }
}
