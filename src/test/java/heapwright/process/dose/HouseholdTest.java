package heapwright.process.dose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.Seed;
import heapwright.process.dose.Household.Measured;
import heapwright.process.dose.Household.Rounding;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HouseholdTest {

    private static final Household HOUSE = new Household(Map.of(
            "barrow", 80.0, "bucket", 10.0, "mug", 0.25, "matchbox", 0.02, "tablespoon", 0.015, "teaspoon", 0.005));

    @Property(seed = Seed.FIXED)
    void neverNothingAndNeverFarOff(@ForAll @DoubleRange(min = 0.005, max = 5000) @Scale(5) double litres) {
        Measured measured = HOUSE.ofLitres(litres, Rounding.NEAREST);
        assertTrue(measured.count() >= 0.25);
        assertEquals(litres, measured.litres(), 0.34 * litres);
    }

    @Property(seed = Seed.FIXED)
    void roundedDownIsNeverAboveALimit(@ForAll @DoubleRange(min = 0.0026, max = 5000) @Scale(5) double litres) {
        Measured measured = HOUSE.ofLitres(litres, Rounding.DOWN);
        assertTrue(measured.litres() <= litres * (1 + 1e-6));
        assertTrue(measured.count() >= 0.25);
    }

    @ParameterizedTest
    @CsvSource({
        "400, barrow, 5",
        "30, bucket, 3",
        "6, bucket, 0.5",
        "3.75, bucket, 0.5",
        "3, bucket, 0.25",
        "7.4, bucket, 0.75",
        "0.1, matchbox, 5",
        "0.04, matchbox, 2",
        "0.03, matchbox, 1.5",
        "0.005, teaspoon, 1",
        "1, mug, 4",
        "23, bucket, 2.5",
        "2400, barrow, 30"
    })
    void theLargestMeasureThatTellsItWell(double litres, String measure, double count) {
        Measured measured = HOUSE.ofLitres(litres, Rounding.NEAREST);
        assertEquals(measure, measured.measure());
        assertEquals(count, measured.count());
    }

    /** Nobody counts out thirty spoons where cups are at hand. */
    @Test
    void quartersOfAFewWhereHalvesAreTooCoarseAndSpoonsTooMany() {
        Household powder = new Household(Map.of("cup", 0.25, "tablespoon", 0.015));
        Measured measured = powder.ofLitres(0.48, Rounding.DOWN);
        assertEquals("cup", measured.measure());
        assertEquals(1.75, measured.count());
        assertEquals(0.4375, measured.litres(), 1e-12);
    }

    @Test
    void lessThanTheLeastIsHalfOfItAndSaysSo() {
        Measured measured = HOUSE.ofLitres(0.0005, Rounding.NEAREST);
        assertEquals("teaspoon", measured.measure());
        assertEquals(0.5, measured.count());
        assertEquals(0.0025, measured.litres(), 1e-12);
        assertTrue(measured.scant());
    }

    /** Half measures end at three and whole ones at twenty, themselves among the whole ones. */
    @ParameterizedTest
    @CsvSource({"2.4, 2.5", "2.9, 3", "3, 3", "3.4, 3", "19.6, 20", "20, 20", "20.4, 20", "22.4, 20", "22.6, 25"})
    void finerStepsForFewAndCoarserForMany(double litres, double count) {
        Measured measured = new Household(Map.of("jug", 1.0)).ofLitres(litres, Rounding.NEAREST);
        assertEquals(count, measured.count());
        assertEquals(count, measured.litres(), 1e-12);
    }

    @Test
    void whereNoneTellsItWellTheNearestDoes() {
        Household two = new Household(Map.of("big", 1.0, "small", 0.7));
        Measured measured = two.ofLitres(0.95, Rounding.DOWN);
        assertEquals("small", measured.measure());
        assertEquals(0.7, measured.litres(), 1e-12);
    }

    /** 0.57 / 0.19 is a hair below three in the arithmetic of a computer, and still three. */
    @Test
    void aWholeMeasureIsNotRoundedDownForAHair() {
        assertTrue(0.57 / 0.19 < 3, "the example must be one");
        assertEquals(
                3,
                new Household(Map.of("cup", 0.19)).ofLitres(0.57, Rounding.DOWN).count());
    }

    @Test
    void aMassGoesThroughItsDensity() {
        assertEquals(2, HOUSE.ofKilograms(0.030, 750, Rounding.NEAREST).count());
    }

    @Test
    void noMeasuresOrNoAmountIsAnError() {
        assertThrows(IllegalArgumentException.class, () -> new Household(Map.of()));
        assertThrows(IllegalArgumentException.class, () -> new Household(Map.of("sieve", 0.0)));
        for (double litres : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThrows(IllegalArgumentException.class, () -> HOUSE.ofLitres(litres, Rounding.NEAREST));
        }
    }
}
