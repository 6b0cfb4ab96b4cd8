package heapwright.report;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads iCalendar bytes by the grammar of RFC 5545 alone, and throws at the first thing that is not by it. Rules are
 * named as the RFC names them. It knows no more properties than a calendar of events needs.
 */
final class CalendarParser {

    private static final int MOST_OCTETS = 75;

    /** contentline = name *(";" param) ":" value (section 3.1); one parameter with a paramtext value at most. */
    private static final Pattern CONTENTLINE =
            Pattern.compile("([A-Z0-9-]+)((?:;[A-Z0-9-]+=[^\\p{Cntrl}\";:,]*)*):([\\t -~\\x80-\\x{10FFFF}]*)");

    /** text = *(TSAFE-CHAR / ":" / DQUOTE / ESCAPED-CHAR) (section 3.3.11). */
    private static final Pattern TEXT =
            Pattern.compile("(?:[\\t !-+\\--:<-\\[\\]-~\\x80-\\x{10FFFF}]|\\\\\\\\|\\\\;|\\\\,|\\\\[nN])*");

    /** A property: its name, its parameters as they stand and its raw value. */
    record Property(String name, String parameters, String value) {}

    /** A component: its name, its properties and the components in it. */
    record Component(String name, List<Property> properties, List<Component> components) {

        /** The one property of that name. */
        Property one(String name) {
            List<Property> found =
                    properties.stream().filter(each -> each.name().equals(name)).toList();
            check(found.size() == 1, "one " + name + " in " + this.name + ", found " + found);
            return found.get(0);
        }

        boolean has(String name) {
            return properties.stream().anyMatch(each -> each.name().equals(name));
        }
    }

    private final List<Property> lines = new ArrayList<>();
    private int next;

    private CalendarParser() {}

    static Component parse(byte[] bytes) {
        CalendarParser parser = new CalendarParser();
        parser.unfold(bytes);
        Property begin = parser.lines.get(parser.next++);
        check(begin.equals(new Property("BEGIN", "", "VCALENDAR")), "icalstream begins with " + begin);
        Component calendar = parser.component("VCALENDAR");
        check(parser.next == parser.lines.size(), "something after END:VCALENDAR");
        return calendar;
    }

    /** The value of a TEXT property without its escapes. */
    static String text(Property property) {
        check(TEXT.matcher(property.value()).matches(), "not of type TEXT: " + property);
        StringBuilder text = new StringBuilder();
        String value = property.value();
        for (int i = 0; i < value.length(); i++) {
            char c = value.charAt(i);
            if (c == '\\') {
                c = value.charAt(++i);
                c = c == 'n' || c == 'N' ? '\n' : c;
            }
            text.append(c);
        }
        return text.toString();
    }

    /** Lines end with CRLF and are of 75 octets at most; CRLF and one WSP are taken out (section 3.1). */
    private void unfold(byte[] bytes) {
        StringBuilder line = new StringBuilder();
        int start = 0;
        boolean first = true;
        for (int i = 0; i < bytes.length; i++) {
            check(bytes[i] != '\n', "LF without CR at " + i);
            if (bytes[i] != '\r') {
                continue;
            }
            check(i + 1 < bytes.length && bytes[i + 1] == '\n', "CR without LF at " + i);
            check(i - start <= MOST_OCTETS, "line of " + (i - start) + " octets at " + start);
            // Each line alone is sound UTF-8, so no character is split.
            String text = utf8(Arrays.copyOfRange(bytes, start, i));
            boolean more = text.startsWith(" ") || text.startsWith("\t");
            check(!(first && more) && !text.isEmpty(), "a line that starts nothing at " + start);
            if (more) {
                line.append(text.substring(1));
            } else {
                if (!first) {
                    contentline(line.toString());
                }
                line = new StringBuilder(text);
            }
            first = false;
            i++;
            start = i + 1;
        }
        check(start == bytes.length, "the last line does not end");
        contentline(line.toString());
    }

    private void contentline(String line) {
        Matcher matcher = CONTENTLINE.matcher(line);
        check(matcher.matches(), "not a contentline: " + line);
        lines.add(new Property(matcher.group(1), matcher.group(2), matcher.group(3)));
    }

    private Component component(String name) {
        List<Property> properties = new ArrayList<>();
        List<Component> components = new ArrayList<>();
        while (true) {
            Property line = lines.get(next++);
            if (line.name().equals("BEGIN")) {
                components.add(component(line.value()));
            } else if (line.name().equals("END")) {
                check(line.value().equals(name), "END:" + line.value() + " in " + name);
                return new Component(name, properties, components);
            } else {
                check(components.isEmpty(), "a property after a component: " + line);
                properties.add(line);
            }
        }
    }

    private static String utf8(byte[] bytes) {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            throw new AssertionError("a line that is not UTF-8: " + Arrays.toString(bytes), e);
        }
    }

    private static void check(boolean sound, String otherwise) {
        if (!sound) {
            throw new AssertionError(otherwise);
        }
    }
}
