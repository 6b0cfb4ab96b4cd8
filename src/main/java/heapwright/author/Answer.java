package heapwright.author;

import heapwright.advice.Advice;
import heapwright.advice.Finding;
import heapwright.advice.fact.Grade;
import heapwright.casebook.Verdict;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Danger;
import heapwright.knowledge.Remedy;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * What is told of a pile, as far as it may change.
 *
 * @param told the causes that are at least likely, the likeliest first, the dangers and the steps in order
 * @param likelihoods of every finding, 0 to 1
 * @param misses what the case demands and does not get
 */
public record Answer(Told told, Map<Cause, Double> likelihoods, List<String> misses) {

    /**
     * What a person is told.
     *
     * @param causes the causes that are at least likely, the likeliest first
     * @param dangers the dangers that stand
     * @param steps the steps in order
     */
    public record Told(List<Cause> causes, List<Danger> dangers, List<Remedy> steps) {}

    public Answer {
        likelihoods = Map.copyOf(likelihoods);
        misses = List.copyOf(misses);
    }

    static Answer of(Advice advice, Verdict verdict) {
        Map<Cause, Double> likelihoods = new LinkedHashMap<>();
        advice.findings().forEach(f -> likelihoods.put(f.cause(), f.likelihood()));
        return new Answer(
                new Told(
                        advice.findings().stream()
                                .filter(f -> f.grade().atLeast(Grade.LIKELY))
                                .map(Finding::cause)
                                .toList(),
                        advice.alarm().stream()
                                .flatMap(a -> a.dangers().stream())
                                .map(d -> d.info().id())
                                .toList(),
                        advice.steps().stream().map(s -> s.main().remedy()).toList()),
                likelihoods,
                verdict.misses());
    }

    /** Whether it is what the case demands. */
    public boolean agrees() {
        return misses.isEmpty();
    }

    double furthest(Answer other) {
        return Stream.concat(likelihoods.keySet().stream(), other.likelihoods.keySet().stream())
                .mapToDouble(c -> Math.abs(likelihoods.getOrDefault(c, 0.0) - other.likelihoods.getOrDefault(c, 0.0)))
                .max()
                .orElse(0);
    }
}
