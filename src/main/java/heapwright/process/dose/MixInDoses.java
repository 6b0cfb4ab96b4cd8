package heapwright.process.dose;

import heapwright.knowledge.Dose;
import heapwright.knowledge.Limit;
import heapwright.knowledge.Material;
import heapwright.process.dose.Term.Key;
import heapwright.process.mixture.Band;
import heapwright.process.mixture.Basis;
import heapwright.process.mixture.Composition;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** Materials mixed in by the bucket to move C:N: greens and manure downwards, carbon upwards. */
final class MixInDoses {

    /** What lies at hand and falls short of the aim is the dose where it goes this part of the way, percent; judgement. */
    private static final double WORTH_THE_WAY = 25;

    /** What brings less than a gram of carbon beyond the aim in a kilogram binds nothing; judgement. */
    private static final double LEAST_BINDING = 0.001;

    private MixInDoses() {}

    static DoseAmount greens(DoseContext context) {
        return lower(
                context,
                Dose.GREENS,
                material -> material.group() == Material.Group.NITROGEN_RICH,
                "grass-clippings",
                "kitchen-scraps",
                "coffee-grounds");
    }

    static DoseAmount manure(DoseContext context) {
        return lower(
                context,
                Dose.MANURE,
                material -> material.group() == Material.Group.MANURE,
                "manure-hen-home",
                "manure-rabbit",
                "manure-cattle",
                "manure-horse-straw");
    }

    /**
     * Carbon that brings a pile too rich in nitrogen up to the aim. One whose recipe is not rich may still be so within
     * the doubt of that recipe, since its smell is why a dose is asked for: then the low end of its C:N is taken, and
     * said to be assumed. Where not even that is rich, it is one of its pockets, and no amount follows from its figures.
     */
    static DoseAmount bindNitrogen(DoseContext context) {
        PileStock stock = context.stock();
        Limits limits = context.limits();
        double aim = limits.aimCarbonToNitrogen();
        boolean known = stock.recipeBasis() != Basis.ASSUMED;
        boolean rich = stock.carbonToNitrogen().likely() < aim;
        boolean doubtful = !rich && stock.carbonToNitrogen().low() < aim;
        Basis basis = known && !doubtful ? stock.recipeBasis() : Basis.ASSUMED;
        Band ratio = known
                ? doubtful ? Band.exact(stock.carbonToNitrogen().low()) : stock.carbonToNitrogen()
                : Band.around(
                        limits.of(Limit.CN_AMMONIA),
                        (limits.of(Limit.CN_AMMONIA) + limits.of(Limit.CN_GOOD_LOW)) / 2,
                        limits.of(Limit.CN_GOOD_LOW));
        Band surplus = Band.around(
                surplus(stock.carbonKg().low(), ratio.high(), aim),
                surplus(stock.carbonKg().likely(), ratio.likely(), aim),
                surplus(stock.carbonKg().high(), ratio.low(), aim));
        List<Term> aims = List.of(
                new Term(Key.PILE_CARBON_TO_NITROGEN, ratio, basis),
                Term.of(Key.TARGET_CARBON_TO_NITROGEN, aim, Basis.REPORTED));
        List<Term> pile = Working.of(aims)
                .and(Key.NITROGEN_SURPLUS, surplus.times(1000), basis)
                .terms();
        Optional<Choice> choice = Choice.first(
                context,
                material -> material.group() == Material.Group.CARBON_RICH
                        && material.carbonToNitrogen().typical() > limits.of(Limit.CN_SLOW)
                        && binding(material, aim) > LEAST_BINDING,
                "straw-general",
                "leaves-mixed",
                "leaves-old-brown",
                "cardboard",
                "leaves-shredded",
                "leaves-oak",
                "leaves-maple",
                "newsprint");
        if (surplus.likely() <= 0) {
            return DoseAmount.none(Dose.BIND_NITROGEN, choice.map(Choice::material), Cap.NO_NEED, aims);
        }
        if (choice.isEmpty()) {
            return DoseAmount.none(Dose.BIND_NITROGEN, Optional.empty(), Cap.NO_MATERIAL, pile);
        }
        Material material = choice.get().material();
        Band full = surplus.times(aim / binding(material, aim));
        Ceiling held = Ceiling.of(full)
                .under(WaterDoses.shareOfVolumeKg(context, material), Cap.SHARE_OF_PILE)
                .under(choice.get().availableKg(), Cap.AT_HAND);
        DoseAmount told = amount(context, Dose.BIND_NITROGEN, material, full, held, pile, basis);
        // Where the whole would be a heap of its own, a first portion still eases the smell.
        return !told.isNeeded() && DoseCalculator.outgrows(told, stock)
                ? given(context, Dose.BIND_NITROGEN, material, full, held, pile, basis)
                : told;
    }

    private static DoseAmount lower(DoseContext context, Dose dose, Predicate<Material> kind, String... usual) {
        NitrogenNeed need = NitrogenNeed.of(context);
        double aim = need.aim();
        Predicate<Material> rich =
                kind.and(leanerThan(context.limits().of(Limit.CN_GOOD_LOW)).negate());
        Optional<Choice> choice = Choice.first(context, rich, usual);
        if (need.kg().likely() <= 0) {
            return DoseAmount.none(dose, choice.map(Choice::material), Cap.NO_NEED, need.terms());
        }
        Optional<DoseAmount> partWay =
                Choice.atHand(context, rich, usual).isPresent() ? Optional.empty() : partWay(context, dose, kind, need);
        if (partWay.isPresent()) {
            return partWay.get();
        }
        if (choice.isEmpty()) {
            return DoseAmount.none(dose, Optional.empty(), Cap.NO_MATERIAL, need.terms());
        }
        Material material = choice.get().material();
        Composition of = Composition.ofSeason(material);
        Band full = need.kg().times(aim / (aim * of.nitrogen() - of.carbon()));
        Ceiling held = Ceiling.of(full)
                .under(WaterDoses.shareOfVolumeKg(context, material), Cap.SHARE_OF_PILE)
                .under(untilTooWet(context, of), Cap.TOO_WET)
                .under(choice.get().availableKg(), Cap.AT_HAND);
        return amount(context, dose, material, full, held, need.terms(), need.basis());
    }

