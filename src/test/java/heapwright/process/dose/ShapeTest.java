package heapwright.process.dose;

import static org.junit.jupiter.api.Assertions.assertEquals;

import heapwright.pile.Container;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class ShapeTest {

    private static Container footprint(OptionalDouble length, OptionalDouble width) {
        Container none = Container.unknown();
        return new Container(
                none.kind(),
                length,
                width,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                none.cover(),
                none.base(),
                none.insulation(),
                false);
    }

    @Test
    void aFootprintGivesTheHeight() {
        Shape shape = Shape.of(footprint(OptionalDouble.of(2), OptionalDouble.of(1.25)), 2);
        assertEquals(new Shape(2, 1.25, 0.8), shape);
        assertEquals(2.5, shape.topM2(), 1e-12);
    }

    @Test
    void withoutAWholeFootprintItIsACube() {
        Shape cube = new Shape(2, 2, 2);
        assertEquals(cube, Shape.of(Container.unknown(), 8));
        assertEquals(cube, Shape.of(footprint(OptionalDouble.of(3), OptionalDouble.empty()), 8));
        assertEquals(cube, Shape.of(footprint(OptionalDouble.empty(), OptionalDouble.of(3)), 8));
    }
}
