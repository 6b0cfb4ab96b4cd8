package heapwright.web.guard;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A file that a form brought, read from the body by hand: one part of a known name, held in memory. The library's reader
 * would put parts on the disk and look into all of them.
 *
 * @param name what the file is called on the person's disk; never used as a path
 * @param bytes what it holds
 */
public record SentFile(String name, byte[] bytes) {

    private static final Pattern BOUNDARY = Pattern.compile(
            "multipart/form-data;.*boundary=\"?([A-Za-z0-9'()+_,./:=? -]{1,70}?)\"?\\s*", Pattern.CASE_INSENSITIVE);
    private static final int LONGEST_NAME = 120;
    private static final String LINE = "\r\n";

    public SentFile {
        bytes = bytes.clone();
    }

    @Override
    public byte[] bytes() {
        return bytes.clone();
    }

    /**
     * The file of a form.
     *
     * @param type the type of the body, with its boundary
     * @param body the body, already held to its largest size
     * @param field the name of the field
     * @return empty where there is none, or the body is no such form
     */
    public static Optional<SentFile> of(String type, byte[] body, String field) {
        Matcher boundary = BOUNDARY.matcher(type == null ? "" : type);
        if (!boundary.matches()) {
            return Optional.empty();
        }
        // A character for each byte: what is cut out goes back to the same bytes.
        String text = new String(body, StandardCharsets.ISO_8859_1);
        String mark = "--" + boundary.group(1);
        int at = text.startsWith(mark) ? 0 : -1;
        while (at >= 0) {
            int content = text.indexOf(LINE + LINE, at) + 2 * LINE.length();
            int end = text.indexOf(LINE + mark, at);
            if (content < 2 * LINE.length() || end < content) {
                return Optional.empty();
            }
            String headers = text.substring(at, content);
            if (headers.contains(" name=\"" + field + "\"")) {
                byte[] part = text.substring(content, end).getBytes(StandardCharsets.ISO_8859_1);
                return Optional.of(new SentFile(name(headers), part));
            }
            at = end + LINE.length();
        }
        return Optional.empty();
    }

    private static String name(String headers) {
        Matcher name = Pattern.compile("filename=\"([^\"\r\n]{1," + LONGEST_NAME + "})\"")
                .matcher(headers);
        return name.find()
                ? new String(name.group(1).getBytes(StandardCharsets.ISO_8859_1), StandardCharsets.UTF_8)
                : "file";
    }
}
