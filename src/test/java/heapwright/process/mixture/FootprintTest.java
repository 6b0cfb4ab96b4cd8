package heapwright.process.mixture;

import static org.junit.jupiter.api.Assertions.assertEquals;

import heapwright.pile.Container;
import heapwright.pile.Container.Kind;
import java.util.OptionalDouble;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The ground a pile covers")
class FootprintTest {

    private static Footprint of(Kind kind, Double length, Double width, Double height, Double volume, double allM3) {
        Container none = Container.unknown();
        return Footprint.of(
                new Container(
                        kind,
                        optional(length),
                        optional(width),
                        optional(height),
                        optional(volume),
                        none.cover(),
                        none.base(),
                        none.insulation(),
                        false),
                allM3);
    }

    private static OptionalDouble optional(Double value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    private static void square(double side, Footprint ground) {
        assertEquals(side, ground.lengthM(), 1e-9);
        assertEquals(side, ground.widthM(), 1e-9);
    }

    @Test
    @DisplayName("is what its sides say, however thin the stuff lies on it at first")
    void told() {
        assertEquals(new Footprint(1.2, 0.8), of(Kind.SLATTED_BIN, 1.2, 0.8, null, null, 0.02));
        assertEquals(new Footprint(1.2, 0.8), of(Kind.OPEN_HEAP, 1.2, 0.8, 1.0, 0.3, 0.5));
    }

    @Test
    @DisplayName("of a bin with one side told is square, of a heap not known from it")
    void oneSide() {
        square(0.7, of(Kind.FED_BIN, 0.7, null, null, null, 0.1));
        square(0.7, of(Kind.FED_BIN, null, 0.7, 1.0, null, 0.1));
        square(1, of(Kind.OPEN_HEAP, 3.0, null, null, null, 1));
    }

    @Test
    @DisplayName("follows from volume and height, else from the volume as high as wide")
    void volume() {
        square(0.6, of(Kind.CLOSED_BIN, null, null, 0.9, 0.324, 0.1));
        square(0.5, of(Kind.CLOSED_BIN, null, null, null, 0.125, 0.1));
        square(0.5, of(Kind.UNKNOWN, null, null, 0.0, 0.125, 0.1));
    }

    @ParameterizedTest
    @CsvSource({
        "CLOSED_BIN, 0.6",
        "FED_BIN, 0.6",
        "INSULATED_BIN, 0.6",
        "TUMBLER, 0.6",
        "SLATTED_BIN, 1",
        "WIRE_RING, 1",
        "LEAF_CAGE, 1",
        "OPEN_HEAP, 0.5",
        "PIT, 0.5",
        "UNKNOWN, 0.5"
    })
    @DisplayName("is the usual one of a bin of which only the kind is told; a heap is as high as wide")
    void usual(Kind kind, double side) {
        square(side, of(kind, null, null, null, null, 0.125));
    }

    @Test
    @DisplayName("is not believed where the stuff would stand as high as a house or lie as thin as a finger")
    void slips() {
        assertEquals(new Footprint(1, 1), of(Kind.SLATTED_BIN, 1.0, 1.0, null, null, 2.49));
        square(Math.cbrt(2.51), of(Kind.SLATTED_BIN, 1.0, 1.0, null, null, 2.51));
        assertEquals(new Footprint(2, 2), of(Kind.SLATTED_BIN, 2.0, 2.0, null, null, 0.0401));
        square(Math.cbrt(0.0399), of(Kind.SLATTED_BIN, 2.0, 2.0, null, null, 0.0399));
        square(Math.cbrt(0.008), of(Kind.SLATTED_BIN, 0.05, 0.1, null, null, 0.008));
    }
}
