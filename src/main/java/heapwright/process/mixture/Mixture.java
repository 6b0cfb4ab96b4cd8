package heapwright.process.mixture;

import heapwright.knowledge.Trait;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/**
 * A mixture of materials as low, likely and high.
 *
 * @param masses mass balance, kg
 * @param moisturePct moisture, percent of wet mass
 * @param allCarbonToNitrogen C:N of all carbon, as tables and calculators reckon it; 10 000 stands for practically no
 *     nitrogen
 * @param carbonToNitrogen C:N of what a season reaches, see {@link Degradability#reached}: of wood only a part. This is
 *     the one by which a pile is judged, mended and dosed
 * @param densityKgM3 bulk density after settling, kg per cubic metre
 * @param freeAirSpacePct free air space, percent of volume, over three published forms
 * @param looseM3 volume as filled by hand, cubic metres
 * @param settledM3 volume after settling, cubic metres
 * @param contributions what each ingredient brings, in the order given
 * @param moistureBasis where the moisture comes from
 * @param densityBasis where density and air space come from
 * @param volumeBasis where the settled volume comes from
 */
public record Mixture(
        Masses masses,
        Band moisturePct,
        Band allCarbonToNitrogen,
        Band carbonToNitrogen,
        Band densityKgM3,
        Band freeAirSpacePct,
        Band looseM3,
        Band settledM3,
        List<Contribution> contributions,
        Basis moistureBasis,
        Basis densityBasis,
        Basis volumeBasis) {

    public Mixture {
        contributions = List.copyOf(contributions);
    }

    /** Woody materials, percent of the dry mass. */
    public double woodySharePct() {
        return share(Contribution::woody, Contribution::kgDry);
    }

    /** Coarse materials, percent of the settled volume. */
    public double coarseSharePct() {
        return share(Contribution::coarse, Contribution::settledM3);
    }

    /** Materials with a trait, percent of the settled volume. */
    public double sharePct(Trait trait) {
        return share(one -> one.material().traits().contains(trait), Contribution::settledM3);
    }

    private double share(Predicate<Contribution> which, ToDoubleFunction<Contribution> what) {
        double all = contributions.stream().mapToDouble(what).sum();
        double some = contributions.stream().filter(which).mapToDouble(what).sum();
        return all > 0 ? 100 * (some / all) : 0;
    }
}
