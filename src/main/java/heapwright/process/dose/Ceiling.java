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

    Ceiling under(double most, Cap why) {
        double ceiling = Math.max(0, most);
        return new Ceiling(amount.atMost(ceiling), amount.likely() > ceiling ? Optional.of(why) : cap);
    }
}
