package heapwright.web.site;

import heapwright.advice.Advice;
import heapwright.advice.Step;
import heapwright.knowledge.RemedyInfo;
import heapwright.report.CalendarWriter;
import heapwright.report.CalendarWriter.FollowUp;
import heapwright.report.HarvestDays;
import heapwright.report.JobText;
import heapwright.report.Words;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * The days to look again as a calendar: the same day as on the page, and one entry a day whatever there is to see; and the
 * first days of harvest where its compost was spread raw.
 */
final class FollowUps {

    /** As many as the page tells in full. */
    private static final int MOST = 4;

    private final Words words;

    FollowUps(Words words) {
        this.words = words;
    }

    /** The calendar file of advice that has steps. */
    byte[] calendar(Advice advice, Instant written) {
        Map<LocalDate, List<Step>> byDay = advice.steps().stream()
                .limit(MOST)
                .collect(Collectors.groupingBy(JobText::day, TreeMap::new, Collectors.toList()));
        List<FollowUp> followUps = new ArrayList<>();
        byDay.forEach((day, steps) -> followUps.add(followUp(advice, day, steps)));
        new HarvestDays(words)
                .ahead(advice, advice.pile().asOf())
                .forEach((day, text) -> followUps.add(harvest(advice, day, text)));
        return new CalendarWriter().bytes(written, followUps);
    }

    private FollowUp followUp(Advice advice, LocalDate day, List<Step> steps) {
        String name = advice.pile().name();
        return new FollowUp(
                day,
                day,
                words.text("web.look.title", name),
                steps.stream().map(s -> text(advice, s)).collect(Collectors.joining("\n")),
                CalendarWriter.uid(name, day.toString()));
    }

    private FollowUp harvest(Advice advice, LocalDate day, String text) {
        String name = advice.pile().name();
        return new FollowUp(
                day,
                day,
                words.text("web.look.harvest", name),
                text,
                CalendarWriter.uid(name, "harvest", day.toString()));
    }

    private String text(Advice advice, Step step) {
        RemedyInfo info = words.way(step.main().remedy(), advice.pile());
        return words.text("web.look.text", info.name(), info.expect(), info.otherwise());
    }
}
