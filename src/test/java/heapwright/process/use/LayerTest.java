package heapwright.process.use;

import static org.junit.jupiter.api.Assertions.assertEquals;

import heapwright.process.mixture.Band;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("A layer of compost")
class LayerTest {

    private static final double CM_PER_INCH = 2.54;
    private static final double FT3_PER_YD3 = 27;

    @Test
    @DisplayName("of an inch is 25.4 litres on a square metre (arithmetic)")
    void inch() {
        assertEquals(25.4, new Layer(CM_PER_INCH).litresPerM2(), 1e-9);
    }

    @Test
    @DisplayName("of 2.5 cm takes a hundred litres for four square metres (arithmetic)")
    void hundredLitres() {
        assertEquals(4, new Layer(2.5).coversM2(Band.exact(100)).likely(), 1e-9);
    }

    /** GROWBIO: a dressing of 1/8 to 1/2 inch is 1 to 4 cubic feet on 100 square feet. CSULAB: 3 yd³ on 1,000 ft² is about an inch. */
    @ParameterizedTest(name = "{0} inch is about {1} ft³ on 100 ft²")
    @CsvSource({"0.125, 1.0", "0.5, 4.0", "1, 8.1"})
    void published(double inches, double cubicFeet) {
        assertEquals(1, new Layer(inches * CM_PER_INCH).cubicFeetPer100SquareFeet() / cubicFeet, 0.05);
    }

    /** 324 square feet to the cubic yard at an inch, as every seller of compost prints (common practice). */
    @Test
    @DisplayName("of an inch takes a cubic yard for 324 square feet")
    void cubicYard() {
        assertEquals(324, FT3_PER_YD3 / new Layer(CM_PER_INCH).cubicFeetPer100SquareFeet() * 100, 0.5);
    }

    @Test
    @DisplayName("at a quarter makes four times as much mix (arithmetic)")
    void mix() {
        assertEquals(400, Layer.mixLitres(Band.exact(100), 25).likely(), 1e-9);
    }
}
