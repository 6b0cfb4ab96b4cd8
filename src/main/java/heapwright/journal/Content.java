package heapwright.journal;

import com.fasterxml.jackson.databind.JsonNode;
import heapwright.pile.PileReader;
import heapwright.pile.Problem;
import heapwright.pile.ReadResult;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** What a file of the journal holds. */
final class Content {

    private static final Logger LOG = LoggerFactory.getLogger(Content.class);

    private final Path file;
    private final byte[] bytes;
    private final ReadResult result;

    private Content(Path file, byte[] bytes, ReadResult result) {
        this.file = file;
        this.bytes = bytes;
        this.result = result;
    }

    /** Content that is to go into a file. */
    static Content of(Path file, byte[] bytes, PileReader reader) {
        return new Content(file, bytes, reader.read(Folder.name(file), bytes));
    }

    /** Reads a file, never through a link; nothing if it went since it was listed. */
    static Optional<Content> read(Path file, PileReader reader) {
        if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            return Optional.empty();
        }
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            return Optional.of(unreadable(file, Files.isSymbolicLink(file) ? "a link" : "something else than a file"));
        }
        try (InputStream in = Files.newInputStream(file, LinkOption.NOFOLLOW_LINKS)) {
            return Optional.of(of(file, in.readNBytes(PileReader.LARGEST + 1), reader));
        } catch (NoSuchFileException e) {
            return Optional.empty();
        } catch (IOException e) {
            LOG.warn("The file {} could not be read.", file, e);
            return Optional.of(unreadable(file, "a file that could not be read"));
        }
    }

    private static Content unreadable(Path file, String found) {
        Problem problem = new Problem(Folder.name(file), 1, "", found, "a plain, readable file", "", Optional.empty());
        return new Content(file, new byte[0], new ReadResult.Refused(List.of(problem), 0));
    }

    Path file() {
        return file;
    }

    byte[] bytes() {
        return bytes;
    }

    /** The file as it is shown. */
    JournalFile shelf() {
        if (result instanceof ReadResult.Accepted accepted) {
            return new Stored(Folder.id(file), version(), accepted.value(), accepted.notes());
        }
        ReadResult.Refused refused = (ReadResult.Refused) result;
        return new Broken(Folder.id(file), Folder.name(file), refused.problems(), refused.further());
    }

    /** What the document expects as a test case, which a pile does not carry and a save must not drop. */
    Optional<JsonNode> caseObject() {
        return result instanceof ReadResult.Accepted accepted ? accepted.caseObject() : Optional.empty();
    }

    boolean sameBytes(Content other) {
        return Arrays.equals(bytes, other.bytes);
    }

    /** Stands for the exact bytes. */
    String version() {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
