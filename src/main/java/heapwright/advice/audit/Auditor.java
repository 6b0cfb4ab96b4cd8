package heapwright.advice.audit;

import heapwright.advice.danger.Alarm;
import heapwright.advice.danger.DangerWatch;
import heapwright.advice.engine.Inference;
import heapwright.advice.fact.Barred;
import heapwright.advice.fact.Mark;
import heapwright.advice.fact.Reads;
import heapwright.advice.observe.Quantities;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Limit;
import heapwright.knowledge.Material;
import heapwright.knowledge.Reading;
import heapwright.knowledge.Trait;
import heapwright.pile.Container;
import heapwright.pile.Gathered;
import heapwright.pile.Pile;
import heapwright.process.dose.Limits;
import heapwright.process.dose.PileStock;
import heapwright.process.mend.Addition;
import heapwright.process.mend.Goals;
import heapwright.process.mend.Offer;
import heapwright.process.mend.Plan;
import heapwright.process.mend.ReadyRange;
import heapwright.process.mend.Yield;
import heapwright.process.mixture.Averaging;
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
import java.util.stream.Stream;

/** Audits a recipe: the numbers, the rules' judgement, the mend from what is at hand, the plan to build it. */
public final class Auditor {

    /** What is left of a recipe of hardly anything but soil or ash: less than a gram is nothing to build with. */
    private static final double LEAST_KG = 0.001;

    private static final String BUCKET = "bucket";

    private static final String TEASPOON = "teaspoon";

    private final Knowledge knowledge;
    private final Inference inference;
    private final MixtureCalculator calculator;
    private final KeepOuts keepOuts;
    private final DangerWatch watch;

    /**
     * Prepares.
     *
     * @param knowledge the tables
     * @param inference with the audit rules
     * @param watch looks for a danger at a pile that is built already
     */
    public Auditor(Knowledge knowledge, Inference inference, DangerWatch watch, MixtureCalculator calculator) {
        this.watch = watch;
        this.knowledge = knowledge;
        this.inference = inference;
        this.calculator = calculator;
        this.keepOuts = new KeepOuts(knowledge);
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
        Pile gathered = Gathered.of(pile);
        return PileMixture.of(gathered, materials, calculator).map(m -> audit(pile, gathered, materials, m, ownRatio));
    }

    private Audit audit(Pile told, Pile pile, Materials materials, Mixture mixture, OptionalDouble ownRatio) {
        Optional<Alarm> alarm = watch.of(pile);
        List<Portion> portions = PileMixture.portions(pile, materials);
        Quantities quantities = new Quantities(pile, knowledge, Optional.of(mixture));
        List<Reads> readings = RecipeReadings.of(pile, quantities, mixture);
        List<Material> barred = keepOuts.of(portions);
        List<Object> facts = new ArrayList<>(quantities.limits());
        facts.addAll(readings);
        facts.addAll(RecipeFacts.of(pile, materials));
        barred.forEach(m -> facts.add(
                new Barred(m.keepOut().orElseThrow().bar(), m.id(), m.traits().contains(Trait.SODIUM))));
        List<Judgement> judgements = inference.audit(facts).stream()
                .map(Judgement::of)
                .sorted(Comparator.comparing(Judgement::mark).reversed().thenComparing(Judgement::topic))
                .toList();
        double cold = quantities.limit(Limit.MEAN_COLD_SEASON);
        Optional<Reads> coldest = readings.stream()
                .filter(r -> r.reading() == Reading.COLDEST_MONTH_AHEAD)
                .findFirst();
        return new Audit(
                told,
                alarm,
                mixture,
                readings,
                judgements.stream()
                        .map(Judgement::mark)
                        .max(Comparator.naturalOrder())
                        .orElse(Mark.FITS),
                judgements,
                barred,
                OwnFigureDoubt.doubtful(pile, knowledge.materials(), materials),
                alarm.isPresent() || pile.container().kind().worksCold()
                        ? Optional.empty()
                        : proposal(pile, materials, portions, mixture, coldest.map(r -> r.likelyBelow(cold))),
                Optional.empty(),
                ownRatio.isPresent() ? Averaging.explain(ownRatio.getAsDouble(), portions) : Optional.empty());
    }

