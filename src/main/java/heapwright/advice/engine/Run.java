package heapwright.advice.engine;

import heapwright.advice.fact.Holds;
import heapwright.advice.fact.HoldsNot;
import heapwright.advice.fact.Seen;
import heapwright.knowledge.Condition;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.rule.FactHandle;

/** One short session of the rules on one set of facts; what fires in it is recorded. */
final class Run implements AutoCloseable {

    /** Far above what the whole rulebook can fire on one pile; reaching it means a loop, our own failure. */
    private static final int MOST_FIRINGS = 20_000;

    private final Rulebook rulebook;
    private final KieSession session;
    private final Recorder recorder;
    private final Rows rows;
    private final Collection<?> known;
    private final List<FactHandle> outlived = new ArrayList<>();

    Run(Rulebook rulebook, Rows rows, Collection<?> facts) {
        this.rulebook = rulebook;
        this.session = rulebook.open();
        this.rows = rows;
        this.known = facts;
        this.recorder = new Recorder(rulebook, rows);
        session.addEventListener(recorder.matches());
        session.addEventListener(recorder.insertions());
        facts.forEach(this::take);
    }

    private void take(Object fact) {
        FactHandle handle = session.insert(fact);
        if (fact instanceof Seen seen && seen.outlived()) {
            outlived.add(handle);
        }
    }

    Recorder recorder() {
        return recorder;
    }

    void insert(Object fact) {
        session.insert(fact);
    }

    /** Says of every named state how far it does not hold, but for the names that only rows of evidence read. */
    void insertAbsences() {
        Map<Condition, Double> held = recorder.conditions();
        for (Condition condition : Condition.values()) {
            double degree = 1 - held.getOrDefault(condition, 0.0);
            if (degree > 0 && !condition.forEvidence()) {
                session.insert(new HoldsNot(condition, degree));
            }
        }
    }

    /** Takes in the rows of evidence that may speak. */
    void insertRows() {
        rows.facts(known).forEach(session::insert);
    }

    /** Takes away what rather is not so, states and outlived answers: the rules after weighing know only yes and no. */
    void deleteFaint() {
        recorder.faint().values().forEach(session::delete);
        outlived.forEach(session::delete);
    }

    /** Fires a pass that knows only yes and no before the states that hold in part are weighed. */
    void fireOnWhole(Pass pass) {
        Map<Holds, FactHandle> faint = recorder.faint();
        faint.values().forEach(session::delete);
        fire(pass);
        faint.keySet().forEach(state -> recorder.again(state, session.insert(state)));
    }

    /** @throws IllegalStateException when the pass was not loaded or does not come to rest: our own failure */
    void fire(Pass pass) {
        rulebook.demand(pass);
        session.getAgenda().getAgendaGroup(pass.id()).setFocus();
        if (session.fireAllRules(match -> rulebook.allows(match.getRule()), MOST_FIRINGS) >= MOST_FIRINGS) {
            throw new IllegalStateException("The " + pass.id() + " rules do not come to rest");
        }
    }

    @Override
    public void close() {
        session.dispose();
    }
}
