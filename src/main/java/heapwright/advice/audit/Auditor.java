package heapwright.advice.audit;

import heapwright.advice.engine.Inference;
import heapwright.advice.fact.Barred;
import heapwright.advice.fact.Mark;
import heapwright.advice.fact.Reads;
import heapwright.advice.observe.Quantities;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Limit;
import heapwright.knowledge.Material;
import heapwright.knowledge.Trait;
import heapwright.pile.Amount;
import heapwright.pile.Pile;
import heapwright.process.dose.Limits;
import heapwright.process.dose.PileStock;
import heapwright.process.mend.Goals;
import heapwright.process.mend.Heap;
import heapwright.process.mend.Mender;
import heapwright.process.mend.Offer;
import heapwright.process.mend.Plan;
import heapwright.process.mend.ReadyRange;
import heapwright.process.mend.Yield;
import heapwright.process.mixture.Averaging;
import heapwright.process.mixture.Density;
import heapwright.process.mixture.Materials;
import heapwright.process.mixture.Mixture;
import heapwright.process.mixture.MixtureCalculator;
import heapwright.process.mixture.PileMixture;
import heapwright.process.mixture.Portion;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Audits a recipe: the numbers, the rules' judgement, the mend from what is at hand, the plan to build it. */
public final class Auditor {

    /** Easy to come by in autumn; asked in turn which of them would make a mend possible. Judgement. */
    private static final List<String> COMMON = List.of(
            "leaves-old-brown",
            "leaves-mixed",
            "straw-general",
            "cardboard",
            "chips-hardwood",
            "grass-clippings",
            "kitchen-scraps",
            "coffee-grounds",
            "manure-horse-straw",
            "manure-hen-home");

    private static final String BUCKET = "bucket";

    private final Knowledge knowledge;
    private final Inference inference;
    private final MixtureCalculator calculator = new MixtureCalculator();

    public Auditor(Knowledge knowledge, Inference inference) {
        this.knowledge = knowledge;
        this.inference = inference;
    }

    /**
     * Audits the recipe of a pile.
     *
     * @param pile the pile
     * @param ownRatio the C:N that the person worked out, if they did
     * @return empty when the pile names no ingredients
     */
    public Optional<Audit> audit(Pile pile, OptionalDouble ownRatio) {
        Materials materials = Materials.of(knowledge.materials(), pile.materials());
        return PileMixture.of(pile, materials, calculator).map(m -> audit(pile, materials, m, ownRatio));
    }

    private Audit audit(Pile pile, Materials materials, Mixture mixture, OptionalDouble ownRatio) {
        Limits limits = limits(pile);
        List<Portion> portions = PileMixture.portions(pile, materials);
        Quantities quantities = new Quantities(pile, knowledge, Optional.of(mixture));
        List<Reads> readings = quantities.readings();
        List<Material> barred = portions.stream()
                .map(Portion::material)
                .filter(m -> m.keepOut().isPresent())
                .distinct()
                .toList();
        List<Object> facts = new ArrayList<>(quantities.limits());
        facts.addAll(readings);
        facts.addAll(RecipeFacts.of(pile, materials));
        barred.forEach(m -> facts.add(new Barred(m.keepOut().orElseThrow().bar(), m.id())));
        List<Judgement> judgements = inference.audit(facts).stream()
                .map(Judgement::of)
                .sorted(Comparator.comparing(Judgement::mark)
                        .reversed()
                        .thenComparing(Judgement::topic)
                        .thenComparing(j -> j.firing().rule().id()))
                .toList();
        PileStock stock = PileStock.of(mixture);
        Mend mend = mend(pile, materials, limits, Heap.of(stock));
        BuildPlan plan = new BuildPlanner(knowledge, limits, materials)
                .plan(
                        pile.container(),
                        portions,
                        mend.chosen(),
                        mixture.settledM3().likely());
        return new Audit(
                pile,
                mixture,
                readings,
                judgements.stream()
                        .map(Judgement::mark)
                        .max(Comparator.naturalOrder())
                        .orElse(Mark.FITS),
                judgements,
                barred,
                mend,
                plan,
                Yield.of(mixture.looseM3(), stock, kind(mixture)),
                ReadyRange.of(pile.built(), care(mixture)),
                ownRatio.isPresent() ? Averaging.explain(ownRatio.getAsDouble(), portions) : Optional.empty());
    }

    private Limits limits(Pile pile) {
        Map<Limit, Double> values = new EnumMap<>(Limit.class);
        knowledge
                .limits()
                .forEach((limit, info) -> values.put(limit, pile.limits().getOrDefault(limit.id(), info.value())));
        return new Limits(values);
    }

    private Mend mend(Pile pile, Materials materials, Limits limits, Heap heap) {
        List<Offer> offers = new ArrayList<>(List.of(Offer.water()));
        pile.atHand().forEach(stock -> {
            Material material = materials.get(stock.material());
            if (material.keepOut().isEmpty()) {
                offers.add(Offer.of(
                        material,
                        stock.available().map(a -> kilograms(a, material)).orElse(Double.POSITIVE_INFINITY)));
            }
        });
        Mender mender = new Mender(limits);
        Plan exact = mender.mend(heap, offers);
        double bucket = pile.measures()
                .getOrDefault(BUCKET, knowledge.measures().get(BUCKET).litres());
        List<Offer> common = COMMON.stream()
                .flatMap(id -> materials.find(id).stream())
                .map(m -> Offer.of(m, Double.POSITIVE_INFINITY))
                .toList();
        return new Mend(
                offers,
                exact,
                mender.mendInBuckets(heap, offers, bucket),
                mender.unlock(heap, offers, common),
                !Goals.good(limits).met(heap));
    }

    private static double kilograms(Amount amount, Material material) {
        return amount.isMass()
                ? amount.kilograms()
                : amount.litres() * Density.byHand(material).likely() / Density.LITRES_PER_M3;
    }

    private static Yield.Kind kind(Mixture mixture) {
        if (mixture.sharePct(Trait.MANURE) > 50) {
            return Yield.Kind.MANURE;
        }
        return mixture.sharePct(Trait.KITCHEN) > 0 ? Yield.Kind.MIXED : Yield.Kind.YARD;
    }

    private static ReadyRange.Care care(Mixture mixture) {
        if (mixture.sharePct(Trait.LEAVES) > 80) {
            return ReadyRange.Care.UNTENDED_LEAVES;
        }
        if (mixture.sharePct(Trait.MANURE) > 50) {
            return ReadyRange.Care.MANURE_WINTER;
        }
        return ReadyRange.Care.USUAL;
    }
}
