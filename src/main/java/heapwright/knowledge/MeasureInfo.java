package heapwright.knowledge;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A household measure.
 *
 * @param id its id
 * @param name its name for one and for many
 * @param litres its volume in litres unless a pile file redefines it
 * @param kilograms what it weighs full, where it is pressed and tied and so does not hold what fills it loosely, kg
 * @param aliases what people also call it
 * @param note what to know about it
 * @param sources keys of sources
 * @param known how it is known
 */
public record MeasureInfo(
        String id,
        Name name,
        double litres,
        OptionalDouble kilograms,
        List<String> aliases,
        Optional<String> note,
        List<String> sources,
        Known known) {

    /** The name for one and for many. */
    public record Name(String one, String many) {}
}
