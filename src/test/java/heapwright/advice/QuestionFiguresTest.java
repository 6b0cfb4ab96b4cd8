package heapwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.engine.Inference;
import heapwright.advice.engine.Outcome;
import heapwright.advice.fact.Contradicts;
import heapwright.advice.fact.Denied;
import heapwright.advice.fact.Seen;
import heapwright.advice.fact.SetAside;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Remedy;
import heapwright.knowledge.Sign;
import heapwright.knowledge.SignInfo.Sense;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The figures of a question, each reckoned here once more from a run on the yes and a run on the no. */
@DisplayName("The figures of a question")
class QuestionFiguresTest {

    /** The edge below which a move of likelihoods is not worth a walk, as the page of questions has it. */
    private static final double WORTH_ASKING = 0.05;

    private static final double HAIR = 1e-9;

    private static final Function<Outcome, Optional<Remedy>> NEVER_CHANGES = run -> Optional.of(Remedy.WAIT_FOR_THAW);

    private final Knowledge knowledge = TestPile.KNOWLEDGE;
    private final Inference inference = new Inference(TestPile.ADVISOR.rulebook(), knowledge);

    private static final List<List<Object>> KNOWN = List.of(
            List.of(new Seen(Sign.CORE_COLD, 0), new Seen(Sign.HEATED_THEN_COOLED, 0)),
            List.of(new Seen(Sign.SMELLS_AMMONIA, 0), new Seen(Sign.SOGGY, 9, true)),
            List.of(new Seen(Sign.DARK_CRUMBLY, 0), new Seen(Sign.SMELLS_EARTHY, 0)));

    private static final List<Sign> OPEN = List.of(
            Sign.SQUEEZE_STREAMS,
            Sign.SQUEEZE_CRUMBLES,
            Sign.SMELLS_SOUR,
            Sign.SMELLS_EARTHY,
            Sign.SMELLS_AMMONIA,
            Sign.NO_REHEAT_AFTER_TURNING,
            Sign.SOGGY,
            Sign.ANTS,
            Sign.FROST_AT_NIGHT,
            Sign.WORMS,
            Sign.NEVER_TURNED,
            Sign.PET_WASTE,
            Sign.MUCH_GRASS);

    @Test
    @DisplayName("are the move of each likelihood by a yes and a no, by the chance of each")
    void change() {
        int asked = 0;
        for (List<Object> facts : KNOWN) {
            Outcome now = inference.run(facts);
            for (Question question : among(now, NEVER_CHANGES)) {
                Map<Cause, Double> ifYes = moves(now, yes(facts, question.sign()));
                Map<Cause, Double> ifNo = moves(now, no(facts, question.sign()));
                double chance = chance(now, question.sign(), ifYes);
                assertEquals(
                        chance * sum(ifYes) + (1 - chance) * sum(ifNo),
                        question.change(),
                        HAIR,
                        question + " beside " + facts);
                assertEquals(most(ifYes, 1), question.raises(), question + " beside " + facts);
                assertEquals(most(ifYes, -1), question.lowers(), question + " beside " + facts);
                assertEquals(0, question.settles(), question.toString());
                assertTrue(question.change() >= WORTH_ASKING, question.toString());
                asked++;
            }
        }
        assertTrue(asked >= 15, "only " + asked + " questions were tried");
    }

    @Test
    @DisplayName("leave out what moves little and changes no first step, and keep what changes one")
    void little() {
        Set<Sign> left = EnumSet.copyOf(OPEN);
        Outcome now = inference.run(KNOWN.get(0));
        among(now, NEVER_CHANGES).forEach(q -> left.remove(q.sign()));
        Set<Sign> possible = EnumSet.copyOf(left);
        possible.removeIf(s -> !yes(KNOWN.get(0), s).of(Contradicts.class).isEmpty());
        assertFalse(possible.isEmpty(), "every sign moves much");
        for (Sign sign : possible) {
            Map<Cause, Double> ifYes = moves(now, yes(KNOWN.get(0), sign));
            Map<Cause, Double> ifNo = moves(now, no(KNOWN.get(0), sign));
            double chance = chance(now, sign, ifYes);
            assertTrue(chance * sum(ifYes) + (1 - chance) * sum(ifNo) < WORTH_ASKING, sign.id());
            Question kept = among(now, changesOn(new Seen(sign, 0))).stream()
                    .filter(q -> q.sign() == sign)
                    .findFirst()
                    .orElseThrow(() -> new AssertionError(sign + " changes the first step and is not asked"));
            assertTrue(kept.change() < WORTH_ASKING, kept.toString());
        }
    }

