package heapwright.advice.engine;

import java.util.Collection;
import org.kie.api.runtime.KieSession;

/** One short session of the rules on one set of facts; what fires in it is recorded. */
final class Run implements AutoCloseable {

    /** Far above what the whole rulebook can fire on one pile; reaching it means a loop, our own failure. */
    private static final int MOST_FIRINGS = 20_000;

    private final Rulebook rulebook;
    private final KieSession session;
    private final Recorder recorder;

    Run(Rulebook rulebook, Collection<?> facts) {
        this.rulebook = rulebook;
        this.session = rulebook.open();
        this.recorder = new Recorder(rulebook);
        session.addEventListener(recorder.matches());
        session.addEventListener(recorder.insertions());
        facts.forEach(session::insert);
    }

    Recorder recorder() {
        return recorder;
    }

    void insert(Object fact) {
        session.insert(fact);
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
