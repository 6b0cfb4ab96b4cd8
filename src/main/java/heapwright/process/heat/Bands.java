package heapwright.process.heat;

/**
 * Low, likely and high of one figure, day by day: 10th, 50th and 90th percent of the samples.
 *
 * @param low the 10th percentile a day
 * @param likely the median a day
 * @param high the 90th percentile a day
 */
public record Bands(double[] low, double[] likely, double[] high) {
    /**
     * Bands that begin at what is known today.
     *
     * @param days days in which they come to their full width, 1 or more
     */
    public Bands growing(int days) {
        double[] from = low.clone();
        double[] to = high.clone();
        for (int d = 0; d < Math.min(days, likely.length); d++) {
            double part = (double) d / days;
            from[d] = likely[d] - part * (likely[d] - low[d]);
            to[d] = likely[d] + part * (high[d] - likely[d]);
        }
        return new Bands(from, likely, to);
    }

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
