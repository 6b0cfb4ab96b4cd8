package heapwright.advice.danger;

import heapwright.advice.engine.Inference;
import heapwright.advice.observe.PileFacts;
import heapwright.knowledge.Knowledge;
import heapwright.pile.Gathered;
import heapwright.pile.Pile;
import java.util.List;
import java.util.Optional;

/** Asks the gate alone, for doors that give no other advice: the audit of a recipe, the winter ahead. */
public final class DangerWatch {

    private final Knowledge knowledge;
    private final Inference inference;
    private final DangerGate gate;

    public DangerWatch(Knowledge knowledge, Inference inference) {
        this.knowledge = knowledge;
        this.inference = inference;
        this.gate = new DangerGate(knowledge);
    }

    /** What to say first and alone of a pile; empty while no danger stands. A pile of which nothing was noted is none. */
    public Optional<Alarm> of(Pile pile) {
        if (pile.log().isEmpty()) {
            return Optional.empty();
        }
        List<Object> facts = PileFacts.of(Gathered.of(pile), knowledge).facts();
        return gate.alarm(facts, inference.dangers(facts));
    }
}
