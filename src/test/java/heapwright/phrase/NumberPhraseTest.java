package heapwright.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumberPhraseTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "12|12",
                "12,5|12.5",
                " -3 |-3",
                "−4|-4",
                "–0.5|-0.5",
                ".5|0.5",
                "1½|1.5",
                "½|0.5",
                "1/2|0.5",
                "1 1/2|1.5",
                "2 ⅓|2.3333333333333335"
            })
    void numbersAreReadAsPeopleTypeThem(String typed, double value) {
        assertEquals(OptionalDouble.of(value), NumberPhrase.number(typed));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "warm",
                "1.2.3",
                "1e9",
                "NaN",
                "0x1",
                "12 C",
                "1/0",
                "1//2",
                "½1",
                "-1/2",
                "1111111111111111111111"
            })
    void otherTextIsNoNumber(String typed) {
        assertEquals(OptionalDouble.empty(), NumberPhrase.number(typed));
    }
}
