package heapwright.casebook;

import heapwright.advice.Advice;
import heapwright.advice.ready.Cover;
import heapwright.advice.ready.Ready;
import heapwright.advice.ready.ReadyAnswer;
import heapwright.advice.ready.ReadyDates;
import heapwright.advice.ready.Sureness;
import heapwright.advice.ready.TestPlan;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.RipeReason;
import heapwright.knowledge.Ripeness;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a case demands of the answer to whether the compost is ready.
 *
 * @param grade what it must be ripe enough for, and no more
 * @param sure how sure that must be, where the case demands it
 * @param reasons reasons that must hold it back
 * @param notReasons reasons that must not
 * @param tests tests that must be advised, as the document names them
 * @param notTests tests that must not be advised
 * @param dates days that must be told, by name
 * @param covers what it must cover at the usual depth, m², by use
 * @param never uses that must not be allowed
 * @param spreadAfter a day after which the first spreading must lie
 * @param contradictions how many contradictions must be told, at least
 * @param knowledge the tables by which it is answered
 */
public record ReadyDemand(
        Optional<Ripeness> grade,
        Optional<Sureness> sure,
        List<RipeReason> reasons,
        List<RipeReason> notReasons,
        List<String> tests,
        List<String> notTests,
        Map<String, LocalDate> dates,
        Map<String, Double> covers,
        List<String> never,
        Optional<LocalDate> spreadAfter,
        int contradictions,
        Knowledge knowledge) {

    /** Two areas are the same when they differ by less, share. */
    private static final double SAME_AREA = 0.05;

    /** Every demand that is not met, in words. */
    List<String> misses(Advice advice) {
        if (advice.alarm().isPresent()) {
            return List.of("a danger stands, so nothing is said of use");
        }
        ReadyAnswer answer = Ready.of(advice, knowledge);
        List<String> told = answer.reasons().stream().map(r -> r.id().id()).toList();
        List<String> misses = new ArrayList<>();
        grade.filter(g -> g != answer.grade())
                .ifPresent(g -> misses.add("ready says " + answer.grade().id() + " and not " + g.id() + ": " + told));
        sure.filter(s -> s != answer.sure())
                .ifPresent(s -> misses.add("ready is sure as " + answer.sure().id() + " and not " + s.id()));
        reasons.stream()
                .filter(r -> !told.contains(r.id()))
                .forEach(r -> misses.add(r.id() + " does not hold it back, but " + told));
        notReasons.stream()
                .filter(r -> told.contains(r.id()))
                .forEach(r -> misses.add(r.id() + " must not hold it back"));
        List<String> advised =
                answer.tests().stream().map(t -> t.test().id().token()).toList();
        tests.stream()
                .filter(t -> !advised.contains(t))
                .forEach(t -> misses.add("the test " + t + " is not among " + advised));
        notTests.stream().filter(advised::contains).forEach(t -> misses.add("the test " + t + " must not be advised"));
        Map<String, LocalDate> days = days(answer);
        dates.forEach((name, day) -> {
            if (!day.equals(days.get(name))) {
                misses.add(name + " is " + days.get(name) + " and not " + day);
            }
        });
        covers.forEach((use, area) -> {
            Optional<Double> found = answer.covers().stream()
                    .filter(c -> c.use().id().equals(use))
                    .flatMap(c -> c.areaM2().stream())
                    .map(a -> a.likely())
                    .findFirst();
            if (found.filter(f -> Math.abs(f / area - 1) <= SAME_AREA).isEmpty()) {
                misses.add(use + " covers " + found + " and not " + area);
            }
        });
        answer.covers().stream()
                .filter(Cover::allowed)
                .map(c -> c.use().id())
                .filter(never::contains)
                .forEach(u -> misses.add(u + " must not be allowed"));
        spreadAfter
                .filter(d -> !answer.dates().spreadFrom().isAfter(d))
                .ifPresent(
                        d -> misses.add("it may be spread on " + answer.dates().spreadFrom() + ", not after " + d));
        if (answer.contradictions().size() < contradictions) {
            misses.add("only " + answer.contradictions() + " are told as contradictions");
        }
        return misses;
    }

    private static Map<String, LocalDate> days(ReadyAnswer answer) {
        Map<String, LocalDate> days = new HashMap<>();
        ReadyDates dates = answer.dates();
        dates.curingEnds().ifPresent(d -> days.put("curing-ends", d));
        dates.walnutEnds().ifPresent(d -> days.put("walnut-ends", d));
        dates.harvestTouchingSoil().ifPresent(d -> days.put("harvest-touching-soil", d));
        dates.harvestOthers().ifPresent(d -> days.put("harvest-others", d));
        for (TestPlan plan : answer.tests()) {
            String test = plan.test().id().token();
            if (plan.again()) {
                days.put(test + "-again", plan.start());
            }
            days.put(test + "-from", plan.from());
            days.put(test + "-to", plan.to());
        }
        return days;
    }
}
