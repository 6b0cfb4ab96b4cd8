package heapwright.process.dose;

import heapwright.knowledge.Dose;
import heapwright.knowledge.Limit;
import heapwright.knowledge.Material;
import heapwright.process.dose.Term.Key;
import heapwright.process.mixture.Band;
import heapwright.process.mixture.Basis;
import heapwright.process.mixture.Composition;
import heapwright.process.mixture.Density;
import heapwright.process.mixture.Equations;
import java.util.List;
import java.util.Optional;

/** Doses that move the moisture of a pile. */
final class WaterDoses {

    /** Part of the pile that counts as its core, of the volume (judgement). */
    private static final Band CORE_SHARE = new Band(1.0 / 3, 0.4, 0.5);

    /** Where neither hand, sample nor recipe shows it dry, this part of the most is tried before a squeeze (judgement). */
    private static final double TRIED_FIRST = 1.0 / 3;

    private WaterDoses() {}

    /** Dry carbon-rich material that brings the pile down to the top of the good range. */
    static DoseAmount soakUp(DoseContext context) {
        Limits limits = context.limits();
        PileStock stock = tooWet(context);
        double goal = limits.of(Limit.MOISTURE_GOOD_HIGH);
        Band surplus = waterBeyond(stock, goal);
        List<Term> pile = List.of(
                new Term(Key.PILE_MASS, stock.wetKg(), stock.recipeBasis()),
                new Term(Key.PILE_MOISTURE, stock.moisturePct(), stock.moistureBasis()),
                Term.of(Key.TARGET_MOISTURE, goal, Basis.REPORTED),
                new Term(Key.SURPLUS_WATER, surplus, stock.moistureBasis()));
        Optional<Choice> choice = Choice.first(
                context,
                material -> isDryCarbon(material, limits),
                "leaves-old-brown",
                "straw-general",
                "straw-wheat",
                "leaves-mixed",
                "cardboard",
                "leaves-shredded",
                "leaves-oak",
                "leaves-maple",
                "newsprint");
        if (surplus.likely() <= 0) {
            return DoseAmount.none(Dose.SOAK_UP, choice.map(Choice::material), Cap.NO_NEED, pile);
        }
        if (choice.isEmpty()) {
            return DoseAmount.none(Dose.SOAK_UP, Optional.empty(), Cap.NO_MATERIAL, pile);
        }
        Material material = choice.get().material();
        double dryPct = material.moisturePct().typical();
        Band full = Band.around(
                        soak(stock.wetKg().low(), stock.moisturePct().low(), dryPct, goal),
                        soak(stock.wetKg().likely(), stock.moisturePct().likely(), dryPct, goal),
                        soak(stock.wetKg().high(), stock.moisturePct().high(), dryPct, goal))
                .atLeast(0);
        Ceiling held = Ceiling.of(full)
                .under(shareOfVolumeKg(context, material), Cap.SHARE_OF_PILE)
                .under(choice.get().availableKg(), Cap.AT_HAND);
        double after = mixed(stock, material, held.amount().likely());
        return DoseAmount.ofMaterial(
                Dose.SOAK_UP,
                material,
                held.amount(),
                held.cap(),
                Working.of(pile)
                        .and(Key.FULL_NEED, full, stock.moistureBasis())
                        .and(Key.MOISTURE_AFTER, Band.exact(after), stock.moistureBasis())
                        .terms());
    }

    /** Water that brings the whole pile to the middle of the good range. */
    static DoseAmount toTarget(DoseContext context) {
        PileStock stock = felt(context) ? context.stock() : tooDry(context);
        double share = stock.moistureBasis() == Basis.ASSUMED ? TRIED_FIRST : 1;
        return water(context, Dose.WATER_TO_TARGET, stock, Band.exact(1), share);
    }

    /** Water for the dry inner part only, which the hand that felt the pile need not have met. */
    static DoseAmount core(DoseContext context) {
        return water(context, Dose.WATER_THE_CORE, tooDry(context), CORE_SHARE, CORE_SHARE.likely());
    }

    /** Water that the dry woody part takes up; a hand that felt the pile felt its wood as well. */
    static DoseAmount soakWoody(DoseContext context) {
        PileStock stock = context.stock();
        double goal = context.limits().of(Limit.MOISTURE_GOOD_LOW);
        double felt = stock.moisturePct().likely();
        double have = felt(context) || stock.moistureBasis() == Basis.MEASURED
                ? felt
                : Math.min(stock.woodyMoisturePct(), felt);
        double wet = Equations.wetForDry(stock.woodyDryKg(), have);
        double likely = Math.max(0, Equations.waterToReach(wet, have, goal));
        Band missing = Band.around(likely / 2, likely, likely * 3 / 2);
        List<Term> working = List.of(
                Term.of(Key.PILE_MOISTURE, have, stock.moistureBasis()),
                Term.of(Key.TARGET_MOISTURE, goal, Basis.REPORTED),
                new Term(Key.MISSING_WATER, missing, stock.moistureBasis()));
        if (likely <= 0) {
            return DoseAmount.none(Dose.SOAK_WOODY, Optional.empty(), Cap.NO_NEED, working);
        }
        Ceiling held = Ceiling.of(missing).under(waterAtOnce(context, 1), Cap.PER_CUBIC_METRE);
        return DoseAmount.ofWater(Dose.SOAK_WOODY, held.amount(), held.cap(), working);
    }

