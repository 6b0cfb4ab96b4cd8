package heapwright.process.mixture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.Seed;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class BandTest {

    @Property(seed = Seed.FIXED)
    void aSampleAlwaysBracketsTheLikelyValue(
            @ForAll @Size(min = 1, max = 40) double[] values,
            @ForAll @DoubleRange(min = -1e6, max = 1e6) double likely) {
        Band band = Band.ofSample(values, likely);
        assertTrue(band.low() <= likely && likely <= band.high());
    }

    @Test
    void percentilesLeaveFiveInAHundredOnEitherSide() {
        double[] values = new double[101];
        for (int i = 0; i < values.length; i++) {
            values[i] = 100 - i;
        }
        assertEquals(new Band(5, 50, 95), Band.ofSample(values, 50));
    }

    @Test
    void anOutOfOrderOrEndlessBandIsAnError() {
        assertThrows(IllegalArgumentException.class, () -> new Band(2, 1, 3));
        assertThrows(IllegalArgumentException.class, () -> new Band(0, 1, Double.POSITIVE_INFINITY));
        assertThrows(IllegalArgumentException.class, () -> new Band(Double.NaN, 1, 2));
    }

    @Property(seed = Seed.FIXED)
    void theTriangleStaysWithinItsEndsAndRises(
            @ForAll @DoubleRange(min = 0, max = 1, maxIncluded = false) double one,
            @ForAll @DoubleRange(min = 0, max = 1, maxIncluded = false) double other) {
        double low = Draw.triangular(Math.min(one, other), 10, 20, 50);
        double high = Draw.triangular(Math.max(one, other), 10, 20, 50);
        assertTrue(10 <= low && low <= high && high <= 50);
        assertEquals(20, Draw.triangular(0.25, 10, 20, 50), 1e-9);
    }
}
