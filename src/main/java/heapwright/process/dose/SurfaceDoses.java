package heapwright.process.dose;

import heapwright.knowledge.Dose;
import heapwright.knowledge.Limit;
import heapwright.knowledge.Material;
import heapwright.knowledge.Trait;
import heapwright.process.dose.Term.Key;
import heapwright.process.mixture.Band;
import heapwright.process.mixture.Basis;
import heapwright.process.mixture.Density;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Doses that go on, round or over a pile, and starters. */
final class SurfaceDoses {

    /** Mature compost as a starter, percent of wet mass: 5 (KARN) and 5 to 7.5 (SUST20), published. */
    private static final Band STARTER_PCT = new Band(5, 5, 7.5);

    /** Thin cover, cm: judgement. */
    private static final Band THIN_COVER_CM = new Band(3, 5, 8);

    /** Soil lies heavy and shuts out air: no more than a sprinkle, cm; judgement. */
    private static final Band SOIL_COVER_CM = new Band(1, 2, 3);

    /** Winter cover of finished compost, cm: 15 to 20 (LYNCH96, published). */
    private static final Band WINTER_COVER_CM = new Band(15, 15, 20);

    /** Straw or leaves on top of a pile, cm: common practice. */
    private static final Band INSULATION_CM = new Band(20, 25, 30);

    /** More than half as much again is not gathered in one go in winter (judgement). */
    private static final double GROWTH = 1.5;

    private SurfaceDoses() {}

    static DoseAmount ash(DoseContext context) {
        PileStock stock = context.stock();
        Limits limits = context.limits();
        Function<Material, DoseAmount> dust = material -> {
            double perKg = Density.LITRES_PER_M3 / material.densityKgM3().high();
            double byMass = limits.share(Limit.ASH_MASS_MAX) * stock.wetKg().likely()
                    - context.given().alkaliKg();
            double most = limits.of(Limit.ASH_MAX) * stock.volumeM3().likely();
            double left = most - context.given().alkaliLitres();
            if (Math.min(left, byMass * perKg) < most * Ceiling.LEAST_SHARE) {
                return DoseAmount.none(Dose.ASH, Optional.of(material), Cap.SEASON, List.of());
            }
            Ceiling held = Ceiling.of(new Band(most / 2, most, most))
                    .under(left, Cap.SEASON)
                    .under(byMass * perKg, Cap.SHARE_OF_PILE);
            double kg = held.amount().likely() / perKg;
            return DoseAmount.ofVolume(
                    Dose.ASH,
                    material,
                    held.amount(),
                    held.cap(),
                    Working.start()
                            .and(Key.PILE_VOLUME, stock.volumeM3(), stock.volumeBasis())
                            .and(
                                    Key.SHARE_OF_PILE_MASS,
                                    100 * kg / stock.wetKg().likely(),
                                    stock.volumeBasis())
                            .terms());
        };
        return with(context, Dose.ASH, dust, "wood-ash");
    }

    static DoseAmount starter(DoseContext context) {
        PileStock stock = context.stock();
        Function<Material, DoseAmount> seed = material -> DoseAmount.ofMaterial(
                Dose.STARTER,
                material,
                new Band(
                        stock.wetKg().likely() * STARTER_PCT.low() / 100,
                        stock.wetKg().likely() * STARTER_PCT.likely() / 100,
                        stock.wetKg().likely() * STARTER_PCT.high() / 100),
                Optional.empty(),
                Working.start()
                        .and(Key.PILE_MASS, stock.wetKg(), stock.recipeBasis())
                        .and(Key.SHARE_OF_PILE_MASS, STARTER_PCT, Basis.REPORTED)
                        .terms());
        return with(context, Dose.STARTER, seed, "compost-finished", "vermicompost", "leaf-mould");
    }

    static DoseAmount cover(DoseContext context) {
        double top = context.shape().topM2();
        Function<Material, DoseAmount> lay = material -> {
            Band compost = context.coldSeason() ? WINTER_COVER_CM : THIN_COVER_CM;
            Band depth = material.traits().contains(Trait.SOIL) ? SOIL_COVER_CM : compost;
            return DoseAmount.ofVolume(
                    Dose.COVER,
                    material,
                    depth.times(top * Density.LITRES_PER_M3 / 100),
                    Optional.empty(),
                    Working.start()
                            .and(Key.TOP_AREA, top, context.stock().volumeBasis())
                            .and(Key.LAYER_DEPTH, depth, Basis.REPORTED)
                            .terms());
        };
        return with(context, Dose.COVER, lay, "compost-finished", "leaf-mould", "soil");
    }

