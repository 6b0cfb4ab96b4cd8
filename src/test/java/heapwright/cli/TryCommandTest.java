package heapwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("heapwright try")
class TryCommandTest {

    private static final Path RULES = Path.of("rules");
    private static final String SOGGY = "sour-soggy-cold-three-weeks-old.json";

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @TempDir
    private Path folder;

    private String cases;

    @BeforeEach
    void cases() throws IOException {
        Path some = Files.createDirectories(folder.resolve("cases"));
        Files.copy(Path.of("cases/demo", SOGGY), some.resolve(SOGGY));
        Files.copy(Path.of("cases/demo/finished-under-snow.json"), some.resolve("finished-under-snow.json"));
        cases = some.toString();
    }

    private int run(String... line) {
        out.reset();
        err.reset();
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

    private Path change(String from, String to, UnaryOperator<String> change) throws IOException {
        String before = Files.readString(RULES.resolve(from));
        String after = change.apply(before);
        assertFalse(before.equals(after), from + " is unchanged");
        Path file = folder.resolve(to);
        Files.createDirectories(file.getParent());
        return Files.writeString(file, after);
    }

    @Test
    @DisplayName("tells which rows differ, which cases get another answer and how")
    void rows() throws IOException {
        Path file = change(
                "evidence/too-wet.json", "too-wet.json", t -> t.replaceAll("\"(decisive|strong|fair)\"", "\"slight\""));
        assertEquals(Program.OK, run("try", "--cases", cases, file.toString()), err.toString(StandardCharsets.UTF_8));
        assertTrue(page().startsWith("Changed - evidence WEIGH-401: strength decisive, now slight"), page());
        assertTrue(page().contains(SOGGY + ": "), page());
        assertTrue(page().matches(".*- likely: too-wet \\d+ %, .*; now .*"), page());
        assertTrue(page().contains("- no longer agrees: too-wet is not "), page());
        assertFalse(page().contains("finished-under-snow.json: "), page());
        assertTrue(
                page().contains("1 of 2 cases get another answer; 1 no longer agree with their source, 0 do now."),
                page());
    }

    @Test
    @DisplayName("takes a whole folder, in which a limit and a weight differ, and says that rules need a build")
    void folderOfTables() throws IOException {
        Path changed = folder.resolve("mine");
        change(
                "tables/limits.json",
                "mine/tables/limits.json",
                t -> t.replaceFirst("(\"id\": \"moisture-slow\",[^}]*\"value\": )[0-9.]+", "$141"));
        change("tables/weights.json", "mine/tables/weights.json", t -> t.replaceFirst("(\"again\": )[0-9.]+", "$10.9"));
        change("derive/water.drl", "mine/derive/water.drl", t -> t + "\n");
        assertEquals(Program.OK, run("try", "--json", "--cases", cases, changed.toString()));
        JsonNode told = new ObjectMapper().readTree(out.toByteArray());
        assertTrue(told.get("changes").toString().contains("limit moisture-slow: 40.0 %, now 41.0 %"), told.toString());
        assertTrue(told.get("changes").toString().contains("weight of again: "), told.toString());
        assertEquals(2, told.get("cases").asInt());
        run("try", "--cases", cases, changed.toString());
        assertTrue(page().contains("Rules (.drl) were not tried"), page());
    }

    @Test
    @DisplayName("runs no case where nothing differs")
    void same() throws IOException {
        Path copy = folder.resolve("limits.json");
        Files.copy(RULES.resolve("tables/limits.json"), copy);
        assertEquals(Program.OK, run("try", "--cases", "no-such", copy.toString()));
        assertTrue(page().startsWith("Nothing differs from what is shipped"), page());
    }

    @Test
    @DisplayName("tries what a place adds")
    void local() {
        assertEquals(Program.OK, run("try", "--cases", cases, "--knowledge", "docs/templates/my-place"));
        assertTrue(page().contains("- evidence LOCAL-101: is new"), page());
        assertTrue(page().contains("- limit volume-small: 0.76 m3, now 1.0 m3"), page());
        assertTrue(page().contains("- measure bucket: 10.0 L, now 14.0 L"), page());
    }

    @Test
    @DisplayName("changes nothing because of a case that measures")
    void unfitted() throws IOException {
        Path file = change("tables/weights.json", "weights.json", t -> t.replaceFirst("(\"again\": )[0-9.]+", "$10.9"));
        Path kept = Files.createDirectories(Path.of(cases).resolve("unfitted"));
        Files.copy(Path.of("cases/demo", SOGGY), kept.resolve("other.json"));
        run("try", "--cases", cases, file.toString());
        assertTrue(page().contains("of 2 cases get another answer"), page());
        assertEquals(Program.BAD_INPUT, run("try", "--cases", kept.toString(), file.toString()));
        assertTrue(
                err.toString(StandardCharsets.UTF_8).contains("nothing is ever changed because of those in unfitted"));
    }

    @Test
    @DisplayName("ends with 2 and every fault where the tables cannot be tried")
    void faults() throws IOException {
        Path file = change("evidence/too-wet.json", "too-wet.json", t -> t.replace("\"strength\"", "\"strenght\""));
        assertEquals(Program.BAD_INPUT, run("try", "--cases", cases, file.toString()));
        String told = err.toString(StandardCharsets.UTF_8);
        assertTrue(told.contains("cannot be tried"), told);
        assertTrue(told.contains("evidence/too-wet.json, line 3, /too-wet/0/strenght: found a field"), told);
        assertTrue(told.contains("/too-wet/1/strenght"), told);
        for (String[] line : new String[][] {
            {"try"},
            {"try", "no-such"},
            {"try", "rules/derive/water.drl"},
            {"try", "README.md"},
            {"try", "--cases", "no-such", "--knowledge", "docs/templates/my-place"},
            {"try", "--knowledge", "docs/templates/my-place", "rules"}
        }) {
            assertEquals(Program.BAD_INPUT, run(line), String.join(" ", line));
            assertTrue(err.toString(StandardCharsets.UTF_8).contains("Example: "), String.join(" ", line));
        }
    }
}
