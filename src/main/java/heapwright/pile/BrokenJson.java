package heapwright.pile;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;

/** Says in plain words where text stops being JSON, and what it most likely is. */
public final class BrokenJson {

    private BrokenJson() {}

    /**
     * Where and why text is no JSON.
     *
     * @param offset letters before the place
     * @param line the line, from 1
     * @param found what stands there, in words
     * @param allowed what may stand there
     */
    public record Break(int offset, int line, String found, String allowed) {}

    static void report(String text, JsonProcessingException failure, Findings findings) {
        Break at = in(text, failure);
        findings.document(new TextPosition(at.offset(), at.line()), at.found(), at.allowed(), "");
    }

    /**
     * Tells a break.
     *
     * @param text the text as it was read
     * @param failure where a reader of letters gave up
     */
    public static Break in(String text, JsonProcessingException failure) {
        JsonLocation where = failure.getLocation() == null ? JsonLocation.NA : failure.getLocation();
        int offset = (int) Math.max(0, Math.min(text.length(), where.getCharOffset()));
        int line = Math.max(1, where.getLineNr());
        int column = Math.max(1, where.getColumnNr());
        boolean ends = text.substring(offset).isBlank();
        String found = ends
                ? "the end of the file in the middle of something"
                : "something that is not JSON at column " + column + ", before " + Shown.quoted(rest(text, offset));
        return new Break(offset, line, found, ends ? OPEN : allowed(text, offset));
    }

    private static final String OPEN = "a file in which every { [ and \" is closed";

    /** What is wrong is told by the character at which the reading stopped and the one before it. */
    private static String allowed(String text, int offset) {
        char here = text.charAt(offset);
        char before = before(text, offset);
        if (here == '\'' || here == '‘' || here == '“' || here == '”' || here == '„') {
            return "words in straight double quotes, such as \"bucket\"";
        }
        if (here == '/' || here == '#') {
            return "JSON without comments; a log entry has a \"note\" field for free words";
        }
        if (here < ' ') {
            return "text in quotes on one line; a line break within it is written \\n";
        }
        if (before == ',' && (here == '}' || here == ']')) {
            return "no comma after the last item";
        }
        if (before == ',' && Character.isDigit(here)) {
            return "numbers with a decimal point: 12.5, not 12,5";
        }
        if (here == '"' || here == '{' || here == '[') {
            return "a comma between one item and the next, a colon between a field and its value";
        }
        if (Character.isLetter(here) || here == '_') {
            return "words in double quotes, such as \"bucket\"; only true, false and numbers stand without";
        }
        return "JSON, in which words stand in double quotes and numbers stand without";
    }

    private static char before(String text, int offset) {
        for (int i = offset - 1; i >= 0; i--) {
            if (!Character.isWhitespace(text.charAt(i))) {
                return text.charAt(i);
            }
        }
        return ' ';
    }

    private static String rest(String text, int offset) {
        int end = Math.min(text.length(), offset + 12);
        int newline = text.indexOf('\n', offset + 1);
        return text.substring(offset, newline > 0 ? Math.min(end, newline) : end);
    }
}
