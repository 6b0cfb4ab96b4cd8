package heapwright.process.mend;

import heapwright.knowledge.Limit;
import heapwright.process.dose.Limits;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Finds the least extra work that mends a pile with what is at hand. */
public final class Mender {

    private static final double NOTHING_KG = 1e-6;

    private final Limits limits;
    private final Goals goals;

    public Mender(Limits limits) {
        this(limits, Goals.good(limits));
    }

    public Mender(Limits limits, Goals goals) {
        this.limits = limits;
        this.goals = goals;
    }

    /**
     * The plan with the least work that meets all goals; where none does, the one that comes nearest, and what it
     * misses.
     *
     * @throws IllegalArgumentException when there is no pile
     */
    public Plan mend(Heap heap, List<Offer> offers) {
        if (!(heap.wetKg() > 0) || !(heap.volumeM3() > 0)) {
            throw new IllegalArgumentException("There must be something in the pile to mend it: " + heap);
        }
        List<Offer> held = held(heap, offers);
        return plan(heap, held, held.isEmpty() ? new double[0] : new Programme(heap, held, goals).solve());
    }

    /**
     * The same in whole buckets: the least work among the whole numbers round the exact answer. Fertiliser is not
     * counted in buckets and keeps its exact mass.
     *
     * @return empty when no whole number near it meets all goals
     */
    public Optional<Plan> mendInBuckets(Heap heap, List<Offer> offers, double bucketLitres) {
        List<Offer> held = held(heap, offers);
        Plan exact = mend(heap, offers);
        if (!exact.meetsAll()) {
            return Optional.empty();
        }
        double[] start = held.isEmpty() ? new double[0] : new Programme(heap, held, goals).solve();
        return new WholeBuckets(heap, held, goals, bucketLitres)
                .near(start)
                .map(kilograms -> plan(heap, held, kilograms));
    }

    /** How many more materials somebody may be sent for. */
    public enum Most {
        ONE,
        TWO
    }

    /**
     * The one more material that would make it possible to meet all goals, with the least work; where no one would, the
     * two that do so together.
     *
     * @param common materials that are easy to come by
     * @param most how many of them at the most
     * @return empty when all goals can be met already, or when so many of them would not do
     */
    public List<Offer> unlock(Heap heap, List<Offer> offers, List<Offer> common, Most most) {
        if (mend(heap, offers).meetsAll()) {
            return List.of();
        }
        Optional<List<Offer>> one = least(heap, offers, common.stream().map(List::of));
        return one.or(() -> most == Most.ONE ? Optional.empty() : least(heap, offers, pairs(common)))
                .orElse(List.of());
    }

    /** What with the least work makes it possible to meet all goals, of all that might be fetched. */
    private Optional<List<Offer>> least(Heap heap, List<Offer> offers, Stream<List<Offer>> extras) {
        return extras.map(extra -> new Try(extra, mend(heap, plus(offers, extra))))
                .filter(one -> one.plan().meetsAll())
                .min(Comparator.comparingDouble((Try one) -> one.plan().effort())
                        .thenComparing(one -> one.extra().stream()
                                .map(Offer::id)
                                .sorted()
                                .toList()
                                .toString()))
                .map(Try::extra);
    }

    private record Try(List<Offer> extra, Plan plan) {}

    private static Stream<List<Offer>> pairs(List<Offer> common) {
        return IntStream.range(0, common.size())
                .boxed()
                .flatMap(first -> common.stream().skip(first + 1).map(second -> List.of(common.get(first), second)));
    }

    /** More of what is at hand in too small an amount stands for it. */
    private static List<Offer> plus(List<Offer> offers, List<Offer> extra) {
        return Stream.concat(
                        offers.stream().filter(o -> extra.stream().noneMatch(e -> e.id().equals(o.id()))),
                        extra.stream())
                .toList();
    }

    /** Fertilisers held to the part of the nitrogen that lacks now which may be given as fertiliser. */
    private List<Offer> held(Heap heap, List<Offer> offers) {
        double lacking = Math.max(0, heap.carbonKg() / limits.aimCarbonToNitrogen() - heap.nitrogenKg());
        double most = limits.share(Limit.NITROGEN_FRACTION_HIGH) * lacking;
        long fertilisers = offers.stream().filter(Offer::fertiliser).count();
        return offers.stream()
                .map(offer -> offer.fertiliser()
                        ? offer.atMost(most / (fertilisers * offer.of().nitrogen()))
                        : offer)
                .toList();
    }

    private Plan plan(Heap heap, List<Offer> offers, double[] kilograms) {
        List<Addition> additions = new ArrayList<>();
        Heap after = heap;
        double effort = 0;
        for (int i = 0; i < kilograms.length; i++) {
            Offer offer = offers.get(i);
            if (kilograms[i] > NOTHING_KG) {
                after = after.with(offer, kilograms[i]);
                effort += kilograms[i] * offer.effortPerKg();
                double litres = kilograms[i] * 1000 / offer.bucketDensityKgM3();
                additions.add(new Addition(offer.id(), kilograms[i], litres, parts(heap, offer, kilograms[i])));
            }
        }
        return new Plan(additions, after, effort, Plan.misses(after, goals));
    }

    private int parts(Heap heap, Offer offer, double kilograms) {
        if (!offer.fertiliser()) {
            return 1;
        }
        double onceKg = limits.of(Limit.NITROGEN_MAX) / 1000 * heap.volumeM3();
        return (int) Math.max(1, Math.ceil(kilograms * offer.of().nitrogen() / onceKg - 1e-9));
    }
}
