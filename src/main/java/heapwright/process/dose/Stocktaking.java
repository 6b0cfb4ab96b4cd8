package heapwright.process.dose;

import heapwright.pile.Container;
import heapwright.pile.Pile;
import heapwright.process.mixture.Band;
import heapwright.process.mixture.Basis;
import heapwright.process.mixture.Materials;
import heapwright.process.mixture.MixtureCalculator;
import heapwright.process.mixture.Observed;
import heapwright.process.mixture.PileMixture;

/** What lies in the pile of a file: from its recipe, else from its size, else the usual home pile. */
public final class Stocktaking {

    /** Part of the built volume that is left when no height was measured since: settled, not yet decayed (judgement). */
    private static final Band LEFT_OF_BUILT = new Band(0.5, 0.8, 1.0);

    private Stocktaking() {}

    public static PileStock of(Pile pile, Materials materials, MixtureCalculator calculator) {
        return PileMixture.of(pile, materials, calculator)
                .map(PileStock::of)
                .orElseGet(() -> withoutRecipe(pile.container(), PileMixture.observed(pile, materials)));
    }

    private static PileStock withoutRecipe(Container container, Observed observed) {
        if (observed.volumeM3().isPresent()) {
            return PileStock.ofSize(Band.exact(observed.volumeM3().getAsDouble()), Basis.REPORTED, observed);
        }
        if (container.builtVolumeM3().isPresent()) {
            double built = container.builtVolumeM3().getAsDouble();
            return PileStock.ofSize(LEFT_OF_BUILT.times(built), Basis.ESTIMATED, observed);
        }
        return PileStock.unknown(observed);
    }
}
