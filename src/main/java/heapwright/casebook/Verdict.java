package heapwright.casebook;

import heapwright.advice.Advice;
import heapwright.advice.Advisor;
import heapwright.advice.Finding;
import heapwright.advice.Step;
import heapwright.advice.WithheldStep;
import heapwright.advice.audit.Audit;
import heapwright.advice.engine.Pass;
import heapwright.advice.fact.Contradicts;
import heapwright.advice.fact.Grade;
import heapwright.advice.fact.Harmed;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Caution;
import heapwright.knowledge.Harm;
import heapwright.knowledge.Id;
import heapwright.knowledge.Remedy;
import heapwright.knowledge.Sign;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * How the advice on a case compares with what the case demands.
 *
 * @param tested the case
 * @param misses every demand that is not met, in words; empty when the case agrees
 */
public record Verdict(Case tested, List<String> misses) {

    public Verdict {
        misses = List.copyOf(misses);
    }

    public boolean agrees() {
        return misses.isEmpty();
    }

    /** Asks for the advice and, where the case demands something of it, for the audit, and compares. */
    public static Verdict of(Case tested, Advisor advisor) {
        return of(tested, advisor.diagnose(tested.pile()), audit(tested, advisor));
    }

    /** The audit of a case that demands something of it. */
    public static Optional<Audit> audit(Case tested, Advisor advisor) {
        return tested.expect().audit().flatMap(a -> advisor.audit(tested.pile(), a.ownRatio()));
    }

    /** Compares. */
    public static Verdict of(Case tested, Advice advice, Optional<Audit> audit) {
        Expectation expect = tested.expect();
        List<String> misses = new ArrayList<>();
        List<Cause> findings = advice.findings().stream().map(Finding::cause).toList();
        List<Cause> top = findings.subList(0, Math.min(expect.within(), findings.size()));
        for (Cause cause : expect.causes()) {
            if (!top.contains(cause)) {
                misses.add(cause.id() + " is not among the first " + expect.within() + ": " + told(advice));
            }
        }
        List<Cause> likely = advice.findings().stream()
                .filter(f -> f.grade().atLeast(Grade.LIKELY))
                .map(Finding::cause)
                .toList();
        lacking(misses, "is not at least likely: " + told(advice), expect.likely(), likely);
        for (Finding finding : advice.findings()) {
            if (expect.notCauses().contains(finding.cause()) && finding.grade().atLeast(Grade.LIKELY)) {
                misses.add(finding.cause().id() + " must not be likely: " + told(advice));
            }
        }
        List<Cause> aside = advice.setAside().stream().map(Finding::cause).toList();
        lacking(misses, "is not set aside", expect.setAside(), aside);
        Set<Remedy> offered = EnumSet.noneOf(Remedy.class);
        Set<Caution> cautions = EnumSet.noneOf(Caution.class);
        cautions.addAll(advice.cautions());
        Map<Remedy, List<Caution>> atSteps = new EnumMap<>(Remedy.class);
        for (Step step : advice.steps()) {
            Stream.concat(Stream.of(step.main()), step.alternatives().stream())
                    .forEach(o -> atSteps.put(o.remedy(), o.cautions()));
        }
        offered.addAll(atSteps.keySet());
        atSteps.values().forEach(cautions::addAll);
        lacking(misses, "is not among the steps " + ids(offered), expect.steps(), offered);
        expect.firstStep().ifPresent(first -> {
            if (advice.steps().isEmpty() || advice.steps().get(0).main().remedy() != first) {
                misses.add(first.id() + " is not the first step of " + ids(offered));
            }
        });
        expect.notSteps().stream()
                .filter(offered::contains)
                .forEach(r -> misses.add(r.id() + " must not be among the steps"));
        expect.inOrder().stream()
                .filter(order -> !stands(order, advice.steps()))
                .forEach(order -> misses.add(ids(order) + " are not offered in this order but "
                        + ids(advice.steps().stream()
                                .map(s -> s.main().remedy())
                                .toList())));
        List<Remedy> held = advice.withheld().stream().map(WithheldStep::remedy).toList();
        lacking(misses, "is not held back; held back are " + ids(held), expect.withheld(), held);
        List<Remedy> guarded = advice.withheld().stream()
                .filter(h -> h.rules().stream().anyMatch(r -> r.pass() == Pass.GUARD))
                .map(WithheldStep::remedy)
                .toList();
        lacking(misses, "is not held back by a guard; these are " + ids(guarded), expect.forbidden(), guarded);
        lacking(misses, "is not said", expect.cautions(), cautions);
        expect.notCautions().stream().filter(cautions::contains).forEach(c -> misses.add(c.id() + " must not be said"));
        expect.stepCautions()
                .forEach((step, wanted) ->
                        lacking(misses, "is not said at " + step.id(), wanted, atSteps.getOrDefault(step, List.of())));
        for (List<Sign> pair : expect.contradictions()) {
            if (advice.contradictions().stream().noneMatch(c -> same(c, pair))) {
                misses.add(ids(pair) + " are not named as contradictory");
            }
        }
        List<Harm> harms = advice.outcome().of(Harmed.class).stream()
                .map(f -> ((Harmed) f.result()).harm())
                .toList();
        lacking(misses, "is not told as harm by what was done; told are " + ids(harms), expect.harms(), harms);
        expect.audit().ifPresent(a -> misses.addAll(AuditVerdict.misses(a, audit)));
        expect.why().ifPresent(w -> misses.addAll(w.misses(advice)));
        expect.ready().ifPresent(r -> misses.addAll(r.misses(advice)));
        return new Verdict(tested, misses);
    }

    private static boolean same(Contradicts found, List<Sign> pair) {
        return pair.contains(found.one()) && pair.contains(found.other());
    }

    /** Whether all are offered, each in an earlier step than the next. */
    private static boolean stands(List<Remedy> order, List<Step> steps) {
        int last = 0;
        for (Remedy remedy : order) {
            int rank = steps.stream()
                    .filter(s -> Stream.concat(Stream.of(s.main()), s.alternatives().stream())
                            .anyMatch(o -> o.remedy() == remedy))
                    .mapToInt(Step::rank)
                    .findFirst()
                    .orElse(last);
            if (rank <= last) {
                return false;
            }
            last = rank;
        }
        return true;
    }

    private static <T extends Id> void lacking(
            List<String> misses, String what, Iterable<T> wanted, java.util.Collection<T> found) {
        for (T each : wanted) {
            if (!found.contains(each)) {
                misses.add(each.id() + " " + what);
            }
        }
    }

    private static String told(Advice advice) {
        List<String> told = new ArrayList<>();
        advice.findings().forEach(f -> told.add(f.cause().id() + " " + Math.round(f.likelihood() * 100)));
        return told.toString();
    }

    private static String ids(Iterable<? extends Id> all) {
        List<String> ids = new ArrayList<>();
        all.forEach(i -> ids.add(i.id()));
        return ids.toString();
    }
}
