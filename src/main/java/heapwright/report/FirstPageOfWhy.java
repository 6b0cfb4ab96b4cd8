package heapwright.report;

import heapwright.advice.Advice;
import heapwright.advice.Finding;
import heapwright.advice.Step;
import heapwright.advice.winter.Story;
import heapwright.knowledge.Remedy;
import heapwright.knowledge.RemedyInfo.Urgency;
import java.util.List;

/** The first page of a why: the answer, its course as a picture, what kept it cold, and the job. */
public final class FirstPageOfWhy {

    private static final int INDENT = 3;
    private static final int FINDINGS = 3;
    private static final int COSTS = 2;

    /** What is left away first where the page is too full. */
    private enum Less {
        NOTHING,
        THIRD_FINDING,
        COSTS,
        MECHANISM,
        PICTURE
    }

    private final Words words;
    private final ModelWords model;
    private final AdviceWords advised;
    private final boolean marked;

    public FirstPageOfWhy(Words words, boolean marked) {
        this.words = words;
        this.model = new ModelWords(words);
        this.advised = new AdviceWords(words);
        this.marked = marked;
    }

    /** The page; while a danger stands it is that of the checkup. */
    public String write(Advice advice) {
        return advice.alarm().isPresent()
                ? new FirstPage(words, marked).write(advice)
                : FirstPageSize.fullest(Less.values().length, less -> page(advice, Less.values()[less]));
    }

    private String page(Advice advice, Less less) {
        Layout page = new Layout(marked);
        page.line(0, page.strong(advice.pile().name()));
        page.paragraph(0, 0, new HeadlineText(words).of(advice));
        words.toCheck(advice.pile()).forEach(told -> page.paragraph(0, 0, told));
        words.assumed(advice.pile()).ifPresent(told -> page.paragraph(0, 0, told));
        advice.why().ifPresent(answer -> {
            page.heading(words.text("why.answer"));
            page.paragraph(0, 0, model.answer(answer));
            model.stall(advice).forEach(l -> page.paragraph(0, 0, l));
        });
        advice.story().filter(s -> less.compareTo(Less.PICTURE) < 0).ifPresent(s -> course(page, s));
        List<Finding> told = advice.findings().stream()
                .limit(less.compareTo(Less.THIRD_FINDING) < 0 ? FINDINGS : FINDINGS - 1)
                .toList();
        if (!told.isEmpty()) {
            page.heading(words.text("first.because"));
            told.forEach(f -> page.paragraph(0, INDENT, "- " + finding(f, less)));
        }
        List<String> costs = advice.story().map(model::costs).orElse(List.of());
        if (!costs.isEmpty() && less.compareTo(Less.COSTS) < 0) {
            page.heading(words.text("why.costs"));
            costs.stream().limit(COSTS).forEach(l -> page.paragraph(0, 2, "- " + l + "."));
        }
        page.blank();
        advice.steps().stream().findFirst().ifPresent(s -> page.paragraph(0, 0, next(s, advice)));
        page.paragraph(0, 0, words.text("first.more-why"));
        return page.toString();
    }

    private void course(Layout page, Story story) {
        page.blank();
        new CourseSketch(words).lines(CourseView.of(story)).forEach(l -> page.line(0, l));
    }

    /** A finding with what speaks loudest for it and why that does. */
    private String finding(Finding finding, Less less) {
        String name = words.cause(finding.cause());
        return finding.weighed().supports().stream()
                .filter(p -> p.counted())
                .findFirst()
                .map(p -> words.text("first.finding", name, advised.because(p))
                        + (less.compareTo(Less.MECHANISM) < 0 ? " → " + words.rationale(p.rule()) : ""))
                .orElse(name);
    }

    private String next(Step step, Advice advice) {
        Remedy remedy = step.main().remedy();
        boolean rest = words.knowledge().remedies().get(remedy).urgency() == Urgency.REST;
        return words.text(
                rest ? "first.next-rest" : "first.next",
                words.way(remedy, advice.pile()).name());
    }
}
