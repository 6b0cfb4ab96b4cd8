package heapwright.advice.engine;

import heapwright.advice.fact.Opposes;
import heapwright.advice.fact.Supports;
import heapwright.knowledge.Cause;
import heapwright.knowledge.CauseInfo;
import heapwright.knowledge.Origin;
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
 * Adds up evidence. A cause starts at the log-odds of its base rate; each piece adds or takes its rule's decibans in the
 * degree in which the rule's conditions hold; within one origin only the strongest piece for and the strongest against count. The likelihood is the logistic of the
 * sum (I. J. Good 1950, from memory).
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

    /** Weighs every cause of the table, also those of which no rule speaks. */
    Map<Cause, Weighed> weigh(List<Firing> firings) {
        Map<Cause, List<Piece>> heard = new EnumMap<>(Cause.class);
        for (Firing firing : firings) {
            if (firing.result() instanceof Supports s) {
                add(heard, firing, s.cause(), s.origin(), 1);
            } else if (firing.result() instanceof Opposes o) {
                add(heard, firing, o.cause(), o.origin(), -1);
            }
        }
        Map<Cause, Weighed> weighed = new EnumMap<>(Cause.class);
        causes.forEach((cause, info) ->
                weighed.put(cause, weigh(cause, info.baseRate(), heard.getOrDefault(cause, List.of()))));
        return weighed;
    }

    private static void add(Map<Cause, List<Piece>> heard, Firing firing, Cause cause, Origin origin, int direction) {
        heard.computeIfAbsent(cause, c -> new ArrayList<>())
                .add(new Piece(
                        firing.rule(),
                        cause,
                        origin,
                        direction * firing.degree() * firing.rule().strength().decibans(),
                        firing.degree(),
                        false,
                        firing.because()));
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

    /** A rule that fired on several facts of the same kind speaks once, with all of them as its ground. */
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
