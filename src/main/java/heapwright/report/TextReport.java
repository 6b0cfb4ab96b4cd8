package heapwright.report;

import heapwright.advice.Advice;
import heapwright.advice.HomeRemedy;
import heapwright.advice.Question;
import heapwright.advice.fact.Reads;
import heapwright.advice.ready.Ready;
import heapwright.knowledge.Reading;
import heapwright.knowledge.SignInfo;
import heapwright.knowledge.UsualDoseInfo;
import heapwright.pile.Container;
import heapwright.process.sanitation.HeatLedger;
import java.time.format.DateTimeFormatter;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Writes advice as plain text: the next step first, then why. */
public final class TextReport {

    /** The figures that a grower can use; the rest stand in the JSON and the trace. */
    private static final Set<Reading> TOLD = EnumSet.of(
            Reading.MOISTURE,
            Reading.CARBON_TO_NITROGEN,
            Reading.FREE_AIR_SPACE,
            Reading.WET_DENSITY,
            Reading.PH,
            Reading.CORE_TEMPERATURE,
            Reading.OUTDOOR_TEMPERATURE,
            Reading.PEAK_TEMPERATURE,
            Reading.VOLUME,
            Reading.AGE,
            Reading.DAYS_SINCE_TURN);

    private static final int QUESTIONS = 2;
    private static final int INDENT = 3;

    private final Words words;
    private final DoseWords doses;
    private final boolean marked;
    private final DateTimeFormatter longDay;

    /**
     * Prepares a report.
     *
     * @param words the words to use
     * @param marked whether headings may be set in bold by terminal codes
     */
    public TextReport(Words words, boolean marked) {
        this.words = words;
        this.doses = new DoseWords(words);
        this.marked = marked;
        this.longDay =
                DateTimeFormatter.ofPattern("d MMMM yyyy", words.catalogue().locale());
    }

    /** The whole advice as text. */
    public String write(Advice advice) {
        Layout page = new Layout(marked);
        page.line(
                0,
                page.strong(advice.pile().name() + ", " + advice.pile().asOf().format(longDay)));
        page.paragraph(0, 0, new HeadlineText(words).of(advice));
        if (advice.alarm().isPresent()) {
            alarmed(page, advice);
            return page.toString();
        }
        words.toCheck(advice.pile()).forEach(told -> page.paragraph(0, 0, told));
        words.assumed(advice.pile()).ifPresent(told -> page.paragraph(0, 0, told));
        new MemoryText(words).lines(advice.pile()).forEach(told -> page.paragraph(0, 0, told));
        contradictions(page, advice);
        new StepText(words).write(page, advice);
        new CautionText(words).write(page, advice);
        new FindingText(words).write(page, advice);
        heat(page, advice);
        ready(page, advice);
        withheld(page, advice);
        aside(page, advice);
        homeRemedies(page, advice);
        questions(page, advice);
        readings(page, advice);
        page.blank();
        page.paragraph(0, 0, words.text("footer.limits"));
        return page.toString();
    }

    /** While a danger stands: its steps, its cautions, what to find out from outside, and what waits. */
    private void alarmed(Layout page, Advice advice) {
        AlarmText text = new AlarmText(words);
        new StepText(words).write(page, advice);
        text.because(page, advice.alarm().orElseThrow());
        new CautionText(words).write(page, advice);
        text.questions(page, advice.alarm().orElseThrow());
        text.whenSafe(page, advice);
        page.blank();
        page.paragraph(0, 0, words.text("footer.limits"));
    }

    private void contradictions(Layout page, Advice advice) {
        List<String> clashes = new AdviceWords(words).clashes(advice);
        if (!clashes.isEmpty()) {
            page.heading(words.text("section.contradictions"));
            clashes.forEach(told -> page.paragraph(INDENT, 0, told));
        }
    }

    /** How hot the core was by the record; the rest is told by the command of its own. */
    private void heat(Layout page, Advice advice) {
        HeatLedger ledger = HeatLedger.of(advice.pile(), words.knowledge());
        if (ledger.record().measured()) {
            page.blank();
            page.paragraph(0, 0, new SanitationWords(words).line(ledger));
        }
    }

    /** What it is ripe enough for, where the compost may be ready. */
    private void ready(Layout page, Advice advice) {
        if (advice.findings().stream().anyMatch(f -> FirstPage.RIPENING.contains(f.cause()))) {
            page.paragraph(0, 0, new UseWords(words).line(Ready.of(advice, words.knowledge())));
        }
    }

    private void withheld(Layout page, Advice advice) {
        if (advice.withheld().isEmpty()) {
            return;
        }
        page.heading(words.text("section.withheld"));
        new HeldText(words)
                .of(advice.withheld())
                .forEach(t -> page.paragraph(0, INDENT, "- " + t.steps() + ": " + t.reason()));
    }

    private void aside(Layout page, Advice advice) {
        if (advice.setAside().isEmpty()) {
            return;
        }
        page.heading(words.text("section.aside"));
        advice.setAside()
                .forEach(f -> page.paragraph(
                        0,
                        INDENT,
                        "- " + words.text("aside.line", words.cause(f.cause()), new AdviceWords(words).aside(f))));
    }

    private void homeRemedies(Layout page, Advice advice) {
        List<HomeRemedy> asked =
                advice.homeRemedies().stream().filter(HomeRemedy::asked).toList();
        if (asked.isEmpty()) {
            return;
        }
        page.heading(words.text("section.home-remedies"));
        for (HomeRemedy one : asked) {
            UsualDoseInfo info = words.knowledge().usualDoses().get(one.dose());
            page.paragraph(
                    0,
                    INDENT,
                    "- "
                            + words.text(
                                    "home-remedy",
                                    info.name(),
                                    new TermWords(words).told(one.figures()),
                                    info.verdict()));
        }
    }

    private void questions(Layout page, Advice advice) {
        if (advice.questions().isEmpty()) {
            return;
        }
        page.heading(words.text("section.questions"));
        for (Question question : advice.questions()
                .subList(0, Math.min(QUESTIONS, advice.questions().size()))) {
            SignInfo sign = words.knowledge().signs().get(question.sign());
            page.paragraph(
                    0,
                    INDENT,
                    "- " + sign.ask() + " " + sign.how(kind(advice)) + " " + new AdviceWords(words).helps(question));
        }
    }

    private static Container.Kind kind(Advice advice) {
        return advice.pile().container().kind();
    }

    private void readings(Layout page, Advice advice) {
        if (advice.readings().isEmpty()) {
            return;
        }
        page.heading(words.text("section.readings"));
        for (Reads reading : advice.readings()) {
            if (TOLD.contains(reading.reading())) {
                words.fact(reading).ifPresent(text -> page.paragraph(0, INDENT, "- " + text));
            }
        }
    }
}
