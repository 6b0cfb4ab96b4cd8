package heapwright.process.dose;

import heapwright.knowledge.Dose;
import heapwright.knowledge.Material;
import heapwright.process.mixture.Basis;
import heapwright.process.mixture.Density;
import java.util.List;
import java.util.Set;

/** The amount of each remedy for one pile. */
public final class DoseCalculator {

    /** More of a stuff than this many times the pile's own volume is not told: nobody builds two piles to mend one; judgement. */
    private static final double MOST_WHOLE = 2;

    /** Doses of whose need nothing is measured or felt, as moisture is. */
    private static final Set<Dose> ASSUMED_NEED = Set.of(Dose.GREENS, Dose.MANURE, Dose.BIND_NITROGEN, Dose.BULKING);

    private DoseCalculator() {}

    /**
     * The amount for one pile: finite, zero or more, and within the limits. Whatever it is, it takes no more room than the
     * largest share of the pile's volume that may be given at once. Where what is at hand of a material would be too
     * little of it, the amount is what else serves, and says how little that was.
     *
     * @throws IllegalArgumentException when a limit that it needs has no value
     */
    public static DoseAmount calculate(Dose dose, DoseContext context) {
        DoseAmount amount = held(dose, context);
        return !amount.isNeeded() && outgrows(amount, context.stock()) ? amount.without(Term.Key.FULL_NEED) : amount;
    }

    /** Whether the whole of a need would be a heap of its own beside the pile. */
    static boolean outgrows(DoseAmount amount, PileStock stock) {
        double most = MOST_WHOLE * stock.volumeM3().likely() * Density.LITRES_PER_M3;
        return amount.whole().filter(w -> w.litres().likely() > most).isPresent();
    }

    private static DoseAmount held(Dose dose, DoseContext context) {
        DoseAmount amount = less(full(dose, context), context).within(context.mostLitres());
        if (amount.cap().filter(c -> c == Cap.AT_HAND).isEmpty()) {
            return amount;
        }
        Material material = amount.material().orElseThrow();
        DoseAmount whole = full(dose, context.withPlenty(material)).within(context.mostLitres());
        if (amount.kg().likely() >= leastWorthIt(whole)) {
            return amount;
        }
        if (!context.isAtHand(material)) {
            // What a kitchen saves up falls short; barrows of it cannot be had.
            return DoseAmount.none(dose, amount.material(), Cap.TOO_LITTLE, amount.working())
                    .without(Term.Key.FULL_NEED);
        }
        DoseAmount other = calculate(dose, context.without(material));
        double share = 100 * amount.kg().likely() / needKg(whole);
        return other.isNeeded()
                ? other.and(Term.of(Term.Key.SHARE_AT_HAND, share, Basis.REPORTED))
                : DoseAmount.none(dose, amount.material(), Cap.TOO_LITTLE, amount.working());
    }

    /**
     * An amount without what was given of it since the step was taken on, where that cannot show in the figures: of a
     * pile of unknown recipe the need is assumed, and the same the day after.
     */
    private static DoseAmount less(DoseAmount full, DoseContext context) {
        boolean assumed = context.stock().recipeBasis() == Basis.ASSUMED && ASSUMED_NEED.contains(full.dose());
        double given = assumed ? full.material().map(context.given()::kgLike).orElse(0.0) : 0;
        if (given <= 0 || !full.isNeeded()) {
            return full;
        }
        double left = full.kg().likely() - given;
        return left < Ceiling.LEAST_SHARE * full.kg().likely()
                ? DoseAmount.none(full.dose(), full.material(), Cap.SEASON, List.of())
                : full.atMostKg(left);
    }

    /** The least that is worth the work: a part of the need, or of what the pile can take where that is less still, kg. */
    private static double leastWorthIt(DoseAmount whole) {
        double least = Ceiling.LEAST_SHARE * needKg(whole);
        double most = whole.kg().likely();
        return most >= least ? least : Ceiling.LEAST_SHARE * most;
    }

    private static double needKg(DoseAmount whole) {
        return whole.working().stream()
                .filter(term -> term.key() == Term.Key.FULL_NEED)
                .mapToDouble(term -> term.value().likely())
                .findFirst()
                .orElse(whole.kg().likely());
    }

    private static DoseAmount full(Dose dose, DoseContext context) {
        return switch (dose) {
            case SOAK_UP -> WaterDoses.soakUp(context);
            case WATER_TO_TARGET -> WaterDoses.toTarget(context);
            case WATER_THE_CORE -> WaterDoses.core(context);
            case SOAK_WOODY -> WaterDoses.soakWoody(context);
            case UREA -> FertiliserDoses.urea(context);
            case AMMONIUM_SULPHATE -> FertiliserDoses.ammoniumSulphate(context);
            case MEAL -> FertiliserDoses.meal(context);
            case MANURE -> MixInDoses.manure(context);
            case GREENS -> MixInDoses.greens(context);
            case BIND_NITROGEN -> MixInDoses.bindNitrogen(context);
            case BULKING -> AirDoses.bulking(context);
            case ASH -> SurfaceDoses.ash(context);
            case STARTER -> SurfaceDoses.starter(context);
            case COVER -> SurfaceDoses.cover(context);
            case INSULATION -> SurfaceDoses.insulation(context);
            case ENLARGE -> SurfaceDoses.enlarge(context);
        };
    }
}
