package heapwright.advice.fact;

import heapwright.knowledge.Sign;

/**
 * The person looked for a sign and found it, at the latest answer that is still fresh.
 *
 * @param sign the sign
 * @param daysAgo days since that answer
 * @param outlived whether something was done since that most likely changed it
 */
public record Seen(Sign sign, int daysAgo, boolean outlived) implements Graded {

    /** What an answer still counts that something was done about since: a remedy may have failed. Judgement. */
    private static final double OUTLIVED = 0.1;

    /** An answer that nothing was done about since. */
    public Seen(Sign sign, int daysAgo) {
        this(sign, daysAgo, false);
    }

    @Override
    public double degree() {
        return outlived ? OUTLIVED : 1;
    }
}
