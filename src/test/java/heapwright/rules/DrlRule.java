package heapwright.rules;

import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One rule as text.
 *
 * @param file the file it stands in
 * @param folder the name of the folder, which is its pass
 * @param above the line above it
 * @param name its name
 * @param body everything from its name to its end
 */
record DrlRule(Path file, String folder, String above, String name, String body) {

    /** What a metadata line says, without its quotes. */
    Optional<String> meta(String key) {
        Matcher m = Pattern.compile("@" + key + "\\( \"([^\"]*)\" \\)").matcher(body);
        return m.find() ? Optional.of(m.group(1)) : Optional.empty();
    }

    String id() {
        return meta("id").orElse("");
    }

    /** What it inserts. */
    String consequence() {
        return body.substring(body.indexOf("\nthen"));
    }

    /** Where it stands, for messages. */
    String where() {
        return file + ", \"" + name + "\"";
    }
}
