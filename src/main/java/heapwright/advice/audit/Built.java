package heapwright.advice.audit;

import heapwright.pile.Container;
import heapwright.process.dose.Shape;
import heapwright.process.mixture.Band;
import heapwright.process.mixture.Mixture;

/** The size of a pile on the day it is built. */
final class Built {

    /** A free heap higher than this is hard to build and to turn by hand, metres: 1.5 to 1.8 (WSUWHAT, published). */
    private static final double HANDY_M = 1.5;

    private Built() {}

    /**
     * Volume when built, cubic metres: halfway between what was filled by hand and what it settles to in the first
     * weeks (judgement).
     */
    static Band volumeM3(Mixture mixture) {
        return mixture.looseM3().plus(mixture.settledM3()).times(1.0 / 2);
    }

    /** Its stated footprint, or a square one under a handy height. */
    static Shape shape(Container container, double volumeM3) {
        Shape shape = Shape.of(container, volumeM3);
        boolean stated = container.lengthM().isPresent()
                && container.widthM().isPresent()
                && shape.lengthM() == container.lengthM().getAsDouble()
                && shape.widthM() == container.widthM().getAsDouble();
        if (shape.heightM() <= HANDY_M || stated) {
            return shape;
        }
        double side = Math.sqrt(volumeM3 / HANDY_M);
        return new Shape(side, side, HANDY_M);
    }
}