    @Test
    @DisplayName("are the chance of the answer that changes the first step")
    void settles() {
        for (List<Object> facts : KNOWN) {
            Outcome now = inference.run(facts);
            for (Question question : among(now, NEVER_CHANGES)) {
                Sign sign = question.sign();
                double chance = chance(now, sign, moves(now, yes(facts, sign)));
                assertEquals(chance, settles(now, sign, changesOn(new Seen(sign, 0))), HAIR, question.toString());
                assertEquals(1 - chance, settles(now, sign, changesOn(new Denied(sign, 0))), HAIR, question.toString());
                assertEquals(1, settles(now, sign, run -> first(!run.facts().equals(facts))), HAIR, sign.id());
            }
        }
    }

    @Test
    @DisplayName("hold where two answers are at odds already")
    void disputed() {
        List<Object> odds = List.of(new Seen(Sign.SQUEEZE_STREAMS, 0), new Seen(Sign.SQUEEZE_CRUMBLES, 0));
        Outcome now = inference.run(odds);
        assertFalse(now.of(Contradicts.class).isEmpty());
        assertFalse(among(now, NEVER_CHANGES).isEmpty(), "nothing is asked of a pile of two stories");
    }

    @Test
    @DisplayName("of an answer that was put right since are those of a fresh one")
    void outlived() {
        List<Object> facts = KNOWN.get(1);
        Outcome now = inference.run(facts);
        Question soggy = among(now, changesOn(new Seen(Sign.SOGGY, 0))).stream()
                .filter(q -> q.sign() == Sign.SOGGY)
                .findFirst()
                .orElseThrow();
        Map<Cause, Double> ifYes = moves(now, inference.run(List.of(facts.get(0), new Seen(Sign.SOGGY, 0))));
        assertTrue(ifYes.get(Cause.TOO_WET) > 0.1, "a fresh yes says more than one of before the remedy");
        Map<Cause, Double> ifNo = moves(now, inference.run(List.of(facts.get(0), new Denied(Sign.SOGGY, 0))));
        double chance = chance(now, Sign.SOGGY, ifYes);
        assertEquals(chance * sum(ifYes) + (1 - chance) * sum(ifNo), soggy.change(), HAIR);
        assertEquals(chance, soggy.settles(), HAIR);
    }

    @Test
    @DisplayName("put the more telling first, a first word of nose and hand at twice its worth")
    void order() {
        for (List<Object> facts : KNOWN) {
            Outcome now = inference.run(facts);
            Set<Sense> told = EnumSet.noneOf(Sense.class);
            for (Object fact : facts) {
                if (fact instanceof Seen seen && !seen.outlived()) {
                    told.add(knowledge.signs().get(seen.sign()).sense());
                }
            }
            for (Function<Outcome, Optional<Remedy>> first : List.of(
                    NEVER_CHANGES, changesOn(new Denied(Sign.WORMS, 0)), changesOn(new Seen(Sign.FROST_AT_NIGHT, 0)))) {
                List<Double> worth = among(now, first).stream()
                        .map(q -> (q.change() + q.settles())
                                * (first(knowledge.signs().get(q.sign()).sense(), told) ? 2 : 1))
                        .toList();
                for (int i = 1; i < worth.size(); i++) {
                    assertTrue(worth.get(i - 1) >= worth.get(i) - HAIR, worth.toString());
                }
            }
        }
    }

    @Test
    @DisplayName("are sought on until one may change the first step, and no further")
    void soughtOn() {
        Outcome now = inference.run(KNOWN.get(0));
        List<Sign> ranked = search(NEVER_CHANGES).promising(now, Arrays.asList(Sign.values())).stream()
                .map(QuestionValue.Candidate::sign)
                .toList();
        assertTrue(ranked.size() > 2 * NextQuestions.PROMISING);
        Sign early = ranked.get(0);
        Sign late = ranked.get(NextQuestions.PROMISING);
        Set<Sign> batch = EnumSet.copyOf(ranked.subList(0, NextQuestions.PROMISING));
        List<Sign> soon = signs(search(changesOn(new Seen(early, 0))).after(now, Arrays.asList(Sign.values())));
        assertTrue(soon.contains(early) && batch.containsAll(soon), soon.toString());
        List<Sign> later = signs(search(changesOn(new Seen(late, 0))).after(now, Arrays.asList(Sign.values())));
        assertTrue(later.contains(late), later + " lacks " + late);
        assertTrue(
                ranked.subList(0, 2 * NextQuestions.PROMISING).containsAll(later),
                "sought further than the batch that settles it");
        List<Sign> all = signs(search(NEVER_CHANGES).after(now, Arrays.asList(Sign.values())));
        assertTrue(
                all.stream().anyMatch(s -> ranked.indexOf(s) >= NextQuestions.PROMISING),
                "given up after the first few");
    }

