package heapwright.logger;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A file of values separated by commas, semicolons or tabs (RFC 4180 where it has quotes), from its header on.
 *
 * @param header the names of its columns, in lower case
 * @param rows the rows below it
 */
record Table(List<String> header, List<Row> rows) {

    private static final char[] DELIMITERS = {'\t', ';', ','};

    /** How far down a header is looked for: loggers write their settings above it. */
    private static final int HEADER_WITHIN = 60;

    /** A row: the line it begins on, and its cells. */
    record Row(int line, List<String> cells) {
        String cell(int index) {
            return index < cells.size() ? cells.get(index) : "";
        }

        /** How many cells it has before those that are empty at its end. */
        int filled() {
            int filled = cells.size();
            while (filled > 0 && cells.get(filled - 1).isBlank()) {
                filled--;
            }
            return filled;
        }
    }

    /**
     * Reads a file.
     *
     * @throws LoggerFault where no row names a time and a temperature
     */
    static Table of(String text) {
        char best = 0;
        int cells = 1;
        for (char delimiter : DELIMITERS) {
            List<Row> top = rows(text, delimiter, HEADER_WITHIN);
            int at = header(top);
            if (at >= 0 && top.get(at).filled() > cells) {
                best = delimiter;
                cells = top.get(at).filled();
            }
        }
        if (best == 0) {
            throw new LoggerFault("no row names its columns. Allowed: a first row with the names of the columns,"
                    + " one with the time and one with a temperature. Example: Time;Core °C;Outside °C");
        }
        List<Row> all = rows(text, best, Integer.MAX_VALUE);
        int at = header(all);
        List<String> names = all.get(at).cells().stream()
                .map(name -> name.toLowerCase(Locale.ROOT).strip())
                .toList();
        return new Table(names, all.subList(at + 1, all.size()));
    }

    private static int header(List<Row> rows) {
        for (int i = 0; i < Math.min(rows.size(), HEADER_WITHIN); i++) {
            List<String> cells = rows.get(i).cells();
            if (cells.size() > 1
                    && cells.stream().map(c -> c.toLowerCase(Locale.ROOT)).anyMatch(Columns::isTime)) {
                return i;
            }
        }
        return -1;
    }

    private static List<Row> rows(String text, char delimiter, int most) {
        List<Row> rows = new ArrayList<>();
        int line = 1;
        int at = 0;
        while (at < text.length() && rows.size() < most) {
            List<String> cells = new ArrayList<>();
            int began = line;
            boolean more = true;
            while (more) {
                int start = at;
                if (at < text.length() && text.charAt(at) == '"') {
                    int end = closing(text, at + 1);
                    cells.add(text.substring(at + 1, end).replace("\"\"", "\""));
                    line += (int) text.substring(at, end)
                            .chars()
                            .filter(c -> c == '\n')
                            .count();
                    at = Math.min(end + 1, text.length());
                    start = -1;
                }
                while (at < text.length() && text.charAt(at) != delimiter && text.charAt(at) != '\n') {
                    at++;
                }
                if (start >= 0) {
                    cells.add(text.substring(start, at).strip());
                }
                more = at < text.length() && text.charAt(at) == delimiter;
                at++;
            }
            line++;
            if (cells.size() > 1 || !cells.get(0).isBlank()) {
                rows.add(new Row(began, cells));
            }
        }
        return rows;
    }

    /** Where a quoted cell ends: at a quote that is not doubled. */
    private static int closing(String text, int from) {
        int at = from;
        while (at < text.length()) {
            if (text.charAt(at) == '"') {
                if (at + 1 >= text.length() || text.charAt(at + 1) != '"') {
                    return at;
                }
                at++;
            }
            at++;
        }
        return text.length();
    }
}
