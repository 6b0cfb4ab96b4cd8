package heapwright.knowledge;

import java.util.Locale;

/** A thing that a table of the knowledge base describes; the enum constant is its name in rules and code. */
public interface Id {

    /** The constant's name, as {@link Enum#name()}. */
    String name();

    /** The name as files and screens write it: lower case with hyphens, {@code SMELLS_SOUR} is {@code smells-sour}. */
    default String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
