package heapwright.advice.audit;

import heapwright.advice.audit.Mend.Unlock;
import heapwright.knowledge.Limit;
import heapwright.knowledge.Material;
import heapwright.knowledge.Trait;
import heapwright.pile.Amount;
import heapwright.pile.Pile;
import heapwright.process.dose.Limits;
import heapwright.process.dose.PileStock;
import heapwright.process.dose.Supply;
import heapwright.process.mend.Addition;
import heapwright.process.mend.Goals;
import heapwright.process.mend.Heap;
import heapwright.process.mend.Mender;
import heapwright.process.mend.MissedGoal;
import heapwright.process.mend.Offer;
import heapwright.process.mend.Plan;
import heapwright.process.mixture.Density;
import heapwright.process.mixture.Materials;
import heapwright.process.mixture.Mixture;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Mends a recipe: coarse stuff first where it lacks, then the least work for moisture, C:N and density. */
final class Mending {

    private static final double PERCENT = 100;

    /** Less than this share of a pile is not worth carrying; judgement. */
    private static final double TRIFLE = 0.01;

    private final Materials materials;
    private final KeepOuts keepOuts;
    private final Limits limits;
    private final Goals goals;
    private final Mender mender;
    private final FewThings few;
    private final double bucketLitres;

    Mending(Materials materials, KeepOuts keepOuts, Limits limits, Goals goals, double bucketLitres) {
        this.materials = materials;
        this.goals = goals;
        this.keepOuts = keepOuts;
        this.limits = limits;
        this.mender = new Mender(limits, goals);
        this.few = new FewThings(mender, bucketLitres);
        this.bucketLitres = bucketLitres;
    }

    /** @param feedLitres the water that fertiliser of the recipe itself is dissolved in, litres: it wets the pile as well */
    Mend mend(Pile pile, Mixture mixture, double feedLitres) {
        PileStock stocked = PileStock.of(mixture);
        Heap heap = Heap.of(stocked).with(Offer.water(), feedLitres);
        boolean alkaline = mixture.sharePct(Trait.ALKALI) > 0;
        List<Offer> offers = new ArrayList<>(List.of(Offer.water()));
        pile.atHand().forEach(stock -> {
            Material material = materials.get(stock.material());
            if (mayBeAdded(material, alkaline)) {
                double most = stock.available().map(a -> kilograms(a, material)).orElse(Double.POSITIVE_INFINITY);
                Offer offer = Offer.of(material, most);
                offers.add(
                        offer.fertiliser()
                                ? Offer.of(
                                                material,
                                                Math.min(
                                                        most,
                                                        forSeasonKg(stocked)
                                                                / offer.of().nitrogen()))
                                        .dissolvedIn(Feeding.waterLitres(material, 1, limits))
                                : offer);
            }
        });
        Optional<Addition> opening = opening(mixture, offers);
        while (opening.isPresent() && spoils(heap, offers, opening.get())) {
            opening = half(opening.get());
        }
        Heap start = opened(heap, offers, opening);
        List<Offer> left = left(offers, opening);
        List<Offer> used = few.of(start, left);
        Plan exact = mender.mend(start, used);
        Optional<Plan> buckets = few.inBuckets(start, used, left);
        Optional<Addition> first = opening;
        Optional<Unlock> unlock = exact.meetsAll()
                ? Optional.empty()
                : unlock(start, left, first, alkaline, CommonMaterials.of(materials, Supply.of(pile)));
        if (first.isEmpty() && unlock.filter(u -> isTrifle(u.plan(), heap)).isPresent()) {
            return new Mend(
                    offers,
                    first,
                    new Plan(List.of(), heap, 0, Set.of()),
                    Optional.empty(),
                    Optional.empty(),
                    false,
                    coarseLitres(mixture, first),
                    goals.ratioLow() < limits.of(Limit.CN_GOOD_LOW));
        }
        return new Mend(
                offers,
                first,
                FewThings.with(first, exact),
                buckets.map(p -> FewThings.with(first, p)),
                unlock,
                first.isPresent() || !goals.met(heap),
                coarseLitres(mixture, first),
                goals.ratioLow() < limits.of(Limit.CN_GOOD_LOW));
    }

    /** A hair's breadth from good, which no one fetches anything for. */
    private boolean isTrifle(Plan plan, Heap heap) {
        return plan.additions().stream().mapToDouble(Addition::kg).sum() < TRIFLE * heap.wetKg()
                && plan.additions().stream().noneMatch(a -> Feeding.isFertiliser(materials.get(a.material())));
    }

    /** Coarse stuff is mostly lean: so much of it that nitrogen runs short, or the goals get out of reach, is too much. */
    private boolean spoils(Heap heap, List<Offer> offers, Addition opening) {
        Optional<Addition> some = Optional.of(opening);
        Plan with = mender.mend(opened(heap, offers, some), left(offers, some));
        return !with.meetsAll()
                && (with.misses().contains(MissedGoal.TOO_LITTLE_NITROGEN)
                        || mender.mend(heap, offers).meetsAll());
    }

    private Optional<Addition> half(Addition all) {
        double buckets = Math.floor(all.litres() / bucketLitres / 2);
        double share = buckets * bucketLitres / all.litres();
        return buckets < 1
                ? Optional.empty()
                : Optional.of(new Addition(all.material(), all.kg() * share, all.litres() * share, 1));
    }

    private static Heap opened(Heap heap, List<Offer> offers, Optional<Addition> opening) {
        return opening.map(a -> heap.with(offer(offers, a.material()), a.kg())).orElse(heap);
    }

