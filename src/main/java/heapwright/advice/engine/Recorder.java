package heapwright.advice.engine;

import java.util.ArrayList;
import java.util.List;
import org.kie.api.event.rule.BeforeMatchFiredEvent;
import org.kie.api.event.rule.DefaultAgendaEventListener;
import org.kie.api.event.rule.DefaultRuleRuntimeEventListener;
import org.kie.api.event.rule.ObjectInsertedEvent;

/** Listens to one session and notes which rule inserted what on which ground. */
final class Recorder {

    private final Rulebook rulebook;
    private final List<Firing> firings = new ArrayList<>();
    private List<Object> because = List.of();

    Recorder(Rulebook rulebook) {
        this.rulebook = rulebook;
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

    DefaultAgendaEventListener matches() {
        return new DefaultAgendaEventListener() {
            @Override
            public void beforeMatchFired(BeforeMatchFiredEvent event) {
                because = List.copyOf(event.getMatch().getObjects());
            }
        };
    }

    DefaultRuleRuntimeEventListener insertions() {
        return new DefaultRuleRuntimeEventListener() {
            @Override
            public void objectInserted(ObjectInsertedEvent event) {
                if (event.getRule() != null) {
                    firings.add(new Firing(rulebook.of(event.getRule()), because, event.getObject()));
                }
            }
        };
    }
}
