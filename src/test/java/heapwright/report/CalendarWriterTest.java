package heapwright.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.Seed;
import heapwright.report.CalendarWriter.FollowUp;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CalendarWriterTest {

    private static final Instant WRITTEN = Instant.parse("2026-11-25T14:05:09.750Z");
    private static final LocalDate DAY = LocalDate.of(2026, 12, 30);

    private final CalendarWriter writer = new CalendarWriter();

    private CalendarParser.Component calendar(FollowUp... followUps) {
        return CalendarParser.parse(writer.bytes(WRITTEN, List.of(followUps)));
    }

    private CalendarParser.Component event(FollowUp followUp) {
        return calendar(followUp).components().get(0);
    }

    private static FollowUp titled(String title) {
        return new FollowUp(DAY, DAY, title, "", "u");
    }

    @Test
    void theFileAsAWhole() {
        FollowUp followUp = new FollowUp(DAY, DAY.plusDays(2), "Check warmth", "Rod, 40 cm; hot?\nNote it.", "id-1");
        assertEquals(
                String.join(
                        "\r\n",
                        "BEGIN:VCALENDAR",
                        "VERSION:2.0",
                        "PRODID:-//Heapwright//Heapwright//EN",
                        "CALSCALE:GREGORIAN",
                        "BEGIN:VEVENT",
                        "UID:id-1",
                        "DTSTAMP:20261125T140509Z",
                        "DTSTART;VALUE=DATE:20261230",
                        "DTEND;VALUE=DATE:20270102",
                        "SUMMARY:Check warmth",
                        "DESCRIPTION:Rod\\, 40 cm\\; hot?\\nNote it.",
                        "TRANSP:TRANSPARENT",
                        "BEGIN:VALARM",
                        "ACTION:DISPLAY",
                        "DESCRIPTION:Check warmth",
                        "TRIGGER:PT9H",
                        "END:VALARM",
                        "END:VEVENT",
                        "END:VCALENDAR",
                        ""),
                writer.write(WRITTEN, List.of(followUp)));
    }

    /** Section 3.6: PRODID and VERSION once each, and at least one component. */
    @Test
    void aCalendarHasVersionProducerAndItsEventsInOrder() {
        CalendarParser.Component calendar = calendar(
                titled("one"), new FollowUp(DAY, DAY, "two", "", "v"), new FollowUp(DAY, DAY, "three", "", "w"));
        assertEquals("2.0", calendar.one("VERSION").value());
        assertTrue(calendar.one("PRODID").value().contains("Heapwright"));
        assertEquals(
                List.of("one", "two", "three"),
                calendar.components().stream()
                        .map(event -> event.one("SUMMARY").value())
                        .toList());
        assertThrows(IllegalArgumentException.class, () -> writer.write(WRITTEN, List.of()));
    }

    /** Section 3.6.1: UID and DTSTAMP once; DTEND of the same type as DTSTART and later, as the end does not belong. */
    @Test
    void anEventOfOneDayEndsOnTheNext() {
        CalendarParser.Component event = event(titled("x"));
        assertEquals("20261125T140509Z", event.one("DTSTAMP").value());
        assertEquals(";VALUE=DATE", event.one("DTSTART").parameters());
        assertEquals(";VALUE=DATE", event.one("DTEND").parameters());
        assertEquals("20261230", event.one("DTSTART").value());
        assertEquals("20261231", event.one("DTEND").value());
        assertEquals("TRANSPARENT", event.one("TRANSP").value());
        assertFalse(event.has("DESCRIPTION"));
    }

    /** Section 3.8.4.7: a UID names one event. */
    @Test
    void twoEventsOfOneUidAreRefused() {
        FollowUp followUp = titled("x");
        assertThrows(IllegalArgumentException.class, () -> writer.write(WRITTEN, List.of(followUp, followUp)));
    }

    @Test
    void uidsAreStableAndTellPartsApart() {
        assertEquals(
                "b98834f4-a3f9-35ce-8d9b-92a2e5a16f6c".length(),
                CalendarWriter.uid("heap").length());
        assertEquals(CalendarWriter.uid("heap", "turn"), CalendarWriter.uid("heap", "turn"));
        assertNotEquals(CalendarWriter.uid("heap", "turn"), CalendarWriter.uid("heap/4:turn"));
        assertNotEquals(CalendarWriter.uid("ab", "c"), CalendarWriter.uid("a", "bc"));
        assertNotEquals(CalendarWriter.uid("a", ""), CalendarWriter.uid("a"));
    }

    static Stream<List<String>> values() {
        return Stream.of(
                List.of("a,b;c\\d", "a,b;c\\d"),
                List.of("\\n is not a line end", "\\n is not a line end"),
                List.of("one\ntwo\r\nthree\rfour", "one\ntwo\nthree\nfour"),
                List.of("one\u2028two\u0085three", "one\ntwo\nthree"),
                List.of("a\u0000b\u0007c\u007Fd\te", "abcd\te"),
                List.of("\"quoted\": 5", "\"quoted\": 5"),
                List.of("half \uD83C a character", "half \uFFFD a character"),
                List.of("x\r\nEND:VEVENT\r\nBEGIN:VALARM", "x\nEND:VEVENT\nBEGIN:VALARM"));
    }

    /** Section 3.3.11: ESCAPED-CHAR; and no value can break out of its line. */
    @ParameterizedTest
    @MethodSource("values")
    void textIsEscaped(List<String> givenAndRead) {
        CalendarParser.Component event = event(new FollowUp(DAY, DAY, "t", givenAndRead.get(0), "u"));
        assertEquals(givenAndRead.get(1), CalendarParser.text(event.one("DESCRIPTION")));
        assertEquals(1, event.components().size(), "the reminder, and no other");
        CalendarParser.Component reminder = event.components().get(0);
        assertEquals("VALARM", reminder.name());
        assertEquals("PT9H", reminder.one("TRIGGER").value());
        assertEquals("t", CalendarParser.text(reminder.one("DESCRIPTION")));
    }

    /** Section 3.1: folded at 75 octets, and not earlier than the next character needs. */
    @Test
    void linesAreFoldedAtSeventyFiveOctets() {
        int room = 75 - "SUMMARY:".length();
        assertEquals(1, summaryLines("x".repeat(room)));
        assertEquals(2, summaryLines("x".repeat(room + 1)));
        assertEquals(2, summaryLines("x".repeat(room + 74)));
        assertEquals(3, summaryLines("x".repeat(room + 75)));
        assertEquals(1, summaryLines("x".repeat(room - 2) + "ä"));
        assertEquals(2, summaryLines("x".repeat(room - 1) + "ä"));
        assertEquals(2, summaryLines("x".repeat(room - 3) + "\uD83C\uDF42"));
    }

    private long summaryLines(String title) {
        String file = writer.write(WRITTEN, List.of(titled(title)));
        assertEquals(title, CalendarParser.text(event(titled(title)).one("SUMMARY")));
        String summary = file.substring(file.indexOf("SUMMARY"), file.indexOf("\r\nTRANSP"));
        return summary.lines().count();
    }

    @Test
    void spansThatNoCalendarCouldShowAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new FollowUp(DAY, DAY.minusDays(1), "t", "", "u"));
        assertThrows(IllegalArgumentException.class, () -> new FollowUp(LocalDate.of(0, 1, 1), DAY, "t", "", "u"));
        assertThrows(IllegalArgumentException.class, () -> new FollowUp(DAY, LocalDate.of(9999, 1, 1), "t", "", "u"));
        assertThrows(IllegalArgumentException.class, () -> new FollowUp(DAY, DAY, " ", "", "u"));
        assertThrows(IllegalArgumentException.class, () -> new FollowUp(DAY, DAY, "t", "", ""));
    }

    @Provide
    Arbitrary<List<FollowUp>> followUps() {
        Arbitrary<String> words = Arbitraries.oneOf(
                Arbitraries.strings().ofMaxLength(300),
                Arbitraries.strings()
                        .withChars('\\', ';', ',', ':', '"', '\n', '\r', ' ', 'n', 'ä', '€', '\t')
                        .ofMaxLength(300));
        Arbitrary<LocalDate> days = Arbitraries.integers().between(0, 60_000).map(LocalDate.of(1990, 1, 1)::plusDays);
        return Combinators.combine(days, Arbitraries.integers().between(0, 90), words, words)
                .as((from, span, title, text) -> new FollowUp(from, from.plusDays(span), "t" + title, text, "u"))
                .list()
                .ofMinSize(1)
                .ofMaxSize(5)
                .map(CalendarWriterTest::numbered);
    }

    private static List<FollowUp> numbered(List<FollowUp> followUps) {
        List<FollowUp> numbered = new ArrayList<>();
        for (FollowUp each : followUps) {
            String uid = CalendarWriter.uid("heap", Integer.toString(numbered.size()));
            numbered.add(new FollowUp(each.from(), each.to(), each.title(), each.text(), uid));
        }
        return numbered;
    }

    @Property(tries = 500, seed = Seed.FIXED)
    void anyCalendarReadsBackByTheGrammar(@ForAll("followUps") List<FollowUp> followUps) {
        byte[] bytes = writer.bytes(WRITTEN, followUps);
        assertArrayEquals(bytes, writer.bytes(WRITTEN, followUps));
        List<CalendarParser.Component> events = CalendarParser.parse(bytes).components();
        assertEquals(followUps.size(), events.size());
        for (int i = 0; i < events.size(); i++) {
            CalendarParser.Component event = events.get(i);
            FollowUp followUp = followUps.get(i);
            assertEquals("VEVENT", event.name());
            assertEquals(followUp.uid(), CalendarParser.text(event.one("UID")));
            assertEquals(readable(followUp.title()), CalendarParser.text(event.one("SUMMARY")));
            assertEquals(followUp.from(), day(event.one("DTSTART").value()));
            assertEquals(followUp.to(), day(event.one("DTEND").value()).minusDays(1));
            assertEquals(!followUp.text().isBlank(), event.has("DESCRIPTION"));
            if (event.has("DESCRIPTION")) {
                assertEquals(readable(followUp.text()), CalendarParser.text(event.one("DESCRIPTION")));
            }
        }
    }

    private static LocalDate day(String value) {
        assertTrue(value.matches("[0-9]{8}"), value);
        return LocalDate.of(
                Integer.parseInt(value.substring(0, 4)),
                Integer.parseInt(value.substring(4, 6)),
                Integer.parseInt(value.substring(6)));
    }

    /** What a calendar can hold of a text: one kind of line end, no control characters, whole characters. */
    private static String readable(String text) {
        String lines = text.replace("\r\n", "\n").replaceAll("[\\r\\x0B\\x0C\\x85\\u2028\\u2029]", "\n");
        String plain = lines.replaceAll("[\\x00-\\x08\\x0E-\\x1F\\x7F]", "");
        return new String(
                plain.replaceAll("[\\x{D800}-\\x{DFFF}]", "\uFFFD").getBytes(StandardCharsets.UTF_8),
                StandardCharsets.UTF_8);
    }
}
