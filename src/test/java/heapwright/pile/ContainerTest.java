package heapwright.pile;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ContainerTest {

    /** A stated volume goes before the three lengths, and two lengths are no volume. */
    @ParameterizedTest
    @CsvSource({"1.5,0.8,0.5,,0.6", "1.5,0.8,0.5,0.7,0.7", ",,,0.7,0.7", ",0.8,0.5,,", "1.5,,0.5,,", "1.5,0.8,,,"})
    void theVolumeIsStatedOrMultipliedOrUnknown(Double length, Double width, Double height, Double stated, Double is) {
        Container none = Container.unknown();
        Container container = new Container(
                none.kind(),
                maybe(length),
                maybe(width),
                maybe(height),
                maybe(stated),
                none.cover(),
                none.base(),
                none.insulation(),
                false);
        assertEquals(maybe(is), rounded(container.builtVolumeM3()));
    }

    private static OptionalDouble maybe(Double value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    private static OptionalDouble rounded(OptionalDouble value) {
        return value.isEmpty() ? value : OptionalDouble.of(Math.round(value.getAsDouble() * 1e9) / 1e9);
    }
}
