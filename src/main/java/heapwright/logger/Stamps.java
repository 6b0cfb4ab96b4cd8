package heapwright.logger;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Reads days and times as loggers write them; which of 03/04 is the day is found from the whole file, or asked. */
final class Stamps {

    private static final int MOST_PARTS = 8;
    private static final String MONTHS = "janfebmaraprmayjunjulaugsepoctnovdec";
    private static final int CENTURY = 2000;

    /** How long seconds since 1970 are written; longer is thousandths. */
    private static final int EPOCH = 10;

    private static final int LONGEST = 13;
    private static final Set<String> UNIVERSAL = Set.of("z", "utc", "gmt");

    private final Optional<ZoneId> zone;
    private final boolean universal;
    private final boolean dayFirst;

    private Stamps(Optional<ZoneId> zone, boolean universal, boolean dayFirst) {
        this.zone = zone;
        this.universal = universal;
        this.dayFirst = dayFirst;
    }

    /**
     * For the stamps of a file, each looked at beforehand.
     *
     * @throws LoggerFault where the order of day and month is open and nobody told it
     */
    static Stamps of(LoggerSettings told, boolean universal, List<String> all) {
        if (told.dayFirst().isPresent()) {
            return new Stamps(told.zone(), universal, told.dayFirst().get());
        }
        long first = 0;
        long second = 0;
        for (String text : all) {
            if (beginsWithYear(text)) {
                continue;
            }
            Optional<Parts> parts = parts(text).filter(Parts::slashed);
            first = parts.isPresent() ? Math.max(first, parts.get().number(0)) : first;
            second = parts.isPresent() ? Math.max(second, parts.get().number(1)) : second;
        }
        if (first > 0 && first > 12 == second > 12) {
            throw new LoggerFault("its days can be read two ways, as 03/04. Tell which comes first."
                    + " Example: --dates day-first, or --dates month-first");
        }
        return new Stamps(told.zone(), universal, first != 0 && first > 12);
    }

    /** Whether the first number is longer than a day or month can be: then nothing is open, and most files are so. */
    private static boolean beginsWithYear(String text) {
        int begin = 0;
        while (begin < text.length() && !digit(text.charAt(begin))) {
            begin++;
        }
        int end = begin;
        while (end < text.length() && digit(text.charAt(end))) {
            end++;
        }
        return end - begin > 2;
    }

    /** Which half of the day a time of twelve hours belongs to. */
    private enum Half {
        NONE,
        FORENOON,
        AFTERNOON
    }

    /**
     * The parts of a stamp.
     *
     * @param numbers its numbers, a named month among them, with how long each is written
     * @param month which of them is a named month; -1 if none
     * @param parting the sign behind the first
     * @param half the half of the day
     * @param offset the hours from UTC
     */
    private record Parts(List<long[]> numbers, int month, char parting, Half half, Optional<ZoneOffset> offset) {

        long number(int at) {
            return at < numbers.size() ? numbers.get(at)[0] : 0;
        }

        long length(int at) {
            return numbers.get(at)[1];
        }

        boolean slashed() {
            return numbers.size() >= 3 && length(0) < 3 && month < 0 && parting != '.';
        }
    }

