package heapwright.process.dose;

import heapwright.knowledge.Limit;
import heapwright.knowledge.Material;
import heapwright.pile.Amount;
import heapwright.pile.Pile;
import heapwright.pile.Stock;
import heapwright.process.mixture.Density;
import heapwright.process.mixture.Materials;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a dose is worked out from.
 *
 * @param stock what lies in the pile
 * @param shape its outside
 * @param limits limits that count here
 * @param materials materials that count here
 * @param atHand what the person has
 * @param supply what the month gives; what it does not give is only used where it is at hand
 * @param fitting ids of the materials that fit the kind of pile best, the best first; empty where none does in particular
 * @param given what went in within the season, which counts against the limits
 * @param coldSeason whether the pile must stand a cold winter: larger size, thicker cover
 */
public record DoseContext(
        PileStock stock,
        Shape shape,
        Limits limits,
        Materials materials,
        List<Stock> atHand,
        Supply supply,
        List<String> fitting,
        Given given,
        boolean coldSeason) {

    public DoseContext {
        atHand = List.copyOf(atHand);
        fitting = List.copyOf(fitting);
    }

    /** For a heap that nothing was given yet, and which no material fits in particular. */
    public DoseContext(
            PileStock stock,
            Shape shape,
            Limits limits,
            Materials materials,
            List<Stock> atHand,
            Supply supply,
            boolean coldSeason) {
        this(stock, shape, limits, materials, atHand, supply, List.of(), Given.nothing(), coldSeason);
    }

    /** The same where this was given already. */
    public DoseContext given(Given before) {
        return new DoseContext(stock, shape, limits, materials, atHand, supply, fitting, before, coldSeason);
    }

    /** The same where these materials fit the kind of pile best, the best first. */
    public DoseContext fitting(List<String> best) {
        return new DoseContext(stock, shape, limits, materials, atHand, supply, best, given, coldSeason);
    }

    /** The most that may be given at once of anything, litres: a share of the pile's volume. */
    double mostLitres() {
        return limits.share(Limit.CARBON_MAX_SHARE) * stock.volumeM3().likely() * Density.LITRES_PER_M3;
    }

    /** The same with as much of a material at hand as is needed. */
    DoseContext withPlenty(Material material) {
        Stock plenty = new Stock(
                material.id(), Optional.of(Amount.ofMass(Double.POSITIVE_INFINITY, "kg", Double.POSITIVE_INFINITY)));
        return having(Stream.concat(others(material), Stream.of(plenty)));
    }

    /** Whether a material was told as lying at hand. */
    boolean isAtHand(Material material) {
        return atHand.stream().anyMatch(one -> one.material().equals(material.id()));
    }

    /** The same with none of a material at hand. */
    DoseContext without(Material material) {
        return having(others(material));
    }

    private Stream<Stock> others(Material material) {
        return atHand.stream()
                .filter(one -> materials
                        .find(one.material())
                        .filter(m -> m.id().equals(material.id()))
                        .isEmpty());
    }

    private DoseContext having(Stream<Stock> stocks) {
        return new DoseContext(stock, shape, limits, materials, stocks.toList(), supply, fitting, given, coldSeason);
    }

    /** What a dose for a pile on its day is worked out from. */
    public static DoseContext of(
            Pile pile, PileStock stock, Shape shape, Limits limits, Materials materials, boolean coldSeason) {
        return new DoseContext(stock, shape, limits, materials, pile.atHand(), Supply.of(pile), coldSeason)
                .given(Given.of(pile, materials));
    }
}
