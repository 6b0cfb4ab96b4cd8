package heapwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.knowledge.KnowledgeReader;
import heapwright.pile.Entry;
import heapwright.pile.Pile;
import heapwright.pile.PileReader;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A logger's file at the command line. */
class ReadingsCommandTest {

    @TempDir
    Path folder;

    private Path pile;
    private Path logger;

    @BeforeEach
    void plant() throws IOException {
        pile = folder.resolve("heap.json");
        logger = folder.resolve("logger.csv");
        Files.writeString(pile, """
                {"heapwright": "pile/1", "name": "Heap", "built": "2026-10-01", "asOf": "2026-10-03",
                 "log": [{"date": "2026-10-02", "note": "by hand"}]}
                """);
        Files.writeString(
                logger, "Time;Core;Outside\n2026-10-02 12:00;41,5;4\n2026-10-02 13:00;44;6\n2026-10-05 12:00;;5\n");
    }

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private int note(String... flags) {
        List<String> all = new ArrayList<>(List.of("note", pile.toString(), "--readings", logger.toString()));
        all.addAll(List.of(flags));
        out.reset();
        err.reset();
        return new Program(new Terminal(
                        new ByteArrayInputStream(new byte[0]),
                        new PrintStream(out, true, StandardCharsets.UTF_8),
                        new PrintStream(err, true, StandardCharsets.UTF_8),
                        false))
                .run(all.toArray(String[]::new));
    }

    private String said() {
        return out.toString(StandardCharsets.UTF_8) + err.toString(StandardCharsets.UTF_8);
    }

    @Test
    void daysGoInOnceHoweverOftenTheFileIsBrought() throws IOException {
        for (int times = 0; times < 2; times++) {
            assertEquals(0, note(), said());
            assertTrue(said().contains("3 rows of the logger are noted by the day: 2 days"), said());
            assertTrue(said().contains("single hours are not kept"), said());
            assertTrue(said().contains("Without a figure: one cell; the first is in line 4."), said());
        }
        Pile read = new PileReader(KnowledgeReader.packed().vocabulary())
                .read("heap", Files.readAllBytes(pile))
                .pile()
                .orElseThrow();
        assertEquals(
                List.of("by hand", "Logger: 2 rows", "Logger: one row"),
                read.log().stream().map(Entry::note).toList());
        assertEquals(44, read.log().get(1).measured().coreC().orElseThrow());
        assertEquals(41.5, read.log().get(1).measured().coreLowestC().orElseThrow());
        assertEquals(5, read.log().get(1).measured().outdoorC().orElseThrow());
        assertEquals("2026-10-05", read.asOf().toString());
    }

    @Test
    void whatCannotBeUsedChangesNothing() throws IOException {
        String before = Files.readString(pile);
        assertEquals(2, note("--core", "12"));
        assertTrue(said().contains("goes by itself"), said());
        assertEquals(2, note("--zone", "Atlantis"));
        assertTrue(said().contains("Europe/Helsinki"), said());
        Files.writeString(logger, "no header at all");
        assertEquals(2, note());
        assertTrue(said().contains("no row names its columns"), said());
        Files.delete(logger);
        assertEquals(2, note());
        assertEquals(before, Files.readString(pile));
    }
}
