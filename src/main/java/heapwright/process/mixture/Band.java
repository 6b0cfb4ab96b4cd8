package heapwright.process.mixture;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/**
 * A quantity as low, likely and high, finite and in that order. Low and high stand for the 5th and 95th percentile
 * where they were sampled.
 *
 * @param low 5 in 100 chance that it is lower
 * @param likely best single figure
 * @param high 5 in 100 chance that it is higher
 */
public record Band(double low, double likely, double high) {

    /** Nothing. */
    public static final Band ZERO = new Band(0, 0, 0);

    private static final double LOW_SHARE = 0.05;
    private static final double HIGH_SHARE = 0.95;

    /** @throws IllegalArgumentException when a value is not finite or the three are out of order */
    public Band {
        if (!Double.isFinite(low)
                || !Double.isFinite(likely)
                || !Double.isFinite(high)
                || low > likely
                || likely > high) {
            throw new IllegalArgumentException(
                    "A band needs finite low ≤ likely ≤ high, but got " + low + ", " + likely + ", " + high + ".");
        }
    }

    public static Band exact(double value) {
        return new Band(value, value, value);
    }

    /** The three values in any order of size; the second stays likely unless it lies outside the other two. */
    public static Band around(double one, double likely, double other) {
        double low = Math.min(Math.min(one, other), likely);
        double high = Math.max(Math.max(one, other), likely);
        return new Band(low, likely, high);
    }

    /**
     * The band of a sample: 5th and 95th percentile, widened where needed so that they bracket the likely value.
     *
     * @param values the sample, not empty; left as it is
     * @param likely the value at the typical figures
     */
    public static Band ofSample(double[] values, double likely) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return around(percentile(sorted, LOW_SHARE), likely, percentile(sorted, HIGH_SHARE));
    }

    private static double percentile(double[] sorted, double share) {
        double place = share * (sorted.length - 1);
        int below = (int) Math.floor(place);
        int above = Math.min(below + 1, sorted.length - 1);
        double part = place - below;
        return sorted[below] * (1 - part) + sorted[above] * part;
    }

    /** Every value times a factor that is not negative. */
    public Band times(double factor) {
        return new Band(low * factor, likely * factor, high * factor);
    }

    /** Sum end by end, so the widest band the two allow. */
    public Band plus(Band other) {
        return new Band(low + other.low, likely + other.likely, high + other.high);
    }

    /** The band with no value above {@code ceiling}. */
    public Band atMost(double ceiling) {
        return new Band(Math.min(low, ceiling), Math.min(likely, ceiling), Math.min(high, ceiling));
    }

    /** The band with no value below {@code floor}. */
    public Band atLeast(double floor) {
        return new Band(Math.max(low, floor), Math.max(likely, floor), Math.max(high, floor));
    }

    /** The band of a function that rises or falls all the way. */
    public Band map(DoubleUnaryOperator monotone) {
        return around(monotone.applyAsDouble(low), monotone.applyAsDouble(likely), monotone.applyAsDouble(high));
    }

    public boolean isExact() {
        return low == high;
    }
}
