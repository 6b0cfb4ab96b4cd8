package heapwright.process.dose;

import heapwright.pile.Pile;
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
 * @param supply what the month gives; what it does not give is only used where it is at hand
 * @param coldSeason whether the pile must stand a cold winter: larger size, thicker cover
 */
public record DoseContext(
        PileStock stock,
        Shape shape,
        Limits limits,
        Materials materials,
        List<Stock> atHand,
        Supply supply,
        boolean coldSeason) {

    public DoseContext {
        atHand = List.copyOf(atHand);
    }

    /** What a dose for a pile on its day is worked out from. */
    public static DoseContext of(
            Pile pile, PileStock stock, Shape shape, Limits limits, Materials materials, boolean coldSeason) {
        return new DoseContext(stock, shape, limits, materials, pile.atHand(), Supply.of(pile), coldSeason);
    }
}
