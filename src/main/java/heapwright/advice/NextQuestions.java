package heapwright.advice;

import heapwright.advice.engine.Firing;
import heapwright.advice.engine.Inference;
import heapwright.advice.engine.Outcome;
import heapwright.advice.fact.Contradicts;
import heapwright.advice.fact.Denied;
import heapwright.advice.fact.Seen;
import heapwright.advice.fact.SetAside;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Sign;
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
 * Finds the observations that would change the advice most, by running the rules on each possible answer to each
 * unanswered sign.
 */
final class NextQuestions {

    /** A question that moves the likelihoods less than this in sum is not worth a walk to the pile; judgement. */
    private static final double WORTH_ASKING = 0.05;

    private final Inference inference;

    NextQuestions(Inference inference) {
        this.inference = inference;
    }

    /**
     * The most telling questions first.
     *
     * @param now the run on what is known
     * @param candidates the signs that may be asked
     */
    List<Question> after(Outcome now, Collection<Sign> candidates) {
        Set<Sign> answered = EnumSet.noneOf(Sign.class);
        for (Object fact : now.facts()) {
            if (fact instanceof Seen s) {
                answered.add(s.sign());
            } else if (fact instanceof Denied d) {
                answered.add(d.sign());
            }
        }
        Set<Object> disputed = results(now, Contradicts.class);
        return candidates.parallelStream()
                .filter(s -> !answered.contains(s))
                .flatMap(s -> question(now, disputed, s).stream())
                .filter(q -> q.change() >= WORTH_ASKING)
                .sorted(Comparator.comparingDouble((Question q) -> -q.change()).thenComparing(Question::sign))
                .toList();
    }

    /** The question of a sign; empty when a yes could not be so beside what was already answered. */
    private Optional<Question> question(Outcome now, Set<Object> disputed, Sign sign) {
        Outcome yes = with(now, new Seen(sign, 0));
        if (!disputed.containsAll(results(yes, Contradicts.class))) {
            return Optional.empty();
        }
        Map<Cause, Double> before = standing(now);
        Map<Cause, Double> ifYes = standing(yes);
        Map<Cause, Double> ifNo = standing(with(now, new Denied(sign, 0)));
        double change = (distance(before, ifYes) + distance(before, ifNo)) / 2;
        return Optional.of(new Question(sign, change, mostMoved(before, ifYes, 1), mostMoved(before, ifYes, -1)));
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

    private static double distance(Map<Cause, Double> before, Map<Cause, Double> after) {
        return before.entrySet().stream()
                .mapToDouble(e -> Math.abs(after.get(e.getKey()) - e.getValue()))
                .sum();
    }

    private static Optional<Cause> mostMoved(Map<Cause, Double> before, Map<Cause, Double> after, int direction) {
        return before.keySet().stream()
                .filter(c -> direction * (after.get(c) - before.get(c)) > WORTH_ASKING)
                .max(Comparator.comparingDouble((Cause c) -> direction * (after.get(c) - before.get(c)))
                        .thenComparing(Comparator.reverseOrder()));
    }
}
