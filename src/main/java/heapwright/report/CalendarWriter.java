package heapwright.report;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;

/**
 * Writes follow-ups as an iCalendar file (RFC 5545) for the calendar a person already has: one all-day event each, which
 * does not mark the day as busy and reminds in the morning. The same input gives the same bytes.
 */
public final class CalendarWriter {

    /** Nine hours after the day begins (RFC 5545, section 3.8.6.3): before anyone goes out to the heap (judgement). */
    private static final String REMINDER = "PT9H";

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("uuuuMMdd");
    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'").withZone(ZoneOffset.UTC);

    /**
     * Something to look at or to do within a span of days.
     *
     * @param from the first day
     * @param to the last day, not before the first
     * @param title a few words, not blank
     * @param text what to look for and why; may be empty, may have several lines
     * @param uid the same for the same follow-up each time, so that a calendar replaces the event rather than add
     *     another; unlike any other, see {@link CalendarWriter#uid}
     */
    public record FollowUp(LocalDate from, LocalDate to, String title, String text, String uid) {

        private static final int LAST_YEAR = 9998;

        /** @throws IllegalArgumentException when the span is reversed or outside the years 1 to 9998, or title or uid is blank */
        public FollowUp {
            if (to.isBefore(from) || from.getYear() < 1 || to.getYear() > LAST_YEAR) {
                throw new IllegalArgumentException("A follow-up from " + from + " to " + to
                        + " has no days a calendar could show. Give a first day and one on or after it.");
            }
            if (title.isBlank() || uid.isBlank()) {
                throw new IllegalArgumentException(
                        "A follow-up needs a title and a uid, found \"" + title + "\" and \"" + uid + "\".");
            }
        }
    }

    /** A uid made from what makes the follow-up what it is, such as pile, step and day: same parts, same uid. */
    public static String uid(String... parts) {
        StringBuilder key = new StringBuilder("heapwright");
        for (String part : parts) {
            key.append('/').append(part.length()).append(':').append(part);
        }
        return UUID.nameUUIDFromBytes(key.toString().getBytes(StandardCharsets.UTF_8))
                .toString();
    }

    /**
     * The file as UTF-8 bytes; its media type is {@code text/calendar; charset=utf-8}.
     *
     * @param written when the calendar is written, DTSTAMP of every event; parts of a second are dropped
     * @param followUps at least one, each with its own uid, in the order in which they are to stand
     * @throws IllegalArgumentException when there is none, or two have the same uid
     */
    public byte[] bytes(Instant written, List<FollowUp> followUps) {
        return write(written, followUps).getBytes(StandardCharsets.UTF_8);
    }

    /** The file as text with the line ends of the format; otherwise as {@link #bytes}. */
    public String write(Instant written, List<FollowUp> followUps) {
        if (followUps.isEmpty()) {
            throw new IllegalArgumentException("A calendar needs at least one follow-up (RFC 5545, section 3.6).");
        }
        CalendarLines lines = new CalendarLines();
        lines.plain("BEGIN", "VCALENDAR");
        lines.plain("VERSION", "2.0");
        lines.plain("PRODID", "-//Heapwright//Heapwright//EN");
        lines.plain("CALSCALE", "GREGORIAN");
        Set<String> uids = new HashSet<>();
        for (FollowUp followUp : followUps) {
            if (!uids.add(followUp.uid())) {
                throw new IllegalArgumentException("Two follow-ups have the uid \"" + followUp.uid() + "\".");
            }
            event(lines, STAMP.format(written), followUp);
        }
        lines.plain("END", "VCALENDAR");
        return lines.toString();
    }

    private static void event(CalendarLines lines, String stamp, FollowUp followUp) {
        lines.plain("BEGIN", "VEVENT");
        lines.text("UID", followUp.uid());
        lines.plain("DTSTAMP", stamp);
        lines.plain("DTSTART;VALUE=DATE", DAY.format(followUp.from()));
        // The end is the first day that no longer belongs to the event (section 3.6.1).
        lines.plain("DTEND;VALUE=DATE", DAY.format(followUp.to().plusDays(1)));
        lines.text("SUMMARY", followUp.title());
        if (!followUp.text().isBlank()) {
            lines.text("DESCRIPTION", followUp.text());
        }
        lines.plain("TRANSP", "TRANSPARENT");
        lines.plain("BEGIN", "VALARM");
        lines.plain("ACTION", "DISPLAY");
        lines.text("DESCRIPTION", followUp.title());
        lines.plain("TRIGGER", REMINDER);
        lines.plain("END", "VALARM");
        lines.plain("END", "VEVENT");
    }
}
