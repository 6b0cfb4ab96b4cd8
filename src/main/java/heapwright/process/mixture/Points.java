package heapwright.process.mixture;

import org.hipparchus.random.SobolSequenceGenerator;

/**
 * A fixed set of evenly spread points, so that the same pile gives the same bands. The points are the first whole block
 * of a Sobol sequence after its start, whose own first point would put every figure at its lowest.
 */
final class Points {

    /** Dimensions made at once; enough for eight materials, more are made when asked for. */
    private static final int USUAL_DIMENSIONS = 64;

    private final int count;
    private final double[][] usual;

    /** @param count how many points, a power of two */
    Points(int count) {
        this.count = count;
        this.usual = make(USUAL_DIMENSIONS, count);
    }

    /** The points in at least this many dimensions; each value is in 0 to below 1. Not to be changed by the caller. */
    double[][] inDimensions(int dimensions) {
        return dimensions <= USUAL_DIMENSIONS ? usual : make(dimensions, count);
    }

    private static double[][] make(int dimensions, int count) {
        SobolSequenceGenerator sequence = new SobolSequenceGenerator(dimensions);
        double[][] points = new double[count][];
        points[0] = sequence.skipTo(count);
        for (int i = 1; i < count; i++) {
            points[i] = sequence.nextVector();
        }
        return points;
    }
}
