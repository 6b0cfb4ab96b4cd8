package heapwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

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

@DisplayName("heapwright outlook, and the chart of why")
class OutlookCommandTest {

    private static final String WINTER = "cases/winter/sealed-wet.json";
    private static final String EMPTY = "{\"heapwright\":\"pile/1\",\"asOf\":\"2026-10-18\",\"recipe\":[]}";

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @Test
    @DisplayName("writes a page in either system of units, or a document, the same each time")
    void forms() {
        assertEquals(Program.OK, run("", "outlook", WINTER));
        String once = out();
        assertTrue(once.contains("held by") && once.contains("planning aid") && once.contains("\u00b0C"), once);
        assertEquals(Program.OK, run("", "outlook", WINTER));
        assertEquals(once, out());
        assertEquals(Program.OK, run("", "outlook", "--full", WINTER));
        assertTrue(out().contains("The course") && out().contains("In figures"), out());
        assertEquals(Program.OK, run("", "outlook", "--units", "us", WINTER));
        assertTrue(out().contains("\u00b0F"), out());
        assertEquals(Program.OK, run("", "outlook", "--json", WINTER));
        assertTrue(out().startsWith("{\n") && out().contains("\"heapwright\" : \"outlook\""), out());
        assertEquals("", err());
    }

    @Test
    @DisplayName("says what is missing where there is no recipe, or takes a usual mix and says so")
    void withoutRecipe() {
        assertEquals(Program.BAD_INPUT, run(EMPTY, "outlook", "-"));
        assertTrue(err().contains("there is no recipe") && err().contains("Example:"), err());
        assertEquals("", out());
        assertEquals(Program.OK, run(EMPTY, "outlook", "--typical", "-"));
        assertTrue(out().contains("No recipe was given"), out());
    }

    @Test
    @DisplayName("draws the course into a file, and says what a chart needs")
    void chart(@TempDir Path folder) throws IOException {
        Path ahead = folder.resolve("ahead.svg");
        Path past = folder.resolve("past.svg");
        assertEquals(Program.OK, run("", "outlook", "--chart", ahead.toString(), WINTER));
        assertEquals(Program.OK, run("", "why", "--chart", past.toString(), WINTER));
        assertTrue(Files.readString(ahead).startsWith("<svg ")
                && Files.readString(past).contains("<circle "));
        assertEquals(Program.BAD_INPUT, run(EMPTY, "why", "--chart", past.toString(), "-"));
        assertTrue(err().contains("there is no course to draw"), err());
        assertEquals(
                Program.BAD_INPUT,
                run(
                        "",
                        "outlook",
                        "--chart",
                        folder.resolve("no/such/folder.svg").toString(),
                        WINTER));
        assertTrue(err().contains("cannot be written"), err());
    }

    @Test
    @DisplayName("why says the answer, what the temperatures say and what would have helped")
    void why() {
        assertEquals(Program.OK, run("", "why", WINTER));
        assertTrue(out().contains("The answer\nSomething is wrong"), out());
        assertTrue(out().contains("held by") && out().contains("Do first: "), out());
        assertEquals(Program.OK, run("", "why", "--full", WINTER));
        assertTrue(out().contains("The answer\nSomething is wrong"), out());
        assertTrue(out().contains("What its temperatures say") && out().contains("held by"), out());
        assertTrue(out().contains("What would have kept it warm"), out());
    }

    private int run(String in, String... args) {
        out.reset();
        err.reset();
        return new Program(new Terminal(
                        new ByteArrayInputStream(in.getBytes(StandardCharsets.UTF_8)),
                        new PrintStream(out, true, StandardCharsets.UTF_8),
                        new PrintStream(err, true, StandardCharsets.UTF_8),
                        false))
                .run(args);
    }

    private String out() {
        return out.toString(StandardCharsets.UTF_8);
    }

    private String err() {
        return err.toString(StandardCharsets.UTF_8);
    }
}
