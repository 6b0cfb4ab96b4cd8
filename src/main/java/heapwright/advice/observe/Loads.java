package heapwright.advice.observe;

import heapwright.advice.fact.Reads;
import heapwright.advice.fact.Reads.Basis;
import heapwright.knowledge.Reading;
import heapwright.knowledge.Trait;
import heapwright.process.dose.PileStock;
import heapwright.process.mixture.Band;
import heapwright.process.mixture.Contribution;
import heapwright.process.mixture.Density;
import heapwright.process.mixture.Mixture;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * What went into a pile of ash, soil, fertiliser and salt, as a part of it.
 *
 * @param parts all that is known to have gone in
 * @param wetKg what the pile weighs, kg
 * @param dryKg its dry matter as it went in, kg
 * @param volumeM3 its volume, cubic metres
 * @param basis where weight and volume come from
 */
record Loads(List<Contribution> parts, Band wetKg, Band dryKg, Band volumeM3, Basis basis) {

    private static final double GRAMS = 1000;

    private static final double PERCENT = 100;

    Loads {
        parts = List.copyOf(parts);
    }

    /** Parts of a pile whose recipe is known. */
    static Loads of(Mixture mixture) {
        double all = mixture.contributions().stream()
                .mapToDouble(Contribution::kgWet)
                .sum();
        return new Loads(
                mixture.contributions(),
                Band.exact(all),
                Band.exact(dryKg(mixture.contributions())),
                mixture.settledM3(),
                Basis.ESTIMATED);
    }

    /** Parts of a pile of which no more is known than what was added: it weighs at least that. */
    static Loads of(List<Contribution> added, PileStock stock) {
        boolean assumed = stock.volumeBasis() == heapwright.process.mixture.Basis.ASSUMED;
        double least = added.stream().mapToDouble(Contribution::kgWet).sum();
        return new Loads(
                added,
                stock.wetKg().atLeast(least),
                stock.dryKg().atLeast(dryKg(added)),
                stock.volumeM3(),
                assumed ? Basis.ASSUMED : Basis.ESTIMATED);
    }

    List<Reads> readings() {
        return List.of(
                share(Reading.ASH_LOAD, Trait.ALKALI),
                share(Reading.SOIL_SHARE, Trait.SOIL),
                perCubicMetre(Reading.ASH_VOLUME, Trait.ALKALI, Loads::litres),
                perCubicMetre(Reading.FERTILISER_NITROGEN, Trait.FAST_NITROGEN, one -> one.kgNitrogen() * GRAMS),
                salt());
    }

    /** Salt, percent of all dry matter. */
    private Reads salt() {
        double salt = parts.stream()
                .mapToDouble(one -> one.kgDry() * one.material().saltShare() * PERCENT)
                .sum();
        return reads(Reading.SALT_LOAD, salt, dryKg);
    }

    private static double dryKg(List<Contribution> parts) {
        return parts.stream().mapToDouble(Contribution::kgDry).sum();
    }

    /** Materials with a trait, percent of the wet mass. */
    private Reads share(Reading reading, Trait trait) {
        double some = sum(trait, Contribution::kgWet) * PERCENT;
        return reads(reading, some, wetKg);
    }

    /** What materials with a trait bring to a cubic metre of the pile. */
    private Reads perCubicMetre(Reading reading, Trait trait, ToDoubleFunction<Contribution> what) {
        return reads(reading, sum(trait, what), volumeM3);
    }

    private double sum(Trait trait, ToDoubleFunction<Contribution> what) {
        return parts.stream()
                .filter(one -> one.material().traits().contains(trait))
                .mapToDouble(what)
                .sum();
    }

    private Reads reads(Reading reading, double some, Band whole) {
        return new Reads(reading, some / whole.high(), some / whole.likely(), some / whole.low(), basis);
    }

    private static double litres(Contribution one) {
        return one.kgWet()
                * Density.LITRES_PER_M3
                / Density.byHand(one.material()).likely();
    }
}
