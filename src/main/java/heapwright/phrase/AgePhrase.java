package heapwright.phrase;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds the day that a person means by "10 weeks", "two months ago", "since October", "3 October" or a date. */
public final class AgePhrase {

    private static final List<String> NUMBERS = List.of(
            "zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve");

    private static final Pattern SPAN = Pattern.compile("(?:about |some |around |roughly |nearly |for )?"
            + "([0-9]+(?:[.,][0-9]+)?|[a-z]+)(½| and a half)?"
            + "(?: ?(days?|d|weeks?|wks?|w|fortnights?|months?|mths?|years?|yrs?|y))?( and a half)?"
            + "(?: (?:ago|old|now|or so))*");
    private static final Map<String, Long> NAMED_DAYS = Map.of("today", 0L, "yesterday", 1L, "half a year", 183L);
    private static final Pattern YEAR = Pattern.compile("(?:since |in |about |around |from )*((?:19|20)[0-9]{2})");
    private static final Pattern ISO = Pattern.compile("([0-9]{4})-([0-9]{1,2})-([0-9]{1,2})");
    private static final Pattern MONTH = Pattern.compile(
            "(?:since |in |early |mid |late |on |about |around |the |last |beginning of |middle of |end of )*"
                    + "(?:([0-9]{1,2})(?:st|nd|rd|th)? (?:of )?)?([a-z]{3,9})(?: ([0-9]{1,2})(?:st|nd|rd|th)?)?(?: ([0-9]{4}))?");

    /** The middle of a month stands for the month. */
    private static final int MID_MONTH = 15;

    private static final int MID_YEAR = 7;

    private static final double DAYS_A_MONTH = 30.44;
    private static final double DAYS_A_YEAR = 365.25;

    /** Words before an age that make it that of the pile. */
    private static final Pattern BUILT = Pattern.compile("^(?:(?:it|the (?:heap|pile|bin)|i|we)(?: is|'s| was|s)? )?"
            + "(?:built|made|started|begun|filled|put together|set up)(?: it| the (?:heap|pile|bin))?(?: (?:on|in))? ");

    private static final Pattern IS = Pattern.compile("^(?:it(?: is|'s|s)|the (?:heap|pile|bin)(?: is|'s)?) ");
    private static final Pattern OLD = Pattern.compile("\\bold\\b");
    private static final Pattern UNIT =
            Pattern.compile("\\b(?:days?|weeks?|wks?|fortnights?|months?|mths?|years?|yrs?)\\b");

    private AgePhrase() {}

    /** The day on which a pile was built, where the words say nothing but how old it is, as far as one can tell. */
    public static Optional<LocalDate> ofPile(String said, LocalDate today) {
        String text = plain(said);
        String bare = IS.matcher(BUILT.matcher(text).replaceFirst("")).replaceFirst("");
        return saysAge(said) || UNIT.matcher(bare).find() ? day(bare, today) : Optional.empty();
    }

    /** Whether the words say that it is an age, "three weeks old" and "built in May", and not only "three weeks". */
    public static boolean saysAge(String said) {
        String text = plain(said);
        return OLD.matcher(text).find() || BUILT.matcher(text).find();
    }

    /**
     * The day that is meant, never after today; a bare number counts weeks.
     *
     * @return empty where nothing was understood
     */
    public static Optional<LocalDate> day(String said, LocalDate today) {
        String text = plain(said);
        if (NAMED_DAYS.containsKey(text)) {
            return Optional.of(today.minusDays(NAMED_DAYS.get(text)));
        }
        return iso(text)
                .or(() -> year(text, today))
                .or(() -> span(text, today))
                .or(() -> month(text, today))
                .filter(day -> !day.isAfter(today));
    }

    /** Whether the words name a day, and not only about when: "3 October" and "5 days", not "10 weeks" or "October". */
    public static boolean exact(String said) {
        String text = plain(said);
        if (NAMED_DAYS.containsKey(text)) {
            return NAMED_DAYS.get(text) < 2;
        }
        Matcher span = SPAN.matcher(text);
        if (span.matches()) {
            return span.group(3) != null && span.group(3).startsWith("d");
        }
        Matcher month = MONTH.matcher(text);
        return ISO.matcher(text).matches() || month.matches() && (month.group(1) != null || month.group(3) != null);
    }

    private static String plain(String said) {
        return said.strip().toLowerCase(Locale.ROOT).replaceAll("[,\\s]+", " ").replace("mid-", "mid ");
    }

    private static Optional<LocalDate> iso(String text) {
        Matcher found = ISO.matcher(text);
        return found.matches()
                ? date(number(found.group(1)), number(found.group(2)), number(found.group(3)))
                : Optional.empty();
    }

    /** A year alone stands for its middle, the present one for its first day. */
    private static Optional<LocalDate> year(String text, LocalDate today) {
        Matcher found = YEAR.matcher(text);
        if (!found.matches()) {
            return Optional.empty();
        }
        int year = number(found.group(1));
        return date(year, year == today.getYear() ? 1 : MID_YEAR, 1);
    }

    private static Optional<LocalDate> span(String text, LocalDate today) {
        Matcher found = SPAN.matcher(text);
        if (!found.matches()) {
            return Optional.empty();
        }
        double count;
        String told = found.group(1);
        if (Character.isDigit(told.charAt(0))) {
            count = Double.parseDouble(told.replace(',', '.'));
        } else if (found.group(3) != null && (told.equals("a") || told.equals("an"))) {
            count = 1;
        } else if (NUMBERS.contains(told)) {
            count = NUMBERS.indexOf(told);
        } else {
            return Optional.empty();
        }
        if (found.group(2) != null || found.group(4) != null) {
            count += 0.5;
        }
        String unit = found.group(3) == null ? "weeks" : found.group(3);
        double days =
                switch (unit.charAt(0)) {
                    case 'd' -> 1;
                    case 'f' -> 14;
                    case 'm' -> DAYS_A_MONTH;
                    case 'y' -> DAYS_A_YEAR;
                    default -> 7;
                };
        long whole = Math.round(count * days);
        return whole > 100 * DAYS_A_YEAR ? Optional.empty() : Optional.of(today.minusDays(whole));
    }

    private static Optional<LocalDate> month(String text, LocalDate today) {
        Matcher found = MONTH.matcher(text);
        if (!found.matches()) {
            return Optional.empty();
        }
        String day = found.group(1) != null ? found.group(1) : found.group(3);
        return Arrays.stream(Month.values())
                .filter(m -> m.getDisplayName(TextStyle.FULL, Locale.ENGLISH)
                        .toLowerCase(Locale.ROOT)
                        .startsWith(found.group(2)))
                .findFirst()
                .flatMap(m -> {
                    int of = day == null ? MID_MONTH : number(day);
                    if (found.group(4) != null) {
                        return date(number(found.group(4)), m.getValue(), of);
                    }
                    Optional<LocalDate> thisYear = date(today.getYear(), m.getValue(), of);
                    if (day == null && m == today.getMonth()) {
                        return Optional.of(today.withDayOfMonth(1));
                    }
                    return thisYear.filter(d -> !d.isAfter(today))
                            .or(() -> date(today.getYear() - 1, m.getValue(), of));
                });
    }

    private static int number(String digits) {
        return Integer.parseInt(digits);
    }

    private static Optional<LocalDate> date(int year, int month, int day) {
        try {
            return Optional.of(LocalDate.of(year, month, day));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
