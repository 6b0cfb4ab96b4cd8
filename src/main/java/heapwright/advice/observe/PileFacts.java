package heapwright.advice.observe;

import heapwright.advice.fact.Reads;
import heapwright.advice.fact.Unripe;
import heapwright.advice.fact.WentIn;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Limit;
import heapwright.pile.Pile;
import heapwright.process.mixture.Materials;
import heapwright.process.mixture.MixtureCalculator;
import heapwright.process.mixture.PileMixture;
import heapwright.process.use.PileDays;
import heapwright.process.use.TestResults;
import java.util.ArrayList;
import java.util.List;

/**
 * Everything that the rules read of a pile, but for what the model says of it.
 *
 * @param materials the materials by which it was read
 * @param quantities its quantities
 * @param signs what was answered
 * @param readings the quantities as they are reported: with what the hand says of the moisture
 * @param facts all of it as facts
 */
public record PileFacts(
        Materials materials, Quantities quantities, List<Object> signs, List<Reads> readings, List<Object> facts) {
    public PileFacts {
        signs = List.copyOf(signs);
        readings = List.copyOf(readings);
        facts = List.copyOf(facts);
    }

    /** The facts of a pile on its day. */
    public static PileFacts of(Pile told, Knowledge knowledge) {
        Pile pile = HomeTests.asSigns(told, knowledge);
        Materials materials = Materials.of(knowledge.materials(), pile.materials());
        Quantities quantities =
                new Quantities(pile, knowledge, PileMixture.asItLies(pile, materials, new MixtureCalculator()));
        int freshDays = (int) quantities.limit(Limit.ANSWER_FRESH);
        Tried tried = new Tried(pile, knowledge.remedies(), freshDays);
        Answers answers = new Answers(pile, knowledge.signs(), tried, freshDays);
        List<WentIn> inputs = new Inputs(pile, materials).facts();
        List<Object> signs = answers.signs(inputs);
        List<Reads> readings = new Squeeze(knowledge).applied(quantities.readings(), signs);
        List<Object> facts = new ArrayList<>(signs);
        facts.addAll(answers.once());
        facts.addAll(answers.actions());
        facts.addAll(tried.facts());
        new Turns(pile).last().ifPresent(facts::add);
        facts.addAll(answers.fixtures());
        facts.addAll(inputs);
        facts.addAll(answers.inputs());
        facts.addAll(new KeptOut(pile, knowledge, materials).facts());
        PileDays days = new PileDays(told, knowledge);
        days.against(TestResults.of(told, knowledge, days)).forEach(reason -> facts.add(new Unripe(reason)));
        facts.addAll(quantities.limits());
        readings.stream().filter(r -> !Squeeze.from(r)).forEach(facts::add);
        return new PileFacts(materials, quantities, signs, readings, facts);
    }
}
