package heapwright.report;

import heapwright.advice.Advice;
import heapwright.advice.Finding;
import heapwright.advice.winter.Story;
import heapwright.knowledge.CauseInfo;
import java.util.List;

/** Tells why a pile is as it is: its course by day, then each finding with the whole chain behind it. */
public final class WhyReport {

    private final Words words;
    private final boolean marked;
    private final ModelWords model;
    private final GainWords gains;

    public WhyReport(Words words, boolean marked) {
        this.words = words;
        this.marked = marked;
        this.model = new ModelWords(words);
        this.gains = new GainWords(words);
    }

    /**
     * The report as text.
     */
    public String write(Advice advice) {
        Layout page = new Layout(marked);
        page.line(0, page.strong(advice.pile().name()));
        page.paragraph(0, 0, new HeadlineText(words).of(advice));
        words.assumed(advice.pile()).ifPresent(told -> page.paragraph(0, 0, told));
        if (advice.alarm().isPresent()) {
            new AlarmText(words).body(page, advice.alarm().get());
            new AlarmText(words).waiting(advice).ifPresent(l -> page.paragraph(0, 3, "- " + l));
            new CourseText(words).write(page, advice.pile());
            return page.toString();
        }
        words.toCheck(advice.pile()).forEach(told -> page.paragraph(0, 0, told));
        advice.why().ifPresent(answer -> {
            page.heading(words.text("why.answer"));
            page.paragraph(0, 0, model.answer(answer));
        });
        new CourseText(words).write(page, advice.pile());
        advice.story().ifPresent(s -> story(page, advice, s));
        findings(page, advice);
        if (!advice.steps().isEmpty()) {
            page.heading(words.text("why.next"));
            advice.steps().stream().limit(3).forEach(s -> {
                page.paragraph(
                        0,
                        3,
                        s.rank() + ". "
                                + words.way(s.main().remedy(), advice.pile()).name());
                s.main()
                        .gain()
                        .flatMap(g -> gains.gain(g, advice.pile().asOf()))
                        .ifPresent(told -> page.paragraph(3, 0, told));
            });
            gains.ofAllSteps(advice).forEach(said -> page.paragraph(0, 0, said));
            page.paragraph(0, 0, words.text("why.checkup"));
        }
        return page.toString();
    }

    private void story(Layout page, Advice advice, Story story) {
        page.heading(words.text("why.temperatures"));
        page.paragraph(0, 0, model.temperatures(story));
        model.stall(advice).forEach(l -> page.paragraph(0, 0, l));
        page.blank();
        new CourseSketch(words).lines(CourseView.of(story)).forEach(l -> page.line(0, l));
        List<String> stretches = model.stretches(story);
        if (!stretches.isEmpty()) {
            page.heading(words.text("why.stretches"));
            stretches.forEach(l -> page.paragraph(0, 2, "- " + l));
        }
        page.paragraph(0, 0, words.text("why.corrected"));
        List<String> costs = model.costs(story);
        if (!costs.isEmpty()) {
            page.heading(words.text("why.costs"));
            costs.forEach(l -> page.paragraph(0, 2, "- " + l + "."));
        }
        model.premises(story.model()).forEach(l -> page.paragraph(0, 0, l));
    }

    private void findings(Layout page, Advice advice) {
        page.heading(words.text("why.findings"));
        TraceReport trace = new TraceReport(words);
        for (Finding finding : advice.findings()) {
            CauseInfo info = words.knowledge().causes().get(finding.cause());
            for (String line : trace.whyNot(advice, finding.cause()).split("\n")) {
                page.line(0, line);
            }
            page.paragraph(2, 0, info.why());
            page.blank();
        }
        if (advice.findings().isEmpty()) {
            page.paragraph(0, 0, words.text("why.no-findings"));
        }
    }
}