    /** Water that a part of the pile lacks, held under a share of the most that a pile takes at once. */
    private static DoseAmount water(DoseContext context, Dose dose, PileStock stock, Band part, double share) {
        double goal = context.limits().aimMoisturePct();
        Band whole = Band.around(
                        Equations.waterToReach(
                                stock.wetKg().high(), stock.moisturePct().low(), goal),
                        Equations.waterToReach(
                                stock.wetKg().likely(), stock.moisturePct().likely(), goal),
                        Equations.waterToReach(
                                stock.wetKg().low(), stock.moisturePct().high(), goal))
                .atLeast(0);
        Band missing = new Band(whole.low() * part.low(), whole.likely() * part.likely(), whole.high() * part.high());
        List<Term> working = List.of(
                new Term(Key.PILE_MASS, stock.wetKg(), stock.recipeBasis()),
                new Term(Key.PILE_MOISTURE, stock.moisturePct(), stock.moistureBasis()),
                Term.of(Key.TARGET_MOISTURE, goal, Basis.REPORTED),
                new Term(Key.MISSING_WATER, missing, stock.moistureBasis()));
        if (missing.likely() <= 0) {
            return DoseAmount.none(dose, Optional.empty(), Cap.NO_NEED, working);
        }
        Ceiling held = Ceiling.of(missing).under(waterAtOnce(context, share), Cap.PER_CUBIC_METRE);
        return DoseAmount.ofWater(dose, held.amount(), held.cap(), working);
    }

    private static double waterAtOnce(DoseContext context, double part) {
        return context.limits().of(Limit.WATER_MAX_AT_ONCE)
                * context.stock().volumeM3().likely()
                * part;
    }

    /** Whether a hand told how damp it is; what it told beats what a dose would take for granted. */
    private static boolean felt(DoseContext context) {
        return context.stock().moistureBasis() == Basis.REPORTED;
    }

    /** The pile as too wet as whoever asks found it: measured or felt, else at least at the edge of wet. */
    static PileStock tooWet(DoseContext context) {
        PileStock stock = context.stock();
        Limits limits = context.limits();
        double edge = limits.of(Limit.MOISTURE_OK_HIGH);
        if (stock.moistureBasis() == Basis.MEASURED
                || felt(context)
                || stock.moisturePct().likely() >= edge) {
            return stock;
        }
        Band wet = Band.around(
                Math.max(stock.moisturePct().low(), limits.of(Limit.MOISTURE_GOOD_HIGH)),
                edge,
                Math.max(stock.moisturePct().high(), limits.of(Limit.MOISTURE_SATURATED)));
        return stock.atMoisture(wet, Basis.ASSUMED);
    }

    /** The pile as too dry as whoever asks found it: measured, else at most at the edge of slow. */
    static PileStock tooDry(DoseContext context) {
        PileStock stock = context.stock();
        Limits limits = context.limits();
        double edge = limits.of(Limit.MOISTURE_SLOW);
        if (stock.moistureBasis() == Basis.MEASURED || stock.moisturePct().likely() <= edge) {
            return stock;
        }
        Band dry = Band.around(
                Math.min(stock.moisturePct().low(), limits.of(Limit.MOISTURE_STOPPED)),
                edge,
                Math.min(stock.moisturePct().high(), limits.of(Limit.MOISTURE_GOOD_LOW)));
        return stock.atMoisture(dry, Basis.ASSUMED);
    }

    private static boolean isDryCarbon(Material material, Limits limits) {
        return material.moisturePct().typical() < limits.of(Limit.MOISTURE_GOOD_LOW)
                && material.carbonToNitrogen().typical() > limits.of(Limit.CN_GOOD_HIGH)
                && (material.group() == Material.Group.CARBON_RICH || material.group() == Material.Group.WOODY);
    }

    private static Band waterBeyond(PileStock stock, double goalPct) {
        return Band.around(
                        -Equations.waterToReach(
                                stock.wetKg().low(), stock.moisturePct().low(), goalPct),
                        -Equations.waterToReach(
                                stock.wetKg().likely(), stock.moisturePct().likely(), goalPct),
                        -Equations.waterToReach(
                                stock.wetKg().high(), stock.moisturePct().high(), goalPct))
                .atLeast(0);
    }

    private static double soak(double wetKg, double moisturePct, double dryPct, double goalPct) {
        return Equations.secondForMoisture(wetKg, moisturePct, dryPct, goalPct);
    }

    /** Likely moisture of the pile after adding some material, percent. */
    static double mixed(PileStock stock, Material material, double kg) {
        double water = stock.wetKg().likely() * stock.moisturePct().likely() / 100
                + kg * Composition.of(material).water();
        return 100 * water / (stock.wetKg().likely() + kg);
    }

    /** Mass of a material that fills the largest share of the pile's volume it may have, kg. */
    static double shareOfVolumeKg(DoseContext context, Material material) {
        return context.mostLitres() * Density.byHand(material).likely() / Density.LITRES_PER_M3;
    }
}
