package heapwright.pile;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("What is kept of a typed figure")
class RoundingTest {

    /** The Celsius figures follow from the definition of the scales: 32 °F is 0 °C, a degree F is 5/9 of a degree C. */
    @ParameterizedTest(name = "{0} °F is {1} °C")
    @CsvSource({"30.2, -1", "32, 0", "31.1, -0.5", "55.4, 13", "150.8, 66", "131, 55", "-40, -40", "212, 100"})
    @DisplayName("is the same temperature in both scales")
    void temperatures(double fahrenheit, double celsius) {
        assertEquals(
                Quantity.TEMPERATURE.keep(celsius, TemperatureUnit.CELSIUS),
                Quantity.TEMPERATURE.keep(fahrenheit, TemperatureUnit.FAHRENHEIT));
    }

    /** A foot is 0.3048 m and a pound 0.45359237 kg by definition (1959 agreement). */
    @Test
    @DisplayName("is the same size and mass in both systems, however many decimals the other one takes")
    void sizesAndMasses() {
        assertEquals(1.5, Quantity.PILE_HEIGHT.keep(1.5 / 0.3048, LengthUnit.FOOT));
        assertEquals(7.3, Rounding.converted(7.3 / 0.45359237, MassUnit.POUND, MassUnit.KILOGRAM));
        assertEquals(0.76, Quantity.PILE_VOLUME.keep(760, VolumeUnit.LITRE));
    }

    @Test
    @DisplayName("does not depend on how a sum is told")
    void sums() {
        assertEquals(0.3, Rounding.summed(0.1 + 0.2));
        assertEquals(
                Rounding.measured(0.3, 12), Rounding.summed(Rounding.measured(0.1, 12) + Rounding.measured(0.2, 12)));
    }

    @Test
    @DisplayName("keeps nine figures, so nothing that a person measured is lost")
    void keeps() {
        assertEquals(123.456789, Rounding.converted(123.456789, MassUnit.KILOGRAM, MassUnit.KILOGRAM));
        assertEquals(12.345678, Quantity.TEMPERATURE.keep(12.345678, TemperatureUnit.CELSIUS));
    }

    @Test
    @DisplayName("is infinite where no number holds it in the other unit, and is refused as too much")
    void beyondAllNumbers() {
        assertEquals(Double.POSITIVE_INFINITY, Rounding.converted(1e308, MassUnit.TONNE, MassUnit.KILOGRAM));
        String document = "{\"heapwright\":\"pile/1\",\"asOf\":\"2026-11-21\",\"recipe\":"
                + "[{\"material\":\"%s\",\"amount\":1e308,\"unit\":\"t\"}]}";
        TestVocabulary words = new TestVocabulary();
        String material = words.materials().stream().sorted().findFirst().orElseThrow();
        ReadResult result =
                new PileReader(words).read("x", document.formatted(material).getBytes(StandardCharsets.UTF_8));
        assertEquals(1, result.problems().size(), () -> result.problems().toString());
    }
}
