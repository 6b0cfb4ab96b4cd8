package heapwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("--knowledge")
class LocalOptionTest {

    private static final String PLACE = "docs/templates/my-place";

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @TempDir
    private Path folder;

    private String pile;

    @BeforeEach
    void pile() throws IOException {
        Path file = folder.resolve("pile.json");
        Files.writeString(file, """
                {"heapwright": "pile/1", "name": "Heap in the valley", "built": "2026-09-20",
                 "container": {"kind": "slatted-bin", "length": {"value": 1, "unit": "m"},
                   "width": {"value": 1, "unit": "m"}, "height": {"value": 80, "unit": "cm"}},
                 "recipe": [{"material": "hop bines", "amount": 12, "unit": "bucket"},
                   {"material": "kitchen-scraps", "amount": 3, "unit": "creel"}],
                 "log": [{"date": "2026-10-10", "seen": ["food-at-surface", "flies", "low-wet-ground"]}]}
                """);
        pile = file.toString();
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

    @Tag("thorough")
    @ParameterizedTest
    @DisplayName("lets a pile be read that names what only the place knows")
    @ValueSource(strings = {"checkup", "why", "audit", "outlook", "ready", "sanitise", "history"})
    void piles(String command) {
        assertEquals(Program.OK, run(command, "--knowledge", PLACE, pile), err.toString(StandardCharsets.UTF_8));
    }

    @Test
    @DisplayName("tells a local note in the line of its caution, and its row among the evidence")
    void told() {
        assertEquals(Program.BAD_INPUT, run("checkup", pile));
        assertEquals(Program.OK, run("checkup", "--knowledge", PLACE, pile));
        assertTrue(page().contains("Our council allows peelings"), page());
        run("checkup", "--full", "--knowledge", PLACE, pile);
        assertTrue(page().contains("Local rules come first: Our council allows peelings"), page());
        run("checkup", "--knowledge", PLACE, "--trace", pile);
        assertTrue(page().contains("LOCAL-101"), page());
    }

    @Test
    @DisplayName("lets a note name what only the place knows, and says how to ask again")
    void note() throws IOException {
        assertEquals(Program.BAD_INPUT, run("note", pile, "--on", "2026-10-12", "--added", "2 bucket hop bines"));
        assertEquals(
                Program.OK,
                run("note", "--knowledge", PLACE, pile, "--on", "2026-10-12", "--added", "2 creel hop bines"),
                err.toString(StandardCharsets.UTF_8));
        assertTrue(page().contains("heapwright checkup --knowledge " + PLACE + " " + pile), page());
        assertTrue(Files.readString(Path.of(pile)).contains("creel"));
    }

    @Test
    @DisplayName("lets a folder of such piles be looked through")
    void due() {
        assertEquals(Program.BAD_INPUT, run("due", folder.toString()));
        assertEquals(Program.OK, run("due", "--knowledge", PLACE, folder.toString()));
        assertTrue(page().contains("Heap in the valley"), page());
    }

    @Test
    @DisplayName("goes with the questions at the terminal")
    void ask() {
        assertEquals(Program.OK, run("ask", "--knowledge", PLACE, "--questions", "1"), page());
        assertEquals(
                Program.BAD_INPUT,
                run("ask", "--knowledge", folder.resolve("none").toString()));
    }

    @Test
    @Timeout(60)
    @DisplayName("goes with the pages in the browser")
    void serve() throws Exception {
        Thread.UncaughtExceptionHandler before = Thread.getDefaultUncaughtExceptionHandler();
        Thread server = new Thread(() -> run(
                "serve",
                "--no-browser",
                "--port",
                "0",
                "--piles",
                folder.resolve("piles").toString(),
                "--knowledge",
                PLACE));
        server.start();
        try {
            while (!page().contains("/ ")) {
                assertTrue(server.isAlive(), err.toString(StandardCharsets.UTF_8));
                Thread.sleep(50);
            }
            HttpResponse<String> answer = HttpClient.newHttpClient()
                    .send(
                            HttpRequest.newBuilder(URI.create(page().strip() + "knowledge/materials"))
                                    .build(),
                            BodyHandlers.ofString());
            assertEquals(200, answer.statusCode());
            assertTrue(answer.body().contains("Hop bines"));
        } finally {
            server.interrupt();
            server.join();
            Thread.setDefaultUncaughtExceptionHandler(before);
        }
    }

    @Test
    @DisplayName("reckons with a measure of the place")
    void measure() throws IOException {
        run("audit", "--full", "--knowledge", PLACE, pile);
        String local = page();
        Path smaller = folder.resolve("smaller");
        Files.createDirectories(smaller.resolve("tables"));
        for (String table : new String[] {"materials", "sources"}) {
            Files.copy(
                    Path.of(PLACE, "tables", table + ".json"),
                    smaller.resolve("tables").resolve(table + ".json"));
        }
        Files.writeString(
                smaller.resolve("tables/measures.json"),
                Files.readString(Path.of(PLACE, "tables", "measures.json")).replace("\"litres\": 14", "\"litres\": 7"));
        assertEquals(Program.OK, run("audit", "--full", "--knowledge", smaller.toString(), pile));
        assertFalse(local.equals(page()));
    }

    @Test
    @DisplayName("shows in materials, explain and check what the place adds")
    void shown() {
        assertEquals(Program.OK, run("materials", "--knowledge", PLACE, "hop bines"));
        assertTrue(page().startsWith("my-hop-bines: Hop bines, dried on the wires"), page());
        assertEquals(Program.OK, run("explain", "--knowledge", PLACE, "LOCAL-101"));
        assertTrue(page().contains("Our valley floor stands wet"), page());
        assertEquals(Program.OK, run("check", "--knowledge", PLACE));
        assertTrue(page().endsWith("no faults in 6 tables with 9 rows and 0 rules "), page());
        assertEquals(Program.BAD_INPUT, run("check", "--knowledge", PLACE, "rules"));
    }

    @Test
    @DisplayName("runs the cases with what the place adds")
    void cases() {
        assertEquals(Program.OK, run("cases", "--knowledge", PLACE, "cases/demo"));
        assertTrue(page().contains("agree"), page());
    }

    @Test
    @DisplayName("ends with 2 and every fault, and says what to give where there is nothing")
    void faults() throws IOException {
        Path bad = folder.resolve("bad");
        Files.createDirectories(bad.resolve("tables"));
        Files.writeString(bad.resolve("tables/sources.json"), "{\"sources\": [{\"key\": \"A\"}, {\"kex\": \"B\"}]}");
        Files.writeString(bad.resolve("water.drl"), "");
        assertEquals(Program.BAD_INPUT, run("checkup", "--knowledge", bad.toString(), pile));
        String told = err.toString(StandardCharsets.UTF_8);
        assertTrue(told.contains("/sources/0/what: found nothing"), told);
        assertTrue(told.contains("/sources/1/kex: found a field of this name"), told);
        assertTrue(told.contains("water.drl: found rules; local knowledge is data alone"), told);
        assertFalse(told.contains("our fault"), told);
        assertEquals(Program.BAD_INPUT, run("checkup", "--knowledge", "no-such", pile));
        assertEquals(
                Program.BAD_INPUT,
                run("checkup", "--knowledge", folder.resolve("x").toString(), pile));
        Path empty = folder.resolve("empty");
        Files.createDirectories(empty);
        assertEquals(Program.BAD_INPUT, run("checkup", "--knowledge", empty.toString(), pile));
        assertTrue(err.toString(StandardCharsets.UTF_8).contains("adds nothing"));
    }
}
