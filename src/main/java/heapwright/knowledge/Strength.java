package heapwright.knowledge;

/**
 * How firmly a rule or a row of evidence speaks, in the trade's plain words. Each stands for a weight of evidence in decibans (I. J. Good,
 * Probability and the Weighing of Evidence, 1950; from memory). The scale itself is judgement: it is held to account by
 * the published tables in {@code cases/published}.
 */
public enum Strength implements Id {
    SLIGHT(2),
    FAIR(5),
    STRONG(10),
    DECISIVE(20);

    private final int decibans;

    Strength(int decibans) {
        this.decibans = decibans;
    }

    /** The weight in decibans: ten decibans multiply the odds by ten. */
    public int decibans() {
        return decibans;
    }
}
