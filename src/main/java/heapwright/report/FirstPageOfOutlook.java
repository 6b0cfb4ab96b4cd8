package heapwright.report;

import heapwright.advice.danger.Alarm;
import heapwright.advice.winter.Gain;
import heapwright.advice.winter.PileOutlook;
import heapwright.pile.Pile;
import java.util.Comparator;
import java.util.List;

/** The first page of an outlook: what lies ahead, as a picture, and the ways that would buy most. */
public final class FirstPageOfOutlook {

    private static final int WAYS = 3;

    private final Words words;
    private final OutlookReport report;
    private final ModelWords model;
    private final boolean marked;

    public FirstPageOfOutlook(Words words, boolean marked) {
        this.words = words;
        this.report = new OutlookReport(words, marked);
        this.model = new ModelWords(words);
        this.marked = marked;
    }

    /** The page. */
    public String write(PileOutlook ahead) {
        return FirstPageSize.fullest(WAYS + 1, less -> page(ahead, WAYS - less));
    }

    private String page(PileOutlook ahead, int ways) {
        Layout page = new Layout(marked);
        page.line(
                0, page.strong(words.text("outlook.title", ahead.model().pile().name(), model.date(ahead.firstDay()))));
        page.paragraph(0, 0, report.headline(ahead));
        words.toCheck(ahead.model().pile()).forEach(told -> page.paragraph(0, 0, told));
        words.assumed(ahead.model().pile()).ifPresent(told -> page.paragraph(0, 0, told));
        if (ahead.model().typical()) {
            page.paragraph(0, 0, words.text("model.typical"));
        }
        page.blank();
        new CourseSketch(words).lines(CourseView.of(ahead)).forEach(l -> page.line(0, l));
        List<PileOutlook.PlanOutcome> best = best(ahead);
        if (!best.isEmpty() && ways > 0) {
            page.heading(words.text("first.ways"));
            best.stream().limit(ways).forEach(p -> page.paragraph(0, 2, "- " + way(p, ahead)));
        }
        report.noneOf(ahead).ifPresent(l -> page.paragraph(0, 0, l));
        page.blank();
        page.paragraph(0, 0, words.text("first.more-outlook"));
        return page.toString();
    }

    /** The ways that win something, the best first: by days won, then by warmth. */
    private static List<PileOutlook.PlanOutcome> best(PileOutlook ahead) {
        return ahead.plans().stream()
                .filter(p -> won(p.gain()) > 0 || p.gain().moreWarmDays().likely() >= 1)
                .sorted(Comparator.comparingDouble((PileOutlook.PlanOutcome p) -> -won(p.gain()))
                        .thenComparingDouble(p -> -p.gain().moreWarmDays().likely()))
                .toList();
    }

    private static double won(Gain gain) {
        return gain.uncounted() ? 0 : gain.daysWon().likely();
    }

    private String way(PileOutlook.PlanOutcome plan, PileOutlook ahead) {
        OutlookReport.PlanLine line = report.plan(plan, ahead);
        return words.text(
                line.sooner().isPresent() ? "first.way" : "first.way-uncounted",
                line.name(),
                line.warmer(),
                line.sooner().orElse(""));
    }

    /** What is said in its place while a danger stands. */
    public String alarmed(Pile pile, Alarm alarm) {
        return new AlarmText(words).page(pile, alarm, marked);
    }
}
