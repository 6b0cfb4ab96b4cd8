package heapwright.pile;

import java.util.Locale;

/** An enum whose constants appear in the pile document in lower case with hyphens. */
public interface Token {

    /** The constant's name, as {@link Enum#name()}. */
    String name();

    /** The word in the document: {@code CLOSED_SHED} is {@code closed-shed}. */
    default String token() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
