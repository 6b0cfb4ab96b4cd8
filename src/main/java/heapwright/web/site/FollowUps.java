package heapwright.web.site;

import heapwright.advice.Advice;
import heapwright.advice.Step;
import heapwright.knowledge.RemedyInfo;
import heapwright.report.CalendarWriter;
import heapwright.report.CalendarWriter.FollowUp;
import heapwright.report.Words;
import java.time.Instant;
import java.util.List;

/** The days to look again as a calendar. */
final class FollowUps {

    /** As many as the page tells in full. */
    private static final int MOST = 4;

    private final Words words;

    FollowUps(Words words) {
        this.words = words;
    }

    /** The calendar file of advice that has steps. */
    byte[] calendar(Advice advice, Instant written) {
        List<FollowUp> followUps = advice.steps().stream()
                .limit(MOST)
                .map(s -> followUp(advice, s))
                .toList();
        return new CalendarWriter().bytes(written, followUps);
    }

    private FollowUp followUp(Advice advice, Step step) {
        RemedyInfo info = words.way(step.main().remedy(), advice.pile());
        String name = advice.pile().name();
        return new FollowUp(
                step.lookFrom(),
                step.lookTo(),
                words.text("web.look.title", name),
                words.text("web.look.text", info.name(), info.expect(), info.otherwise()),
                CalendarWriter.uid(name, info.id().id(), step.lookFrom().toString()));
    }
}
