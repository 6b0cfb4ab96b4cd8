package heapwright.advice;

import heapwright.advice.engine.EvidencePiece;
import heapwright.advice.engine.Firing;
import heapwright.advice.engine.Inference;
import heapwright.advice.engine.Outcome;
import heapwright.advice.engine.Weighed;
import heapwright.advice.fact.Contradicts;
import heapwright.advice.fact.Denied;
import heapwright.advice.fact.SetAside;
import heapwright.advice.fact.Speaks;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Sign;
import heapwright.knowledge.Weights;
import heapwright.knowledge.Witness;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Estimates from two runs how much the answer to each open sign would move the likelihoods: one in which every open sign
 * is denied, and one in which it is seen as well. What a rule says there counts for an answer when that answer alone,
 * with what is known, gives the rule all its facts. Rules that wait for the absence of something may stay silent there,
 * so this is an estimate, good enough to choose which answers to run in full.
 */
final class QuestionValue {

    private static final double DECIBANS_PER_BAN = 10;
    private static final int ANSWERS = 2 * Sign.values().length;
    private static final BitSet NO_ANSWER = new BitSet();

    private final Outcome now;
    private final Knowledge knowledge;
    private final Weights weights;
    private final Map<Cause, Double> decibans = new EnumMap<>(Cause.class);
    private final Map<Object, BitSet> enough = new HashMap<>();
    private final BitSet impossible = new BitSet(ANSWERS);
    private final Map<Integer, List<Firing>> byAnswer = new HashMap<>();

    private QuestionValue(Inference inference, Knowledge knowledge, Outcome now, Collection<Sign> open) {
        this.now = now;
        this.knowledge = knowledge;
        this.weights = knowledge.weights();
        Set<Cause> aside = EnumSet.noneOf(Cause.class);
        now.of(SetAside.class).forEach(f -> aside.add(((SetAside) f.result()).cause()));
        now.weighed().values().stream()
                .filter(w -> !aside.contains(w.cause()))
                .forEach(w ->
                        decibans.put(w.cause(), DECIBANS_PER_BAN * Math.log10(w.likelihood() / (1 - w.likelihood()))));
        listen(inference, open);
    }

    /**
     * An open sign.
     *
     * @param sign the sign
     * @param aYesSpeaks whether a yes would make any rule or row speak
     * @param aNoSpeaks whether a no would
     */
    record Candidate(Sign sign, boolean aYesSpeaks, boolean aNoSpeaks) {}

    /**
     * The open signs in order of promise; those that cannot be seen beside what is known, and those that say nothing of
     * this pile, are left out.
     *
     * @param open the signs without an answer
     * @param weight what an answer is worth from how it would move the likelihoods
     */
    static List<Candidate> ranked(
            Inference inference, Knowledge knowledge, Outcome now, Collection<Sign> open, Worth weight) {
        QuestionValue promise = new QuestionValue(inference, knowledge, now, open);
        Map<Candidate, Double> worth = new HashMap<>();
        for (Sign sign : open) {
            Candidate candidate = new Candidate(
                    sign, promise.byAnswer.containsKey(yes(sign)), promise.byAnswer.containsKey(no(sign)));
            if (!promise.impossible.get(yes(sign)) && (candidate.aYesSpeaks() || candidate.aNoSpeaks())) {
                worth.put(candidate, weight.of(sign, promise.moved(yes(sign)), promise.moved(no(sign))));
            }
        }
        return worth.keySet().stream()
                .sorted(Comparator.comparingDouble((Candidate c) -> -worth.get(c))
                        .thenComparing(Candidate::sign))
                .toList();
    }

    /** What it is worth to ask for a sign. */
    interface Worth {

        /**
         * @param ifYes how a yes would move the likelihoods, by cause
         * @param ifNo how a no would
         */
        double of(Sign sign, Map<Cause, Double> ifYes, Map<Cause, Double> ifNo);
    }

    private static int yes(Sign sign) {
        return 2 * sign.ordinal();
    }

