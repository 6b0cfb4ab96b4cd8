package heapwright.report;

import heapwright.advice.Advice;
import heapwright.advice.Finding;
import heapwright.advice.Headline;
import heapwright.advice.HomeRemedy;
import heapwright.advice.Option;
import heapwright.advice.Question;
import heapwright.advice.Step;
import heapwright.advice.engine.Piece;
import heapwright.advice.fact.Contradicts;
import heapwright.advice.fact.Grade;
import heapwright.advice.fact.LimitIs;
import heapwright.advice.fact.Reads;
import heapwright.advice.fact.Seen;
import heapwright.knowledge.CauseInfo;
import heapwright.knowledge.CauseInfo.Kind;
import heapwright.knowledge.Caution;
import heapwright.knowledge.CautionInfo;
import heapwright.knowledge.Reading;
import heapwright.knowledge.RemedyInfo;
import heapwright.knowledge.SignInfo;
import heapwright.knowledge.UsualDoseInfo;
import heapwright.pile.Pile;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Writes advice as plain text: the next step first, then why. */
public final class TextReport {

    /** Steps told in full; more would not be done on one cold afternoon. */
    private static final int STEPS_IN_FULL = 4;

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

    private static final int PIECES = 4;

    /** Evidence that counts for less than this part of its weight is not worth a line; judgement. */
    private static final double WORTH_TELLING = 0.1;

    private static final int QUESTIONS = 2;
    private static final int INDENT = 3;

