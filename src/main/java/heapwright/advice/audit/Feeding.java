package heapwright.advice.audit;

import heapwright.advice.audit.BuildPlan.Feed;
import heapwright.knowledge.Limit;
import heapwright.knowledge.Material;
import heapwright.process.dose.Limits;
import heapwright.process.mend.Offer;
import heapwright.process.mixture.Composition;
import heapwright.process.mixture.Density;
import heapwright.process.mixture.Portion;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** Splits fertiliser into doses that the pile can hold, in water that is not too strong. */
final class Feeding {

    private static final double GRAMS = 1000;

    private Feeding() {}

    /** Whether it is given in doses: nitrogen that is set free at once. */
    static boolean isFertiliser(Material material) {
        return Offer.of(material, 0).fertiliser();
    }

    /** The water that some of a fertiliser is dissolved in, litres; none for what is a liquid or rots itself. */
    static double waterLitres(Material material, double kilograms, Limits limits) {
        return limits.dissolvingLitres(material, kilograms);
    }

    /** The water that the fertiliser of a recipe is dissolved in over all its doses, litres. */
    static double waterLitres(List<Portion> portions, Limits limits) {
        return portions.stream()
                .filter(p -> isFertiliser(p.material()))
                .mapToDouble(p -> waterLitres(p.material(), p.kgWet().likely(), limits))
                .sum();
    }

    /**
     * The doses of all fertiliser together: as many as keep the nitrogen of one day within the limit.
     *
     * @param kilograms how much of each
     * @param volumeM3 volume of the pile when built
     * @param built the first day
     */
    static List<Feed> of(Map<Material, Double> kilograms, Limits limits, double volumeM3, LocalDate built) {
        double nitrogenG = kilograms.entrySet().stream()
                .mapToDouble(e -> e.getValue() * Composition.of(e.getKey()).nitrogen() * GRAMS)
                .sum();
        double onceG = limits.of(Limit.NITROGEN_MAX) * volumeM3;
        int parts = (int) Math.max(1, Math.ceil(nitrogenG / onceG - 1e-9));
        long apart = Math.round(limits.of(Limit.NITROGEN_DOSE_INTERVAL));
        List<LocalDate> days = IntStream.range(0, parts)
                .mapToObj(i -> built.plusDays(i * apart))
                .toList();
        return kilograms.entrySet().stream()
                .map(e -> {
                    double each = e.getValue() / parts;
                    return new Feed(
                            e.getKey().id(),
                            e.getValue(),
                            parts,
                            each
                                    * Density.LITRES_PER_M3
                                    / Density.byHand(e.getKey()).likely(),
                            each,
                            waterLitres(e.getKey(), each, limits),
                            days);
                })
                .toList();
    }
}
