package heapwright.process.mixture;

import heapwright.knowledge.Material;

/**
 * What one ingredient brings to a mixture at its typical figures, as it went in.
 *
 * @param material what it is
 * @param kgWet mass as it is, kg
 * @param kgDry dry mass, kg
 * @param kgWater water, kg
 * @param kgCarbon carbon, kg
 * @param kgNitrogen nitrogen, kg
 * @param settledM3 volume after settling by itself, cubic metres; in a mix the fine fills gaps of the coarse
 * @param coarse whether its pieces are coarse enough to hold air spaces open
 */
public record Contribution(
        Material material,
        double kgWet,
        double kgDry,
        double kgWater,
        double kgCarbon,
        double kgNitrogen,
        double settledM3,
        boolean coarse) {

    public boolean woody() {
        return Degradability.isWoody(material);
    }
}
