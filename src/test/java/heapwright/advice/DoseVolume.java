package heapwright.advice;

import heapwright.pile.Pile;
import heapwright.process.dose.Stocktaking;
import heapwright.process.mixture.Materials;
import heapwright.process.mixture.MixtureCalculator;

/**
 * The volume on which limits per cubic metre are reckoned.
 *
 * @param pile the pile
 */
record DoseVolume(Pile pile) {

    double cubicMetres() {
        Materials materials = Materials.of(TestPile.KNOWLEDGE.materials(), pile.materials());
        return Stocktaking.of(pile, materials, new MixtureCalculator())
                .volumeM3()
                .likely();
    }
}
