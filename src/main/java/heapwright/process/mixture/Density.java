package heapwright.process.mixture;

import heapwright.knowledge.Figure;
import heapwright.knowledge.Material;
import heapwright.knowledge.Trait;

/**
 * Bulk density of a material in the hand and in the pile, from its three figures: loose, settled, packed.
 *
 * <p>What is filled by hand into a bucket lies between loose and settled; what lies in a pile, under the weight of what
 * is above it, lies between settled and packed. The middle is taken as likely in both; what pours keeps its
 * typical figure in the hand. That is judgement.
 */
public final class Density {

    public static final double LITRES_PER_M3 = 1000;

    private static final double WATER_PCT = 100;

    private Density() {}

    /** Density as filled by hand, kg per cubic metre; exact when the person gave their own figure. */
    public static Band byHand(Material material) {
        Figure density = material.densityKgM3();
        if (pours(material)) {
            return new Band(density.low(), density.typical(), density.high());
        }
        return new Band(density.low(), half(density.low(), density.typical()), density.typical());
    }

    /** Density after settling in a pile, kg per cubic metre; exact when the person gave their own figure. */
    public static Band settled(Material material) {
        Figure density = material.densityKgM3();
        return new Band(density.typical(), half(density.typical(), density.high()), density.high());
    }

    /**
     * Whether it is water, which runs into the gaps of the rest and takes no room of its own. Own stuff that is said to be
     * like water and has dry matter is none.
     */
    public static boolean fillsGaps(Material material) {
        return material.traits().contains(Trait.LIQUID)
                && material.moisturePct().typical() >= WATER_PCT;
    }

    /** Powders, grains, compost and soil lie in a measure about as they always lie. */
    private static boolean pours(Material material) {
        return switch (material.group()) {
            case MINERAL, AMENDMENT, MEAL, STARTER -> true;
            case CARBON_RICH, NITROGEN_RICH, WOODY, MANURE, PROBLEM -> false;
        };
    }

    private static double half(double one, double other) {
        return (one + other) / 2;
    }
}
