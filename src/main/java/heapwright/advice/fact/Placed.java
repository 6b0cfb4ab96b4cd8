package heapwright.advice.fact;

import heapwright.knowledge.Limit;
import heapwright.knowledge.Reading;
import heapwright.knowledge.Side;

/**
 * Where a quantity of this pile is placed to a limit, by degree: an edge is as soft as a figure at it is uncertain. What a
 * rule says on it counts in that degree.
 *
 * @param reads the quantity
 * @param side the side of the limit
 * @param edge the limit in force
 * @param degree how far it is so, above 0 to 1; a half at the very edge
 */
public record Placed(Reads reads, Side side, LimitIs edge, double degree) implements Graded {

    /** The side of the limit on which it stands. */
    public Stand stand() {
        return new Stand(reading(), side, limit());
    }

    public Reading reading() {
        return reads.reading();
    }

    public Limit limit() {
        return edge.limit();
    }

    public boolean measured() {
        return reads.measured();
    }
}
