package heapwright.process.dose;

import heapwright.pile.Pile;
import heapwright.process.mixture.Band;
import heapwright.process.mixture.Basis;
import heapwright.process.mixture.Materials;
import heapwright.process.mixture.MixtureCalculator;
import heapwright.process.mixture.Observed;
import heapwright.process.mixture.PileMixture;
import heapwright.process.mixture.PileSize;
import java.util.Optional;

/**
 * What lies in the pile of a file. Its recipe says of what, and how much; its size is as told, else as the recipe
 * settles; without a recipe a usual mix stands in, in the size told, else in the usual size of its kind.
 */
public final class Stocktaking {

    /** Part of the size when built that is left at the least when no height was measured since (judgement). */
    private static final double LEAST_LEFT = 0.5;

    private Stocktaking() {}

    public static PileStock of(Pile pile, Materials materials, MixtureCalculator calculator) {
        Optional<PileSize> told = PileSize.told(pile);
        return PileMixture.asItLies(pile, materials, calculator)
                .map(PileStock::of)
                .map(stock -> told.map(size -> stock.sized(size.volumeM3())).orElse(stock))
                .orElseGet(() -> withoutRecipe(pile, materials, told));
    }

    private static PileStock withoutRecipe(Pile pile, Materials materials, Optional<PileSize> told) {
        Observed observed = PileMixture.observed(pile, materials);
        if (told.isPresent()) {
            double m3 = told.get().volumeM3();
            Band volume = told.get().measured() ? Band.exact(m3) : new Band(LEAST_LEFT * m3, m3, m3);
            return PileStock.ofSize(volume, Basis.REPORTED, observed);
        }
        double added = addedM3(pile, materials);
        Band usual = PileSize.usualM3(pile.container().kind());
        return PileStock.ofSize(usual.atLeast(added), Basis.ASSUMED, observed);
    }

    /** What is known to have gone in, once it has settled: no pile is smaller, cubic metres. */
    private static double addedM3(Pile pile, Materials materials) {
        return PileMixture.settledM3(PileMixture.portions(pile, materials));
    }
}
