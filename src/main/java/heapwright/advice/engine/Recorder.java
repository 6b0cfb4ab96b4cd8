package heapwright.advice.engine;

import heapwright.advice.fact.Graded;
import heapwright.advice.fact.Holds;
import heapwright.advice.fact.HoldsNot;
import heapwright.advice.fact.Placed;
import heapwright.advice.fact.Speaks;
import heapwright.advice.fact.Waiting;
import heapwright.knowledge.Condition;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.kie.api.event.rule.BeforeMatchFiredEvent;
import org.kie.api.event.rule.DefaultAgendaEventListener;
import org.kie.api.event.rule.DefaultRuleRuntimeEventListener;
import org.kie.api.event.rule.ObjectInsertedEvent;
import org.kie.api.runtime.rule.FactHandle;

/** Listens to one session and notes which rule inserted what on which ground, and in what degree that ground holds. */
final class Recorder {

    private final Rulebook rulebook;
    private final Rows rows;
    private final List<Firing> firings = new ArrayList<>();
    private final Map<Object, Double> degrees = new IdentityHashMap<>();
    private final Map<Holds, FactHandle> states = new IdentityHashMap<>();
    private final Map<Holds, List<Object>> parts = new IdentityHashMap<>();
    private Matched because = new Matched(List.of(), 1);

    /** What the rule that fires now has matched, and how far that is so. */
    private record Matched(List<Object> facts, double degree) {}

    Recorder(Rulebook rulebook, Rows rows) {
        this.rulebook = rulebook;
        this.rows = rows;
    }

    List<Firing> firings() {
        return firings;
    }

    <T> List<T> results(Class<T> kind) {
        return firings.stream()
                .map(Firing::result)
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }

    /** How far each named state holds; those that do not hold at all are left out. */
    Map<Condition, Double> conditions() {
        Map<Condition, Double> held = new EnumMap<>(Condition.class);
        states.keySet().forEach(s -> held.merge(s.condition(), degrees.get(s), Math::max));
        return held;
    }

    /** The named states that rather do not hold, each on its own ground. */
    Map<Holds, FactHandle> faint() {
        Map<Holds, FactHandle> faint = new IdentityHashMap<>(states);
        faint.keySet().removeIf(state -> Edges.rather(degrees.get(state)));
        return faint;
    }

    /** Notes that a state stands in the session again. */
    void again(Holds state, FactHandle handle) {
        states.put(state, handle);
    }

    private double degree(Object fact) {
        return fact instanceof Graded graded ? graded.degree() : degrees.getOrDefault(fact, 1.0);
    }

    /**
     * What a person may read of a fact: where a quantity is placed is the quantity and the limit; a name for several
     * parts is what they rest on, if they left anything; an absence is nothing.
     */
    private Stream<Object> ground(Object fact) {
        if (fact instanceof Placed placed) {
            return Stream.of(placed.edge(), placed.reads());
        }
        if (fact instanceof Holds state && parts.containsKey(state)) {
            return parts.get(state).stream();
        }
        return fact instanceof HoldsNot ? Stream.empty() : Stream.of(fact);
    }

    DefaultAgendaEventListener matches() {
        return new DefaultAgendaEventListener() {
            @Override
            public void beforeMatchFired(BeforeMatchFiredEvent event) {
                List<Object> matched = event.getMatch().getObjects().stream()
                        .filter(fact -> !(fact instanceof Waiting))
                        .toList();
                because = new Matched(
                        matched.stream().flatMap(Recorder.this::ground).toList(),
                        matched.stream()
                                .mapToDouble(Recorder.this::degree)
                                .min()
                                .orElse(1));
            }
        };
    }

    DefaultRuleRuntimeEventListener insertions() {
        return new DefaultRuleRuntimeEventListener() {
            @Override
            public void objectInserted(ObjectInsertedEvent event) {
                if (event.getRule() != null) {
                    firings.add(new Firing(speaker(event), because.facts(), event.getObject(), because.degree()));
                    degrees.put(event.getObject(), because.degree());
                    if (event.getObject() instanceof Holds state) {
                        states.put(state, event.getFactHandle());
                        if (state.condition().forEvidence() && !because.facts().isEmpty()) {
                            parts.put(state, because.facts());
                        }
                    }
                }
            }
        };
    }

    /** What speaks: the row of evidence, or the rule itself. */
    private RuleInfo speaker(ObjectInsertedEvent event) {
        return event.getObject() instanceof Speaks speaks ? rows.of(speaks.row()) : rulebook.of(event.getRule());
    }
}
