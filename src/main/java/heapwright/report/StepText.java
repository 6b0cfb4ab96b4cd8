package heapwright.report;

import heapwright.advice.Advice;
import heapwright.advice.Option;
import heapwright.advice.Step;
import heapwright.knowledge.Caution;
import heapwright.knowledge.RemedyInfo;
import heapwright.pile.Pile;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Puts the steps of an advice into words: the first few in full, of the others what to do and how much. */
final class StepText {

    private static final int INDENT = 3;

    private final Words words;
    private final DoseWords doses;
    private final DateTimeFormatter shortDay;

    StepText(Words words) {
        this.words = words;
        this.doses = new DoseWords(words);
        this.shortDay = DateTimeFormatter.ofPattern("d MMM", words.catalogue().locale());
    }

    /** The steps of an advice; nothing where there are none. */
    void write(Layout page, Advice advice) {
        List<Step> steps = advice.steps();
        Set<Caution> told = EnumSet.noneOf(Caution.class);
        for (Step step : steps.subList(0, Math.min(AdviceWords.STEPS_IN_FULL, steps.size()))) {
            if (step.rank() <= 2) {
                page.heading(words.text(step.rank() == 1 ? "section.first" : "section.then"));
            } else {
                page.blank();
            }
            step(page, step, advice.pile(), told);
        }
        if (steps.size() > AdviceWords.STEPS_IN_FULL) {
            page.heading(words.text("section.more"));
            for (Step step : steps.subList(AdviceWords.STEPS_IN_FULL, steps.size())) {
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
        page.paragraph(INDENT, 0, new JobText(words).how(step, pile));
        main.gain()
                .flatMap(g -> new GainWords(words).gain(g, today))
                .ifPresent(says -> page.paragraph(INDENT, 0, words.text("gain.heading") + " " + says));
        doses.remarks(main, pile).forEach(line -> page.paragraph(INDENT, 0, line));
        page.paragraph(INDENT, 0, words.text("step.why", new AdviceWords(words).why(main)));
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
}