    /**
     * As much as the pile can take of what lies at hand, where that is itself too lean to bring the pile to the aim but
     * goes a fair part of the way: horse manure at 30 brings a heap of leaves from 55 to the forties.
     */
    private static Optional<DoseAmount> partWay(
            DoseContext context, Dose dose, Predicate<Material> kind, NitrogenNeed need) {
        double ratio = need.ratio().likely();
        double between = (ratio + need.aim()) / 2;
        return Choice.atHand(context, kind.and(leanerThan(between).negate()))
                .map(choice -> {
                    Material material = choice.material();
                    Composition of = Composition.ofSeason(material);
                    Ceiling held = Ceiling.of(Band.exact(WaterDoses.shareOfVolumeKg(context, material)))
                            .under(untilTooWet(context, of), Cap.TOO_WET)
                            .under(choice.availableKg(), Cap.AT_HAND);
                    double kg = held.amount().likely();
                    PileStock stock = context.stock();
                    double after = (stock.carbonKg().likely() + kg * of.carbon())
                            / (stock.carbonKg().likely() / ratio + kg * of.nitrogen());
                    Working working = Working.of(need.terms())
                            .and(Key.SHARE_OF_NEED, 100 * (ratio - after) / (ratio - need.aim()), need.basis())
                            .and(Key.MOISTURE_AFTER, WaterDoses.mixed(stock, material, kg), stock.moistureBasis())
                            .and(Key.CARBON_TO_NITROGEN_AFTER, after, need.basis());
                    return DoseAmount.ofMaterial(
                            dose,
                            material,
                            held.amount(),
                            held.cap().or(() -> Optional.of(Cap.SHARE_OF_PILE)),
                            working.terms());
                })
                .filter(amount -> amount.isNeeded()
                        && amount.working().stream()
                                .filter(term -> term.key() == Key.SHARE_OF_NEED)
                                .allMatch(term -> term.value().likely() >= WORTH_THE_WAY));
    }

    /** Whether a material has more than so many parts of carbon to one of nitrogen, of what can decay in a season. */
    /** Carbon beyond what its own nitrogen takes at the aim, kg a kg; own figures may leave it none. */
    private static double binding(Material material, double aim) {
        Composition of = Composition.ofSeason(material);
        return of.carbon() - aim * of.nitrogen();
    }

    private static Predicate<Material> leanerThan(double ratio) {
        return material -> {
            Composition of = Composition.ofSeason(material);
            return of.carbon() >= ratio * of.nitrogen();
        };
    }

    /** Mass after which the pile would pass the top of the acceptable moisture, kg. */
    private static double untilTooWet(DoseContext context, Composition of) {
        double most = context.limits().share(Limit.MOISTURE_OK_HIGH);
        PileStock stock = context.stock();
        double room = stock.wetKg().likely() * (most - stock.moisturePct().likely() / 100);
        return of.water() <= most ? Double.POSITIVE_INFINITY : room / (of.water() - most);
    }

    private static DoseAmount amount(
            DoseContext context, Dose dose, Material material, Band full, Ceiling held, List<Term> pile, Basis basis) {
        if (held.amount().likely() <= 0) {
            return DoseAmount.none(dose, Optional.of(material), held.cap().orElse(Cap.NO_NEED), pile);
        }
        if (basis != Basis.ASSUMED && held.coversTooLittle(full)) {
            return DoseAmount.none(
                    dose,
                    Optional.of(material),
                    Cap.TOO_LITTLE,
                    Working.of(pile).and(Key.FULL_NEED, full, basis).terms());
        }
        return given(context, dose, material, full, held, pile, basis);
    }

    private static DoseAmount given(
            DoseContext context, Dose dose, Material material, Band full, Ceiling held, List<Term> pile, Basis basis) {
        PileStock stock = context.stock();
        Composition of = Composition.ofSeason(material);
        double kg = held.amount().likely();
        double nitrogen = stock.nitrogenKg() + kg * of.nitrogen();
        Working working = Working.of(pile)
                .and(Key.FULL_NEED, full, basis)
                .and(Key.SHARE_OF_NEED, 100 * kg / full.likely(), basis)
                .and(Key.MOISTURE_AFTER, WaterDoses.mixed(stock, material, kg), stock.moistureBasis());
        if (basis != Basis.ASSUMED && nitrogen > 0) {
            double carbon = stock.carbonKg().likely() + kg * of.carbon();
            working = working.and(Key.CARBON_TO_NITROGEN_AFTER, carbon / nitrogen, basis);
        }
        return DoseAmount.ofMaterial(dose, material, held.amount(), held.cap(), working.terms());
    }

    private static double surplus(double carbonKg, double ratio, double aim) {
        return ratio > 0 ? Math.max(0, carbonKg * (1 / ratio - 1 / aim)) : 0;
    }
}
