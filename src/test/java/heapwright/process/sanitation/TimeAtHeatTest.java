package heapwright.process.sanitation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.knowledge.HeatEquation;
import java.util.OptionalDouble;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The equations of 40 CFR 503.32(a)(3) as a state rule reprints them; the figures beside them are our arithmetic. */
@DisplayName("The equation of time and temperature")
class TimeAtHeatTest {

    private static final double HOURS = 24;

    @ParameterizedTest
    @DisplayName("asks of a pile the hours that 40 CFR 503.32 case 1 gives")
    @CsvSource({"50, 316.1", "52, 165.9", "55, 63.07", "58, 23.98", "60, 12.58", "62, 6.604", "65, 2.511"})
    void solid(double celsius, double hours) {
        assertEquals(hours, HOURS * asked("solid", celsius), hours * 0.002);
    }

    @ParameterizedTest
    @DisplayName("asks of a slurry the hours that case 4 gives")
    @CsvSource({"50, 120.2", "55, 23.97", "60, 4.784", "65, 0.955"})
    void slurry(double celsius, double hours) {
        assertEquals(hours, HOURS * asked("slurry", celsius), hours * 0.002);
    }

    @ParameterizedTest
    @DisplayName("never asks less than its floor: 20 minutes for a pile, 30 for a slurry")
    @CsvSource({"solid, 70, 30.06", "solid, 68, 57.27", "solid, 72, 20", "slurry, 70, 30", "slurry, 80, 30"})
    void floors(String equation, double celsius, double minutes) {
        assertEquals(minutes, HOURS * 60 * asked(equation, celsius), 0.1);
    }

    @Test
    @DisplayName("says nothing below 50 °C")
    void range() {
        assertEquals(OptionalDouble.empty(), TimeAtHeat.days(equation("solid"), 49.9));
        assertTrue(TimeAtHeat.days(equation("solid"), 50).isPresent());
    }

    @Test
    @DisplayName("divides the time by 25.12 for ten degrees more")
    void tenDegrees() {
        assertEquals(25.12, asked("solid", 50) / asked("solid", 60), 0.01);
    }

    @Test
    @DisplayName("goes by the lower of two readings, and counts nothing below its range")
    void share() {
        // 24 h at 55 °C of the 63.07 h asked; the span from 60 to 45 °C is below the range.
        String log = "{'date': '2026-03-01', 'measured': {'core': {'value': 55, 'unit': 'C'}}},"
                + "{'date': '2026-03-02', 'measured': {'core': {'value': 60, 'unit': 'C'}}},"
                + "{'date': '2026-03-03', 'measured': {'core': {'value': 45, 'unit': 'C'}}}";
        assertEquals(
                24 / 63.07, TimeAtHeat.share(equation("solid"), record(log)).orElseThrow(), 0.001);
        String cool = "{'date': '2026-03-01', 'measured': {'core': {'value': 49, 'unit': 'C'}}},"
                + "{'date': '2026-03-02', 'measured': {'core': {'value': 49, 'unit': 'C'}}}";
        assertEquals(OptionalDouble.empty(), TimeAtHeat.share(equation("solid"), record(cool)));
    }

    private static HeatRecord record(String log) {
        return HeatRecord.of(TestPile.of("'asOf': '2026-03-20', 'built': '2026-02-20', 'log': [" + log + "]"));
    }

    private static double asked(String equation, double celsius) {
        return TimeAtHeat.days(equation(equation), celsius).orElseThrow();
    }

    private static HeatEquation equation(String id) {
        return TestPile.KNOWLEDGE.sanitation().equations().get(id);
    }
}
