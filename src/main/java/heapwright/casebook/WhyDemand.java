package heapwright.casebook;

import heapwright.advice.Advice;
import heapwright.advice.WhyAnswer;
import heapwright.advice.winter.Factor;
import heapwright.advice.winter.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a case demands of the answer to why.
 *
 * @param verdict the answer
 * @param factor what must have held it back most, where the case demands one
 * @param modelVerdict what the temperatures alone must say, where the case demands it
 */
public record WhyDemand(Optional<Verdict> verdict, Optional<Factor> factor, Optional<Verdict> modelVerdict) {

    /** Every demand that is not met, in words. */
    List<String> misses(Advice advice) {
        List<String> misses = new ArrayList<>();
        Optional<WhyAnswer> answer = advice.why();
        String told = answer.map(a -> a.verdict().id() + ", " + a.factor().id()).orElse("nothing");
        verdict.filter(v -> answer.filter(a -> a.verdict() == v).isEmpty())
                .ifPresent(v -> misses.add("why does not say " + v.id() + " but " + told));
        factor.filter(f -> answer.filter(a -> a.factor() == f).isEmpty())
                .ifPresent(f -> misses.add("why does not name " + f.id() + " but " + told));
        modelVerdict
                .filter(v -> advice.story().filter(s -> s.verdict() == v).isEmpty())
                .ifPresent(v -> misses.add("the temperatures do not say " + v.id() + " but "
                        + advice.story().map(s -> s.verdict().id()).orElse("nothing")));
        return misses;
    }
}
