package heapwright.report;

import heapwright.advice.winter.Ahead;
import heapwright.process.heat.Bands;
import heapwright.process.heat.Outlook;
import heapwright.process.heat.Range;
import java.time.LocalDate;

/** Tells what lies ahead of a pile, and what other ways would buy. */
public final class OutlookReport {

    private static final int ROWS = 8;

    private final Words words;
    private final ModelWords model;
    private final boolean marked;

    public OutlookReport(Words words, boolean marked) {
        this.words = words;
        this.model = new ModelWords(words);
        this.marked = marked;
    }

    /** The report as text. */
    public String write(Ahead ahead) {
        Layout page = new Layout(marked);
        LocalDate first = first(ahead);
        page.line(
                0, page.strong(words.text("outlook.title", ahead.model().pile().name(), model.date(first))));
        page.paragraph(0, 0, headline(ahead));
        page.heading(words.text("outlook.course"));
        new CourseSketch(words).lines(CourseView.of(ahead)).forEach(l -> page.line(0, l));
        page.blank();
        table(page, ahead, first);
        figures(page, ahead, first);
        plans(page, ahead, first);
        page.heading(words.text("outlook.premises"));
        model.premises(ahead.model()).forEach(l -> page.paragraph(0, 0, l));
        return page.toString();
    }

    static LocalDate first(Ahead ahead) {
        return ahead.model().date(ahead.fresh() ? 0 : ahead.model().age());
    }

    /** What lies ahead, in two sentences. */
    public String headline(Ahead ahead) {
        Outlook f = ahead.figures();
        String warm = words.text(
                "outlook.headline",
                model.days(f.daysAbove40()),
                words.figures().temperature(40),
                words.figures().number(100 * f.freezesThrough(), 0));
        return warm + " " + ready(ahead, first(ahead));
    }

    private String ready(Ahead ahead, LocalDate first) {
        Outlook f = ahead.figures();
        if (f.readyDay().likely() >= ahead.lookedDays()) {
            return words.text(
                    "outlook.not-ready",
                    model.date(first.plusDays(ahead.lookedDays())),
                    words.figures().number(100 * f.readyChance(), 0));
        }
        String late = f.readyDay().high() >= ahead.lookedDays()
                ? words.text("outlook.later", model.date(first.plusDays(ahead.lookedDays())))
                : model.date(first.plusDays(Math.round(f.readyDay().high())));
        return words.text(
                "outlook.ready",
                model.date(first.plusDays(Math.round(f.readyDay().likely()))),
                model.date(first.plusDays(Math.round(f.readyDay().low()))),
                late);
    }

    private void table(Layout page, Ahead ahead, LocalDate first) {
        page.line(
                0,
                String.format(
                        "%-13s %-18s %-18s %-18s %s",
                        words.text("outlook.day"),
                        words.text("outlook.core"),
                        words.text("outlook.mid"),
                        words.text("outlook.skin"),
                        words.text("outlook.outdoor")));
        int days = ahead.core().likely().length;
        for (int row = 0; row < ROWS; row++) {
            int day = (int) Math.round((double) row * (days - 1) / (ROWS - 1));
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

    private String band(Bands bands, int day) {
        Figures f = words.figures();
        return f.temperature(bands.likely()[day]) + " ("
                + words.text("model.to", degrees(bands.low()[day]), degrees(bands.high()[day])) + ")";
    }

    private String degrees(double celsius) {
        String told = words.figures().temperature(celsius);
        return told.substring(0, told.indexOf(' '));
    }

    private void figures(Layout page, Ahead ahead, LocalDate first) {
        Outlook f = ahead.figures();
        page.heading(words.text("outlook.figures"));
        line(page, "outlook.peak", temperatures(f.peakC()));
        line(page, "outlook.above", words.figures().temperature(40), model.days(f.daysAbove40()));
        line(page, "outlook.above", words.figures().temperature(55), model.days(f.daysAbove55()));
        line(page, "outlook.freezes", words.figures().number(100 * f.freezesThrough(), 0));
        line(page, "outlook.mass", percents(f.massLeft()));
        line(page, "outlook.volume", percents(f.volumeLeft()));
        page.paragraph(0, 2, "- " + ready(ahead, first));
    }

    private void line(Layout page, String key, Object... places) {
        page.paragraph(0, 2, "- " + words.text(key, places));
    }

    private String temperatures(Range r) {
        Figures f = words.figures();
        return f.temperature(r.likely()) + " (" + words.text("model.to", degrees(r.low()), degrees(r.high())) + ")";
    }

    private String percents(Range r) {
        return model.days(new Range(100 * r.low(), 100 * r.likely(), 100 * r.high())) + " %";
    }

    private void plans(Layout page, Ahead ahead, LocalDate first) {
        if (ahead.plans().isEmpty()) {
            return;
        }
        page.heading(words.text("outlook.plans"));
        for (Ahead.PlanOutcome plan : ahead.plans()) {
            page.paragraph(
                    0,
                    2,
                    "- "
                            + words.text(
                                    "outlook.plan",
                                    model.plan(plan, first),
                                    model.days(plan.moreWarmDays()),
                                    words.figures().temperature(40),
                                    signed(plan.warmerC().likely()),
                                    model.days(plan.readySooner()),
                                    words.figures().number(100 * plan.freezesThrough(), 0)));
        }
        page.paragraph(0, 0, words.text("outlook.plans-note"));
    }

    private String signed(double kelvin) {
        String told = words.figures().temperatureDifference(Math.abs(kelvin));
        return words.text(kelvin >= 0 ? "outlook.warmer" : "outlook.colder", told);
    }
}
