package heapwright.pile;

import java.util.List;
import java.util.OptionalInt;

/**
 * What whoever looks after a pile has for it. What they cannot or must not do is told by signs, such as that they cannot
 * lift.
 *
 * @param minutes time for the pile on one day, minutes; empty if not told
 * @param lacks tools that they do not have
 */
public record Keeper(OptionalInt minutes, List<Gear> lacks) {

    /** Less is no time to do anything in, minutes; judgement. */
    static final int SHORTEST = 5;

    /** More is more than a day's light, minutes; judgement. */
    static final int LONGEST = 600;

    public Keeper {
        lacks = List.copyOf(lacks);
    }

    public static Keeper unknown() {
        return new Keeper(OptionalInt.empty(), List.of());
    }

    static Keeper of(Section section) {
        OptionalInt minutes = section.field("minutes")
                .map(node -> section.number(node, SHORTEST, LONGEST, " minutes", "30"))
                .filter(java.util.OptionalDouble::isPresent)
                .map(m -> OptionalInt.of((int) Math.round(m.getAsDouble())))
                .orElse(OptionalInt.empty());
        return new Keeper(minutes, section.tokens("lacks", Gear.values()));
    }
}
