package heapwright.process.dose;

import heapwright.pile.Container;

/**
 * The outside of a pile in metres.
 *
 * @param lengthM length
 * @param widthM width
 * @param heightM height as it lies
 */
public record Shape(double lengthM, double widthM, double heightM) {

    /** Nobody builds lower or higher than this, m; a footprint that asks for it does not belong to the volume. */
    private static final double LOWEST = 0.01;

    private static final double HIGHEST = 10;

    /**
     * Its stated footprint with the height that the volume gives, else a cube of that volume: also where the stuff
     * would lie thinner than a finger on that footprint, or higher than a house.
     */
    public static Shape of(Container container, double volumeM3) {
        if (container.lengthM().isPresent() && container.widthM().isPresent()) {
            double length = container.lengthM().getAsDouble();
            double width = container.widthM().getAsDouble();
            double height = volumeM3 / (length * width);
            if (height >= LOWEST && height <= HIGHEST) {
                return new Shape(length, width, height);
            }
        }
        double edge = Math.cbrt(volumeM3);
        return new Shape(edge, edge, edge);
    }

    public double topM2() {
        return lengthM * widthM;
    }
}
