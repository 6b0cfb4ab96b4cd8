package heapwright.report;

import heapwright.advice.Advice;
import heapwright.advice.Afternoon;
import heapwright.advice.Step;
import heapwright.pile.Advised;
import java.time.LocalDate;
import java.util.List;

/** The afternoon's work as it is kept with a pile, to ask later whether it helped. */
public final class KeptAdvice {

    private final Words words;

    public KeptAdvice(Words words) {
        this.words = words;
    }

    /** The jobs that can be taken on today; none while a danger stands, and none where there is nothing to do. */
    public List<Advised> of(Advice advice) {
        List<Step> work = advice.alarm().isPresent()
                ? List.of()
                : Afternoon.of(advice, words.knowledge()).jobs();
        if (work.isEmpty()) {
            return List.of();
        }
        JobText jobs = new JobText(words);
        LocalDate look = JobText.day(work.get(0));
        return work.stream()
                .map(job -> new Advised(
                        advice.pile().asOf(), job.main().remedy().id(), jobs.amount(job.main(), advice.pile()), look))
                .toList();
    }
}
