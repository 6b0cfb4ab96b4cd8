package heapwright.process.heat;

/**
 * Low, likely and high of one figure, day by day: 10th, 50th and 90th percent of the samples.
 *
 * @param low the 10th percentile a day
 * @param likely the median a day
 * @param high the 90th percentile a day
 */
public record Bands(double[] low, double[] likely, double[] high) {
    /** Linear percentile of sorted values, 0–1. */
    static double percentile(double[] sorted, double share) {
        double at = share * (sorted.length - 1);
        int i = Math.min(sorted.length - 2, (int) at);
        if (i < 0) {
            return sorted[0];
        }
        return sorted[i] + (at - i) * (sorted[i + 1] - sorted[i]);
    }
}