    /** @param cold whether a cold month lies ahead; empty where the place is not known */
    private Optional<Proposal> proposal(
            Pile pile, Materials materials, List<Portion> portions, Mixture whole, Optional<Boolean> cold) {
        List<Material> beside = Stream.concat(
                        portions.stream().map(Portion::material),
                        pile.atHand().stream().map(s -> materials.get(s.material())))
                .toList();
        Limits limits = limits(pile);
        Trimming trimming = Trimming.of(
                portions.stream()
                        .filter(p -> !keepOuts.leftOut(p.material(), beside))
                        .toList(),
                limits,
                knowledge.measures().get(TEASPOON).litres());
        List<Portion> kept = trimming.portions();
        if (kept.stream().mapToDouble(p -> p.kgWet().likely()).sum() < LEAST_KG) {
            return Optional.empty();
        }
        Mixture mixture = kept.equals(portions) ? whole : calculator.mix(kept, PileMixture.observed(pile, materials));
        if (mixture.masses().dry().likely() < LEAST_KG) {
            return Optional.empty();
        }
        Mended chosen = mended(pile, materials, limits, kept, mixture);
        Mend mend = chosen.mend();
        Mixture mended = mended(materials, chosen.kept(), chosen.mixture(), mend.chosen());
        double built = Built.volumeM3(mended).likely();
        Batch asItIs = new Batch(mend.chosen(), mended, List.of());
        Optional<Batch> batch = asItIs.goesWrong(limits)
                ? mend.unlock()
                        .map(u -> new Batch(
                                u.plan(), mended(materials, chosen.kept(), chosen.mixture(), u.plan()), u.materials()))
                : Optional.of(asItIs);
        return Optional.of(new Proposal(
                chosen.mixture(),
                portions.stream()
                        .map(Portion::material)
                        .filter(m -> keepOuts.leftOut(m, beside) || trimming.leavesOut(m))
                        .distinct()
                        .toList(),
                trimming.trimmed().stream().filter(t -> t.litres() > 0).toList(),
                chosen.less(),
                batch.filter(asItIs::equals).isPresent() ? mend.goodEnough(materials) : mend,
                pile.container().kind() == Container.Kind.LEAF_CAGE
                        ? 1
                        : Math.max(1, limits.of(Limit.VOLUME_SMALL) / built),
                batch.map(b -> new Proposal.Build(
                        new BuildPlanner(knowledge, limits, materials)
                                .plan(pile, chosen.kept(), b.mixture(), b.mend(), cold.orElse(false)),
                        b.countsOn(),
                        Yield.of(b.mixture().looseM3(), PileStock.of(b.mixture()), Yield.Kind.of(b.mixture())),
                        ReadyRange.of(pile.built(), care(b.mixture(), limits, cold.orElse(true)))))));
    }

    /**
     * What goes in and how it is mended.
     *
     * @param kept what goes in
     * @param mixture what it makes
     * @param mend what is added
     * @param less of what less was taken than told, so that nothing need be fetched
     */
    private record Mended(List<Portion> kept, Mixture mixture, Mend mend, Optional<Trimming.Trimmed> less) {}

    /** Mended with what is at hand; where it would still rot or reek, with less of one thing; else as near as it comes. */
    private Mended mended(Pile pile, Materials materials, Limits limits, List<Portion> kept, Mixture mixture) {
        Mended told = mended(pile, materials, limits, kept, mixture, Optional.empty());
        Plan plan = told.mend().chosen();
        return !new Batch(plan, mended(materials, kept, mixture, plan), List.of()).goesWrong(limits)
                ? told
                : LessOfOne.of(
                                kept,
                                mixture,
                                Feeding.waterLitres(kept, limits),
                                goals(pile, mixture, limits),
                                bucketLitres(pile))
                        .map(less -> mended(
                                pile,
                                materials,
                                limits,
                                less.portions(),
                                calculator.mix(less.portions(), PileMixture.observed(pile, materials)),
                                Optional.of(less.taken())))
                        .filter(less -> less.mend().chosen().meetsAll())
                        .orElse(told);
    }

    private Mended mended(
            Pile pile,
            Materials materials,
            Limits limits,
            List<Portion> kept,
            Mixture mixture,
            Optional<Trimming.Trimmed> less) {
        Mend mend = new Mending(materials, keepOuts, limits, goals(pile, mixture, limits), bucketLitres(pile))
                .mend(pile, mixture, Feeding.waterLitres(kept, limits));
        return new Mended(kept, mixture, mend, less);
    }

    /** The mixture with all that is added but water, which changes neither its bulk nor what it becomes. */
    private Mixture mended(Materials materials, List<Portion> kept, Mixture mixture, Plan mend) {
        List<Addition> solid = mend.additions().stream()
                .filter(a -> !a.material().equals(Offer.WATER))
                .toList();
        if (solid.isEmpty()) {
            return mixture;
        }
        List<Portion> all = new ArrayList<>(kept);
        solid.forEach(a -> all.add(Portion.ofKilograms(materials.get(a.material()), a.kg())));
        return calculator.mix(all);
    }

    private double bucketLitres(Pile pile) {
        return pile.measures()
                .getOrDefault(BUCKET, knowledge.measures().get(BUCKET).litres());
    }

    private static Goals goals(Pile pile, Mixture mixture, Limits limits) {
        boolean late = mixture.allCarbonToNitrogen().likely() >= limits.of(Limit.CN_GOOD_LOW);
        Goals good = late
                ? Goals.good(limits).withLateCarbon(mixture.carbonToNitrogen().likely())
                : Goals.good(limits);
        return pile.container().kind() == Container.Kind.LEAF_CAGE ? good.withoutNitrogen() : good;
    }

    private Limits limits(Pile pile) {
        Map<Limit, Double> values = new EnumMap<>(Limit.class);
        knowledge
                .limits()
                .forEach((limit, info) -> values.put(limit, pile.limits().getOrDefault(limit.id(), info.value())));
        return new Limits(values);
    }

    /** Leaves alone turn to leaf mould; leaves that were given nitrogen enough rot as any heap does. */
    private static ReadyRange.Care care(Mixture mixture, Limits limits, boolean cold) {
        if (mixture.sharePct(Trait.LEAVES) > 80
                && PileStock.of(mixture).carbonToNitrogen().likely() > limits.of(Limit.CN_SLOW)) {
            return ReadyRange.Care.UNTENDED_LEAVES;
        }
        if (mixture.sharePct(Trait.MANURE) > 50) {
            return cold ? ReadyRange.Care.MANURE_WINTER : ReadyRange.Care.MANURE_SUMMER;
        }
        return ReadyRange.Care.USUAL;
    }
}
