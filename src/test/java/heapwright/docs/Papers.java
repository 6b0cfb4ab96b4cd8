package heapwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Compares a paper with what it should say, or writes it anew when asked to. */
final class Papers {

    /** The command that writes all made papers anew. */
    static final String REFRESH = "mvn -q test -Dtest='heapwright.docs.*Test' -Drefresh.papers";

    private Papers() {}

    /** Holds a paper to its text; with {@code -Drefresh.papers} the paper is written first. */
    static void hold(Path paper, String wanted) {
        if (System.getProperty("refresh.papers") != null) {
            write(paper, wanted);
        }
        assertEquals(wanted, read(paper), paper + " is out of step. Write it anew with: " + REFRESH);
    }

    /** The text of a paper; empty when there is none yet. */
    static String read(Path paper) {
        try {
            return Files.exists(paper) ? Files.readString(paper) : "";
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void write(Path paper, String text) {
        try {
            Files.createDirectories(paper.toAbsolutePath().getParent());
            Files.writeString(paper, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
