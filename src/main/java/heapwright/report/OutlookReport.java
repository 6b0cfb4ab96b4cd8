package heapwright.report;

import heapwright.advice.danger.Alarm;
import heapwright.advice.winter.PileOutlook;
import heapwright.pile.Pile;
import heapwright.process.heat.Bands;
import heapwright.process.heat.Outlook;
import heapwright.process.heat.Range;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Tells what lies ahead of a pile, and what other ways would gain. */
public final class OutlookReport {

    private static final int ROWS = 8;

    private static final int WEEK = 7;

    /** Less than this is no difference that a thermometer in a pile shows, K; judgement. */
    static final double AS_WARM_K = 0.5;

    private final Words words;
    private final ModelWords model;
    private final GainWords gains;
    private final ReadyWords ready;
    private final boolean marked;

    public OutlookReport(Words words, boolean marked) {
        this.words = words;
        this.model = new ModelWords(words);
        this.gains = new GainWords(words);
        this.ready = new ReadyWords(words);
        this.marked = marked;
    }

    /** The report as text. */
    public String write(PileOutlook ahead) {
        Layout page = new Layout(marked);
        LocalDate first = ahead.firstDay();
        page.line(
                0, page.strong(words.text("outlook.title", ahead.model().pile().name(), model.date(first))));
        page.paragraph(0, 0, headline(ahead));
        words.toCheck(ahead.model().pile()).forEach(told -> page.paragraph(0, 0, told));
        page.heading(words.text("outlook.course"));
        new CourseSketch(words).lines(CourseView.of(ahead)).forEach(l -> page.line(0, l));
        page.blank();
        table(page, ahead, first);
        if (ahead.fits()) {
            figures(page, ahead);
        }
        plans(page, ahead);
        page.heading(words.text("outlook.premises"));
        model.premises(ahead.model()).forEach(l -> page.paragraph(0, 0, l));
        return page.toString();
    }

    /** What is said in place of the report while a danger stands: nothing lies ahead of a pile that may burn. */
    public String alarmed(Pile pile, Alarm alarm) {
        Layout page = new Layout(marked);
        page.title(pile.name());
        new AlarmText(words).write(page, alarm);
        page.blank();
        page.paragraph(0, 0, words.text("footer.limits"));
        return page.toString();
    }

    /** What lies ahead, in two or three sentences. */
    public String headline(PileOutlook ahead) {
        if (!ahead.fits()) {
            return gains.misfit(ahead.now().missK());
        }
        Outlook f = ahead.figures();
        String warm = words.text(
                Math.round(f.daysAbove40().likely()) == 0 ? "outlook.headline.cold" : "outlook.headline",
                gains.days(f.daysAbove40()),
                words.figures().temperature(40),
                words.figures().number(100 * f.freezesThrough(), 0));
        return warm
                + ahead.wish()
                        .map(wish -> " " + ready.wish(ahead.ready(), wish))
                        .orElse("") + " " + ready.ready(ahead.ready());
    }

    private void table(Layout page, PileOutlook ahead, LocalDate first) {
        page.line(
                0,
                String.format(
                        "%-13s %-18s %-18s %-18s %s",
                        words.text("outlook.day"),
                        words.text("outlook.core"),
                        words.text("outlook.mid"),
                        words.text("outlook.skin"),
                        words.text("outlook.outdoor")));
        for (int day : rows(ahead.core().likely())) {
            page.line(
                    0,
                    String.format(
                            "%-13s %-18s %-18s %-18s %s",
                            model.date(first.plusDays(day)),
                            band(ahead.core(), day),
                            band(ahead.mid(), day),
                            band(ahead.skin(), day),
                            words.figures().temperature(ahead.outdoor().likely()[day])));
        }
        page.line(0, words.text("outlook.table-note"));
    }

    /** A row a week while the core is hot, and to the week after; then some at even distances to the end. */
    static List<Integer> rows(double[] core) {
        int last = core.length - 1;
        int hot = 0;
        for (int day = 0; day <= last; day++) {
            if (core[day] >= Outlook.WARM_C) {
                hot = Math.min(last, day + WEEK);
            }
        }
        List<Integer> rows = new ArrayList<>();
        for (int day = 0; day < hot; day += WEEK) {
            rows.add(day);
        }
        int from = rows.isEmpty() ? 0 : Math.min(last, rows.get(rows.size() - 1) + WEEK);
        int even = Math.max(2, Math.min(ROWS, (last - from) / WEEK + 1));
        for (int row = 0; row < even; row++) {
            int day = (int) Math.round(from + (double) row * (last - from) / (even - 1));
            if (rows.isEmpty() || day > rows.get(rows.size() - 1)) {
                rows.add(day);
            }
        }
        return rows;
    }

