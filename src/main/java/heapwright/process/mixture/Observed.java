package heapwright.process.mixture;

import java.util.OptionalDouble;

/**
 * What was measured or stated about a whole pile; each replaces the estimate from its recipe.
 *
 * @param moisturePct moisture by drying, percent of wet mass, 0 to below 100
 * @param densityKgM3 bulk density as it lies, kg per cubic metre, above 0
 * @param volumeM3 volume as it lies, cubic metres, above 0
 */
public record Observed(OptionalDouble moisturePct, OptionalDouble densityKgM3, OptionalDouble volumeM3) {

    /** @throws IllegalArgumentException when a figure is outside its range */
    public Observed {
        moisturePct.ifPresent(value -> require(value >= 0 && value < 100, "moisture of 0 to below 100 %", value));
        densityKgM3.ifPresent(value -> require(value > 0, "a density above 0 kg/m³", value));
        volumeM3.ifPresent(value -> require(value > 0, "a volume above 0 m³", value));
    }

    public static Observed nothing() {
        return new Observed(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    }

    private static void require(boolean holds, String wanted, double value) {
        if (!holds || !Double.isFinite(value)) {
            throw new IllegalArgumentException("A pile needs " + wanted + ", but got " + value + ".");
        }
    }
}
