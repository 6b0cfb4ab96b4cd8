package heapwright.pile;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ShownTest {

    /**
     * What turns the direction of writing (Unicode, bidirectional formatting characters U+202A to U+202E and U+2066 to
     * U+2069), what drives a terminal (C0 and C1 controls) and half a character are written out.
     */
    @ParameterizedTest
    @ValueSource(
            ints = {
                0x00, 0x07, 0x0A, 0x1B, 0x1F, 0x7F, 0x80, 0x9B, 0x9F, 0xD800, 0xDBFF, 0xDC00, 0xDFFF, 0x202A, 0x202E,
                0x2066, 0x2069
            })
    void whatCouldUpsetATerminalIsWrittenOut(int point) {
        String text = "a" + (char) point + "b";
        assertEquals(String.format("a\\u%04xb", point), Shown.plain(text));
    }

    @ParameterizedTest
    @ValueSource(ints = {0x20, 0x7E, 0xA0, 0xE6, 0x2029, 0x202F, 0x2065, 0x206A, 0xD7FF, 0xE000, 0x1F342})
    void whatLiesBesideThemIsShownAsItIs(int point) {
        String text = "a" + Character.toString(point) + "b";
        assertEquals(text, Shown.plain(text));
    }

    @Test
    void sixtyCharactersAreShownAndTheRestIsDots() {
        String leaves = "🍂".repeat(60);
        assertEquals('"' + leaves + '"', Shown.quoted(leaves));
        assertEquals('"' + leaves + "…\"", Shown.quoted(leaves + "x"));
    }

    @ParameterizedTest
    @CsvSource({"12,12", "0.5,0.5", "1000000,1000000", "1e-6,0.000001", "-40,-40", "0,0", "12.50,12.5"})
    void aNumberHasNeitherExponentNorNeedlessZeros(double value, String shown) {
        assertEquals(shown, Shown.number(value));
    }
}
