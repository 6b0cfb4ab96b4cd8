package heapwright.advice.audit;

import heapwright.knowledge.Material;
import heapwright.knowledge.Trait;
import heapwright.process.dose.PileStock;
import heapwright.process.mend.Goals;
import heapwright.process.mend.Heap;
import heapwright.process.mend.Offer;
import heapwright.process.mixture.Density;
import heapwright.process.mixture.Mixture;
import heapwright.process.mixture.Portion;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Looks for one thing of a recipe of which less, in whole buckets, brings all the rest in range: who has too many droppings
 * for the leaves leaves some of them for later, before anything is fetched.
 *
 * @param portions the recipe with less of it
 * @param taken what is still taken of it, 0 litres where it is left out
 */
record LessOfOne(List<Portion> portions, Trimming.Trimmed taken) {

    /** With more than this part of the whole left out it is another recipe, and a small one; judgement. */
    private static final double MOST_OUT = 0.25;

    /**
     * The thing of which the least is left out; empty where no one thing does it.
     *
     * @param kept what goes in
     * @param mixture what it makes
     * @param feedLitres the water that fertiliser of the recipe is dissolved in, litres
     * @param goals what a sound mix keeps to
     * @param bucketLitres what a bucket holds, litres
     */
    static Optional<LessOfOne> of(
            List<Portion> kept, Mixture mixture, double feedLitres, Goals goals, double bucketLitres) {
        Heap heap = Heap.of(PileStock.of(mixture)).with(Offer.water(), feedLitres);
        double most = MOST_OUT * mixture.looseM3().likely() * Density.LITRES_PER_M3;
        return kept.stream()
                .map(Portion::material)
                .distinct()
                .filter(m -> !m.traits().contains(Trait.FAST_NITROGEN) && !Density.fillsGaps(m))
                .flatMap(m -> less(m, kept, heap, goals, bucketLitres, most))
                .min(Comparator.comparingDouble(Cut::litres))
                .map(cut -> new LessOfOne(cut.of(kept), new Trimming.Trimmed(cut.material(), cut.left())));
    }

    /** The first whole number of buckets less of a material that does it. */
    private static Stream<Cut> less(
            Material material, List<Portion> kept, Heap heap, Goals goals, double bucketLitres, double most) {
        double litres = sum(kept, material, p -> p.litres().likely());
        double kg = sum(kept, material, p -> p.kgWet().likely());
        Offer offer = Offer.of(material, kg);
        return IntStream.rangeClosed(1, (int) Math.floor(Math.min(litres, most) / bucketLitres))
                .mapToObj(n -> new Cut(material, n * bucketLitres, litres))
                .filter(cut -> goals.met(heap.with(offer, -kg * cut.litres() / litres)))
                .limit(1);
    }

    private static double sum(List<Portion> kept, Material material, ToDoubleFunction<Portion> of) {
        return kept.stream()
                .filter(p -> p.material().equals(material))
                .mapToDouble(of)
                .sum();
    }

    /**
     * So much less of a material.
     *
     * @param litres how much less
     * @param told how much was told
     */
    private record Cut(Material material, double litres, double told) {

        double left() {
            return told - litres;
        }

        List<Portion> of(List<Portion> kept) {
            return kept.stream()
                    .map(p -> p.material().equals(material) ? p.times(left() / told) : p)
                    .filter(p -> p.litres().likely() > 0)
                    .toList();
        }
    }
}
