package heapwright.process.mixture;

import heapwright.pile.Container;
import heapwright.pile.Container.Kind;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The ground that a pile covers. It stays what it is however much goes in: a bin that is fed grows upwards between its
 * walls, from a thin layer on its floor.
 *
 * @param lengthM length, metres, above 0
 * @param widthM width, metres, above 0
 */
public record Footprint(double lengthM, double widthM) {

    /** Stuff lies no higher and, once all is in, no thinner than this, metres; other sides are a slip (judgement). */
    private static final double HIGHEST = 2.5;

    private static final double LOWEST = 0.01;

    /** Nothing that composts is narrower, square metres. */
    private static final double LEAST_M2 = 0.01;

    /** Plastic bins of 220 to 330 L stand 80 to 90 cm high (common practice): 0.6 m square holds as much. */
    private static final double CLOSED_BIN_M = 0.6;

    /** Bins of slats and rings of wire are mostly built a metre or so wide (common practice). */
    private static final double OPEN_BIN_M = 1.0;

    /**
     * The footprint told, else that of a bin as it usually is, else that of a heap as high as wide.
     *
     * @param container what holds it
     * @param allM3 all that went in up to now, cubic metres, above 0: a heap that is fed grows in width too
     */
    public static Footprint of(Container container, double allM3) {
        return told(container)
                .or(() ->
                        container.volumeM3().stream().mapToObj(Footprint::cube).findFirst())
                .or(() -> usual(container.kind()))
                .filter(one -> one.holds(allM3))
                .orElseGet(() -> cube(allM3));
    }

    /** Whether it is told, or that of a bin. */
    public static boolean known(Container container) {
        return told(container).or(() -> usual(container.kind())).isPresent();
    }

    /** Both sides; the one of a bin, which is square then; the volume when built over the height when built. */
    private static Optional<Footprint> told(Container container) {
        OptionalDouble length = container.lengthM();
        OptionalDouble width = container.widthM();
        if (length.isPresent() && width.isPresent()) {
            return Optional.of(new Footprint(length.getAsDouble(), width.getAsDouble()));
        }
        if (isBin(container.kind()) && (length.isPresent() || width.isPresent())) {
            double side = length.orElseGet(width::getAsDouble);
            return Optional.of(new Footprint(side, side));
        }
        if (container.volumeM3().isPresent() && container.heightM().orElse(0) > 0) {
            double side = Math.sqrt(
                    container.volumeM3().getAsDouble() / container.heightM().getAsDouble());
            return Optional.of(new Footprint(side, side));
        }
        return Optional.empty();
    }

    private static boolean isBin(Kind kind) {
        return usual(kind).isPresent();
    }

    private static Optional<Footprint> usual(Kind kind) {
        return switch (kind) {
            case CLOSED_BIN, FED_BIN, INSULATED_BIN, TUMBLER -> Optional.of(new Footprint(CLOSED_BIN_M, CLOSED_BIN_M));
            case SLATTED_BIN, WIRE_RING, LEAF_CAGE -> Optional.of(new Footprint(OPEN_BIN_M, OPEN_BIN_M));
            case OPEN_HEAP, PIT, TRENCH, WORM_BIN, BOKASHI, UNKNOWN -> Optional.empty();
        };
    }

    private static Footprint cube(double volumeM3) {
        double side = Math.cbrt(volumeM3);
        return new Footprint(side, side);
    }

    private boolean holds(double volumeM3) {
        double area = areaM2();
        return area > LEAST_M2 && volumeM3 / area > LOWEST && volumeM3 / area < HIGHEST;
    }

    /** Square metres. */
    public double areaM2() {
        return lengthM * widthM;
    }
}