    private static Optional<Parts> parts(String text) {
        List<long[]> numbers = new ArrayList<>(MOST_PARTS);
        int month = -1;
        char parting = ' ';
        Half half = Half.NONE;
        Optional<ZoneOffset> offset = Optional.empty();
        int at = 0;
        while (at < text.length()) {
            char c = text.charAt(at);
            int end = at + 1;
            if (digit(c)) {
                while (end < text.length() && digit(text.charAt(end))) {
                    end++;
                }
                if (end - at > LONGEST || numbers.size() == MOST_PARTS) {
                    return Optional.empty();
                }
                numbers.add(new long[] {Long.parseLong(text, at, end, 10), end - at});
            } else if (Character.isLetter(c)) {
                while (end < text.length() && Character.isLetter(text.charAt(end))) {
                    end++;
                }
                String word = text.substring(at, end).toLowerCase(Locale.ROOT);
                int named = month(word);
                if (named > 0) {
                    month = numbers.size();
                    numbers.add(new long[] {named, word.length()});
                } else if (word.equals("am") || word.equals("a")) {
                    half = Half.FORENOON;
                } else if (word.equals("pm") || word.equals("p")) {
                    half = Half.AFTERNOON;
                } else if (UNIVERSAL.contains(word)) {
                    offset = Optional.of(ZoneOffset.UTC);
                } else if (!word.equals("t") && !word.equals("m")) {
                    return Optional.empty();
                }
            } else if ((c == '+' || c == '-' || c == '\u2212') && numbers.size() >= 5) {
                offset = offset(text.substring(at));
                if (offset.isEmpty()) {
                    return Optional.empty();
                }
                end = text.length();
            } else if (numbers.size() == 1) {
                parting = c;
            }
            at = end;
        }
        return numbers.isEmpty() ? Optional.empty() : Optional.of(new Parts(numbers, month, parting, half, offset));
    }

    private static boolean digit(char c) {
        return c >= '0' && c <= '9';
    }

    /** The number of a month by its name or the first three letters of it; 0 for another word. */
    private static int month(String word) {
        int at = word.length() < 3 ? -1 : MONTHS.indexOf(word.substring(0, 3));
        return at < 0 || at % 3 != 0 ? 0 : at / 3 + 1;
    }

    private static Optional<ZoneOffset> offset(String text) {
        String digits = text.substring(1).replace(":", "").strip();
        try {
            int hours = Integer.parseInt(digits.length() > 2 ? digits.substring(0, digits.length() - 2) : digits);
            int minutes = digits.length() > 2 ? Integer.parseInt(digits.substring(digits.length() - 2)) : 0;
            int sign = text.charAt(0) == '+' ? 1 : -1;
            return Optional.of(ZoneOffset.ofHoursMinutes(sign * hours, sign * minutes));
        } catch (NumberFormatException | DateTimeException e) {
            return Optional.empty();
        }
    }

    /** The day and time at the pile; empty where it cannot be read. */
    Optional<LocalDateTime> at(String text) {
        return parts(text).flatMap(parts -> {
            try {
                return Optional.of(at(parts));
            } catch (DateTimeException e) {
                return Optional.empty();
            }
        });
    }

    private LocalDateTime at(Parts parts) {
        if (parts.numbers().size() == 1 && parts.length(0) >= EPOCH) {
            long seconds = parts.length(0) > EPOCH ? parts.number(0) / 1000 : parts.number(0);
            return LocalDateTime.ofInstant(Instant.ofEpochSecond(seconds), needed());
        }
        if (parts.numbers().size() < 3) {
            throw new DateTimeException("no day");
        }
        int year = 2;
        int month = 1;
        int day = 0;
        if (parts.length(0) == 4) {
            year = 0;
            day = 2;
        } else if (parts.month() == 0 || parts.slashed() && !dayFirst) {
            month = 0;
            day = 1;
        }
        long y = parts.number(year) + (parts.length(year) == 2 ? CENTURY : 0);
        long hour = parts.half() == Half.NONE
                ? parts.number(3)
                : parts.number(3) % 12 + (parts.half() == Half.AFTERNOON ? 12 : 0);
        LocalDateTime stands = LocalDateTime.of(
                (int) y, (int) parts.number(month), (int) parts.number(day), (int) hour, (int) parts.number(4), (int)
                        parts.number(5));
        Optional<ZoneOffset> offset = universal ? Optional.of(ZoneOffset.UTC) : parts.offset();
        if (offset.isEmpty() || !offset.get().equals(ZoneOffset.UTC) && zone.isEmpty()) {
            return stands;
        }
        return LocalDateTime.ofInstant(stands.toInstant(offset.get()), needed());
    }

    private ZoneId needed() {
        return zone.orElseThrow(() -> new LoggerFault("its times are in UTC, so the day at the pile is not clear. Tell"
                + " where it stands. Example: --zone Europe/Helsinki"));
    }
}
