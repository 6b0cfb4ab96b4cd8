package heapwright.report;

import java.util.regex.Pattern;

/** Content lines of an iCalendar file: escaped, folded, ended with CR LF (RFC 5545, sections 3.1 and 3.3.11). */
final class CalendarLines {

    /** The most octets on a line, without its end (section 3.1). */
    private static final int MOST_OCTETS = 75;

    /** Whatever ends a line in some system. */
    private static final Pattern LINE_END = Pattern.compile("\\R");

    private static final int REPLACEMENT = 0xFFFD;

    private final StringBuilder out = new StringBuilder();

    /** A line whose value needs no escaping. */
    void plain(String name, String value) {
        fold(name + ":" + value);
    }

    /** A line with a value of type TEXT. */
    void text(String name, String value) {
        StringBuilder escaped = new StringBuilder();
        LINE_END.matcher(value).replaceAll("\n").codePoints().forEach(point -> escape(escaped, point));
        fold(name + ":" + escaped);
    }

    @Override
    public String toString() {
        return out.toString();
    }

    private static void escape(StringBuilder escaped, int point) {
        if (point == '\n') {
            escaped.append("\\n");
        } else if (point == '\\' || point == ';' || point == ',') {
            escaped.append('\\').append((char) point);
        } else if (point >= Character.MIN_SURROGATE && point <= Character.MAX_SURROGATE) {
            escaped.appendCodePoint(REPLACEMENT);
        } else if (point == '\t' || !control(point)) {
            escaped.appendCodePoint(point);
        }
    }

    /** The characters that the grammar knows as CONTROL; those from U+0080 on are NON-US-ASCII to it, and allowed. */
    private static boolean control(int point) {
        return point < ' ' || point == 0x7F;
    }

    /** Breaks between characters, never inside one; the space that starts a further line counts. */
    private void fold(String line) {
        int octets = 0;
        for (int i = 0; i < line.length(); ) {
            int point = line.codePointAt(i);
            int more = octets(point);
            if (octets + more > MOST_OCTETS) {
                out.append("\r\n ");
                octets = 1;
            }
            out.appendCodePoint(point);
            octets += more;
            i += Character.charCount(point);
        }
        out.append("\r\n");
    }

    /** How many octets a character takes in UTF-8. */
    private static int octets(int point) {
        if (point < 0x80) {
            return 1;
        }
        if (point < 0x800) {
            return 2;
        }
        return point < 0x10000 ? 3 : 4;
    }
}
