package heapwright.knowledge;

/** How firmly a rule or a row of evidence speaks, in plain words; what they weigh stands in {@link Weights}. */
public enum Strength implements Id {
    SLIGHT,
    FAIR,
    STRONG,
    DECISIVE
}
