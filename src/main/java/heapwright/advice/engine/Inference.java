package heapwright.advice.engine;

import heapwright.advice.fact.Concluded;
import heapwright.advice.fact.Grade;
import heapwright.advice.fact.Offered;
import heapwright.advice.fact.Planned;
import heapwright.advice.fact.Proposes;
import heapwright.advice.fact.SetAside;
import heapwright.advice.fact.Suspected;
import heapwright.advice.fact.Withholds;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Remedy;
import heapwright.knowledge.RemedyInfo;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * Runs the rules on a set of facts in seven passes. Between the passes it does the sums that rules are bad at: weighing
 * evidence, and dropping what was set aside or withheld. One short session a run; no clock and no chance inside, and
 * the order of the facts makes no difference.
 */
public final class Inference {

    private final Supplier<Rulebook> rulebook;
    private final Knowledge knowledge;
    private final Rows rows;
    private final EvidenceSum scales;

    public Inference(Rulebook rulebook, Knowledge knowledge) {
        this(() -> rulebook, knowledge);
    }

    /**
     * With rules that may still be loading.
     *
     * @param rulebook asked at every run, not before the first
     */
    public Inference(Supplier<Rulebook> rulebook, Knowledge knowledge) {
        this.rulebook = rulebook;
        this.knowledge = knowledge;
        this.rows = new Rows(knowledge);
        this.scales = new EvidenceSum(knowledge.causes(), knowledge.weights());
    }

    /** What every rule and every row of evidence says of itself, in order of id. */
    public List<RuleInfo> rules() {
        return Stream.concat(rulebook.get().rules().stream(), rows.infos().stream())
                .sorted(Comparator.comparing(RuleInfo::id))
                .toList();
    }

    /**
     * Runs all passes of a checkup.
     *
     * @param facts what is known of the pile
     */
    public Outcome run(Collection<?> facts) {
        try (Run run = on(facts)) {
            Recorder recorder = run.recorder();
            Map<Cause, Weighed> weighed = conclude(run);
            Set<Cause> aside = EnumSet.noneOf(Cause.class);
            recorder.results(SetAside.class).forEach(s -> aside.add(s.cause()));
            weighed.values().stream()
                    .filter(w -> w.grade().atLeast(Grade.POSSIBLE) && !aside.contains(w.cause()))
                    .forEach(w -> run.insert(new Concluded(w.cause(), w.likelihood())));
            run.fire(Pass.REMEDY);
            recorder.results(Proposes.class).stream()
                    .map(Proposes::remedy)
                    .distinct()
                    .forEach(r -> run.insert(planned(r)));
            run.fire(Pass.GUARD);
            Set<Remedy> offered = EnumSet.noneOf(Remedy.class);
            recorder.results(Proposes.class).forEach(p -> offered.add(p.remedy()));
            recorder.results(Withholds.class).stream()
                    .map(Withholds::remedy)
                    .filter(r -> !knowledge.remedies().get(r).firstAid())
                    .forEach(offered::remove);
            offered.forEach(r -> run.insert(new Offered(r)));
            run.fire(Pass.ARRANGE);
            return new Outcome(List.copyOf(facts), merged(recorder.firings()), weighed);
        }
    }

    private Planned planned(Remedy remedy) {
        RemedyInfo info = knowledge.remedies().get(remedy);
        return new Planned(remedy, info.does(), info.effort().heavy());
    }

    /**
     * Runs only the first four passes: enough to see what an answer would change.
     *
     * @param facts what is known of the pile, with the answer
     */
    public Outcome upToConclusions(Collection<?> facts) {
        try (Run run = on(facts)) {
            Map<Cause, Weighed> weighed = conclude(run);
            return new Outcome(List.copyOf(facts), run.recorder().firings(), weighed);
        }
    }

    /**
     * What the rules of the first four passes say of facts, without adding it up.
     *
     * @param facts what is known of the pile, or might be
     */
    public List<Firing> unweighed(Collection<?> facts) {
        try (Run run = on(facts)) {
            weigh(run);
            run.fire(Pass.CONCLUDE);
            return List.copyOf(run.recorder().firings());
        }
    }

    /**
     * Runs only the passes that tell whether a danger stands.
     *
     * @param facts what is known of the pile
     * @return what they said, in order of pass and rule
     */
    public List<Firing> dangers(Collection<?> facts) {
        try (Run run = on(facts)) {
            run.fire(Pass.DERIVE);
            run.fireOnWhole(Pass.DANGER);
            return merged(run.recorder().firings());
        }
    }

    /**
     * Runs the audit rules on a recipe.
     *
     * @param facts what is known of the recipe
     */
    public List<Firing> audit(Collection<?> facts) {
        try (Run run = new Run(rulebook.get(), rows, facts)) {
            run.fire(Pass.AUDIT);
            return merged(run.recorder().firings());
        }
    }

    private Run on(Collection<?> facts) {
        Run run = new Run(rulebook.get(), rows, facts);
        Edges.of(facts).forEach(run::insert);
        return run;
    }

    /** The passes that know degrees: a state or a piece of evidence near an edge holds in part. */
    private static void weigh(Run run) {
        run.fire(Pass.DERIVE);
        run.fireOnWhole(Pass.DANGER);
        run.insertAbsences();
        // Some names for evidence ask what does not hold, or which danger stands.
        run.fire(Pass.DERIVE);
        run.insertRows();
        run.fire(Pass.WEIGH);
        run.deleteFaint();
    }

    private Map<Cause, Weighed> conclude(Run run) {
        weigh(run);
        Map<Cause, Weighed> weighed = scales.weigh(run.recorder().firings());
        weighed.values().stream()
                .filter(w -> w.grade().atLeast(Grade.POSSIBLE))
                .forEach(w -> run.insert(new Suspected(w.cause(), w.likelihood())));
        run.fire(Pass.CONCLUDE);
        return weighed;
    }

    /** One firing a rule and result, with all the facts it fired on, in order of pass and rule. */
    private static List<Firing> merged(List<Firing> firings) {
        Map<String, Firing> byRuleAndResult = new TreeMap<>();
        for (Firing firing : firings) {
            String key = firing.rule().pass().ordinal() + firing.rule().id() + firing.result();
            byRuleAndResult.merge(key, firing, Firing::with);
        }
        return List.copyOf(byRuleAndResult.values());
    }
}
