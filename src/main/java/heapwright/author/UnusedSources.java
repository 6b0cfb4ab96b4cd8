package heapwright.author;

import heapwright.knowledge.Figure;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Survivor;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Finds sources that nothing names. */
final class UnusedSources {

    private final Knowledge knowledge;
    private final Set<String> named;

    /** @param named keys that something beside the tables names */
    UnusedSources(Knowledge knowledge, Collection<String> named) {
        this.knowledge = knowledge;
        this.named = new TreeSet<>(named);
    }

    /** One line for all of them; none where each is named. */
    List<String> looks() {
        knowledge.causes().values().forEach(r -> named.addAll(r.sources()));
        knowledge.dangers().values().forEach(r -> named.addAll(r.sources()));
        knowledge.remedies().values().forEach(r -> named.addAll(r.sources()));
        knowledge.cautions().values().forEach(r -> named.addAll(r.sources()));
        knowledge.limits().values().forEach(r -> named.addAll(r.sources()));
        knowledge.measures().values().forEach(r -> named.addAll(r.sources()));
        knowledge.usualDoses().values().forEach(r -> named.addAll(r.sources()));
        knowledge.keepOuts().values().forEach(r -> named.addAll(r.sources()));
        knowledge.sanitation().rules().values().forEach(r -> named.addAll(r.sources()));
        knowledge.sanitation().equations().values().forEach(r -> named.addAll(r.sources()));
        knowledge.sanitation().survivors().values().stream()
                .flatMap(s -> s.trials().stream())
                .map(Survivor.Trial::source)
                .forEach(named::add);
        knowledge.endUse().tests().values().forEach(r -> named.addAll(r.sources()));
        knowledge.endUse().uses().values().forEach(r -> named.addAll(r.sources()));
        knowledge.endUse().waits().values().forEach(r -> named.addAll(r.sources()));
        knowledge.endUse().reasons().values().forEach(r -> named.addAll(r.sources()));
        knowledge.season().values().forEach(r -> named.addAll(r.sources()));
        knowledge.evidence().forEach(row -> named.add(row.source()));
        knowledge
                .materials()
                .values()
                .forEach(m -> Stream.concat(
                                Stream.of(
                                        m.carbonToNitrogen(),
                                        m.carbonPct(),
                                        m.nitrogenPct(),
                                        m.moisturePct(),
                                        m.densityKgM3()),
                                Stream.of(m.ashPct(), m.ligninPctVs(), m.saltPct())
                                        .flatMap(f -> f.stream()))
                        .map(Figure::source)
                        .forEach(named::add));
        knowledge.signs().values().forEach(s -> s.moisturePct().ifPresent(f -> named.add(f.source())));
        List<String> unnamed = knowledge.sources().keySet().stream()
                .filter(key -> !named.contains(key))
                .toList();
        return unnamed.isEmpty()
                ? List.of()
                : List.of("tables/sources.json: " + unnamed.size() + " of "
                        + knowledge.sources().size()
                        + " sources are named by no table, row or rule that was looked through: "
                        + String.join(", ", unnamed) + ".");
    }
}
