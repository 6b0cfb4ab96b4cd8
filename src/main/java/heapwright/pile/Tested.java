package heapwright.pile;

/**
 * A home test and how it came out.
 *
 * @param test which
 * @param result how it came out, as the table of home tests reads it
 */
public record Tested(HomeTest test, Result result) {

    /** How a test came out, the best first. */
    public enum Result implements Token {
        GOOD,
        FAIR,
        POOR,
        /** It was spoilt, or nobody can tell. */
        UNCLEAR
    }
}
