package heapwright.casebook;

import heapwright.advice.Advice;
import heapwright.advice.Advisor;
import heapwright.advice.Finding;
import heapwright.advice.Option;
import heapwright.advice.engine.Weighed;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Remedy;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * How right the advice on one case is, as a grower would judge it: whether the cause stands at the top, whether the steps
 * stand where they are read, and whether any step does harm. Stricter than {@link Verdict} where a case is lax: a step far
 * down the list does not count.
 *
 * @param tested the case
 * @param first whether the first finding is one that the source names; empty where it names none
 * @param firstTwo whether the causes that the source names are the first findings: among two, or as many as it names
 * @param steps whether every step of the source is among the first four steps; empty where it names none
 * @param harmful whether a step is offered that the source warns of
 * @param agrees whether everything holds that the case asks, see {@link Verdict}
 * @param stated likelihoods that were stated, with what the source says of them
 */
public record Scored(
        Case tested,
        Optional<Boolean> first,
        Optional<Boolean> firstTwo,
        Optional<Boolean> steps,
        boolean harmful,
        boolean agrees,
        List<Stated> stated) {

    private static final int READ_STEPS = 4;
    private static final int READ_CAUSES = 2;

    public Scored {
        stated = List.copyOf(stated);
    }

    /**
     * A likelihood with what came true.
     *
     * @param weighed the evidence and the likelihood that it gave
     * @param so whether the source says that it is so
     */
    public record Stated(Weighed weighed, boolean so) {

        /** As stated, 0 to 1. */
        double likelihood() {
            return weighed.likelihood();
        }

        /** The squared error of the likelihood, 0 to 1 (Brier 1950). */
        double squaredError() {
            double miss = likelihood() - (so ? 1 : 0);
            return miss * miss;
        }
    }

    /** Asks for the advice on a case and scores it. */
    public static Scored of(Case tested, Advisor advisor) {
        Advice advice = advisor.diagnose(tested.pile());
        return of(tested, advice, Verdict.of(tested, advice, Verdict.audit(tested, advisor)));
    }

    /** Scores the advice on a case. */
    public static Scored of(Case tested, Advice advice, Verdict verdict) {
        Expectation expect = tested.expect();
        List<Cause> causes = expect.causes();
        List<Cause> found = advice.findings().stream().map(Finding::cause).toList();
        Optional<Boolean> first = Optional.empty();
        Optional<Boolean> firstTwo = Optional.empty();
        if (!causes.isEmpty()) {
            int read = Math.min(found.size(), Math.max(READ_CAUSES, causes.size()));
            first = Optional.of(!found.isEmpty() && causes.contains(found.get(0)));
            firstTwo = Optional.of(found.subList(0, read).containsAll(causes));
        }
        Set<Remedy> wanted = EnumSet.noneOf(Remedy.class);
        wanted.addAll(expect.steps());
        expect.firstStep().ifPresent(wanted::add);
        Optional<Boolean> steps = wanted.isEmpty()
                ? Optional.empty()
                : Optional.of(offered(advice, READ_STEPS).containsAll(wanted));
        Set<Remedy> all = offered(advice, Integer.MAX_VALUE);
        boolean harmful = expect.notSteps().stream().anyMatch(all::contains);
        return new Scored(tested, first, firstTwo, steps, harmful, verdict.agrees(), stated(expect, advice, found));
    }

    /** Cause among the first, every step of the source where it is read, and none that it warns of. */
    public boolean right() {
        return firstTwo.orElse(true) && steps.orElse(true) && !harmful;
    }

    private static Set<Remedy> offered(Advice advice, int most) {
        Set<Remedy> offered = EnumSet.noneOf(Remedy.class);
        advice.steps().stream()
                .limit(most)
                .flatMap(s -> Stream.concat(Stream.of(s.main()), s.alternatives().stream()))
                .map(Option::remedy)
                .forEach(offered::add);
        return offered;
    }

    /** What the source says is so, what it says is not, and what the advice puts first against the source. */
    private static List<Stated> stated(Expectation expect, Advice advice, List<Cause> found) {
        Map<Cause, Weighed> weighed = advice.outcome().weighed();
        List<Stated> stated = new ArrayList<>();
        expect.causes().forEach(c -> stated.add(new Stated(weighed.get(c), true)));
        Set<Cause> not = EnumSet.noneOf(Cause.class);
        not.addAll(expect.notCauses());
        if (!expect.causes().isEmpty() && !found.isEmpty()) {
            not.add(found.get(0));
        }
        not.removeAll(expect.causes());
        not.forEach(c -> stated.add(new Stated(weighed.get(c), false)));
        return stated;
    }
}
