package heapwright.process.mixture;

/**
 * Free air space as a fraction of the volume, by three forms that lie up to eight points apart on the same pile; the
 * spread between them is part of the answer. Density in kg per cubic metre as it lies, dry matter and organic matter as
 * fractions, of wet and of dry mass. Results are kept within 0 to 1.
 */
public final class FreeAirSpace {

    /** Density of water, kg per cubic metre. */
    private static final double WATER = 1000;

    // HAUG93, from memory: specific gravity of volatile and of fixed solids.
    private static final double HAUG_VOLATILE = 1.0;
    private static final double HAUG_FIXED = 2.5;

    // RICH04, from memory: particle density of organic and of mineral matter, kg per cubic metre.
    private static final double RICHARD_ORGANIC = 1600;
    private static final double RICHARD_MINERAL = 2500;

    // AGNEW03B, from memory: percent of air lost for each kg per cubic metre of wet density.
    private static final double AGNEW_SLOPE = 0.09;

    private FreeAirSpace() {}

    /** The form of HAUG93, from memory. */
    public static double haug(double density, double dryMatter, double organicMatter) {
        double solidsVolume = organicMatter / HAUG_VOLATILE + (1 - organicMatter) / HAUG_FIXED;
        return fraction(1 - density * (dryMatter * solidsVolume + (1 - dryMatter)) / WATER);
    }

    /** The form of RICH04, equation from memory. */
    public static double richard(double density, double dryMatter, double organicMatter) {
        return fraction(1
                - density
                        * ((1 - dryMatter) / WATER
                                + dryMatter * organicMatter / RICHARD_ORGANIC
                                + dryMatter * (1 - organicMatter) / RICHARD_MINERAL));
    }

    /** The form of AGNEW03B, from memory. */
    public static double agnew(double density) {
        return fraction((100 - AGNEW_SLOPE * density) / 100);
    }

    /** The three forms, lowest, middle and highest. */
    public static Band band(double density, double dryMatter, double organicMatter) {
        double haug = haug(density, dryMatter, organicMatter);
        double richard = richard(density, dryMatter, organicMatter);
        double agnew = agnew(density);
        double low = Math.min(haug, Math.min(richard, agnew));
        double high = Math.max(haug, Math.max(richard, agnew));
        double middle = Math.max(Math.min(haug, richard), Math.min(Math.max(haug, richard), agnew));
        return new Band(low, middle, high);
    }

    private static double fraction(double value) {
        return Math.max(0, Math.min(1, value));
    }
}
