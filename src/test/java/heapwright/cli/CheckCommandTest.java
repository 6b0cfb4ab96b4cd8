package heapwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("heapwright check")
class CheckCommandTest {

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @TempDir
    private Path folder;

    private int run(String... line) {
        return new Program(new Terminal(
                        new ByteArrayInputStream(new byte[0]),
                        new PrintStream(out, true, StandardCharsets.UTF_8),
                        new PrintStream(err, true, StandardCharsets.UTF_8),
                        false))
                .run(line);
    }

    private String page() {
        return out.toString(StandardCharsets.UTF_8).replaceAll("\\s+", " ");
    }

    @Test
    @DisplayName("says of what is shipped that it has no faults, and how much was looked through")
    void shipped() {
        assertEquals(Program.OK, run("check"));
        assertTrue(page().matches(".*no faults in 7\\d tables with 1\\d{3} rows and \\d{3} rules $"), page());
        assertTrue(page().startsWith("No fault, but worth a look - tables/sources.json: "), page());
    }

    @Test
    @DisplayName("counts sources as used that cases name")
    void cases() {
        assertEquals(Program.OK, run("check", "--cases", "cases/published"));
        String withCases = page();
        out.reset();
        run("check");
        assertTrue(withCases.length() < page().length());
    }

    @Test
    @DisplayName("ends with 2 and tells every fault, with nothing of our own failing")
    void faults() throws IOException {
        Files.createDirectories(folder.resolve("evidence"));
        Files.writeString(folder.resolve("evidence/too-wet.json"), "{\"too-wet\": [{}]}");
        assertEquals(Program.BAD_INPUT, run("check", folder.toString()));
        assertTrue(page().contains("evidence/too-wet.json, line 1, /too-wet/0/id: found nothing."), page());
        assertTrue(page().endsWith("8 faults in 1 table with 1 row and 0 rules "), page());
        assertFalse((page() + err).contains("our fault"));
        out.reset();
        assertEquals(Program.BAD_INPUT, run("check", "--json", folder.toString()));
        assertEquals(
                8, new ObjectMapper().readTree(out.toByteArray()).get("faults").size());
    }

    @Test
    @DisplayName("says what to give where there is no such folder")
    void noFolder() {
        assertEquals(Program.BAD_INPUT, run("check", "no-such"));
        assertTrue(err.toString(StandardCharsets.UTF_8).contains("there is no folder \"no-such\""));
        assertEquals(Program.BAD_INPUT, run("check", "--cases", "no-such"));
    }
}
