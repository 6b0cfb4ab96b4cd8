package heapwright.advice.winter;

import static org.junit.jupiter.api.Assertions.assertEquals;

import heapwright.process.heat.Bands;
import heapwright.process.heat.CoreReading;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which days count and which reading tells; limits as in docs/method/winter.md. */
@DisplayName("The days of a story that count")
class StorySpanTest {

    private static final int AGE = 40;

    @Test
    @DisplayName("begin when it stalled, at the start of a pile that was never warm, or a fortnight ago")
    void from() {
        assertEquals(9, Story.from(OptionalInt.of(9), WarmOnce.YES, AGE));
        for (WarmOnce other : WarmOnce.values()) {
            assertEquals(other == WarmOnce.YES ? 9 : 0, Story.from(OptionalInt.of(9), other, AGE));
            assertEquals(26, Story.from(OptionalInt.empty(), other, AGE));
            assertEquals(0, Story.from(OptionalInt.empty(), other, 13));
        }
    }

    @ParameterizedTest
    @CsvSource({"5, 30, 26, 5", "5, 29.9, 26, 19", "26, 60, 26, 40", "27, 60, 26, 40", "25, 60, 26, 25", "10, 10, 0, 24"
    })
    @DisplayName("end a fortnight after the last reading, or with it where it was warm and all that counts came later")
    void to(int day, double celsius, int from, int to) {
        assertEquals(to, Story.to(new CoreReading(day, celsius), from, AGE));
    }

    private static final Bands HEALTHY = healthy();

    /** A healthy pile is at 50 °C or above for 20 days, then at 20. */
    private static Bands healthy() {
        double[] low = new double[AGE];
        Arrays.fill(low, 20);
        Arrays.fill(low, 0, 20, 50);
        return new Bands(low, low, low);
    }

    private static CoreReading telling(CoreReading... readings) {
        return Story.telling(List.of(readings), HEALTHY);
    }

    @Test
    @DisplayName("have as the reading that tells the one furthest below a healthy pile since it was last hot")
    void telling() {
        CoreReading far = new CoreReading(10, 15);
        CoreReading near = new CoreReading(15, 30);
        CoreReading late = new CoreReading(30, 15);
        CoreReading fine = new CoreReading(31, 25);
        assertEquals(far, telling(far, near, late));
        assertEquals(far, telling(near, far, late));
        assertEquals(near, telling(near, late));
        assertEquals(late, telling(fine, late));
        assertEquals(fine, telling(late, new CoreReading(12, 60), fine), "what was before the heat tells nothing");
        assertEquals(fine, telling(new CoreReading(29, 25), fine), "none is below");
        assertEquals(fine, telling(far, new CoreReading(12, VerdictDegrees.WARM_C), fine));
        assertEquals(far, telling(far, new CoreReading(12, VerdictDegrees.WARM_C - 0.1), fine));
        CoreReading same = new CoreReading(31, 15);
        assertEquals(same, telling(late, same), "as far below: the later");
        assertEquals(late, telling(late));
    }

    @ParameterizedTest
    @CsvSource({"0.5, true", "0.4, false"})
    @DisplayName("show a pile colder than a healthy one from half a kelvin on")
    void colder(double shortfallC, boolean colder) {
        Story story = new Story(
                null, HEALTHY, null, null, Factor.NONE, Factor.NONE, Optional.empty(), null, shortfallC, null);
        assertEquals(colder, story.colder());
    }
}
