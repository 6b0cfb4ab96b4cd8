package heapwright.process.dose;

import heapwright.knowledge.Dose;
import heapwright.knowledge.Limit;
import heapwright.knowledge.Material;
import heapwright.knowledge.Trait;
import heapwright.process.dose.Term.Key;
import heapwright.process.mixture.Band;
import heapwright.process.mixture.Basis;
import heapwright.process.mixture.Composition;
import heapwright.process.mixture.Density;
import heapwright.process.mixture.Equations;
import heapwright.process.mixture.FreeAirSpace;
import java.util.List;
import java.util.Optional;

/** Coarse woody material that opens air space. Volumes of pile and bulking add up, as coarse pieces hold their space. */
final class AirDoses {

    /** Above the edge of poor by this much a pile has air to spare: from 30 to 35 % (TN24, published). */
    private static final double BEYOND_POOR_PCT = 5;

    /** No pile is heavier, kg per cubic metre: about that of wet soil. */
    private static final double HEAVIEST = 2000;

    private static final int STEPS = 200;

    private AirDoses() {}

    static DoseAmount bulking(DoseContext context) {
        Limits limits = context.limits();
        PileStock stock = tooDense(context);
        double goal = limits.of(Limit.FAS_POOR) + BEYOND_POOR_PCT;
        Optional<Choice> choice = Choice.first(
                context,
                material -> material.traits().contains(Trait.COARSE)
                        && material.group() == Material.Group.WOODY
                        && Density.settled(material).likely() < stock.densityKgM3(),
                "twigs",
                "chips-hardwood",
                "chips-softwood",
                "prunings-mixed");
        List<Term> pile = List.of(
                new Term(Key.PILE_VOLUME, stock.volumeM3(), stock.volumeBasis()),
                new Term(Key.AIR_BEFORE, airPct(stock), stock.densityBasis()),
                Term.of(Key.TARGET_AIR, goal, Basis.REPORTED));
        if (airPct(stock).likely() >= goal) {
            return DoseAmount.none(Dose.BULKING, choice.map(Choice::material), Cap.NO_NEED, pile);
        }
        if (choice.isEmpty()) {
            return DoseAmount.none(Dose.BULKING, Optional.empty(), Cap.NO_MATERIAL, pile);
        }
        Material material = choice.get().material();
        double most = context.mostLitres() / Density.LITRES_PER_M3;
        double litres = Density.LITRES_PER_M3 * leastM3(stock, material, goal, most);
        double available = choice.get().availableKg()
                * Density.LITRES_PER_M3
                / Density.byHand(material).likely();
        Ceiling held = Ceiling.of(new Band(litres / 2, litres, Density.LITRES_PER_M3 * most))
                .under(available, Cap.AT_HAND);
        double after = airAfterPct(stock, material, held.amount().likely() / Density.LITRES_PER_M3);
        boolean tooLittle = after < goal - 1e-6 && held.cap().isEmpty();
        return DoseAmount.ofVolume(
                Dose.BULKING,
                material,
                held.amount(),
                tooLittle ? Optional.of(Cap.SHARE_OF_PILE) : held.cap(),
                Working.of(pile).and(Key.AIR_AFTER, after, stock.densityBasis()).terms());
    }

    /**
     * The pile as short of air as whoever asks found it: by its measured density, else at least at the edge of poor,
     * since pieces lie closer in an old wet pile than their recipe tells.
     */
    private static PileStock tooDense(DoseContext context) {
        PileStock stock = context.stock();
        double edge = context.limits().of(Limit.FAS_POOR);
        if (stock.densityBasis() == Basis.MEASURED || airPct(stock).likely() <= edge) {
            return stock;
        }
        double light = stock.densityKgM3();
        double heavy = HEAVIEST;
        for (int i = 0; i < STEPS && heavy - light > 1e-6; i++) {
            double middle = (light + heavy) / 2;
            if (airPct(stock.atDensity(middle, Basis.ASSUMED)).likely() > edge) {
                light = middle;
            } else {
                heavy = middle;
            }
        }
        return stock.atDensity(heavy, Basis.ASSUMED);
    }

    private static Band airPct(PileStock stock) {
        return FreeAirSpace.band(stock.densityKgM3(), 1 - stock.moisturePct().likely() / 100, stock.organicMatter())
                .times(100);
    }

    /** The least volume that reaches the goal, cubic metres; the most there may be where none does. */
    private static double leastM3(PileStock stock, Material material, double goalPct, double most) {
        double low = 0;
        double high = most;
        if (airAfterPct(stock, material, most) < goalPct) {
            return most;
        }
        for (int i = 0; i < STEPS && high - low > 1e-6; i++) {
            double middle = (low + high) / 2;
            if (airAfterPct(stock, material, middle) < goalPct) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    /** Likely air space after mixing in a volume of the material, percent. */
    private static double airAfterPct(PileStock stock, Material material, double addedM3) {
        double kg = addedM3 * Density.byHand(material).likely();
        Composition of = Composition.of(material);
        double wet = stock.wetKg().likely() + kg;
        double dryBefore = stock.wetKg().likely() * (1 - stock.moisturePct().likely() / 100);
        double dry = dryBefore + kg * of.dry();
        double ashAdded = Equations.ashFromCarbonPct(of.carbonPct()) / 100;
        double organic = dryBefore * stock.organicMatter() + kg * of.dry() * (1 - ashAdded);
        double volume = stock.wetKg().likely() / stock.densityKgM3() + addedM3;
        return 100 * FreeAirSpace.band(wet / volume, dry / wet, organic / dry).likely();
    }
}
