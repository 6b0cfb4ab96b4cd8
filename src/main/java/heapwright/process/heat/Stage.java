package heapwright.process.heat;

import java.util.Optional;

/**
 * How far a pile has come apart from what it is made of, and what its readings taught of it.
 *
 * @param loose share of its settled volume by which it still lies too high, 0–2
 * @param vigour how far its organisms have grown; empty for those that came with the stuff, of a pile just heaped
 * @param rate times by which it decays faster than its recipe alone would have it, above 0; 1 where nothing was measured
 * @param loss times by which it loses heat faster than its size and covers would have it, above 0; 1 likewise
 * @param missK kelvin by which the reading of late that fits worst missed the model, after all was done to fit it
 */
public record Stage(double loose, Optional<Vigour> vigour, double rate, double loss, double missK) {

    /** A reading that misses a fitted model by more than this says that it is no model of this pile, K (judgement). */
    public static final double MISFIT_K = 15;

    public Stage {
        Checks.within("loose", loose, 0, 2);
        Checks.above("rate", rate, 0);
        Checks.above("loss", loss, 0);
    }

    /** Just heaped as stuff usually lies. */
    public static Stage fresh() {
        return fresh(Run.FRESH_LOOSE);
    }

    /** Just heaped. */
    public static Stage fresh(double loose) {
        return new Stage(loose, Optional.empty(), 1, 1, 0);
    }

    /** Whether it stands already, so that day 0 of a run is today as it is, and what is done today tells from tomorrow on. */
    public boolean standing() {
        return vigour.isPresent();
    }

    /** Whether the model is one of this pile. */
    public boolean fits() {
        return Math.abs(missK) <= MISFIT_K;
    }
}
