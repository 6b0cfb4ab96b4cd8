package heapwright.knowledge;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/**
 * What is published on heat that cleans compost.
 *
 * @param rules the rules, by id
 * @param equations the equations, by id
 * @param survivors what heat kills and what outlives it, by id
 */
public record Sanitation(
        Map<String, HeatRule> rules, Map<String, HeatEquation> equations, Map<String, Survivor> survivors) {
    public Sanitation {
        rules = Collections.unmodifiableMap(rules);
        equations = Collections.unmodifiableMap(equations);
        survivors = Collections.unmodifiableMap(survivors);
    }

    /** The same with its sentences put another way; ids, names and figures stay. */
    Sanitation reworded(UnaryOperator<String> wording) {
        Map<String, HeatRule> told = new LinkedHashMap<>();
        rules.forEach((id, r) -> told.put(id, r.reworded(wording)));
        Map<String, Survivor> fates = new LinkedHashMap<>();
        survivors.forEach((id, s) -> fates.put(id, s.reworded(wording)));
        return new Sanitation(told, equations, fates);
    }

    /** What does not hang together with the other tables. */
    List<String> faults(Knowledge knowledge) {
        List<String> faults = new ArrayList<>();
        References references = new References(knowledge, faults);
        rules.values().forEach(r -> {
            references.sources("heat-rules.json " + r.id(), r.sources());
            if (r.needs().isEmpty()) {
                faults.add("heat-rules.json " + r.id() + ": needs nothing");
            }
        });
        equations.values().forEach(e -> references.sources("heat-equations.json " + e.id(), e.sources()));
        survivors.values().forEach(s -> survivor(s, references, faults));
        return faults;
    }

    private static void survivor(Survivor s, References references, List<String> faults) {
        String where = "survivors.json " + s.id();
        references.sources(
                where, s.trials().stream().map(Survivor.Trial::source).toList());
        references.materials(where, s.materials());
        if (s.needs().isPresent() != (s.fate() == Survivor.Fate.HEAT)) {
            faults.add(where + ": needs belongs to those that heat kills, and to all of them");
        }
        s.needs().ifPresent(n -> {
            boolean survived = s.trials().stream()
                    .filter(t -> t.result() == Survivor.Result.SURVIVED)
                    .anyMatch(t ->
                            t.celsius().orElse(0) >= n.celsius() && t.days().orElse(0) >= n.days());
            if (survived) {
                faults.add(where + ": a trial says that it survived the heat that is said to kill it");
            }
        });
    }
}
