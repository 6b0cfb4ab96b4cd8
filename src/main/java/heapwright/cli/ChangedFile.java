package heapwright.cli;

import heapwright.journal.JournalFault;
import heapwright.journal.PlainFile;
import heapwright.knowledge.Knowledge;
import heapwright.pile.Pile;
import heapwright.pile.PileReader;
import heapwright.pile.Problem;
import heapwright.pile.ReadResult;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;

/** A pile's file that is changed in place: read before and after, and written only if it is sound and still the same. */
final class ChangedFile {

    private final String name;
    private final Path path;
    private final byte[] before;
    private final Knowledge knowledge;

    /** @throws UsageFault when the name is that of standard input, which cannot be changed */
    ChangedFile(String name, Knowledge knowledge) throws IOException {
        if ("-".equals(name)) {
            throw new UsageFault("heapwright: standard input cannot be changed. Give the path of a file."
                    + " Example: heapwright note pile.json --seen soggy");
        }
        this.name = name;
        this.path = FileNames.path(name);
        this.before = Files.readAllBytes(path);
        this.knowledge = knowledge;
    }

    byte[] bytes() {
        return before;
    }

    /**
     * The pile as it was read.
     *
     * @throws UsageFault when the file is not sound
     */
    Pile pile() {
        return sound(before);
    }

    private Pile sound(byte[] content) {
        ReadResult read = new PileReader(knowledge.vocabulary()).read(name, content);
        if (!read.problems().isEmpty()) {
            throw new UsageFault(read.problems().stream().map(Problem::message).collect(Collectors.joining("\n\n"))
                    + "\n\nNothing was noted.");
        }
        return read.pile().orElseThrow();
    }

    /**
     * Writes new content.
     *
     * @return the pile as it is now
     * @throws UsageFault when the new content would not be read, or the file cannot be written; then it is as it was
     */
    Pile write(byte[] after) throws IOException {
        Pile with = sound(after);
        try {
            if (!new PlainFile(path).replace(before, after)) {
                throw new UsageFault("heapwright: \"" + name + "\" was changed by something else meanwhile."
                        + " Nothing was noted; do it again.");
            }
        } catch (JournalFault e) {
            throw new UsageFault("heapwright: \"" + name + "\" cannot be written: " + e.getMessage()
                    + ". Nothing was noted; the file is as it was.");
        }
        return with;
    }
}
