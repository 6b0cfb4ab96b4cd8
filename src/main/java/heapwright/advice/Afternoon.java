package heapwright.advice;

import heapwright.advice.fact.Grade;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.RemedyInfo;
import heapwright.knowledge.RemedyInfo.Urgency;
import java.util.ArrayList;
import java.util.List;

/**
 * The steps that one person does in one afternoon: the first, and those after it that press as much and find time.
 *
 * @param jobs one to three steps in the order of the work; none where there is nothing to do
 */
public record Afternoon(List<Step> jobs) {

    /** More than three jobs are not begun on one afternoon; judgement. */
    static final int MOST = 3;

    /** Light and strength for one afternoon's work in a cold winter where nobody told, minutes; judgement. */
    static final int MINUTES = 150;

    public Afternoon {
        jobs = List.copyOf(jobs);
    }

    /**
     * The afternoon's work of an advice, by the minutes that the table gives each step. Where two answers do not fit
     * together it is the first step alone, which is to look again.
     */
    public static Afternoon of(Advice advice, Knowledge knowledge) {
        List<Step> jobs = new ArrayList<>();
        int time = advice.pile().keeper().minutes().orElse(MINUTES);
        int minutes = 0;
        for (Step step : advice.steps()) {
            if (!jobs.isEmpty() && !StepValue.needed(step.main().doses())) {
                // Nobody fetches what its own figures show no need of; with a lone step the finding asks for it.
                continue;
            }
            RemedyInfo info = knowledge.remedies().get(step.main().remedy());
            if (!jobs.isEmpty()
                    && (jobs.size() == MOST
                            || !advice.contradictions().isEmpty()
                            || !joins(jobs.get(0), step)
                            || minutes + info.effort().minutes() > time)) {
                break;
            }
            jobs.add(step);
            minutes += info.effort().minutes();
        }
        return new Afternoon(jobs);
    }

    /** Whether a step belongs to the work that begins with the first: it presses as much and serves what is as certain. */
    private static boolean joins(Step first, Step step) {
        boolean presses = step.urgency().compareTo(first.urgency()) <= 0
                || step.urgency() == Urgency.SOON
                || step.urgency() == Urgency.REST && first.urgency() != Urgency.NOW;
        return first.urgency() != Urgency.REST
                && presses
                && (first.main().chance() < Grade.LIKELY.from() || step.main().chance() >= Grade.LIKELY.from());
    }
}
