package heapwright.web.site;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TypedTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"12|12", "12,5|12.5", " -3 |-3", "−4|-4", "–0.5|-0.5", ".5|0.5"})
    void numbersAreReadAsPeopleTypeThem(String typed, double value) {
        assertEquals(OptionalDouble.of(value), Typed.number(typed));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "warm", "1.2.3", "1e9", "NaN", "0x1", "12 C", "1111111111111111111111"})
    void otherTextIsNoNumber(String typed) {
        assertEquals(OptionalDouble.empty(), Typed.number(typed));
    }
}
