package heapwright.journal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Which requests were done and in which file, so that one that is sent again is not done again, also after the program
 * was killed. A line is added before a file is written and one after it; a line that was cut off is passed over. Lines
 * are not forced to disk: a killed program loses none, and a machine without power at most the newest.
 */
final class Receipts {

    /** Hidden, and without the ending of a pile, so that no list shows it. */
    static final String FILE = ".heapwright-receipts";

    /** Above this size, in bytes, the older half is dropped; that leaves the last hundred saves and more. */
    static final int LARGEST = 64 * 1024;

    private static final Pattern BEGUN = Pattern.compile("begun ([0-9a-f]{32}) ([0-9a-f]{64}) ((?:[0-9a-f]{2})+)");
    private static final Pattern DONE = Pattern.compile("done ([0-9a-f]{32})");

    private final FileOps ops;
    private final SafeFile files;
    private final Path file;

    Receipts(FileOps ops, Path folder) {
        this.ops = ops;
        this.files = new SafeFile(ops);
        this.file = folder.resolve(FILE);
    }

    /**
     * What is written down of a request.
     *
     * @param id the file it was to write
     * @param version what the file was to hold
     * @param done whether the write is known to have come to its end
     */
    record Receipt(String id, String version, boolean done) {}

    Optional<Receipt> of(RequestKey key) throws IOException {
        return Optional.ofNullable(all().get(key.value()));
    }

    /** Writes down that a file is about to be written. */
    void begin(RequestKey key, String id, String version) throws IOException {
        shorten();
        // In figures, as an id may hold any character, a line break too.
        String shown = HexFormat.of().formatHex(id.getBytes(StandardCharsets.UTF_8));
        add("begun " + key.value() + " " + version + " " + shown);
    }

    /** Writes down that it was. */
    void done(RequestKey key) throws IOException {
        add("done " + key.value());
    }

    /**
     * Closes what a killed program left open on a file that is about to change: as long as the file holds what was to be
     * written, it is plain that it was.
     */
    void settle(String id, String version) throws IOException {
        for (Map.Entry<String, Receipt> each : all().entrySet()) {
            Receipt receipt = each.getValue();
            if (!receipt.done() && receipt.id().equals(id) && receipt.version().equals(version)) {
                done(new RequestKey(each.getKey()));
            }
        }
    }

    private void add(String line) throws IOException {
        // The break in front ends a line that was cut off.
        ops.append(file, ("\n" + line + "\n").getBytes(StandardCharsets.UTF_8));
    }

    private Map<String, Receipt> all() throws IOException {
        Map<String, Receipt> all = new LinkedHashMap<>();
        for (String line : lines()) {
            Matcher begun = BEGUN.matcher(line);
            Matcher done = DONE.matcher(line);
            if (begun.matches()) {
                String id = new String(HexFormat.of().parseHex(begun.group(3)), StandardCharsets.UTF_8);
                all.put(begun.group(1), new Receipt(id, begun.group(2), false));
            } else if (done.matches()) {
                all.computeIfPresent(done.group(1), (key, r) -> new Receipt(r.id(), r.version(), true));
            }
        }
        return all;
    }

    private List<String> lines() throws IOException {
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            return List.of();
        }
        // Whatever bytes stand there: what is no line of ours matches nothing.
        return new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1)
                .lines()
                .filter(line -> !line.isEmpty())
                .toList();
    }

    private void shorten() throws IOException {
        if (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) && Files.size(file) > LARGEST) {
            List<String> lines = lines();
            String newer = String.join("\n", lines.subList(lines.size() / 2, lines.size())) + "\n";
            files.write(file, newer.getBytes(StandardCharsets.ISO_8859_1));
        }
    }
}
