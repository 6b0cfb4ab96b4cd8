package heapwright.process.mixture;

import heapwright.knowledge.Figure;

/**
 * Whether a pair of C:N and nitrogen can belong to one sample: their product is the carbon, and plants have about 35 to
 * 58 % of it. Published means of the two often come from different samples.
 *
 * @param carbonPct carbon that the pair implies, percent of dry mass
 * @param verdict what that says of the pair
 */
public record CarbonCheck(double carbonPct, Verdict verdict) {

    /** What the implied carbon says of a pair. */
    public enum Verdict {
        /** The pair may be right. */
        POSSIBLE,
        /** More carbon than there can be: at least one figure is wrong, most often the nitrogen. */
        TOO_MUCH_CARBON,
        /** Little carbon: real in ash, shells, urine and soil, else a figure is wrong. */
        LITTLE_CARBON
    }

    // Our check of published pairs (derived): flag what implies less or more, percent of dry mass.
    private static final double LEAST = 30;
    private static final double MOST = 60;

    /** A figure beyond the usual range by this factor is asked about, even where its carbon is possible. */
    private static final double UNUSUAL_FACTOR = 2;

    public static CarbonCheck of(double carbonToNitrogen, double nitrogenPct) {
        double carbon = carbonToNitrogen * nitrogenPct;
        if (carbon > MOST) {
            return new CarbonCheck(carbon, Verdict.TOO_MUCH_CARBON);
        }
        return new CarbonCheck(carbon, carbon < LEAST ? Verdict.LITTLE_CARBON : Verdict.POSSIBLE);
    }

    /**
     * Whether a figure is far outside what is usual for its material, as a misprint may be whose carbon is possible
     * (pine needles printed as 4 % nitrogen and C:N 10).
     */
    public static boolean isUnusual(double value, Figure usual) {
        return value < usual.low() / UNUSUAL_FACTOR || value > usual.high() * UNUSUAL_FACTOR;
    }
}