    private static int no(Sign sign) {
        return 2 * sign.ordinal() + 1;
    }

    /** Notes for every firing which answers would each be enough for it. */
    private void listen(Inference inference, Collection<Sign> open) {
        List<Object> facts = new ArrayList<>(now.facts());
        facts.forEach(f -> enough.put(f, any()));
        for (Sign sign : open) {
            answer(facts, new Denied(sign, 0), no(sign));
        }
        Set<Firing> fired = new LinkedHashSet<>(inference.unweighed(facts));
        for (Sign sign : open) {
            AffirmedFacts.facts(sign, knowledge).forEach(f -> answer(facts, f, yes(sign)));
        }
        fired.addAll(inference.unweighed(facts));
        Set<Object> disputed = new HashSet<>();
        now.of(Contradicts.class).forEach(f -> disputed.add(f.result()));
        for (Firing firing : fired) {
            BitSet alone = any();
            firing.because().forEach(f -> alone.and(enough.getOrDefault(f, NO_ANSWER)));
            enough.computeIfAbsent(firing.result(), r -> new BitSet(ANSWERS)).or(alone);
            if (firing.result() instanceof Contradicts && !disputed.contains(firing.result())) {
                impossible.or(alone);
            } else if (alone.cardinality() < ANSWERS) {
                alone.stream()
                        .forEach(a -> byAnswer.computeIfAbsent(a, x -> new ArrayList<>())
                                .add(firing));
            }
        }
    }

    private void answer(List<Object> facts, Object fact, int answer) {
        if (!enough.containsKey(fact)) {
            facts.add(fact);
        }
        enough.computeIfAbsent(fact, f -> new BitSet(ANSWERS)).set(answer);
    }

    private static BitSet any() {
        BitSet any = new BitSet(ANSWERS);
        any.set(0, ANSWERS);
        return any;
    }

    /** How an answer would move the likelihoods, by cause. */
    private Map<Cause, Double> moved(int answer) {
        Map<Cause, List<Firing>> byCause = new EnumMap<>(Cause.class);
        for (Firing firing : byAnswer.getOrDefault(answer, List.of())) {
            if (firing.result() instanceof Speaks s) {
                byCause.computeIfAbsent(s.cause(), c -> new ArrayList<>()).add(firing);
            }
        }
        Map<Cause, Double> moved = new EnumMap<>(Cause.class);
        byCause.forEach((cause, spoken) -> {
            Double before = decibans.get(cause);
            if (before != null) {
                double after = before + added(now.weighed().get(cause), spoken);
                moved.put(cause, likelihood(after) - likelihood(before));
            }
        });
        return moved;
    }

    /** By how many decibans the sum rises when these speak too: each witness tells little more where it was heard. */
    private double added(Weighed weighed, List<Firing> firings) {
        Map<Witness, List<Double>> supports = heard(weighed.supports());
        Map<Witness, List<Double>> opposes = heard(weighed.opposes());
        double before = weigh(supports) - weigh(opposes);
        for (Firing firing : firings) {
            if (firing.result() instanceof Speaks s) {
                (s.supports() ? supports : opposes)
                        .computeIfAbsent(s.witness(), w -> new ArrayList<>())
                        .add(firing.degree() * weights.of(s.row().strength()));
            }
        }
        return weigh(supports) - weigh(opposes) - before;
    }

    private static Map<Witness, List<Double>> heard(List<EvidencePiece> pieces) {
        Map<Witness, List<Double>> heard = new EnumMap<>(Witness.class);
        pieces.forEach(
                p -> heard.computeIfAbsent(p.witness(), w -> new ArrayList<>()).add(Math.abs(p.decibans())));
        return heard;
    }

    private double weigh(Map<Witness, List<Double>> heard) {
        return heard.values().stream().mapToDouble(weights::together).sum();
    }

    private static double likelihood(double decibans) {
        return 1 / (1 + Math.pow(10, -decibans / DECIBANS_PER_BAN));
    }
}
