package heapwright.report;

import java.util.ArrayList;
import java.util.List;

/** Lays out plain text for a terminal: wraps lines, marks headings; colour only where it is wanted and never alone. */
public final class Layout implements ReportWriter {

    private static final int WIDTH = 80;
    private static final String BOLD = "\u001b[1m";
    private static final String PLAIN = "\u001b[0m";

    private final StringBuilder out = new StringBuilder();
    private final boolean marked;

    /**
     * Starts a page.
     *
     * @param marked whether headings may be set in bold by terminal codes
     */
    public Layout(boolean marked) {
        this.marked = marked;
    }

    /** A heading after an empty line. */
    @Override
    public void heading(String text) {
        if (!out.isEmpty()) {
            blank();
        }
        line(0, strong(text));
    }

    /** The title, wrapped to the page. */
    public void title(String text) {
        wrap(text, WIDTH, 0).forEach(l -> line(0, strong(l)));
    }

    /** A text that may be set in bold. */
    public String strong(String text) {
        return marked ? BOLD + text + PLAIN : text;
    }

    public void blank() {
        out.append('\n');
    }

    /** A line as it is. */
    public void line(int indent, String text) {
        out.append(" ".repeat(indent)).append(text).append('\n');
    }

    /** A paragraph wrapped to the page, every line after the first indented a little more when it hangs. */
    @Override
    public void paragraph(int indent, int hang, String text) {
        boolean first = true;
        for (String line : wrap(text, WIDTH - indent - hang, hang)) {
            line(first ? indent : indent + hang, line);
            first = false;
        }
    }

    /** A text in lines of so many letters at most. */
    public static List<String> wrapped(String text, int width) {
        return wrap(text, width, 0);
    }

    private static List<String> wrap(String text, int width, int firstExtra) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ")) {
            while (word.length() > width) {
                int room = lines.isEmpty() && line.isEmpty() ? width + firstExtra : width;
                int taken = line.isEmpty() ? Math.min(room, word.length()) : 0;
                lines.add(line.isEmpty() ? word.substring(0, taken) : line.toString());
                line.setLength(0);
                word = word.substring(taken);
            }
            int room = lines.isEmpty() ? width + firstExtra : width;
            if (!line.isEmpty() && line.length() + 1 + word.length() > room) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
