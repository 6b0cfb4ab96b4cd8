package heapwright.knowledge;

/** What compost is ripe enough for, the least first; each takes in those before it. */
public enum Ripeness implements Id {
    /** For nothing yet. */
    NOT_YET,
    /** For mulch, and for digging in in autumn. */
    ROUGH,
    /** For beds. */
    BEDS,
    /** For pots and seedlings. */
    POTS;

    /** The lesser of the two. */
    public Ripeness and(Ripeness other) {
        return compareTo(other) <= 0 ? this : other;
    }

    public boolean atLeast(Ripeness other) {
        return compareTo(other) >= 0;
    }
}
