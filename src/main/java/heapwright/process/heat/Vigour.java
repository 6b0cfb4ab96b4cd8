package heapwright.process.heat;

/**
 * How far the organisms of a pile have grown, as shares of grown populations, and what they can get at.
 *
 * @param mesophiles those of the cool and the warm range, 0–1
 * @param thermophiles those of the hot range, 0–1
 * @param reach share of the food that lies within their reach, 0–1
 */
public record Vigour(double mesophiles, double thermophiles, double reach) {
    public Vigour {
        Checks.within("mesophiles", mesophiles, 0, 1);
        Checks.within("thermophiles", thermophiles, 0, 1);
        Checks.within("reach", reach, 0, 1);
    }

    /** That of stuff just mixed. */
    static Vigour fresh(Constants c) {
        Constants.Kinetics k = c.kinetics();
        return new Vigour(
                k.mesophiles().seed(), k.thermophiles().seed(), c.reach().fresh());
    }
}
