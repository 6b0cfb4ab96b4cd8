package heapwright.advice;

import heapwright.advice.fact.Reads;
import heapwright.advice.observe.Answers;
import heapwright.advice.observe.Inputs;
import heapwright.advice.observe.Quantities;
import heapwright.advice.observe.Squeeze;
import heapwright.advice.winter.Ahead;
import heapwright.advice.winter.PileModel;
import heapwright.advice.winter.Unmodelled;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Limit;
import heapwright.pile.Gathered;
import heapwright.pile.Pile;
import heapwright.process.mixture.Materials;
import java.util.List;
import java.util.Optional;

/** Looks ahead; it needs no rules. It keeps no state between calls and may be shared between threads. */
public final class Forecaster {

    private final Knowledge knowledge;

    public Forecaster(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    /**
     * What lies ahead of a pile.
     *
     * @return empty where {@link #lacking} says why
     */
    public Optional<Ahead> ahead(Pile pile) {
        return modelled(pile).map(Ahead::of);
    }

    /** Why nothing can be said of a pile by its recipe; empty where something can. */
    public Optional<Unmodelled> lacking(Pile pile) {
        return PileModel.lacking(pile, Materials.of(knowledge.materials(), pile.materials()));
    }

    /**
     * What lies ahead of a usual pile of this size, where no ingredients are named.
     *
     * @return empty where the pile is older or larger than the model is for
     */
    public Optional<Ahead> aheadOfTypical(Pile pile) {
        return PileModel.typical(Gathered.of(pile), Materials.of(knowledge.materials(), pile.materials()))
                .map(Ahead::of);
    }

    private Optional<PileModel> modelled(Pile told) {
        Pile pile = Gathered.of(told);
        Materials materials = Materials.of(knowledge.materials(), pile.materials());
        Quantities quantities = new Quantities(pile, knowledge, Optional.empty());
        List<Object> signs = new Answers(pile, knowledge.signs(), (int) quantities.limit(Limit.ANSWER_FRESH))
                .signs(new Inputs(pile, materials).facts());
        List<Reads> readings = new Squeeze(knowledge).applied(List.of(), signs);
        return PileModel.of(pile, materials, readings, Answers.seen(signs));
    }
}
