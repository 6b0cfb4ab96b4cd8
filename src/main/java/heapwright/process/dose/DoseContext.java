package heapwright.process.dose;

import heapwright.pile.Stock;
import heapwright.process.mixture.Materials;
import java.util.List;

/**
 * What a dose is worked out from.
 *
 * @param stock what lies in the pile
 * @param shape its outside
 * @param limits limits that count here
 * @param materials materials that count here
 * @param atHand what the person has
 * @param coldSeason whether the pile must stand a cold winter: larger size, thicker cover
 */
public record DoseContext(
        PileStock stock, Shape shape, Limits limits, Materials materials, List<Stock> atHand, boolean coldSeason) {

    public DoseContext {
        atHand = List.copyOf(atHand);
    }
}
