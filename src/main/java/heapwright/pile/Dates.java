package heapwright.pile;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Days in a document: ISO dates of the years 1990 to 2100. */
final class Dates {

    static final LocalDate FIRST = LocalDate.of(1990, 1, 1);
    static final LocalDate LAST = LocalDate.of(2100, 12, 31);
    static final String ALLOWED = "a day as year-month-day, from " + FIRST + " to " + LAST;
    static final String EXAMPLE = "\"2026-11-21\"";

    private static final Pattern ISO = Pattern.compile("([0-9]{4})-([0-9]{2})-([0-9]{2})");
    private static final Pattern YEAR_FIRST =
            Pattern.compile("\\s*([0-9]{4})[-/.]([0-9]{1,2})[-/.]([0-9]{1,2})(?:[T ].*)?");
    private static final Pattern DAY_FIRST =
            Pattern.compile("\\s*([0-9]{1,2})\\.\\s?([0-9]{1,2})\\.\\s?([0-9]{4})\\s*");

    private Dates() {}

    static Optional<LocalDate> of(Node value) {
        return value instanceof Node.Str text ? day(ISO.matcher(text.value()), 1, 3) : Optional.empty();
    }

    /** The day that another way of writing most likely means; a slashed day and month can be read both ways, so not those. */
    static Optional<String> closest(Node value) {
        if (!(value instanceof Node.Str text)) {
            return Optional.empty();
        }
        return day(YEAR_FIRST.matcher(text.value()), 1, 3)
                .or(() -> day(DAY_FIRST.matcher(text.value()), 3, 1))
                .map(LocalDate::toString);
    }

    private static Optional<LocalDate> day(Matcher matcher, int year, int day) {
        if (!matcher.matches()) {
            return Optional.empty();
        }
        try {
            LocalDate date = LocalDate.of(
                    Integer.parseInt(matcher.group(year)),
                    Integer.parseInt(matcher.group(2)),
                    Integer.parseInt(matcher.group(day)));
            return date.isBefore(FIRST) || date.isAfter(LAST) ? Optional.empty() : Optional.of(date);
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
