package heapwright.process.heat;

/**
 * How far the organisms of a pile have grown, as shares of grown populations.
 *
 * @param mesophiles those of the cool and the warm range, 0–1
 * @param thermophiles those of the hot range, 0–1
 */
public record Vigour(double mesophiles, double thermophiles) {
    public Vigour {
        Checks.within("mesophiles", mesophiles, 0, 1);
        Checks.within("thermophiles", thermophiles, 0, 1);
    }
}
