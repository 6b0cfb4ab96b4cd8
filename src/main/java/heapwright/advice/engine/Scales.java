package heapwright.advice.engine;

import heapwright.advice.fact.Speaks;
import heapwright.knowledge.Cause;
import heapwright.knowledge.CauseInfo;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Adds up evidence. A cause starts at the log-odds of its base rate; each row of evidence that speaks adds or takes its
 * decibans in the degree in which what it reads is so; within one origin only the strongest piece for and the strongest
 * against count. The likelihood is the logistic of the sum (I. J. Good 1950, from memory).
 */
final class Scales {

    private static final double DECIBANS_PER_BAN = 10;

    private static final Comparator<Piece> STRONGEST_FIRST = Comparator.comparingDouble(
                    (Piece p) -> -Math.abs(p.decibans()))
            .thenComparing(p -> p.rule().id());

    private final Map<Cause, CauseInfo> causes;

    Scales(Map<Cause, CauseInfo> causes) {
        this.causes = causes;
    }

    /** Weighs every cause of the table, also those of which no row speaks. */
    Map<Cause, Weighed> weigh(List<Firing> firings) {
        Map<Cause, List<Piece>> heard = new EnumMap<>(Cause.class);
        for (Firing firing : firings) {
            if (firing.result() instanceof Speaks speaks) {
                heard.computeIfAbsent(speaks.cause(), c -> new ArrayList<>()).add(piece(firing, speaks));
            }
        }
        Map<Cause, Weighed> weighed = new EnumMap<>(Cause.class);
        causes.forEach((cause, info) ->
                weighed.put(cause, weigh(cause, info.baseRate(), heard.getOrDefault(cause, List.of()))));
        return weighed;
    }

    private static Piece piece(Firing firing, Speaks speaks) {
        return new Piece(
                firing.rule(),
                speaks.cause(),
                speaks.origin(),
                speaks.direction() * firing.degree() * speaks.row().strength().decibans(),
                firing.degree(),
                false,
                firing.because());
    }

    private static Weighed weigh(Cause cause, double baseRate, List<Piece> heard) {
        List<Piece> pieces = counted(merged(heard));
        double decibans = DECIBANS_PER_BAN * Math.log10(baseRate / (1 - baseRate));
        for (Piece piece : pieces) {
            decibans += piece.counted() ? piece.decibans() : 0;
        }
        double likelihood = 1 / (1 + Math.pow(10, -decibans / DECIBANS_PER_BAN));
        return new Weighed(
                cause,
                baseRate,
                likelihood,
                pieces.stream().filter(p -> p.decibans() > 0).toList(),
                pieces.stream().filter(p -> p.decibans() < 0).toList());
    }

    /** A row that several facts made speak speaks once, with all of them as its ground. */
    private static List<Piece> merged(List<Piece> heard) {
        Map<String, Piece> byRule = new HashMap<>();
        for (Piece piece : heard) {
            byRule.merge(piece.rule().id(), piece, (a, b) -> {
                Set<Object> grounds = new LinkedHashSet<>(a.because());
                grounds.addAll(b.because());
                Piece firmer = a.degree() >= b.degree() ? a : b;
                return new Piece(
                        a.rule(),
                        a.cause(),
                        a.origin(),
                        firmer.decibans(),
                        firmer.degree(),
                        false,
                        grounds.stream()
                                .sorted(Comparator.comparing(Object::toString))
                                .toList());
            });
        }
        return byRule.values().stream().sorted(STRONGEST_FIRST).toList();
    }

    private static List<Piece> counted(List<Piece> strongestFirst) {
        Set<String> used = new HashSet<>();
        return strongestFirst.stream()
                .map(p -> p.with(used.add(p.origin() + (p.decibans() > 0 ? "+" : "-"))))
                .toList();
    }
}
