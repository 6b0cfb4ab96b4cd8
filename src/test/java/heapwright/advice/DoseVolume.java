package heapwright.advice;

import heapwright.pile.Gathered;
import heapwright.pile.Pile;
import heapwright.process.dose.Stocktaking;
import heapwright.process.mixture.Materials;
import heapwright.process.mixture.MixtureCalculator;

/**
 * The volume on which limits per cubic metre are reckoned. It is that of the pile as all advice reads it: of two heights
 * of one day the mean counts, whichever was written last.
 *
 * @param pile the pile
 */
record DoseVolume(Pile pile) {

    double cubicMetres() {
        Materials materials = Materials.of(TestPile.KNOWLEDGE.materials(), pile.materials());
        return Stocktaking.of(Gathered.of(pile), materials, new MixtureCalculator())
                .volumeM3()
                .likely();
    }
}
