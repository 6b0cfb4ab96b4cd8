package heapwright.process.dose;

import heapwright.process.mixture.Band;
import java.util.Optional;

/**
 * An amount held under upper limits, remembering the one that cuts the likely amount most.
 *
 * @param amount the amount so far
 * @param cap what held it down, if anything did
 */
record Ceiling(Band amount, Optional<Cap> cap) {

    static Ceiling of(Band amount) {
        return new Ceiling(amount, Optional.empty());
    }

    /** Less of the need than this is not worth the work; something else must be done (judgement). */
    static final double LEAST_SHARE = 0.2;

    /** Whether a limit of the pile leaves too little of a need; for what is at hand another material may step in. */
    boolean coversTooLittle(Band need) {
        boolean byPile = cap.isPresent() && cap.get() != Cap.AT_HAND;
        return byPile && amount.likely() < LEAST_SHARE * need.likely();
    }

    Ceiling under(double most, Cap why) {
        double ceiling = Math.max(0, most);
        return new Ceiling(amount.atMost(ceiling), amount.likely() > ceiling ? Optional.of(why) : cap);
    }
}
