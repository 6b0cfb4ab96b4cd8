package heapwright.process.heat;

import java.util.OptionalDouble;

/**
 * How far a pile has come apart from what it is made of.
 *
 * @param loose share of its settled volume by which it still lies too high, 0–2
 * @param vigour how far its microbes have grown, 0–1; empty for those that came with the stuff
 */
public record Stage(double loose, OptionalDouble vigour) {

    public Stage {
        Checks.within("loose", loose, 0, 2);
        vigour.ifPresent(v -> Checks.within("vigour", v, 0, 1));
    }

    /** Just heaped as stuff usually lies. */
    public static Stage fresh() {
        return fresh(Run.FRESH_LOOSE);
    }

    /** Just heaped. */
    public static Stage fresh(double loose) {
        return new Stage(loose, OptionalDouble.empty());
    }
}
