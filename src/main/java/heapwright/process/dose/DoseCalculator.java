package heapwright.process.dose;

import heapwright.knowledge.Dose;

/** The amount of each remedy for one pile. */
public final class DoseCalculator {

    private DoseCalculator() {}

    /**
     * The amount for one pile: finite, zero or more, and within the limits.
     *
     * @throws IllegalArgumentException when a limit that it needs has no value
     */
    public static DoseAmount calculate(Dose dose, DoseContext context) {
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
