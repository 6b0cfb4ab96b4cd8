package heapwright.advice.engine;

import heapwright.advice.fact.Concluded;
import heapwright.advice.fact.Grade;
import heapwright.advice.fact.Offered;
import heapwright.advice.fact.Proposes;
import heapwright.advice.fact.SetAside;
import heapwright.advice.fact.Suspected;
import heapwright.advice.fact.Withholds;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Remedy;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.kie.api.runtime.KieSession;

/**
 * Runs the rules on a set of facts in six passes. Between the passes it does the sums that rules are bad at: weighing
 * evidence, and dropping what was set aside or withheld. One short session a run; no clock and no chance inside, and
 * the order of the facts makes no difference.
 */
public final class Inference {

    /** Far above what the whole rulebook can fire on one pile; reaching it means a loop, our own failure. */
    private static final int MOST_FIRINGS = 20_000;

    private final Rulebook rulebook;
    private final Scales scales;

    public Inference(Rulebook rulebook, Knowledge knowledge) {
        this.rulebook = rulebook;
        this.scales = new Scales(knowledge.causes());
    }

    /**
     * Runs all passes.
     *
     * @param facts what is known of the pile
     */
    public Outcome run(Collection<?> facts) {
        KieSession session = rulebook.open();
        try {
            Recorder recorder = new Recorder(rulebook);
            session.addEventListener(recorder.matches());
            session.addEventListener(recorder.insertions());
            facts.forEach(session::insert);
            Map<Cause, Weighed> weighed = conclude(session, recorder);
            Set<Cause> aside = EnumSet.noneOf(Cause.class);
            recorder.results(SetAside.class).forEach(s -> aside.add(s.cause()));
            weighed.values().stream()
                    .filter(w -> w.grade().atLeast(Grade.POSSIBLE) && !aside.contains(w.cause()))
                    .forEach(w -> session.insert(new Concluded(w.cause(), w.likelihood())));
            fire(session, Pass.REMEDY);
            fire(session, Pass.GUARD);
            Set<Remedy> offered = EnumSet.noneOf(Remedy.class);
            recorder.results(Proposes.class).forEach(p -> offered.add(p.remedy()));
            recorder.results(Withholds.class).forEach(w -> offered.remove(w.remedy()));
            offered.forEach(r -> session.insert(new Offered(r)));
            fire(session, Pass.ARRANGE);
            return new Outcome(List.copyOf(facts), merged(recorder.firings()), weighed);
        } finally {
            session.dispose();
        }
    }

    /**
     * Runs only the first three passes: enough to see what an answer would change.
     *
     * @param facts what is known of the pile, with the answer
     */
    public Outcome upToConclusions(Collection<?> facts) {
        KieSession session = rulebook.open();
        try {
            Recorder recorder = new Recorder(rulebook);
            session.addEventListener(recorder.matches());
            session.addEventListener(recorder.insertions());
            facts.forEach(session::insert);
            Map<Cause, Weighed> weighed = conclude(session, recorder);
            return new Outcome(List.copyOf(facts), recorder.firings(), weighed);
        } finally {
            session.dispose();
        }
    }

    /**
     * What the rules of the first three passes say of facts, without adding it up.
     *
     * @param facts what is known of the pile, or might be
     */
    public List<Firing> unweighed(Collection<?> facts) {
        KieSession session = rulebook.open();
        try {
            Recorder recorder = new Recorder(rulebook);
            session.addEventListener(recorder.matches());
            session.addEventListener(recorder.insertions());
            facts.forEach(session::insert);
            fire(session, Pass.DERIVE);
            fire(session, Pass.WEIGH);
            fire(session, Pass.CONCLUDE);
            return List.copyOf(recorder.firings());
        } finally {
            session.dispose();
        }
    }

    /**
     * Runs the audit rules on a recipe.
     *
     * @param facts what is known of the recipe
     */
    public List<Firing> audit(Collection<?> facts) {
        KieSession session = rulebook.open();
        try {
            Recorder recorder = new Recorder(rulebook);
            session.addEventListener(recorder.matches());
            session.addEventListener(recorder.insertions());
            facts.forEach(session::insert);
            fire(session, Pass.AUDIT);
            return merged(recorder.firings());
        } finally {
            session.dispose();
        }
    }

    private Map<Cause, Weighed> conclude(KieSession session, Recorder recorder) {
        fire(session, Pass.DERIVE);
        fire(session, Pass.WEIGH);
        Map<Cause, Weighed> weighed = scales.weigh(recorder.firings());
        weighed.values().stream()
                .filter(w -> w.grade().atLeast(Grade.POSSIBLE))
                .forEach(w -> session.insert(new Suspected(w.cause(), w.likelihood())));
        fire(session, Pass.CONCLUDE);
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

    private void fire(KieSession session, Pass pass) {
        rulebook.demand(pass);
        session.getAgenda().getAgendaGroup(pass.id()).setFocus();
        if (session.fireAllRules(MOST_FIRINGS) >= MOST_FIRINGS) {
            throw new IllegalStateException("The " + pass.id() + " rules do not come to rest");
        }
    }
}