    private static List<Offer> left(List<Offer> offers, Optional<Addition> opening) {
        return opening.map(a -> less(offers, a)).orElse(offers);
    }

    /** Nitrogen that may be given as fertiliser: a part of what lacks this season, when wood asks only for a part, kg. */
    private double forSeasonKg(PileStock stock) {
        double lacking = stock.carbonKg().likely() / limits.aimCarbonToNitrogen() - stock.nitrogenKg();
        return limits.share(Limit.NITROGEN_FRACTION_HIGH) * Math.max(0, lacking);
    }

    /** Stuff that mends: nothing that must stay out or would clash, and no soil, compost, ash, salt or sugar. */
    private boolean mayBeAdded(Material material, boolean alkaline) {
        boolean mends =
                switch (material.group()) {
                    case CARBON_RICH, NITROGEN_RICH, WOODY, MANURE, MEAL -> true;
                    case AMENDMENT -> Feeding.isFertiliser(material);
                    case STARTER, MINERAL, PROBLEM -> false;
                };
        return mends
                && keepOuts.barred(material).isEmpty()
                && !material.traits().contains(Trait.SALTED)
                && !(alkaline && KeepOuts.hasLooseNitrogen(material));
    }

    /** Coarse stuff at hand, in whole buckets up to what is there, that brings the coarse share of the volume to its least. */
    private Optional<Addition> opening(Mixture mixture, List<Offer> offers) {
        double wantedM3 = coarseM3(mixture);
        if (wantedM3 <= 0) {
            return Optional.empty();
        }
        return offers.stream()
                .filter(o -> materials
                        .find(o.id())
                        .filter(m -> m.traits().contains(Trait.COARSE))
                        .isPresent())
                .max(Comparator.comparing((Offer o) -> materials.get(o.id()).group() == Material.Group.WOODY)
                        .thenComparing(o -> Math.min(o.mostKg(), wantedM3 * o.densityKgM3()) / o.densityKgM3()))
                .map(o -> bucketsOf(o, wantedM3 * o.densityKgM3()));
    }

    /** Coarse stuff that would bring the coarse share of the volume to its least, cubic metres; 0 where there is enough. */
    private double coarseM3(Mixture mixture) {
        double least = limits.of(Limit.COARSE_SHARE_LOW);
        double lacking = Math.max(0, least - mixture.coarseSharePct());
        return mixture.contributions().stream().mapToDouble(c -> c.settledM3()).sum() * lacking / (PERCENT - least);
    }

    /** The same in litres, where nothing at hand brings it and the mix is not so airy that it needs none. */
    private double coarseLitres(Mixture mixture, Optional<Addition> opening) {
        boolean airy = mixture.freeAirSpacePct().likely() > limits.of(Limit.FAS_DRAUGHTY);
        return opening.isPresent() || airy ? 0 : coarseM3(mixture) * Density.LITRES_PER_M3;
    }

    private Addition bucketsOf(Offer offer, double wantedKg) {
        double bucket = offer.bucketKg(bucketLitres);
        double kg = Math.min(offer.mostKg(), Math.ceil(wantedKg / bucket) * bucket);
        return new Addition(offer.id(), kg, kg / offer.bucketDensityKgM3() * Density.LITRES_PER_M3, 1);
    }

    /**
     * What would have to be got. Dry leaves or straw that bring it nearly into range go before wood that brings it quite
     * there, and before two things: wood rots for years, and one thing is sooner got than two.
     */
    private Optional<Unlock> unlock(
            Heap start, List<Offer> left, Optional<Addition> opening, boolean alkaline, List<Material> usual) {
        List<Material> may = usual.stream().filter(m -> mayBeAdded(m, alkaline)).toList();
        List<Offer> soft = offers(may.stream()
                .filter(m -> m.group() == Material.Group.CARBON_RICH)
                .toList());
        List<Offer> one = mender.unlock(start, left, soft, Mender.Most.ONE);
        if (!one.isEmpty()) {
            return Optional.of(few.unlock(start, left, one, opening));
        }
        List<Offer> best = mender.unlock(start, left, offers(may), Mender.Most.TWO);
        boolean woody = best.stream().anyMatch(o -> materials.get(o.id()).group() == Material.Group.WOODY);
        if (best.size() == 1 && !woody) {
            return Optional.of(few.unlock(start, left, best, opening));
        }
        Mender nearly = new Mender(limits, goals.nearly(limits));
        List<Offer> near = nearly.unlock(start, left, soft, Mender.Most.ONE);
        if (!near.isEmpty()) {
            return Optional.of(new FewThings(nearly, bucketLitres).unlock(start, left, near, opening));
        }
        return best.isEmpty() ? Optional.empty() : Optional.of(few.unlock(start, left, best, opening));
    }

    private static List<Offer> offers(List<Material> materials) {
        return materials.stream()
                .map(m -> Offer.of(m, Double.POSITIVE_INFINITY))
                .toList();
    }

    private static List<Offer> less(List<Offer> offers, Addition taken) {
        return offers.stream()
                .map(o -> o.id().equals(taken.material()) ? o.less(taken.kg()) : o)
                .toList();
    }

    private static Offer offer(List<Offer> offers, String id) {
        return offers.stream().filter(o -> o.id().equals(id)).findFirst().orElseThrow();
    }

    private static double kilograms(Amount amount, Material material) {
        return amount.isMass()
                ? amount.kilograms()
                : amount.litres() * Density.byHand(material).likely() / Density.LITRES_PER_M3;
    }
}
