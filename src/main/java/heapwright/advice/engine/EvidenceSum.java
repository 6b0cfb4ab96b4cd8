package heapwright.advice.engine;

import heapwright.advice.fact.Speaks;
import heapwright.knowledge.Cause;
import heapwright.knowledge.CauseInfo;
import heapwright.knowledge.Weights;
import heapwright.knowledge.Witness;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Adds up evidence. A cause starts at the log-odds of its base rate; each row of evidence that speaks adds or takes its
 * decibans in the degree in which what it reads is so; of one witness the strongest piece for and the strongest
 * against count in full and the rest little. The likelihood is the logistic of the sum (I. J. Good 1950, from memory).
 */
final class EvidenceSum {

    private static final double DECIBANS_PER_BAN = 10;

    private static final Comparator<EvidencePiece> STRONGEST_FIRST = Comparator.comparingDouble(
                    (EvidencePiece p) -> -Math.abs(p.decibans()))
            .thenComparing(p -> p.rule().id());

    private final Map<Cause, CauseInfo> causes;

    private final Weights weights;

    EvidenceSum(Map<Cause, CauseInfo> causes, Weights weights) {
        this.causes = causes;
        this.weights = weights;
    }

    /** Weighs every cause of the table, also those of which no row speaks. */
    Map<Cause, Weighed> weigh(List<Firing> firings) {
        Map<Cause, List<EvidencePiece>> heard = new EnumMap<>(Cause.class);
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

    private EvidencePiece piece(Firing firing, Speaks speaks) {
        return new EvidencePiece(
                firing.rule(),
                speaks.cause(),
                speaks.witness(),
                speaks.direction() * firing.degree() * weights.of(speaks.row().strength()),
                firing.degree(),
                1,
                firing.because());
    }

    private Weighed weigh(Cause cause, double baseRate, List<EvidencePiece> heard) {
        return added(cause, baseRate, merged(heard));
    }

    /** The same evidence with these weights. */
    Weighed reweighed(Weighed weighed) {
        List<EvidencePiece> pieces = Stream.concat(weighed.supports().stream(), weighed.opposes().stream())
                .map(this::reweighed)
                .sorted(STRONGEST_FIRST)
                .toList();
        return added(weighed.cause(), weighed.baseRate(), pieces);
    }

    private EvidencePiece reweighed(EvidencePiece piece) {
        double weight = piece.degree() * weights.of(piece.rule().strength());
        return new EvidencePiece(
                piece.rule(),
                piece.cause(),
                piece.witness(),
                Math.copySign(weight, piece.decibans()),
                piece.degree(),
                1,
                piece.because());
    }

    private Weighed added(Cause cause, double baseRate, List<EvidencePiece> strongestFirst) {
        List<EvidencePiece> pieces = shared(strongestFirst);
        double decibans = DECIBANS_PER_BAN * Math.log10(baseRate / (1 - baseRate));
        for (EvidencePiece piece : pieces) {
            decibans += piece.share() * piece.decibans();
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
    private static List<EvidencePiece> merged(List<EvidencePiece> heard) {
        Map<String, EvidencePiece> byRule = new HashMap<>();
        for (EvidencePiece piece : heard) {
            byRule.merge(piece.rule().id(), piece, (a, b) -> {
                Set<Object> grounds = new LinkedHashSet<>(a.because());
                grounds.addAll(b.because());
                EvidencePiece firmer = a.degree() >= b.degree() ? a : b;
                return new EvidencePiece(
                        a.rule(),
                        a.cause(),
                        a.witness(),
                        firmer.decibans(),
                        firmer.degree(),
                        1,
                        grounds.stream()
                                .sorted(Comparator.comparing(Object::toString))
                                .toList());
            });
        }
        return byRule.values().stream().sorted(STRONGEST_FIRST).toList();
    }

    /**
     * How much each piece counts. Of one witness the strongest for and the strongest against count in full, each further one
     * in a smaller part. What was told and what was reckoned are two voices of it: the louder counts in full and the other
     * little, but where they are at odds what was told is the one that counts. One more piece for a side never lowers it.
     */
    private List<EvidencePiece> shared(List<EvidencePiece> strongestFirst) {
        Map<Voice, List<EvidencePiece>> voices = new LinkedHashMap<>();
        strongestFirst.forEach(
                p -> voices.computeIfAbsent(Voice.of(p), v -> new ArrayList<>()).add(p));
        Map<EvidencePiece, Double> shares = new HashMap<>();
        voices.forEach((voice, pieces) -> {
            double share = inFull(voice, voices) ? 1 : weights.again();
            for (EvidencePiece piece : pieces) {
                shares.put(piece, share);
                share *= weights.again();
            }
        });
        return strongestFirst.stream().map(p -> p.with(shares.get(p))).toList();
    }

    /** Whether a voice counts in full: the louder of told and reckoned, or what was told against the other side. */
    private boolean inFull(Voice voice, Map<Voice, List<EvidencePiece>> voices) {
        if (voices.containsKey(new Voice(voice.witness(), !voice.supports(), false))) {
            return !voice.reckoned();
        }
        double own = loudness(voices.get(voice));
        double other = loudness(
                voices.getOrDefault(new Voice(voice.witness(), voice.supports(), !voice.reckoned()), List.of()));
        return own > other || own == other && !voice.reckoned();
    }

    private double loudness(List<EvidencePiece> pieces) {
        return weights.together(pieces.stream().map(p -> Math.abs(p.decibans())).toList());
    }

    /** A witness, the side it takes, and whether that was reckoned and not told. */
    private record Voice(Witness witness, boolean supports, boolean reckoned) {
        static Voice of(EvidencePiece piece) {
            return new Voice(piece.witness(), piece.decibans() > 0, piece.reckoned());
        }
    }
}
