package heapwright.advice;

import heapwright.knowledge.RemedyInfo;
import java.time.LocalDate;
import java.util.List;

/**
 * One step of the advice.
 *
 * @param rank its place, from 1
 * @param main what to do
 * @param urgency how soon
 * @param lookFrom the first day on which its effect can be looked for
 * @param lookTo the day by which it should have come
 * @param alternatives other ways of which one is enough, best first
 * @param again whether it was done not long ago and did not help
 */
public record Step(
        int rank,
        Option main,
        RemedyInfo.Urgency urgency,
        LocalDate lookFrom,
        LocalDate lookTo,
        List<Option> alternatives,
        boolean again) {
    public Step {
        alternatives = List.copyOf(alternatives);
    }
}
