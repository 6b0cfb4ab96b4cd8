package heapwright.process.mixture;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * A person's own C:N of a mix recognised as a common shortcut: the average of the ratios of the materials, by volume or
 * by wet weight. Both leave out that materials hold different amounts of nitrogen, water and air; only carbon and
 * nitrogen add up.
 *
 * @param shortcut which average it looks like
 * @param average that average
 * @param balanced C:N by adding up carbon and nitrogen
 */
public record Averaging(Shortcut shortcut, double average, double balanced) {

    /** Which average. */
    public enum Shortcut {
        BY_VOLUME,
        BY_WET_WEIGHT
    }

    // People print the result as a whole number or cut it off.
    private static final double ROUNDED_WITHIN = 0.6;
    private static final double SAME_SHARE = 0.02;

    /** How far the shortcut is above the balance. */
    public double gap() {
        return average - balanced;
    }

    /**
     * The shortcut that gives this figure for these portions, if one does and the balance does not.
     *
     * @param ownRatio the person's figure
     */
    public static Optional<Averaging> explain(double ownRatio, List<Portion> portions) {
        double balanced = Equations.mixCarbonToNitrogen(
                portions.stream().mapToDouble(one -> one.kgWet().likely()).toArray(),
                portions.stream().map(one -> Composition.of(one.material())).toArray(Composition[]::new));
        if (same(ownRatio, balanced)) {
            return Optional.empty();
        }
        double byVolume = average(portions, one -> one.litres().likely());
        double byWeight = average(portions, one -> one.kgWet().likely());
        boolean volume = same(ownRatio, byVolume);
        boolean weight = same(ownRatio, byWeight);
        if (volume && (!weight || Math.abs(ownRatio - byVolume) <= Math.abs(ownRatio - byWeight))) {
            return Optional.of(new Averaging(Shortcut.BY_VOLUME, byVolume, balanced));
        }
        return weight ? Optional.of(new Averaging(Shortcut.BY_WET_WEIGHT, byWeight, balanced)) : Optional.empty();
    }

    private static double average(List<Portion> portions, ToDoubleFunction<Portion> weight) {
        double sum = 0;
        double weights = 0;
        for (Portion one : portions) {
            sum += weight.applyAsDouble(one) * one.material().carbonToNitrogen().typical();
            weights += weight.applyAsDouble(one);
        }
        return sum / weights;
    }

    private static boolean same(double one, double other) {
        return Math.abs(one - other) <= Math.max(ROUNDED_WITHIN, SAME_SHARE * other);
    }
}
