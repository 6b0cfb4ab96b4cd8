package heapwright.process.heat;

import java.util.Arrays;

/**
 * Low, likely and high of one figure.
 *
 * @param low 10th percentile
 * @param likely median; of temperatures the mean of the middle half, see {@link Bands}
 * @param high 90th percentile
 */
public record Range(double low, double likely, double high) {
    /** The range of some samples. */
    public static Range of(double[] samples) {
        double[] sorted = samples.clone();
        Arrays.sort(sorted);
        return new Range(Bands.percentile(sorted, 0.1), Bands.percentile(sorted, 0.5), Bands.percentile(sorted, 0.9));
    }
}
