package heapwright.advice;

import heapwright.advice.fact.Reads;
import heapwright.advice.observe.Answers;
import heapwright.advice.observe.Quantities;
import heapwright.advice.observe.Squeeze;
import heapwright.advice.winter.Ahead;
import heapwright.advice.winter.PileModel;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Limit;
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
     * @return empty when its file names no ingredients
     */
    public Optional<Ahead> ahead(Pile pile) {
        return modelled(pile).map(Ahead::of);
    }

    /** What lies ahead of a usual pile of this size, where no ingredients are named. */
    public Ahead aheadOfTypical(Pile pile) {
        return Ahead.of(PileModel.typical(pile, Materials.of(knowledge.materials(), pile.materials())));
    }

    private Optional<PileModel> modelled(Pile pile) {
        Materials materials = Materials.of(knowledge.materials(), pile.materials());
        Quantities quantities = new Quantities(pile, knowledge, Optional.empty());
        List<Object> signs = new Answers(pile, (int) quantities.limit(Limit.ANSWER_FRESH)).signs();
        List<Reads> readings = new Squeeze(knowledge).applied(List.of(), signs);
        return PileModel.of(pile, materials, readings, Answers.seen(signs));
    }
}
