package heapwright.author;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One rule as text.
 *
 * @param file the file it stands in, from the folder of rules
 * @param line the line of its name
 * @param pass the name of its folder, which is its pass
 * @param above the line above it
 * @param name its name
 * @param body everything from its name to its end
 */
public record WrittenRule(String file, int line, String pass, String above, String name, String body) {

    private static final String THEN = "\nthen";

    /** What a metadata line says, without its quotes. */
    public Optional<String> meta(String key) {
        Matcher m = Pattern.compile("@" + key + "\\( \"([^\"]*)\" \\)").matcher(body);
        return m.find() ? Optional.of(m.group(1)) : Optional.empty();
    }

    public String id() {
        return meta("id").orElse("");
    }

    /** What it inserts; empty where it has no such part. */
    public String consequence() {
        int then = body.indexOf(THEN);
        return then < 0 ? "" : body.substring(then);
    }

    /** Where it stands, for messages. */
    public String where() {
        return file + ", line " + line + ", \"" + name + "\"";
    }
}