    @Test
    @DisplayName("are not of a sign that was answered")
    void answered() {
        List<Object> facts = List.of(new Seen(Sign.CORE_COLD, 0), new Denied(Sign.SMELLS_SOUR, 0));
        List<Sign> promising =
                search(NEVER_CHANGES).promising(inference.run(facts), Arrays.asList(Sign.values())).stream()
                        .map(QuestionValue.Candidate::sign)
                        .toList();
        assertFalse(promising.contains(Sign.CORE_COLD), "seen");
        assertFalse(promising.contains(Sign.SMELLS_SOUR), "denied");
        assertTrue(promising.contains(Sign.SOGGY), promising.toString());
    }

    private List<Question> among(Outcome now, Function<Outcome, Optional<Remedy>> firstStep) {
        Set<Sign> told = EnumSet.noneOf(Sign.class);
        now.facts().stream()
                .filter(f -> f instanceof Seen seen && !seen.outlived())
                .forEach(f -> told.add(((Seen) f).sign()));
        return search(firstStep)
                .among(
                        now,
                        OPEN.stream()
                                .filter(s -> !told.contains(s))
                                .map(s -> new QuestionValue.Candidate(s, true, true))
                                .toList());
    }

    private double settles(Outcome now, Sign sign, Function<Outcome, Optional<Remedy>> firstStep) {
        return search(firstStep).among(now, List.of(new QuestionValue.Candidate(sign, true, true))).stream()
                .mapToDouble(Question::settles)
                .sum();
    }

    private NextQuestions search(Function<Outcome, Optional<Remedy>> firstStep) {
        return new NextQuestions(inference, knowledge, firstStep);
    }

    /** A first step that is another where this is among the facts. */
    private static Function<Outcome, Optional<Remedy>> changesOn(Object fact) {
        return run -> first(run.facts().contains(fact));
    }

    private static Optional<Remedy> first(boolean changed) {
        return Optional.of(changed ? Remedy.TURN_FULLY : Remedy.WAIT_FOR_THAW);
    }

    private static boolean first(Sense sense, Set<Sense> told) {
        return (sense == Sense.NOSE || sense == Sense.HAND) && !told.contains(sense);
    }

    private static List<Sign> signs(List<Question> questions) {
        return questions.stream().map(Question::sign).toList();
    }

    private Outcome yes(List<Object> facts, Sign sign) {
        List<Object> with = without(facts, sign);
        with.addAll(AffirmedFacts.facts(sign, knowledge));
        return inference.run(with);
    }

    private Outcome no(List<Object> facts, Sign sign) {
        List<Object> with = without(facts, sign);
        with.add(new Denied(sign, 0));
        return inference.run(with);
    }

    private static List<Object> without(List<Object> facts, Sign sign) {
        List<Object> others = new ArrayList<>();
        for (Object fact : facts) {
            if (!(fact instanceof Seen seen) || seen.sign() != sign) {
                others.add(fact);
            }
        }
        return others;
    }

    /** By how much each likelihood moves; what another finding explains away counts as nothing. */
    private static Map<Cause, Double> moves(Outcome before, Outcome after) {
        Map<Cause, Double> moves = new TreeMap<>();
        for (Cause cause : before.weighed().keySet()) {
            moves.put(cause, standing(after, cause) - standing(before, cause));
        }
        return moves;
    }

    private static double standing(Outcome run, Cause cause) {
        boolean aside = run.of(SetAside.class).stream().anyMatch(f -> f.result().equals(new SetAside(cause)));
        return aside ? 0 : run.weighed().get(cause).likelihood();
    }

    private static double sum(Map<Cause, Double> moves) {
        double sum = 0;
        for (double move : moves.values()) {
            sum += Math.abs(move);
        }
        return sum;
    }

    /** The cause that moves most in a direction, the first by name of several; none that moves next to nothing. */
    private static Optional<Cause> most(Map<Cause, Double> moves, int direction) {
        Optional<Cause> most = Optional.empty();
        double by = WORTH_ASKING;
        for (Map.Entry<Cause, Double> move : moves.entrySet()) {
            if (direction * move.getValue() > by) {
                by = direction * move.getValue();
                most = Optional.of(move.getKey());
            }
        }
        return most;
    }

    private double chance(Outcome now, Sign sign, Map<Cause, Double> ifYes) {
        double pointsTo = most(ifYes, 1)
                .map(cause -> now.weighed().get(cause).likelihood())
                .filter(likelihood -> likelihood >= 0.3)
                .orElse(0.0);
        return Math.max(knowledge.signs().get(sign).met().chance(), pointsTo);
    }
}
