package heapwright.knowledge;

/**
 * A row of evidence: one thing that speaks for or against one cause.
 *
 * @param id its id, {@code WEIGH-<number>}, with the cause's id behind it where several causes share the number; never
 *     reused
 * @param cause the cause it speaks of
 * @param speaks for or against
 * @param strength how firmly; the weight it adds or takes
 * @param witness what of the pile it tells; of one witness the strongest row counts in full
 * @param when what it reads
 * @param because the mechanism in one sentence
 * @param source key of its source
 * @param known how that is known
 */
public record Evidence(
        String id,
        Cause cause,
        Speaks speaks,
        Strength strength,
        Witness witness,
        When when,
        String because,
        String source,
        Known known) {

    /** The direction in which a row speaks. */
    public enum Speaks implements Id {
        FOR,
        AGAINST
    }
}