    /**
     * The loose layer on top, where most heat leaves. As thick a coat all round would be nearly twice the pile; the sides
     * are for bales, sacks and boards, which nobody measures by the bucket.
     */
    static DoseAmount insulation(DoseContext context) {
        double top = context.shape().topM2();
        Ceiling layer = Ceiling.of(INSULATION_CM.map(cm -> top * cm / 100 * Density.LITRES_PER_M3))
                .under(context.mostLitres(), Cap.SHARE_OF_PILE);
        Function<Material, DoseAmount> lay = material -> DoseAmount.ofVolume(
                Dose.INSULATION,
                material,
                layer.amount(),
                layer.cap(),
                Working.start()
                        .and(Key.LAYER_DEPTH, INSULATION_CM, Basis.REPORTED)
                        .and(Key.TOP_AREA, top, context.stock().volumeBasis())
                        .terms());
        return with(context, Dose.INSULATION, lay, "straw-general", "straw-wheat", "leaves-old-brown", "leaves-mixed");
    }

    /**
     * Fresh mix by volume: at least to the smallest size that holds heat, likely half as much again, at most to the size
     * that a cold winter asks for; of that no more at once than the pile may have. What it is made of is a matter of its
     * own recipe. A pile so small that this is hardly a step on the way is better built into a new one.
     */
    static DoseAmount enlarge(DoseContext context) {
        PileStock stock = context.stock();
        double least = context.limits().of(Limit.VOLUME_SMALL);
        double most = context.coldSeason() ? context.limits().of(Limit.VOLUME_WINTER) : least;
        double have = stock.volumeM3().likely();
        double target = Math.max(least, Math.min(most, have * GROWTH));
        Band missing = Band.around(least - have, target - have, most - have).atLeast(0);
        List<Term> working = List.of(
                new Term(Key.PILE_VOLUME, stock.volumeM3(), stock.volumeBasis()),
                new Term(Key.TARGET_VOLUME, Band.around(least, target, most), Basis.REPORTED));
        if (missing.likely() <= 0) {
            return DoseAmount.none(Dose.ENLARGE, Optional.empty(), Cap.NO_NEED, working);
        }
        Ceiling held = Ceiling.of(missing).under(context.mostLitres() / Density.LITRES_PER_M3, Cap.SHARE_OF_PILE);
        if (held.coversTooLittle(missing)) {
            return DoseAmount.none(Dose.ENLARGE, Optional.empty(), Cap.TOO_LITTLE, working);
        }
        return new DoseAmount(
                Dose.ENLARGE,
                Optional.empty(),
                held.amount().times(stock.densityKgM3()),
                held.amount().times(Density.LITRES_PER_M3),
                1,
                0,
                Band.ZERO,
                held.cap(),
                Working.of(working)
                        .and(Key.FULL_NEED, missing.times(stock.densityKgM3()), stock.volumeBasis())
                        .terms());
    }

    /** The first usual material that is known, with what of it there is at hand as the ceiling where that was stated. */
    private static DoseAmount with(
            DoseContext context, Dose dose, Function<Material, DoseAmount> amount, String... usual) {
        List<String> ids = List.of(usual);
        return Choice.first(context, material -> ids.contains(material.id()), usual)
                .map(choice -> held(amount.apply(choice.material()), choice.availableKg()))
                .orElseGet(() -> DoseAmount.none(dose, Optional.empty(), Cap.NO_MATERIAL, List.of()));
    }

    private static DoseAmount held(DoseAmount full, double availableKg) {
        if (full.kg().likely() <= availableKg) {
            return full;
        }
        return DoseAmount.ofMaterial(
                full.dose(),
                full.material().orElseThrow(),
                full.kg().atMost(availableKg),
                Optional.of(Cap.AT_HAND),
                full.working());
    }
}
