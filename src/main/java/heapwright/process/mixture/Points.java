package heapwright.process.mixture;

import java.nio.charset.StandardCharsets;
import java.util.Random;
import java.util.zip.CRC32;
import org.hipparchus.random.SobolSequenceGenerator;

/**
 * A fixed set of evenly spread points for each group of figures, so that the same pile gives the same bands. The points
 * are the first whole block of a Sobol sequence after its start, whose own first point would put every figure at its
 * lowest.
 *
 * <p>Every group goes through the same points in an order of its own, which follows from its key alone: Latin supercube
 * sampling (Owen 1998, ACM Transactions on Modeling and Computer Simulation 8(1); from memory). So the draws of a
 * material depend neither on its place in a list nor on what else is in it, and a mixture may hold any number of
 * materials.
 */
final class Points {

    private final double[][] points;

    /**
     * @param dimensions figures in a group
     * @param count how many points, a power of two
     */
    Points(int dimensions, int count) {
        SobolSequenceGenerator sequence = new SobolSequenceGenerator(dimensions);
        points = new double[count][];
        points[0] = sequence.skipTo(count);
        for (int i = 1; i < count; i++) {
            points[i] = sequence.nextVector();
        }
    }

    int count() {
        return points.length;
    }

    /** The points of a group in its order; each value is in 0 to below 1. Not to be changed by the caller. */
    double[][] of(String key) {
        CRC32 seed = new CRC32();
        seed.update(key.getBytes(StandardCharsets.UTF_8));
        Random random = new Random(seed.getValue());
        double[][] order = points.clone();
        for (int i = order.length - 1; i > 0; i--) {
            int other = random.nextInt(i + 1);
            double[] taken = order[i];
            order[i] = order[other];
            order[other] = taken;
        }
        return order;
    }
}
