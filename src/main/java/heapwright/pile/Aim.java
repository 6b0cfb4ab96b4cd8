package heapwright.pile;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What the compost is wanted for.
 *
 * @param readyBy the day it is wanted, if stated
 * @param use what for
 */
public record Aim(Optional<LocalDate> readyBy, Use use) {

    /** What the compost is wanted for. */
    public enum Use implements Token {
        VEGETABLE_BED,
        FRUIT_AND_SHRUBS,
        FLOWER_BED,
        LAWN,
        POTTING_MIX,
        SEEDLINGS,
        MULCH,
        UNKNOWN
    }

    public static Aim unknown() {
        return new Aim(Optional.empty(), Use.UNKNOWN);
    }
}
