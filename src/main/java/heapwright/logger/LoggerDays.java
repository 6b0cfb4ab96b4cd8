package heapwright.logger;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A logger's file told by the day, as a pile document can hold it.
 *
 * @param rows how many rows it has
 * @param days its days in order
 * @param named what was left out, doubtful or missing, in the order in which it is to be told
 */
public record LoggerDays(int rows, List<Day> days, List<Named> named) {
    public LoggerDays {
        days = List.copyOf(days);
        named = List.copyOf(named);
    }

    /**
     * A day: its warmest and its coolest core, its mean outside, °C, and how many rows told them.
     *
     * @param date the day
     * @param coreC the highest core temperature
     * @param lowestC the lowest core temperature, of all probes
     * @param outdoorC the mean outdoor temperature
     * @param rows how many rows
     */
    public record Day(
            LocalDate date, OptionalDouble coreC, OptionalDouble lowestC, OptionalDouble outdoorC, int rows) {}

    /** Something to tell: what it is, how often, and where first. */
    public record Named(What what, long count, String where) {}

    /** What can be told of a file. */
    public enum What {
        /** A row whose day or time cannot be read. */
        NO_STAMP,
        /** A row with more cells than the header: a decimal comma in a file separated by commas, mostly. */
        TOO_MANY_CELLS,
        /** A row without a figure. */
        NO_FIGURE,
        /** A figure that no pile and no weather has. */
        IMPOSSIBLE,
        /** A single figure far from those before and after it. */
        JUMP,
        /** A row of a day before the pile was built. */
        BEFORE,
        /** A row of a day to come. */
        FUTURE,
        /** A row that stands after a later one. */
        OUT_OF_ORDER,
        /** A time that stands twice, as when the clock goes back. */
        TWICE,
        /** Time without a row. */
        GAP
    }
}
