package heapwright.process.mend;

import heapwright.knowledge.Limit;
import heapwright.process.dose.Limits;

/**
 * The ranges a mended pile should lie in. Density stands in for air space, which falls as it rises.
 *
 * @param moistureLowPct least moisture, percent
 * @param moistureHighPct most moisture, percent
 * @param ratioLow least C:N
 * @param ratioHigh most C:N
 * @param densityMostKgM3 most wet density, kg per cubic metre; infinite where it does not matter
 */
public record Goals(
        double moistureLowPct, double moistureHighPct, double ratioLow, double ratioHigh, double densityMostKgM3) {

    /** The good ranges of the limits in force. */
    public static Goals good(Limits limits) {
        return new Goals(
                limits.of(Limit.MOISTURE_GOOD_LOW),
                limits.of(Limit.MOISTURE_GOOD_HIGH),
                limits.of(Limit.CN_GOOD_LOW),
                limits.of(Limit.CN_GOOD_HIGH),
                limits.of(Limit.DENSITY_GOOD_HIGH));
    }

    /** The same for leaves that are to turn into leaf mould, which need no nitrogen. */
    public Goals withoutNitrogen() {
        return new Goals(moistureLowPct, moistureHighPct, ratioLow, Double.POSITIVE_INFINITY, densityMostKgM3);
    }

    /** The same for a mix that is rich only because the carbon of its wood comes late: no richer, and no carbon fetched for it. */
    public Goals withLateCarbon(double ratio) {
        return new Goals(moistureLowPct, moistureHighPct, Math.min(ratioLow, ratio), ratioHigh, densityMostKgM3);
    }

    /** The same a little wider where a mix is wet or lean: halfway from good to wet, and to slow. */
    public Goals nearly(Limits limits) {
        return new Goals(
                moistureLowPct,
                (moistureHighPct + Math.max(moistureHighPct, limits.of(Limit.MOISTURE_OK_HIGH))) / 2,
                ratioLow,
                (ratioHigh + Math.max(ratioHigh, limits.of(Limit.CN_SLOW))) / 2,
                densityMostKgM3);
    }

    /** Whether a pile lies within all of them. */
    public boolean met(Heap heap) {
        return Plan.misses(heap, this).isEmpty();
    }
}
