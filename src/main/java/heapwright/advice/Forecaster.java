package heapwright.advice;

import heapwright.advice.audit.Audit;
import heapwright.advice.observe.Answers;
import heapwright.advice.observe.PileFacts;
import heapwright.advice.winter.PileModel;
import heapwright.advice.winter.PileNow;
import heapwright.advice.winter.PileOutlook;
import heapwright.advice.winter.ReadyAhead;
import heapwright.advice.winter.WhyUnmodelled;
import heapwright.knowledge.Knowledge;
import heapwright.pile.Gathered;
import heapwright.pile.Pile;
import heapwright.process.mixture.Materials;
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
    public Optional<PileOutlook> ahead(Pile pile) {
        return now(pile).map(PileOutlook::of);
    }

    /**
     * A pile as the model has it on its day.
     *
     * @return empty where {@link #lacking} says why
     */
    public Optional<PileNow> now(Pile pile) {
        Pile gathered = Gathered.of(pile);
        return model(gathered, PileFacts.of(gathered, knowledge)).map(PileNow::of);
    }

    /**
     * An audit with the day on which the pile will be ready, the same as in its outlook; where the plan is not the recipe
     * as told there is no outlook of it, and the span of piles of its kind has to do.
     */
    public Audit ready(Audit audit) {
        return audit.asTold() ? audit.ready(now(audit.pile()).flatMap(ReadyAhead::of)) : audit;
    }

    /** The one way from what is known of a pile to its model; empty where {@link #lacking} says why. */
    static Optional<PileModel> model(Pile pile, PileFacts known) {
        return PileModel.of(pile, known.materials(), known.readings(), Answers.seen(known.signs()));
    }

    /** Why nothing can be said of a pile by its recipe; empty where something can. */
    public Optional<WhyUnmodelled> lacking(Pile pile) {
        return PileModel.lacking(pile, Materials.of(knowledge.materials(), pile.materials()));
    }

    /**
     * What lies ahead of a usual pile of this size, where no ingredients are named.
     *
     * @return empty where the pile is older or larger than the model is for
     */
    public Optional<PileOutlook> aheadOfTypical(Pile pile) {
        return PileModel.typical(Gathered.of(pile), Materials.of(knowledge.materials(), pile.materials()))
                .map(PileOutlook::of);
    }
}
