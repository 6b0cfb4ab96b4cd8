package heapwright.process.heat;

import java.util.Arrays;

/**
 * Low, likely and high of one figure, day by day.
 *
 * @param low the 10th percentile of the samples a day
 * @param likely the mean of the middle half of the samples a day
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

    /**
     * The mean of the middle half of sorted values. A pile near the edge of starting is warm in one sample and cold in
     * the next: there the median leaps from the one lot to the other, and this goes over step by step.
     */
    static double middle(double[] sorted) {
        int from = sorted.length / 4;
        return Arrays.stream(sorted, from, sorted.length - from).average().orElseThrow();
    }
}
