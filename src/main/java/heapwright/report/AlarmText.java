package heapwright.report;

import heapwright.advice.Advice;
import heapwright.advice.danger.Alarm;
import heapwright.advice.danger.StandingDanger;
import heapwright.knowledge.CautionInfo;
import heapwright.knowledge.RemedyInfo;
import heapwright.knowledge.Sign;
import heapwright.knowledge.SignInfo;
import heapwright.pile.Pile;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Puts an alarm into words; every door that gives no other advice while a danger stands writes the whole of it. */
public final class AlarmText {

    private static final int INDENT = 3;

    private final Words words;

    public AlarmText(Words words) {
        this.words = words;
    }

    /** The danger and what to do, in a sentence or two. */
    public String headline(Alarm alarm) {
        RemedyInfo first = words.knowledge().remedies().get(alarm.steps().get(0).remedy());
        if (first.firstAid()) {
            return words.text("headline.first-aid", first.name());
        }
        return words.text(
                "headline.danger",
                alarm.dangers().stream().map(d -> d.info().name()).collect(Collectors.joining("; ")),
                alarm.steps().get(0).against().info().summary());
    }

    /** The whole alarm: headline, steps, reasons, cautions, questions, and when it is over. */
    void write(ReportWriter page, Alarm alarm) {
        page.paragraph(0, 0, headline(alarm));
        body(page, alarm);
    }

    /** The headline, the steps with how they are done, and the titles of the cautions: what a first page holds. */
    void inShort(ReportWriter page, Alarm alarm) {
        page.paragraph(0, 0, headline(alarm));
        steps(page, alarm);
        page.heading(words.text("section.careful"));
        alarm.cautions().stream()
                .map(c -> words.knowledge().cautions().get(c))
                .sorted(Comparator.comparing(CautionInfo::severity))
                .limit(JobText.CARE)
                .forEach(c -> page.paragraph(0, INDENT, "- " + words.caution(c)));
    }

    /** The page that stands in place of any other answer while a danger stands. */
    String page(Pile pile, Alarm alarm, boolean marked) {
        Layout page = new Layout(marked);
        page.title(pile.name());
        inShort(page, alarm);
        page.blank();
        page.paragraph(0, 0, words.text("alarm.more"));
        return page.toString();
    }

    /** The same without the headline. */
    void body(ReportWriter page, Alarm alarm) {
        steps(page, alarm);
        because(page, alarm);
        inFull(page, alarm);
        questions(page, alarm);
        page.heading(words.text("section.when-safe"));
        over(alarm).forEach(l -> page.paragraph(0, INDENT, "- " + l));
    }

    private void steps(ReportWriter page, Alarm alarm) {
        page.heading(words.text("section.first"));
        for (int i = 0; i < alarm.steps().size(); i++) {
            RemedyInfo info =
                    words.knowledge().remedies().get(alarm.steps().get(i).remedy());
            page.paragraph(0, INDENT, (i + 1) + ". " + info.name() + ". " + info.how());
        }
    }

    private void inFull(ReportWriter page, Alarm alarm) {
        page.heading(words.text("section.careful"));
        alarm.cautions().forEach(c -> {
            CautionInfo info = words.knowledge().cautions().get(c);
            page.paragraph(
                    0,
                    INDENT,
                    "- " + words.word("severity", info.severity()) + ": " + Words.withoutStop(info.title()) + ". "
                            + info.text());
        });
    }

    /** Why each danger stands, a line a rule. */
    public List<String> reasons(Alarm alarm) {
        return alarm.dangers().stream()
                .flatMap(d -> d.because().stream().map(f -> reason(d, words.rationale(f.rule()))))
                .distinct()
                .toList();
    }

    private static String reason(StandingDanger danger, String rationale) {
        String name = danger.info().name();
        return Character.toUpperCase(name.charAt(0)) + name.substring(1) + ": " + rationale;
    }

    void because(ReportWriter page, Alarm alarm) {
        page.heading(words.text("section.danger-why"));
        reasons(alarm).forEach(l -> page.paragraph(0, INDENT, "- " + l));
    }

    void questions(ReportWriter page, Alarm alarm) {
        if (alarm.asks().isEmpty()) {
            return;
        }
        page.heading(words.text("section.questions-outside"));
        for (Sign sign : alarm.asks()) {
            SignInfo info = words.knowledge().signs().get(sign);
            page.paragraph(0, INDENT, "- " + info.ask() + " " + info.how());
        }
    }

    /** When each danger is over. */
    public List<String> over(Alarm alarm) {
        return alarm.dangers().stream().map(d -> d.info().over()).distinct().toList();
    }

    /** The line below which everything else waits. */
    void whenSafe(ReportWriter page, Advice advice) {
        page.heading(words.text("section.when-safe"));
        over(advice.alarm().orElseThrow()).forEach(l -> page.paragraph(0, INDENT, "- " + l));
        waiting(advice).ifPresent(l -> page.paragraph(0, INDENT, "- " + l));
    }

    /** What else was found, in a sentence. */
    public Optional<String> waiting(Advice advice) {
        return advice.whenSafe().isEmpty()
                ? Optional.empty()
                : Optional.of(words.text(
                        "when-safe.found",
                        advice.whenSafe().stream()
                                .map(f -> words.text(
                                        "fact.cause", words.cause(f.cause()), words.word("grade", f.grade())))
                                .collect(Collectors.joining("; "))));
    }
}
