package heapwright.process.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rate factors against the printed tables of their sources. */
class FactorsTest {
    @ParameterizedTest
    @CsvSource({"0.20,0.03", "0.30,0.15", "0.35,0.30", "0.40,0.50", "0.45,0.71", "0.50,0.86", "0.60,0.97", "0.70,0.995"
    })
    void moistureAsTabled(double moisture, double factor) {
        assertEquals(factor, Factors.moisture(moisture), 0.0055);
    }

    @ParameterizedTest
    @CsvSource({".05,.09", ".10,.25", ".15,.51", ".20,.78", ".25,.92", ".30,.97", ".35,.99"})
    void airSpaceAsTabled(double space, double factor) {
        assertEquals(factor, Factors.airSpace(space), 0.0055);
    }

    @ParameterizedTest
    @CsvSource({"0.5,.20", "1,.33", "2,.50", "5,.71", "10,.83", "15,.88", "21,.91"})
    void oxygenAsTabled(double percent, double factor) {
        assertEquals(factor, Factors.oxygen(percent, Factors.oxygenHalf(0.55)), 0.0055);
    }

    @ParameterizedTest
    @CsvSource({
        "5,0", "10,.014", "15,.056", "20,.12", "30,.33", "40,.60", "50,.87", "58.6,1", "65,.85", "70,.33", "71.6,0"
    })
    void cardinalCurveAsTabled(double celsius, double factor) {
        assertEquals(factor, Factors.cardinal(celsius, 5, 58.6, 71.6), 0.0055);
    }

    @ParameterizedTest
    @CsvSource({"20,7,0.4", "20,8,3.8", "20,9,28", "40,8,13.5", "50,8.5,48", "60,8,34"})
    void freeAmmoniaAsTabled(double celsius, double ph, double percent) {
        assertEquals(percent, 100 * Factors.freeAmmonia(ph, celsius), 0.02 * percent + 0.05);
    }

    /** pH is 7.4 less three times the acid index (docs/method/heat.md, section 4). */
    @ParameterizedTest
    @CsvSource({"0,7.4", "0.3,6.5", "0.5,5.9", "1,4.4"})
    void acidIndexIsOfThePh(double index, double ph) {
        assertEquals(ph, Factors.ph(index, 0), 1e-12);
        assertEquals(index, Factors.acidIndex(ph), 1e-12);
    }

    @Test
    void airFilledShareOfTheWorkedExample() {
        // 600 kg/m3, 40 % dry matter, 85 % of it organic: 0.498 (RICH04).
        assertEquals(0.498, Factors.airFilled(1, 360, 0, 240 * 0.85, 240 * 0.15), 0.0011);
    }

    @ParameterizedTest
    @CsvSource({"0.1,0.046", "0.2,0.065", "0.3,0.126", "0.4,0.251"})
    void snowConductivityAsTabled(double density, double conductivity) {
        assertEquals(conductivity, Layer.snowConductivity(density), 0.001);
    }

    /** The square-root form: the root of the rate is a line in temperature while heat does no harm (RATKOWSKY82). */
    @Test
    void rootOfMesophilesIsALine() {
        double perK = Math.sqrt(Factors.mesophiles(20)) - Math.sqrt(Factors.mesophiles(19));
        for (double c = 1; c < 30; c += 1) {
            assertEquals(
                    perK, Math.sqrt(Factors.mesophiles(c)) - Math.sqrt(Factors.mesophiles(c - 1)), 0.001, "at " + c);
        }
        assertEquals(Factors.mesophiles(0), Factors.mesophiles(-10), 1e-12);
        assertTrue(Factors.mesophiles(0) > 0);
    }

    /** Decay doubles or so with 10 K between 10 and 30 °C (common practice, no source). */
    @Test
    void tenKelvinDoubleOrSo() {
        for (double c = 10; c <= 20; c += 1) {
            double times = Factors.temperature(c + 10) / Factors.temperature(c);
            assertTrue(times > 1.5 && times < 2.5, times + " at " + c);
        }
    }

    @Test
    void organismsOfTheTwoRangesTakeTurns() {
        assertEquals(1, Factors.temperature(20), 1e-12);
        assertEquals(0, Factors.thermophiles(29));
        assertTrue(Factors.thermophiles(55) > 20 * Factors.mesophiles(55));
        assertTrue(Factors.mesophiles(35) > 3 * Factors.thermophiles(35));
        assertEquals(0, Factors.temperature(72), 1e-4);
    }
}
