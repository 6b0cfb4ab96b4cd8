package heapwright.process.mixture;

import heapwright.knowledge.Material;

/**
 * Moisture, carbon and nitrogen of one material or mix.
 *
 * @param moisturePct moisture, percent of wet mass
 * @param carbonPct carbon, percent of dry mass; above what is possible where a published pair implies it, see
 *     {@link CarbonCheck}
 * @param nitrogenPct nitrogen, percent of dry mass
 */
public record Composition(double moisturePct, double carbonPct, double nitrogenPct) {

    /** @throws IllegalArgumentException when moisture or nitrogen is outside 0 to 100 %, or carbon is below zero */
    public Composition {
        requireUpTo(100, "moisture", moisturePct);
        requireUpTo(Double.MAX_VALUE, "carbon", carbonPct);
        requireUpTo(100, "nitrogen", nitrogenPct);
    }

    /** From C:N and nitrogen, as most tables print them: carbon is their product. */
    public static Composition ofRatio(double moisturePct, double carbonToNitrogen, double nitrogenPct) {
        return new Composition(moisturePct, carbonToNitrogen * nitrogenPct, nitrogenPct);
    }

    /** The typical figures of a material. */
    public static Composition of(Material material) {
        return new Composition(
                material.moisturePct().typical(), material.carbonPct().typical(), material.typicalNitrogenPct());
    }

    /** The same with wood counted by the part of it that a season reaches: what a C:N to act on is worked out from. */
    public static Composition ofSeason(Material material) {
        double reached = Degradability.reached(material).likely();
        return new Composition(
                material.moisturePct().typical(),
                material.carbonPct().typical() * reached,
                material.typicalNitrogenPct() * reached);
    }

    /**
     * From figures in percent of the mass as it is, as some published tables print them.
     *
     * @param moisturePct moisture, percent of wet mass, below 100
     * @param carbonAsIsPct carbon, percent of wet mass
     * @param nitrogenAsIsPct nitrogen, percent of wet mass
     */
    public static Composition ofAsIs(double moisturePct, double carbonAsIsPct, double nitrogenAsIsPct) {
        double dry = 1 - moisturePct / 100;
        return new Composition(moisturePct, carbonAsIsPct / dry, nitrogenAsIsPct / dry);
    }

    /** Kilograms of dry mass in a kilogram as it is. */
    public double dry() {
        return 1 - moisturePct / 100;
    }

    /** Kilograms of water in a kilogram as it is. */
    public double water() {
        return moisturePct / 100;
    }

    /** Kilograms of carbon in a kilogram as it is. */
    public double carbon() {
        return dry() * carbonPct / 100;
    }

    /** Kilograms of nitrogen in a kilogram as it is. */
    public double nitrogen() {
        return dry() * nitrogenPct / 100;
    }

    private static void requireUpTo(double most, String what, double value) {
        if (!(value >= 0 && value <= most)) {
            throw new IllegalArgumentException(
                    "Needs " + what + " of zero to at most " + most + " %, but got " + value + ".");
        }
    }
}
