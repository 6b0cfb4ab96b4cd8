package heapwright.process.mixture;

import heapwright.pile.Container;
import heapwright.pile.Measured;
import heapwright.pile.Pile;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The size of a pile as somebody told or measured it. Every volume of a pile that is not worked out from its recipe is
 * read here, so that doses, readings and the model speak of one and the same.
 *
 * @param volumeM3 volume, cubic metres
 * @param measured whether its height was measured since it was built, so that it is the volume of today
 */
public record PileSize(double volumeM3, boolean measured) {

    /** Cubic metres of a home pile of which no size is stated (judgement). */
    private static final Band USUAL_M3 = new Band(0.5, 1.0, 1.5);

    /** Plastic bins with a lid are mostly sold at 220 and 330 L (common practice), and are seldom full. */
    private static final Band CLOSED_BIN_M3 = new Band(0.15, 0.25, 0.33);

    /** Tumblers hold about 140 to 400 L (common practice), and must stay a third empty to tumble. */
    private static final Band TUMBLER_M3 = new Band(0.08, 0.15, 0.3);

    /** A trench is dug for a bucket or a few (judgement). */
    private static final Band TRENCH_M3 = new Band(0.02, 0.05, 0.15);

    /** Worm bins are sold and built at 20 to 100 L (common practice). */
    private static final Band WORM_BIN_M3 = new Band(0.02, 0.05, 0.1);

    /** Bokashi buckets hold 10 to 20 L (common practice). */
    private static final Band BUCKET_M3 = new Band(0.01, 0.015, 0.02);

    /**
     * What was told, the best first: the sides or the volume with the latest measured height, the volume, the three
     * sides; empty where none can be had.
     */
    public static Optional<PileSize> told(Pile pile) {
        Container container = pile.container();
        OptionalDouble height = PileMixture.latest(pile, Measured::heightM);
        OptionalDouble base = base(container);
        if (height.isPresent() && base.isPresent()) {
            return Optional.of(new PileSize(base.getAsDouble() * height.getAsDouble(), true));
        }
        OptionalDouble built = container.builtVolumeM3();
        return built.isPresent() ? Optional.of(new PileSize(built.getAsDouble(), false)) : Optional.empty();
    }

    /**
     * The size when built.
     *
     * @param m3 cubic metres
     * @param filled whether so much lay there; else it is the room of what holds it, which need not have been full
     */
    public record Built(double m3, boolean filled) {}

    /** The volume told, which is that of the stuff; else the sides: of a heap those of the stuff, of a bin those of its room. */
    public static Optional<Built> built(Container container) {
        OptionalDouble built = container.builtVolumeM3();
        boolean walls =
                switch (container.kind()) {
                    case OPEN_HEAP, UNKNOWN -> false;
                    default -> true;
                };
        return built.isPresent() && built.getAsDouble() > 0
                ? Optional.of(new Built(
                        built.getAsDouble(), !walls || container.volumeM3().isPresent()))
                : Optional.empty();
    }

    /** What a pile of this kind usually holds, where nobody told its size. */
    public static Band usualM3(Container.Kind kind) {
        return switch (kind) {
            case TUMBLER -> TUMBLER_M3;
            case CLOSED_BIN, FED_BIN -> CLOSED_BIN_M3;
            case TRENCH -> TRENCH_M3;
            case WORM_BIN -> WORM_BIN_M3;
            case BOKASHI -> BUCKET_M3;
            case OPEN_HEAP, SLATTED_BIN, WIRE_RING, LEAF_CAGE, INSULATED_BIN, PIT, UNKNOWN -> USUAL_M3;
        };
    }

    /** The ground it covers: length by width, or the volume when built over the height when built, square metres. */
    private static OptionalDouble base(Container container) {
        if (container.lengthM().isPresent() && container.widthM().isPresent()) {
            return OptionalDouble.of(
                    container.lengthM().getAsDouble() * container.widthM().getAsDouble());
        }
        boolean tall = container.volumeM3().isPresent() && container.heightM().orElse(0) > 0;
        return tall
                ? OptionalDouble.of(
                        container.volumeM3().getAsDouble() / container.heightM().getAsDouble())
                : OptionalDouble.empty();
    }
}
