package heapwright.advice;

import heapwright.advice.engine.Firing;
import heapwright.advice.engine.Inference;
import heapwright.advice.engine.Outcome;
import heapwright.advice.engine.Weighed;
import heapwright.advice.fact.Contradicts;
import heapwright.advice.fact.Denied;
import heapwright.advice.fact.Grade;
import heapwright.advice.fact.Seen;
import heapwright.advice.fact.SetAside;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Remedy;
import heapwright.knowledge.Sign;
import heapwright.knowledge.SignInfo.Sense;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Finds the observations that would change what to do first. The rules are run on each possible answer: first for the
 * signs that promise most by an estimate, then for more and more of the others until one is found that may change the
 * first step, or none is left.
 */
final class NextQuestions {

    /** A question that is expected to move the likelihoods less than this in sum is not worth a walk; judgement. */
    private static final double WORTH_ASKING = 0.05;

    /** So many signs are tried at once. */
    static final int PROMISING = 6;

    /** A change of the first step counts as much as this many likelihoods turned from nothing to certain; judgement. */
    private static final double FIRST_STEP = 1;

    /** What the first word of nose and hand is worth more than another question; judgement. */
    private static final double FIRST_WORD = 2;

    private static final Set<Sense> ASKED_FIRST = EnumSet.of(Sense.NOSE, Sense.HAND);

    private final Inference inference;
    private final Knowledge knowledge;
    private final Function<Outcome, Optional<Remedy>> firstStep;

    /** @param firstStep the first step of the advice on a run */
    NextQuestions(Inference inference, Knowledge knowledge, Function<Outcome, Optional<Remedy>> firstStep) {
        this.inference = inference;
        this.knowledge = knowledge;
        this.firstStep = firstStep;
    }

    /**
     * The questions that may change the first step, the most telling first, then others that would move the likelihoods.
     *
     * @param now the run on what is known
     * @param candidates the signs that may be asked
     */
    List<Question> after(Outcome now, Collection<Sign> candidates) {
        List<QuestionValue.Candidate> promising = promising(now, candidates);
        List<Question> found = new ArrayList<>();
        for (int from = 0;
                from < promising.size() && found.stream().noneMatch(q -> q.settles() > 0);
                from += PROMISING) {
            found.addAll(among(now, promising.subList(from, Math.min(from + PROMISING, promising.size()))));
        }
        return sorted(now, found.stream());
    }

    /** The signs without an answer that may be so, most promising first, by the estimate. */
    List<QuestionValue.Candidate> promising(Outcome now, Collection<Sign> candidates) {
        return QuestionValue.ranked(
                inference,
                knowledge,
                now,
                open(now, candidates),
                (sign, ifYes, ifNo) -> expected(sign, now.weighed(), ifYes, ifNo));
    }

    /** The questions worth asking among these, by running the rules on every answer that would make any speak. */
    List<Question> among(Outcome now, Collection<QuestionValue.Candidate> candidates) {
        Set<Object> disputed = results(now, Contradicts.class);
        Optional<Remedy> first = firstStep.apply(now);
        return sorted(now, candidates.parallelStream().flatMap(c -> question(now, first, disputed, c).stream()));
    }

    private List<Question> sorted(Outcome now, Stream<Question> questions) {
        Set<Sense> told = EnumSet.noneOf(Sense.class);
        answered(now).forEach(s -> told.add(knowledge.signs().get(s).sense()));
        return questions
                .filter(q -> q.settles() > 0 || q.change() >= WORTH_ASKING)
                .sorted(Comparator.comparingDouble((Question q) -> -worth(q, told))
                        .thenComparing(Question::sign))
                .toList();
    }

    /** Nose and hand tell most of a pile, so each of them has a word early. */
    private double worth(Question question, Set<Sense> told) {
        Sense sense = knowledge.signs().get(question.sign()).sense();
        double worth = question.change() + FIRST_STEP * question.settles();
        return ASKED_FIRST.contains(sense) && !told.contains(sense) ? FIRST_WORD * worth : worth;
    }

    private static List<Sign> open(Outcome now, Collection<Sign> candidates) {
        Set<Sign> answered = answered(now);
        return candidates.stream().filter(s -> !answered.contains(s)).toList();
    }

    private static Set<Sign> answered(Outcome now) {
        Set<Sign> answered = EnumSet.noneOf(Sign.class);
        for (Object fact : now.facts()) {
            if (fact instanceof Seen s && !s.outlived()) {
                answered.add(s.sign());
            } else if (fact instanceof Denied d) {
                answered.add(d.sign());
            }
        }
        return answered;
    }

    /** The question of a sign; empty when a yes could not be so beside what was already answered. */
    private Optional<Question> question(
            Outcome now, Optional<Remedy> first, Set<Object> disputed, QuestionValue.Candidate candidate) {
        Sign sign = candidate.sign();
        Outcome yes = candidate.aYesSpeaks() ? with(now, sign, AffirmedFacts.facts(sign, knowledge)) : now;
        if (!disputed.containsAll(results(yes, Contradicts.class))) {
            return Optional.empty();
        }
        Outcome no = candidate.aNoSpeaks() ? with(now, sign, List.of(new Denied(sign, 0))) : now;
        Map<Cause, Double> before = standing(now);
        Map<Cause, Double> ifYes = moved(before, standing(yes));
        Map<Cause, Double> ifNo = moved(before, standing(no));
        double chance = chance(sign, now.weighed(), ifYes);
        double settles = (firstStep.apply(yes).equals(first) ? 0 : chance)
                + (firstStep.apply(no).equals(first) ? 0 : 1 - chance);
        return Optional.of(new Question(
                sign, settles, expected(sign, now.weighed(), ifYes, ifNo), mostMoved(ifYes, 1), mostMoved(ifYes, -1)));
    }

    /** How much an answer is expected to move the likelihoods, summed over the causes. */
    private double expected(Sign sign, Map<Cause, Weighed> weighed, Map<Cause, Double> ifYes, Map<Cause, Double> ifNo) {
        double yes = chance(sign, weighed, ifYes);
        return yes * sum(ifYes) + (1 - yes) * sum(ifNo);
    }

    /** The chance of a yes: as often as it is told, or as likely as the cause that it would point to, where that is a finding. */
    private double chance(Sign sign, Map<Cause, Weighed> weighed, Map<Cause, Double> ifYes) {
        return Math.max(
                knowledge.signs().get(sign).met().chance(),
                mostMoved(ifYes, 1)
                        .map(weighed::get)
                        .filter(w -> w.grade().atLeast(Grade.POSSIBLE))
                        .map(Weighed::likelihood)
                        .orElse(0.0));
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

    private Outcome with(Outcome now, Sign sign, List<Object> answer) {
        List<Object> facts = new ArrayList<>(now.facts());
        facts.removeIf(f -> f instanceof Seen s && s.sign() == sign);
        answer.stream().filter(f -> !facts.contains(f)).forEach(facts::add);
        return inference.run(facts);
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
