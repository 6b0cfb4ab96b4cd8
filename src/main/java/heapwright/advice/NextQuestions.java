package heapwright.advice;

import heapwright.advice.engine.Inference;
import heapwright.advice.engine.Outcome;
import heapwright.advice.engine.Weighed;
import heapwright.advice.fact.Denied;
import heapwright.advice.fact.Seen;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Sign;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

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
        return candidates.stream()
                .filter(s -> !answered.contains(s))
                .map(s -> question(now, s))
                .filter(q -> q.change() >= WORTH_ASKING)
                .sorted(Comparator.comparingDouble((Question q) -> -q.change()).thenComparing(Question::sign))
                .toList();
    }

    private Question question(Outcome now, Sign sign) {
        Map<Cause, Weighed> yes = with(now, new Seen(sign, 0)).weighed();
        Map<Cause, Weighed> no = with(now, new Denied(sign, 0)).weighed();
        double change = (distance(now.weighed(), yes) + distance(now.weighed(), no)) / 2;
        return new Question(sign, change, mostMoved(now.weighed(), yes, 1), mostMoved(now.weighed(), yes, -1));
    }

    private Outcome with(Outcome now, Object answer) {
        List<Object> facts = new ArrayList<>(now.facts());
        facts.add(answer);
        return inference.weighOnly(facts);
    }

    private static double distance(Map<Cause, Weighed> before, Map<Cause, Weighed> after) {
        return before.values().stream()
                .mapToDouble(w -> Math.abs(after.get(w.cause()).likelihood() - w.likelihood()))
                .sum();
    }

    private static Optional<Cause> mostMoved(Map<Cause, Weighed> before, Map<Cause, Weighed> after, int direction) {
        return before.values().stream()
                .filter(w -> direction * (after.get(w.cause()).likelihood() - w.likelihood()) > WORTH_ASKING)
                .max(Comparator.comparingDouble(
                                (Weighed w) -> direction * (after.get(w.cause()).likelihood() - w.likelihood()))
                        .thenComparing(Weighed::cause))
                .map(Weighed::cause);
    }
}
