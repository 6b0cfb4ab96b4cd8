package heapwright.report;

import heapwright.advice.ready.Cover;
import heapwright.advice.ready.ReadyAnswer;
import heapwright.knowledge.HomeTestInfo;
import java.util.List;

/** Whether compost is ready, in full: every reason, every test and every use with its source. */
public final class ReadyReport {

    private final Words words;
    private final UseWords said;
    private final boolean marked;

    public ReadyReport(Words words, boolean marked) {
        this.words = words;
        this.said = new UseWords(words);
        this.marked = marked;
    }

    public String write(ReadyAnswer answer) {
        Layout page = new Layout(marked);
        page.title(said.title(answer.pile()));
        page.paragraph(0, 0, page.strong(said.headline(answer)));
        words.toCheck(answer.pile()).forEach(told -> page.paragraph(0, 0, told));
        page.paragraph(0, 0, words.text("ready.warning"));
        answer.reasons().forEach(r -> page.paragraph(0, 2, "- " + said.reasonInFull(r)));
        answer.contradictions().forEach(o -> page.paragraph(0, 2, "- " + said.atOdds(o)));
        page.heading(words.text("ready.tests"));
        said.results(answer).forEach(r -> page.paragraph(0, 2, "- " + r));
        answer.tests().forEach(t -> page.paragraph(0, 2, "- " + said.days(t)));
        words.knowledge().endUse().tests().values().forEach(t -> test(page, t));
        page.paragraph(0, 0, words.text("ready.note-it"));
        page.heading(words.text("ready.how-much"));
        page.paragraph(0, 0, said.left(answer));
        uses(
                page,
                words.text("ready.may"),
                answer.covers().stream().filter(Cover::allowed).toList());
        uses(
                page,
                words.text("ready.may-not"),
                answer.covers().stream().filter(c -> !c.allowed()).toList());
        page.heading(words.text("ready.days"));
        said.dates(answer).forEach(d -> page.paragraph(0, 2, "- " + d));
        page.paragraph(0, 0, words.text("ready.ground"));
        page.heading(words.text("ready.waits"));
        words.knowledge()
                .endUse()
                .waits()
                .values()
                .forEach(w -> page.paragraph(
                        0,
                        2,
                        words.text(
                                w.days() == w.toDays() ? "ready.wait" : "ready.wait-span",
                                w.name(),
                                w.days(),
                                w.toDays(),
                                w.note(),
                                words.text("known." + w.known().id()),
                                String.join(", ", w.sources()))));
        page.blank();
        page.paragraph(0, 0, words.text("ready.local"));
        return page.toString();
    }

    private void test(Layout page, HomeTestInfo test) {
        page.paragraph(0, 2, test.name() + ": " + said.needs(test));
        page.paragraph(2, 0, test.how() + " " + said.readings(test) + ". " + said.rests(test));
    }

    private void uses(Layout page, String heading, List<Cover> covers) {
        if (covers.isEmpty()) {
            return;
        }
        page.paragraph(0, 0, heading);
        covers.forEach(c -> {
            page.paragraph(0, 2, "- " + said.cover(c));
            page.paragraph(2, 0, said.note(c.use()));
        });
    }
}
