package heapwright.report;

import heapwright.advice.danger.Alarm;
import heapwright.advice.ready.Cover;
import heapwright.advice.ready.ReadyAnswer;
import heapwright.advice.ready.TestPlan;
import heapwright.knowledge.RipeReasonInfo;
import heapwright.pile.Pile;
import java.util.List;

/** The first page on whether compost is ready: the verdict, what holds it back, the tests with their days, how far it goes. */
public final class FirstPageOfReady {

    private static final int INDENT = 2;
    private static final int REASONS = 3;
    private static final int TESTS = 2;
    private static final int USES = 4;

    /** What is left away first where the page is too full. */
    private enum Less {
        NOTHING,
        THIRD_USE_AND_ON,
        HOW_OF_SECOND,
        THIRD_REASON,
        HOW_OF_FIRST,
        SECOND_TEST
    }

    private final Words words;
    private final UseWords said;
    private final boolean marked;

    public FirstPageOfReady(Words words, boolean marked) {
        this.words = words;
        this.said = new UseWords(words);
        this.marked = marked;
    }

    /** The page. */
    public String write(ReadyAnswer answer) {
        return FirstPageSize.fullest(Less.values().length, less -> page(answer, Less.values()[less]));
    }

    private String page(ReadyAnswer answer, Less less) {
        Layout page = new Layout(marked);
        page.title(said.title(answer.pile()));
        page.paragraph(0, 0, page.strong(said.headline(answer)));
        words.toCheck(answer.pile()).forEach(told -> page.paragraph(0, 0, told));
        int reasons = less.compareTo(Less.THIRD_REASON) < 0 ? REASONS : REASONS - 1;
        List<RipeReasonInfo> binding = answer.binding();
        binding.stream().limit(reasons).forEach(r -> page.paragraph(0, INDENT, "- " + said.reason(r)));
        answer.contradictions().forEach(o -> page.paragraph(0, INDENT, "- " + said.atOdds(o)));
        tests(page, answer, less);
        page.heading(words.text("ready.how-much"));
        page.paragraph(0, 0, said.left(answer));
        int uses = less.compareTo(Less.THIRD_USE_AND_ON) < 0 ? USES : 2;
        said.fitting(answer).stream()
                .filter(Cover::allowed)
                .limit(uses)
                .forEach(c -> page.paragraph(0, INDENT, "- " + said.cover(c)));
        List<String> days = said.dates(answer);
        if (!days.isEmpty()) {
            page.heading(words.text("ready.days"));
            days.forEach(d -> page.paragraph(0, INDENT, "- " + d));
        }
        page.blank();
        page.paragraph(0, 0, words.text("ready.more"));
        return page.toString();
    }

    private void tests(Layout page, ReadyAnswer answer, Less less) {
        List<TestPlan> plans = answer.tests();
        List<String> results = said.results(answer);
        if (plans.isEmpty() && results.isEmpty()) {
            return;
        }
        page.heading(words.text("ready.tests"));
        results.forEach(r -> page.paragraph(0, INDENT, "- " + r));
        int shown = less.compareTo(Less.SECOND_TEST) < 0 ? TESTS : 1;
        for (int i = 0; i < Math.min(shown, plans.size()); i++) {
            TestPlan plan = plans.get(i);
            page.paragraph(0, INDENT, "- " + said.days(plan));
            boolean how = i == 0 ? less.compareTo(Less.HOW_OF_FIRST) < 0 : less.compareTo(Less.HOW_OF_SECOND) < 0;
            if (how) {
                page.paragraph(INDENT, 0, plan.test().how() + " " + said.readings(plan.test()) + ".");
            }
        }
        if (plans.size() > shown) {
            page.paragraph(0, 0, words.text("ready.more-tests", plans.size() - shown));
        }
    }

    /** What is said in its place while a danger stands. */
    public String alarmed(Pile pile, Alarm alarm) {
        return new AlarmText(words).page(pile, alarm, marked);
    }
}
