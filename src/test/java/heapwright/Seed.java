package heapwright;

/**
 * Where the draws of the property tests begin. Fixed, so that what fails on one machine fails on every one;
 * {@code .ci/seeds} goes looking with others.
 */
public final class Seed {

    public static final String FIXED = "20261129";

    private Seed() {}
}
