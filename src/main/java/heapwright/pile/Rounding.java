package heapwright.pile;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Rounds what is kept of a typed figure: finer than anybody measures, coarser than what arithmetic and a typed decimal
 * lose on the way. So 30.2 °F is −1 °C, and three feet three and a bit inches are a metre.
 */
final class Rounding {

    /** Significant figures that are kept of an amount or a size. */
    private static final MathContext CONVERTED = new MathContext(9);

    /** Decimals that are kept of a temperature; its zero is no nothing. */
    private static final int DECIMALS = 6;

    /** Significant figures that are kept of a sum of kept figures. */
    private static final MathContext SUMMED = new MathContext(12);

    private Rounding() {}

    /** A value in another unit of the same kind, or in the same; infinite where the unit cannot hold it. */
    static double converted(double value, Unit from, Unit to) {
        double changed = from.to(to, value);
        if (!Double.isFinite(changed)) {
            return changed;
        }
        BigDecimal exact = BigDecimal.valueOf(changed);
        return to instanceof TemperatureUnit
                ? exact.setScale(DECIMALS, RoundingMode.HALF_EVEN).doubleValue()
                : exact.round(CONVERTED).doubleValue();
    }

    /** A number of measures, each of so many litres or kilograms, in litres or kilograms. */
    static double measured(double measures, double each) {
        double all = measures * each;
        return Double.isFinite(all) ? BigDecimal.valueOf(all).round(CONVERTED).doubleValue() : all;
    }

    /** A sum or a mean of kept figures. */
    static double summed(double sum) {
        return Double.isFinite(sum) ? BigDecimal.valueOf(sum).round(SUMMED).doubleValue() : sum;
    }
}
