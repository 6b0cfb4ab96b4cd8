package heapwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("heapwright audit")
class AuditCommandTest {

    private static final String DEMO = "cases/demo/recipe-of-everything-in-the-yard.json";

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @Test
    @DisplayName("writes a page, a table or a document, and nothing on the other stream")
    void threeForms() {
        assertEquals(Program.OK, run("", "audit", DEMO));
        assertTrue(out().startsWith("Whole yard: the recipe\n"), out());
        assertEquals(Program.OK, run("", "audit", "--table", DEMO));
        assertTrue(out().startsWith("material ") && out().contains("\nsum "), out());
        assertEquals(Program.OK, run("", "audit", "--json", DEMO));
        assertTrue(out().startsWith("{\n") && out().contains("\"heapwright\" : \"audit\""), out());
        assertEquals("", err());
    }

    @Test
    @DisplayName("reads standard input and explains a ratio that the person worked out")
    void ownRatio() {
        String pile = "{\"heapwright\":\"pile/1\",\"asOf\":\"2026-10-18\",\"recipe\":["
                + "{\"material\":\"grass\",\"amount\":2,\"unit\":\"bucket\"},"
                + "{\"material\":\"leaves\",\"amount\":1,\"unit\":\"bucket\"}],\"materials\":["
                + "{\"id\":\"grass\",\"like\":\"grass-clippings\",\"carbonToNitrogen\":20},"
                + "{\"id\":\"leaves\",\"like\":\"leaves-mixed\",\"carbonToNitrogen\":60}]}";
        assertEquals(Program.OK, run(pile, "audit", "--my-ratio", "33", "-"));
        assertTrue(out().replaceAll("\\s+", " ").contains("average of the materials by volume"), out());
    }

    @Test
    @DisplayName("answers the day on which it is wanted, on its first page too")
    void wanted() {
        String pile = "{\"heapwright\":\"pile/1\",\"asOf\":\"2026-10-18\",\"aim\":{\"readyBy\":\"%s\"},\"recipe\":["
                + "{\"material\":\"leaves\",\"amount\":40,\"unit\":\"bucket\"},"
                + "{\"material\":\"kitchen-scraps\",\"amount\":12,\"unit\":\"bucket\"}]}";
        for (String flag : List.of("", "--full")) {
            assertEquals(
                    Program.OK,
                    run(
                            String.format(pile, "2026-11-20"),
                            Stream.of("audit", flag, "-")
                                    .filter(a -> !a.isEmpty())
                                    .toArray(String[]::new)),
                    err());
            assertTrue(out().replaceAll("\\s+", " ").contains("You want it by 20 Nov 2026: not by then"), out());
        }
    }

    @Test
    @DisplayName("refuses a file without a recipe and a ratio that is none, naming what to write")
    void refuses() {
        String empty = "{\"heapwright\":\"pile/1\",\"asOf\":\"2026-10-18\",\"recipe\":[]}";
        assertEquals(Program.BAD_INPUT, run(empty, "audit", "-"));
        assertTrue(err().contains("there is no recipe to audit") && err().contains("Example:"), err());
        assertEquals("", out());
        assertEquals(Program.BAD_INPUT, run("", "audit", "--my-ratio", "-3", DEMO));
        assertTrue(err().contains("--my-ratio -3.0"), err());
        assertEquals(Program.BAD_INPUT, run("", "audit", "no-such-file.json"));
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