    private final Words words;
    private final DoseWords doses;
    private final boolean marked;
    private final DateTimeFormatter shortDay;
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
        this.shortDay = DateTimeFormatter.ofPattern("d MMM", words.catalogue().locale());
        this.longDay =
                DateTimeFormatter.ofPattern("d MMMM yyyy", words.catalogue().locale());
    }

    /** The whole advice as text. */
    public String write(Advice advice) {
        Layout page = new Layout(marked);
        page.line(
                0,
                page.strong(advice.pile().name() + ", " + advice.pile().asOf().format(longDay)));
        page.paragraph(0, 0, headline(advice));
        if (advice.alarm().isPresent()) {
            alarmed(page, advice);
            return page.toString();
        }
        words.toCheck(advice.pile()).forEach(told -> page.paragraph(0, 0, told));
        words.assumed(advice.pile()).ifPresent(told -> page.paragraph(0, 0, told));
        contradictions(page, advice);
        steps(page, advice);
        careful(page, advice);
        findings(page, advice);
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
        steps(page, advice);
        text.because(page, advice.alarm().orElseThrow());
        careful(page, advice);
        text.questions(page, advice.alarm().orElseThrow());
        text.whenSafe(page, advice);
        page.blank();
        page.paragraph(0, 0, words.text("footer.limits"));
    }

    /** What stands, in one sentence. */
    public String headline(Advice advice) {
        Headline headline = Headline.of(advice, words.knowledge());
        return switch (headline.kind()) {
            case DANGER -> new AlarmText(words).headline(advice.alarm().orElseThrow());
            case MUST_NOT_BE_USED -> words.text("headline.must-not-be-used", names(headline.findings()));
            case CONTRADICTION -> words.text("headline.contradiction");
            case TROUBLE -> words.text("headline.trouble", names(headline.findings()));
            case WELL -> words.text("headline.well", names(headline.findings()));
            case UNCLEAR -> words.text("headline.unclear");
        };
    }

    private String names(List<Finding> findings) {
        return findings.stream()
                .map(f -> words.text("fact.cause", words.cause(f.cause()), words.word("grade", f.grade())))
                .collect(Collectors.joining("; "));
    }

    private CauseInfo info(Finding finding) {
        return words.knowledge().causes().get(finding.cause());
    }

    private void contradictions(Layout page, Advice advice) {
        if (advice.contradictions().isEmpty()) {
            return;
        }
        page.heading(words.text("section.contradictions"));
        for (Contradicts c : advice.contradictions()) {
            SignInfo one = words.knowledge().signs().get(c.one());
            page.paragraph(
                    INDENT, 0, words.text("contradiction.line", words.says(c.one()), words.says(c.other()), one.how()));
        }
    }

    private void steps(Layout page, Advice advice) {
        List<Step> steps = advice.steps();
        Set<Caution> told = EnumSet.noneOf(Caution.class);
        for (Step step : steps.subList(0, Math.min(STEPS_IN_FULL, steps.size()))) {
            if (step.rank() <= 2) {
                page.heading(words.text(step.rank() == 1 ? "section.first" : "section.then"));
            } else {
                page.blank();
            }
            step(page, step, advice.pile(), told);
        }
        if (steps.size() > STEPS_IN_FULL) {
            page.heading(words.text("section.more"));
            for (Step step : steps.subList(STEPS_IN_FULL, steps.size())) {
                page.paragraph(
                        0,
                        INDENT,
                        step.rank() + ". "
                                + words.way(step.main().remedy(), advice.pile()).name() + amounts(step, advice.pile()));
            }
        }
        new GainWords(words).ofAllSteps(advice).forEach(said -> {
            page.blank();
            page.paragraph(0, 0, said);
        });
    }

    private String amounts(Step step, Pile pile) {
        List<String> lines = doses.lines(step.main(), pile);
        return lines.isEmpty() ? "" : ": " + lines.get(0);
    }

    private void step(Layout page, Step step, Pile pile, Set<Caution> told) {
        LocalDate today = pile.asOf();
        Option main = step.main();
        RemedyInfo info = words.way(main.remedy(), pile);
        page.paragraph(0, INDENT, page.strong(step.rank() + ". " + info.name()));
        doses.lines(main, pile).forEach(line -> page.paragraph(INDENT, 0, page.strong(line)));
        page.paragraph(INDENT, 0, words.text("step.when", words.word("urgency", step.urgency())));
        page.paragraph(INDENT, 0, info.how());
        main.gain()
                .flatMap(g -> new GainWords(words).gain(g, today))
                .ifPresent(says -> page.paragraph(INDENT, 0, words.text("gain.heading") + " " + says));
        doses.remarks(main, pile).forEach(line -> page.paragraph(INDENT, 0, line));
        page.paragraph(INDENT, 0, words.text("step.why", why(main)));
        step.alternatives()
                .forEach(other -> page.paragraph(INDENT, 0, words.text("step.or", alternative(other, pile))));
        page.paragraph(INDENT, 0, look(step, info) + " " + words.text("step.otherwise", info.otherwise()));
        List<Caution> fresh = main.cautions().stream().filter(told::add).toList();
        if (!fresh.isEmpty()) {
            page.paragraph(
                    INDENT,
                    0,
                    words.text(
                            fresh.size() == main.cautions().size() ? "step.careful" : "step.careful-also",
                            fresh.stream()
                                    .map(words::caution)
                                    .map(Words::withoutStop)
                                    .collect(Collectors.joining("; "))));
        }
    }

    private String look(Step step, RemedyInfo info) {
        return step.lookFrom().equals(step.lookTo())
                ? words.text("step.look-day", day(step.lookFrom()), "", info.expect())
                : words.text("step.look", day(step.lookFrom()), day(step.lookTo()), info.expect());
    }

    private String day(LocalDate day) {
        return day.format(shortDay);
    }

    private String alternative(Option other, Pile pile) {
        List<String> lines = doses.lines(other, pile);
        String name = words.way(other.remedy(), pile).name();
        return lines.isEmpty() ? name : name + ": " + String.join(" ", lines);
    }

    /** The findings a step is for, each once, with how firmly they stand, and why it helps. */
    private String why(Option option) {
        String causes = words.grounds(option);
        return (causes.isEmpty() ? "" : causes + ". ")
                + words.rationale(option.grounds().get(0).rule());
    }

    private void findings(Layout page, Advice advice) {
        if (advice.findings().isEmpty()) {
            return;
        }
        boolean wrong = advice.findings().stream().anyMatch(f -> info(f).kind() != Kind.WELL);
        page.heading(words.text(wrong ? "section.wrong" : "section.well"));
        for (Finding finding : advice.findings()) {
            CauseInfo info = info(finding);
            page.paragraph(
                    0,
                    INDENT,
                    page.strong(words.text(
                            "finding.line",
                            info.name(),
                            words.word("grade", finding.grade()),
                            words.inHundred(finding.likelihood()))));
            page.paragraph(INDENT, 0, info.summary());
            pieces(page, words.text("finding.for"), finding.weighed().supports());
            pieces(page, words.text("finding.against"), finding.weighed().opposes());
            if (!finding.grade().atLeast(Grade.VERY_LIKELY)) {
                page.paragraph(INDENT, 0, words.text("finding.tell-apart", info.tellApart()));
            }
        }
    }

    private void pieces(Layout page, String side, List<Piece> pieces) {
        pieces.stream()
                .filter(p -> p.counted() && p.degree() >= WORTH_TELLING)
                .limit(PIECES)
                .forEach(p -> page.paragraph(
                        INDENT,
                        2,
                        words.word("strength", p.rule().strength()) + " " + side + ": " + because(p) + partly(p)
                                + " → "
                                + words.rationale(p.rule())));
    }

    private String partly(Piece piece) {
        boolean outlived = piece.because().stream().anyMatch(f -> f instanceof Seen s && s.outlived());
        return piece.degree() < 1 && !outlived ? " " + words.text("finding.partly") : "";
    }

    /** The facts on which a piece of evidence rests, in words. */
    public String because(Piece piece) {
        List<String> facts = new ArrayList<>();
        for (Object fact : piece.because()) {
            if (!(fact instanceof LimitIs)) {
                words.fact(fact).ifPresent(facts::add);
            }
        }
        return facts.isEmpty() ? piece.rule().name() : String.join("; ", facts);
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

    private void careful(Layout page, Advice advice) {
        Set<Caution> all = new LinkedHashSet<>(advice.cautions());
        advice.steps().stream()
                .limit(STEPS_IN_FULL)
                .forEach(s -> all.addAll(s.main().cautions()));
        if (all.isEmpty()) {
            return;
        }
        page.heading(words.text("section.careful"));
        words.knowledge().cautions().values().stream()
                .filter(c -> all.contains(c.id()))
                .sorted((a, b) -> a.severity().compareTo(b.severity()))
                .forEach(c -> caution(page, c));
    }

    private void caution(Layout page, CautionInfo caution) {
        String rules = caution.localRules()
                .map(r -> " " + words.text("local.rules", r))
                .orElse("");
        page.paragraph(
                0,
                INDENT,
                "- " + words.word("severity", caution.severity()) + ": " + Words.withoutStop(caution.title()) + ". "
                        + caution.text() + rules);
    }

    private void aside(Layout page, Advice advice) {
        if (advice.setAside().isEmpty()) {
            return;
        }
        page.heading(words.text("section.aside"));
        for (Finding finding : advice.setAside()) {
            finding.setAside()
                    .ifPresent(f -> page.paragraph(
                            0,
                            INDENT,
                            "- " + words.text("aside.line", words.cause(finding.cause()), words.rationale(f.rule()))));
        }
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
                    "- " + words.text("home-remedy", info.name(), doses.figures(one.figures()), info.verdict()));
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
            page.paragraph(0, INDENT, "- " + sign.ask() + " " + sign.how() + " " + helps(question));
        }
    }

    /** What a yes would show. */
    public String helps(Question question) {
        if (question.raises().isPresent() && question.lowers().isPresent()) {
            return words.text(
                    "question.both",
                    words.cause(question.raises().get()),
                    words.cause(question.lowers().get()));
        }
        return question.raises()
                .map(c -> words.text("question.raises", words.cause(c)))
                .or(() -> question.lowers().map(c -> words.text("question.lowers", words.cause(c))))
                .orElse("");
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
