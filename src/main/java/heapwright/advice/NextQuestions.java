package heapwright.advice;

import heapwright.advice.engine.Firing;
import heapwright.advice.engine.Inference;
import heapwright.advice.engine.Outcome;
import heapwright.advice.engine.Weighed;
import heapwright.advice.fact.Contradicts;
import heapwright.advice.fact.Denied;
import heapwright.advice.fact.Seen;
import heapwright.advice.fact.SetAside;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Sign;
import heapwright.knowledge.SignInfo;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Finds the observations that would change the advice most. An estimate chooses the most promising signs; for these the
 * rules are run on each possible answer.
 */
final class NextQuestions {

    /** A question that is expected to move the likelihoods less than this in sum is not worth a walk; judgement. */
    private static final double WORTH_ASKING = 0.05;

    /** Runs beyond these seldom find a better question: NextQuestionsTest holds the estimate to that. */
    static final int PROMISING = 8;

    private final Inference inference;
    private final Map<Sign, SignInfo> signs;

    NextQuestions(Inference inference, Map<Sign, SignInfo> signs) {
        this.inference = inference;
        this.signs = signs;
    }

    /**
     * The most telling questions first, at most {@value #PROMISING}.
     *
     * @param now the run on what is known
     * @param candidates the signs that may be asked
     */
    List<Question> after(Outcome now, Collection<Sign> candidates) {
        List<Sign> promising = promising(now, candidates);
        return among(now, promising.subList(0, Math.min(PROMISING, promising.size())));
    }

    /** The signs without an answer, most promising first, by the estimate. */
    List<Sign> promising(Outcome now, Collection<Sign> candidates) {
        return Promise.ranked(
                inference,
                now,
                open(now, candidates),
                (sign, ifYes, ifNo) -> expected(sign, now.weighed(), ifYes, ifNo));
    }

    /** The most telling questions among these signs, by running the rules on every answer. */
    List<Question> among(Outcome now, Collection<Sign> candidates) {
        Set<Object> disputed = results(now, Contradicts.class);
        return open(now, candidates).parallelStream()
                .flatMap(s -> question(now, disputed, s).stream())
                .filter(q -> q.change() >= WORTH_ASKING)
                .sorted(Comparator.comparingDouble((Question q) -> -q.change()).thenComparing(Question::sign))
                .toList();
    }

    private static List<Sign> open(Outcome now, Collection<Sign> candidates) {
        Set<Sign> answered = EnumSet.noneOf(Sign.class);
        for (Object fact : now.facts()) {
            if (fact instanceof Seen s) {
                answered.add(s.sign());
            } else if (fact instanceof Denied d) {
                answered.add(d.sign());
            }
        }
        return candidates.stream().filter(s -> !answered.contains(s)).toList();
    }

    /** The question of a sign; empty when a yes could not be so beside what was already answered. */
    private Optional<Question> question(Outcome now, Set<Object> disputed, Sign sign) {
        Outcome yes = with(now, new Seen(sign, 0));
        if (!disputed.containsAll(results(yes, Contradicts.class))) {
            return Optional.empty();
        }
        Map<Cause, Double> before = standing(now);
        Map<Cause, Double> ifYes = moved(before, standing(yes));
        Map<Cause, Double> ifNo = moved(before, standing(with(now, new Denied(sign, 0))));
        return Optional.of(new Question(
                sign, expected(sign, now.weighed(), ifYes, ifNo), mostMoved(ifYes, 1), mostMoved(ifYes, -1)));
    }

    /** How much an answer is expected to move the likelihoods, summed over the causes. */
    private double expected(Sign sign, Map<Cause, Weighed> weighed, Map<Cause, Double> ifYes, Map<Cause, Double> ifNo) {
        double yes = Math.max(
                signs.get(sign).met().chance(),
                mostMoved(ifYes, 1).map(c -> weighed.get(c).likelihood()).orElse(0.0));
        return yes * sum(ifYes) + (1 - yes) * sum(ifNo);
    }

    private static double sum(Map<Cause, Double> moved) {
        return moved.values().stream().mapToDouble(Math::abs).sum();
    }

    private static Set<Object> results(Outcome outcome, Class<?> kind) {
        return outcome.of(kind).stream().map(Firing::result).collect(Collectors.toSet());
    }

    /** The likelihood of each cause as the advice would take it: nothing when another finding explains it away. */
    private static Map<Cause, Double> standing(Outcome outcome) {
        Map<Cause, Double> standing = new EnumMap<>(Cause.class);
        outcome.weighed().forEach((cause, weighed) -> standing.put(cause, weighed.likelihood()));
        outcome.of(SetAside.class).forEach(f -> standing.put(((SetAside) f.result()).cause(), 0.0));
        return standing;
    }

    private Outcome with(Outcome now, Object answer) {
        List<Object> facts = new ArrayList<>(now.facts());
        facts.add(answer);
        return inference.upToConclusions(facts);
    }

    private static Map<Cause, Double> moved(Map<Cause, Double> before, Map<Cause, Double> after) {
        Map<Cause, Double> moved = new EnumMap<>(Cause.class);
        before.forEach((cause, likelihood) -> moved.put(cause, after.get(cause) - likelihood));
        return moved;
    }

    private static Optional<Cause> mostMoved(Map<Cause, Double> moved, int direction) {
        return moved.keySet().stream()
                .filter(c -> direction * moved.get(c) > WORTH_ASKING)
                .max(Comparator.comparingDouble((Cause c) -> direction * moved.get(c))
                        .thenComparing(Comparator.reverseOrder()));
    }
}