    private String band(Bands bands, int day) {
        return words.figures().temperature(bands.low()[day], bands.likely()[day], bands.high()[day]);
    }

    private void figures(Layout page, PileOutlook ahead) {
        page.heading(words.text("outlook.figures"));
        figures(ahead).forEach(l -> page.paragraph(0, 2, "- " + l));
    }

    /** The figures to the end of the look ahead, a sentence each. */
    public List<String> figures(PileOutlook ahead) {
        if (!ahead.fits()) {
            return List.of();
        }
        Outlook f = ahead.figures();
        return List.of(
                words.text("outlook.peak", temperatures(f.peakC())),
                words.text("outlook.above", words.figures().temperature(40), gains.days(f.daysAbove40())),
                words.text("outlook.above", words.figures().temperature(55), gains.days(f.daysAbove55())),
                words.text("outlook.freezes", words.figures().number(100 * f.freezesThrough(), 0)),
                mass(f.massLeft()),
                words.text("outlook.volume", percents(f.volumeLeft())),
                ready.ready(ahead.ready()));
    }

    /** A weight above today's is rain's doing and known to some ten percent. */
    private String mass(Range left) {
        return Math.round(100 * left.likely()) > 100
                ? words.text("outlook.mass-more", words.figures().number(left.likely(), 1))
                : words.text("outlook.mass", percents(left));
    }

    /**
     * What another way would buy, in words.
     *
     * @param name the way
     * @param warmDays how many more or fewer days with the core above 40 °C
     * @param warmer how much warmer the core is on average
     * @param sooner how many days sooner or later it gets as far; empty where no days can be counted
     * @param freezes chance that it freezes through so, in 100
     */
    public record PlanLine(String name, String warmDays, String warmer, Optional<String> sooner, String freezes) {}

    /** What other ways would gain. */
    public List<PlanLine> plans(PileOutlook ahead) {
        return ahead.plans().stream().map(plan -> plan(plan, ahead)).toList();
    }

    /** What one other way would buy. */
    PlanLine plan(PileOutlook.PlanOutcome plan, PileOutlook ahead) {
        return new PlanLine(
                model.plan(plan, ahead),
                gains.more(plan.gain().moreWarmDays()),
                signed(plan.gain().warmerC().likely()),
                plan.gain().uncounted()
                        ? Optional.empty()
                        : Optional.of(gains.sooner(plan.gain().daysWon())),
                words.figures().number(100 * plan.gain().frost().with(), 0));
    }

    /** That none of the ways is likely to warm it; empty where one is. */
    Optional<String> noneOf(PileOutlook ahead) {
        return gains.none(
                ahead.plans().stream().map(PileOutlook.PlanOutcome::gain).toList(), ahead.firstDay());
    }

    /** What is to be said once of all the other ways. */
    public List<String> ofAllPlans(PileOutlook ahead) {
        if (ahead.plans().isEmpty()) {
            return List.of();
        }
        List<String> all = new ArrayList<>();
        noneOf(ahead).ifPresent(all::add);
        all.add(words.text(
                "outlook.plans-note", model.date(ahead.now().date(ahead.now().window()))));
        return all;
    }

    /** The day to which the figures count, in words. */
    public String end(PileOutlook ahead) {
        return model.date(ahead.firstDay().plusDays(ahead.core().likely().length - 1L));
    }

    private String temperatures(Range r) {
        return words.figures().temperature(r.low(), r.likely(), r.high());
    }

    private String percents(Range r) {
        return gains.days(new Range(100 * r.low(), 100 * r.likely(), 100 * r.high())) + " %";
    }

    private void plans(Layout page, PileOutlook ahead) {
        if (ahead.plans().isEmpty()) {
            return;
        }
        page.heading(words.text("outlook.plans"));
        for (PlanLine plan : plans(ahead)) {
            page.paragraph(
                    0,
                    2,
                    "- "
                            + words.text(
                                    plan.sooner().isPresent() ? "outlook.plan" : "outlook.plan-uncounted",
                                    plan.name(),
                                    plan.warmDays(),
                                    words.figures().temperature(Outlook.WARM_C),
                                    plan.warmer(),
                                    plan.sooner().orElse(""),
                                    plan.freezes()));
        }
        ofAllPlans(ahead).forEach(l -> page.paragraph(0, 0, l));
    }

    private String signed(double kelvin) {
        if (Math.abs(kelvin) < AS_WARM_K) {
            return words.text("outlook.as-warm");
        }
        String told = words.figures().temperatureDifference(Math.abs(kelvin));
        return words.text(kelvin >= 0 ? "outlook.warmer" : "outlook.colder", told);
    }
}
