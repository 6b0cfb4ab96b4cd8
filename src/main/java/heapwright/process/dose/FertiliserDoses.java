package heapwright.process.dose;

import heapwright.knowledge.Dose;
import heapwright.knowledge.Limit;
import heapwright.knowledge.Material;
import heapwright.knowledge.Trait;
import heapwright.process.dose.Term.Key;
import heapwright.process.mixture.Band;
import heapwright.process.mixture.Basis;
import heapwright.process.mixture.Composition;
import heapwright.process.mixture.Equations;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Concentrated nitrogen: only a part of the computed need (about half to two thirds, CORNN, published), in several small
 * doses, each under the limits for a cubic metre.
 */
final class FertiliserDoses {

    /** More doses than this are not worth the wait (judgement); what is still lacking is better given as greens. */
    private static final int MOST_PARTS = 4;

    /** Of the most at once, the part to give to a pile of unknown recipe, and that once only (judgement). */
    private static final double UNKNOWN_PILE = 0.5;

    private static final double GRAMS = 1000;

    private FertiliserDoses() {}

    static DoseAmount urea(DoseContext context) {
        return dissolved(context, Dose.UREA, "urea", context.limits().of(Limit.UREA_MAX));
    }

    static DoseAmount ammoniumSulphate(DoseContext context) {
        return dissolved(context, Dose.AMMONIUM_SULPHATE, "ammonium-sulphate", Double.POSITIVE_INFINITY);
    }

    /** A meal, sprinkled dry and mixed in. */
    static DoseAmount meal(DoseContext context) {
        Predicate<Material> serves = material -> material.group() == Material.Group.MEAL
                && material.traits().contains(Trait.MEAL)
                && material.moisturePct().typical() < context.limits().of(Limit.MOISTURE_SLOW);
        Optional<Choice> choice =
                Choice.first(context, serves, "blood-meal", "hoof-horn-meal", "soybean-meal", "cottonseed-meal");
        return give(context, Dose.MEAL, choice, Double.POSITIVE_INFINITY, false);
    }

    private static DoseAmount dissolved(DoseContext context, Dose dose, String id, double mostGramsPerM3) {
        Optional<Choice> choice =
                Choice.first(context, material -> material.id().equals(id), id);
        return give(context, dose, choice, mostGramsPerM3, true);
    }

    private static DoseAmount give(
            DoseContext context, Dose dose, Optional<Choice> choice, double mostGramsPerM3, boolean dissolved) {
        NitrogenNeed need = NitrogenNeed.of(context);
        if (need.kg().likely() <= 0) {
            return DoseAmount.none(dose, choice.map(Choice::material), Cap.NO_NEED, need.terms());
        }
        if (choice.isEmpty()) {
            return DoseAmount.none(dose, Optional.empty(), Cap.NO_MATERIAL, need.terms());
        }
        Material material = choice.get().material();
        Limits limits = context.limits();
        double nitrogenPerKg = Composition.of(material).nitrogen();
        Band full = need.kg().times(1 / nitrogenPerKg);
        double low = limits.share(Limit.NITROGEN_FRACTION_LOW);
        double high = limits.share(Limit.NITROGEN_FRACTION_HIGH);
        Band wanted = new Band(full.low() * low, full.likely() * (low + high) / 2, full.high() * high);
        boolean known = need.basis() != Basis.ASSUMED;
        double once = onceKg(context, nitrogenPerKg, mostGramsPerM3, dissolved) * (known ? 1 : UNKNOWN_PILE);
        int mostParts = known ? MOST_PARTS : 1;
        double left = once * mostParts - context.given().fertiliserNitrogenG() / (nitrogenPerKg * GRAMS);
        if (left < once * Ceiling.LEAST_SHARE) {
            return DoseAmount.none(dose, Optional.of(material), Cap.SEASON, need.terms());
        }
        int parts = (int) Math.max(1, Math.min(mostParts, Math.ceil(Math.min(wanted.likely(), left) / once)));
        Ceiling held = Ceiling.of(wanted)
                .under(once * parts, Cap.PER_CUBIC_METRE)
                .under(left, Cap.SEASON)
                .under(choice.get().availableKg(), Cap.AT_HAND)
                .under(dissolved ? roomForWaterKg(context) : Double.POSITIVE_INFINITY, Cap.TOO_WET);
        if (held.amount().likely() <= 0) {
            return DoseAmount.none(dose, Optional.of(material), Cap.TOO_WET, need.terms());
        }
        if (known && held.coversTooLittle(full)) {
            Cap why = held.cap().filter(c -> c == Cap.SEASON).orElse(Cap.TOO_LITTLE);
            return DoseAmount.none(dose, Optional.of(material), why, need.terms());
        }
        Band grams = held.amount().times(1000);
        List<Term> working = Working.of(need.terms())
                .and(Key.FULL_NEED, full, need.basis())
                .and(Key.NITROGEN_GIVEN, grams.times(nitrogenPerKg), need.basis())
                .and(Key.SHARE_OF_NEED, 100 * held.amount().likely() / full.likely(), need.basis())
                .terms();
        Band carrier = dissolved ? grams.times(1.0 / (parts * limits.solutionGramsPerLitre())) : Band.ZERO;
        return DoseAmount.ofMaterial(dose, material, held.amount(), held.cap(), working)
                .split(parts, (int) Math.round(limits.of(Limit.NITROGEN_DOSE_INTERVAL)), carrier);
    }

    /** Fertiliser whose water, over all its doses, brings the pile to the top of the acceptable moisture and no further, kg. */
    private static double roomForWaterKg(DoseContext context) {
        PileStock stock = context.stock();
        Limits limits = context.limits();
        double litres = Equations.waterToReach(
                stock.wetKg().likely(), stock.moisturePct().likely(), limits.of(Limit.MOISTURE_OK_HIGH));
        return Math.max(0, litres) * limits.solutionGramsPerLitre() / 1000;
    }

    /** The most of a fertiliser to give at once, kg: by its own limit, by nitrogen, and by the water it comes in. */
    private static double onceKg(DoseContext context, double nitrogenPerKg, double mostGramsPerM3, boolean dissolved) {
        Limits limits = context.limits();
        double byNitrogen = limits.of(Limit.NITROGEN_MAX) / nitrogenPerKg;
        double byWater = dissolved
                ? limits.of(Limit.WATER_MAX_AT_ONCE) * limits.solutionGramsPerLitre()
                : Double.POSITIVE_INFINITY;
        double gramsPerM3 = Math.min(mostGramsPerM3, Math.min(byNitrogen, byWater));
        return gramsPerM3 * context.stock().volumeM3().likely() / 1000;
    }
}
