package heapwright.pile;

import java.util.List;

/** A unit a pile document may use. Spellings are matched without regard to case, degree sign and raised figures. */
public interface Unit {

    /** How Heapwright writes the unit in a document. */
    String symbol();

    /** All spellings a document may use, the symbol first. */
    List<String> spellings();

    /** How much one of it is, in the smallest step of its kind; only ratios between units of one kind mean anything. */
    double size();

    /**
     * A value in this unit, told in another unit of the same kind.
     *
     * @param target a unit of the same enum
     * @param value finite
     */
    default double to(Unit target, double value) {
        return this == target ? value : value * size() / target.size();
    }
}
