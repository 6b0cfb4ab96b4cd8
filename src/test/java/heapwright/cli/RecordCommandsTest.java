package heapwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.knowledge.KnowledgeReader;
import heapwright.pile.Advised;
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
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A season at the command line: notes go into the file, nothing typed before is lost, and what is wrong changes nothing. */
@DisplayName("heapwright note, history and due")
class RecordCommandsTest {

    private static final String BEFORE = """
            {"heapwright": "pile/1", "name": "Test heap", "built": "2026-10-01",
             "log": [{"date": "2026-10-20", "seen": ["steam"], "measured": {"core": {"value": 122, "unit": "F"}}}],
             "atHand": [{"material": "straw-general", "amount": 2, "unit": "wheelbarrow"}]}
            """;

    @TempDir
    private Path folder;

    private Path file;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @BeforeEach
    void pile() throws IOException {
        file = folder.resolve("heap.json");
        Files.writeString(file, BEFORE);
    }

    @Test
    @DisplayName("notes signs, figures, work and additions of a day, and says what it noted")
    void notes() throws IOException {
        int code = run(
                "note",
                file.toString(),
                "--on",
                "2026-11-01",
                "--seen",
                "soggy, smells sour",
                "--not-seen",
                "steam",
                "--core",
                "12",
                "--outdoor",
                "−3",
                "--height",
                "30in",
                "--done",
                "turned-fully",
                "--added",
                "1½ bucket leaves-mixed",
                "--text",
                "first frost");
        assertEquals(Program.OK, code, err());
        assertTrue(out().startsWith("Noted on 1 November 2026: core 12 °C"), out());
        Pile pile = read();
        Entry entry = pile.log().get(1);
        assertEquals(List.of("soggy", "smells-sour"), entry.seen());
        assertEquals(List.of("steam"), entry.notSeen());
        assertEquals(OptionalDouble.of(12), entry.measured().coreC());
        assertEquals(OptionalDouble.of(-3), entry.measured().outdoorC());
        assertEquals(0.762, entry.measured().heightM().orElseThrow(), 1e-9);
        assertEquals("leaves-mixed", entry.added().get(0).material());
        assertEquals("first frost", entry.note());
        assertEquals(LocalDate.of(2026, 11, 1), pile.asOf());
        assertTrue(Files.readString(file).contains("{\"value\":122,\"unit\":\"F\"}")
                || Files.readString(file).contains("\"unit\": \"F\""));
    }

    @Test
    @DisplayName("puts an older day before a later one, and keeps the day of advice")
    void inOrder() throws IOException {
        assertEquals(Program.OK, run("note", file.toString(), "--on", "2026-10-10", "--seen", "soggy"), err());
        Pile pile = read();
        assertEquals(LocalDate.of(2026, 10, 10), pile.log().get(0).date());
        assertEquals(LocalDate.of(2026, 10, 20), pile.asOf());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--on|2999-01-01|lies in the future",
                "--on|2026-09-01|was built",
                "--on|yesterday|a day as year-month-day",
                "--seen|purple|No sign is known by these words",
                "--seen|y|",
                "--core|warm|Allowed: a number",
                "--core|900|900",
                "--core|12K|Allowed: one of the units C, F",
                "--done|danced|danced",
                "--added|leaves-mixed|how much, of which measure",
                "--added|4 wheelbarrow|how much, of which measure",
                "--added|4 wheelbarrow moonrock|moonrock",
                "--text|' '|nothing to note"
            })
    @DisplayName("changes nothing where something is wrong, and says what and what is allowed")
    void wrong(String flag, String value, String told) throws IOException {
        assertEquals(Program.BAD_INPUT, run("note", file.toString(), flag, value));
        assertTrue(told == null || err().contains(told), err());
        assertFalse(err().contains("Exception"), err());
        assertEquals(BEFORE, Files.readString(file));
        assertEquals("", out());
    }

    @Test
    @DisplayName("takes a note back and puts it back, named by its day, and asks which where the day has several")
    void takenBack() throws IOException {
        assertEquals(Program.OK, run("note", file.toString(), "--on", "2026-11-01", "--seen", "soggy"), err());
        String noted = Files.readString(file);
        assertEquals(Program.OK, run("note", file.toString(), "--take-back", "2026-11-01"), err());
        assertTrue(out().startsWith("Taken back, of 1 November 2026: "), out());
        Pile without = read();
        assertEquals(1, without.log().size());
        assertEquals(List.of("soggy"), without.struck().get(0).seen());
        assertEquals(LocalDate.of(2026, 10, 20), without.asOf(), "the day that it had moved on goes back");
        assertEquals(Program.OK, run("note", file.toString(), "--put-back", "2026-11-01"), err());
        assertEquals(noted, Files.readString(file));
        assertEquals(Program.OK, run("note", file.toString(), "--on", "2026-11-01", "--core", "12"), err());
        String two = Files.readString(file);
        assertEquals(Program.BAD_INPUT, run("note", file.toString(), "--take-back", "2026-11-01"));
        assertTrue(err().contains("2026-11-01#2: core 12 °C"), err());
        for (String wrong : List.of("2026-11-01#3", "2026-11-02", "yesterday", "")) {
            assertEquals(Program.BAD_INPUT, run("note", file.toString(), "--take-back", wrong), wrong);
        }
        assertEquals(Program.BAD_INPUT, run("note", file.toString(), "--take-back", "2026-11-01#2", "--core", "9"));
        assertTrue(err().contains("by itself"), err());
        assertEquals(Program.BAD_INPUT, run("note", file.toString(), "--put-back", "2026-11-01"));
        assertTrue(err().contains("There is none."), err());
        assertEquals(two, Files.readString(file));
        assertEquals(Program.OK, run("note", file.toString(), "--take-back", "2026-11-01#2"), err());
        assertEquals(List.of("soggy"), read().log().get(1).seen());
    }

    @Test
    @DisplayName("takes a word for a no as a no, and never a yes for a no")
    void denied() throws IOException {
        assertEquals(Program.OK, run("note", file.toString(), "--on", "2026-11-01", "--seen", "not soggy"), err());
        assertEquals(List.of("soggy"), read().log().get(1).notSeen());
        assertEquals(Program.BAD_INPUT, run("note", file.toString(), "--not-seen", "not soggy"));
        assertTrue(err().contains("says no twice"), err());
    }

    @Test
    @DisplayName("notes each thing of a phrase, and refuses with its words what a phrase leaves over")
    void parts() throws IOException {
        assertEquals(
                Program.OK,
                run(
                        "note",
                        file.toString(),
                        "--on",
                        "2026-11-01",
                        "--seen",
                        "soggy and sour smell but no flies or rats"),
                err());
        assertEquals(List.of("soggy", "smells-sour"), read().log().get(1).seen());
        assertEquals(List.of("flies", "rodents"), read().log().get(1).notSeen());
        String before = Files.readString(file);
        assertEquals(Program.BAD_INPUT, run("note", file.toString(), "--seen", "slimy gribbles, soggy"));
        assertTrue(err().contains("Not understood in it: \"gribbles\""), err());
        assertTrue(err().contains("Example: --seen slimy"), err());
        assertEquals(before, Files.readString(file));
    }

    @Test
    @DisplayName("remember what was taken on, ask whether it helped, and tell no step twice in the same words")
    void memory() throws IOException {
        Files.writeString(
                file, BEFORE.replace("\"steam\"", "\"soggy\", \"smells-sour\"").replace("122", "50"));
        assertEquals(Program.OK, run("checkup", "--keep", file.toString()), err());
        String first = out();
        assertTrue(err().startsWith("Kept. On "), err());
        List<Advised> kept = read().advised();
        assertTrue(first.contains(kept.get(0).amount().replaceAll(" .*", "")), first);
        assertEquals(LocalDate.of(2026, 10, 20), kept.get(0).date());
        assertEquals(Program.OK, run("checkup", file.toString()), err());
        assertTrue(out().contains("Taken on: ") && out().contains("Look on"), out());
        assertEquals(Program.OK, run("note", file.toString(), "--on", "2026-11-05", "--seen", "soggy"), err());
        assertEquals(Program.OK, run("checkup", file.toString()), err());
        assertTrue(out().replaceAll("\\s+", " ").contains("Did it help? Note it with --helped"), out());
        assertEquals(Program.OK, run("due", folder.toString()), err());
        assertTrue(out().contains(", overdue: heap.json"), out());
        assertEquals(Program.OK, run("note", file.toString(), "--on", "2026-11-05", "--did-not-help"), err());
        assertTrue(read().advised().stream().allMatch(a -> a.outcome() == Advised.Outcome.DID_NOT_HELP));
        assertEquals(Program.OK, run("checkup", file.toString()), err());
        String second = out();
        assertFalse(second.contains("from before that work"), "it was noted since");
        assertTrue(second.contains("You did this and it did not help."), second);
        assertEquals(
                List.of(),
                first.lines()
                        .filter(l -> l.startsWith("   ") && l.length() > 60)
                        .filter(second::contains)
                        .toList(),
                "how-tos told twice in the same words");
        assertEquals(Program.BAD_INPUT, run("note", file.toString(), "--helped"));
        assertTrue(err().contains("no step is open"), err());
        assertEquals(Program.BAD_INPUT, run("note", file.toString(), "--helped", "--not-done"));
        assertTrue(err().contains("comes to one thing"), err());
    }

    @Test
    @DisplayName("remember that a step is done, and give it its days")
    void done() throws IOException {
        Files.writeString(
                file, BEFORE.replace("\"steam\"", "\"soggy\", \"smells-sour\"").replace("122", "50"));
        assertEquals(Program.OK, run("checkup", "--keep", file.toString()), err());
        assertEquals(
                Program.OK,
                run("note", file.toString(), "--on", "2026-10-21", "--did-it", "--step", "mix-in-dry-carbon"),
                err());
        assertTrue(out().contains("done: Mix dry"), out());
        Advised told = read().advised().stream()
                .filter(a -> a.step().equals("mix-in-dry-carbon"))
                .findFirst()
                .orElseThrow();
        assertEquals(Advised.Outcome.DONE, told.outcome());
        assertEquals(LocalDate.of(2026, 10, 21), told.since());
        assertEquals(Program.OK, run("checkup", file.toString()), err());
        assertTrue(out().contains("Done: Mix dry"), out());
        assertFalse(out().contains("1. Mix dry"), out());
        assertEquals(
                Program.OK,
                run("note", file.toString(), "--on", "2026-10-30", "--helped", "--step", "mix-in-dry-carbon"),
                err());
        assertEquals(
                LocalDate.of(2026, 10, 30),
                read().advised().stream()
                        .filter(a -> a.outcome() == Advised.Outcome.HELPED)
                        .findFirst()
                        .orElseThrow()
                        .since());
    }

    @Test
    @DisplayName("ask to look again where it helped and nothing was noted since")
    void stale() throws IOException {
        Files.writeString(
                file, BEFORE.replace("\"steam\"", "\"soggy\", \"smells-sour\"").replace("122", "50"));
        assertEquals(Program.OK, run("checkup", "--keep", file.toString()), err());
        assertEquals(Program.OK, run("note", file.toString(), "--helped"), err());
        assertEquals(Program.OK, run("checkup", file.toString()), err());
        assertTrue(out().replaceAll("\\s+", " ").contains("Everything noted is older than that work"), out());
        assertEquals(Program.OK, run("note", file.toString(), "--on", "2026-11-05", "--not-seen", "soggy"), err());
        assertEquals(Program.OK, run("checkup", file.toString()), err());
        assertFalse(out().contains("older than that work"), out());
    }

    @Test
    @DisplayName("keep nothing while a danger stands")
    void dangerKeepsNothing() throws IOException {
        Files.writeString(file, BEFORE.replace("\"steam\"", "\"smoke\""));
        String before = Files.readString(file);
        assertEquals(Program.OK, run("checkup", "--keep", file.toString()), err());
        assertTrue(err().contains("Nothing was kept"), err());
        assertEquals(before, Files.readString(file));
    }

    @Test
    @DisplayName("leaves no other file behind but the one that is locked")
    void tidy() throws IOException {
        run("note", file.toString(), "--on", "2026-11-01", "--seen", "soggy");
        try (var files = Files.list(folder)) {
            assertEquals(
                    List.of(".heapwright-lock", "heap.json"),
                    files.map(f -> f.getFileName().toString()).sorted().toList());
        }
    }

    @Test
    @DisplayName("tell the record by day")
    void history() {
        assertEquals(Program.OK, run("history", file.toString()), err());
        assertTrue(out().contains("Test heap") && out().contains("Day 19 (20 Oct 2026): core 50 °C; steam."), out());
        assertEquals(Program.OK, run("history", "--units", "us", file.toString()), err());
        assertTrue(out().contains("core 122 °F"), out());
    }

    @Test
    @DisplayName("list the first days of harvest where compost was spread raw, until they are past")
    void harvest() throws IOException {
        Files.copy(
                Path.of("cases", "ready", "harvest-waits-from-the-day-it-was-spread.json"), folder.resolve("h.json"));
        assertEquals(Program.OK, run("due", folder.toString()), err());
        List<String> lines = out().lines().filter(l -> l.contains("harvest")).toList();
        assertEquals(2, lines.size(), out());
        assertTrue(
                lines.get(0).startsWith("4 August 2027: h.json") && lines.get(0).contains("6 May 2027"), out());
        assertTrue(lines.get(1).startsWith("3 September 2027: h.json"), out());
    }

    @Test
    @DisplayName("list what is due, danger first, and name a file that cannot be read without leaving out the others")
    void due() throws IOException {
        Files.writeString(
                folder.resolve("a.json"),
                BEFORE.replace("\"steam\"", "\"soggy\"").replace("122", "50"));
        Files.writeString(folder.resolve("z.json"), BEFORE.replace("\"steam\"", "\"smoke\""));
        assertEquals(Program.OK, run("due", folder.toString()), err());
        List<String> lines = out().lines().toList();
        assertEquals(3, lines.size(), out());
        assertTrue(lines.get(0).startsWith("z.json, Test heap. DANGER: "), out());
        assertTrue(lines.stream().anyMatch(l -> l.contains("a.json, Test heap. Look again: ")), out());
        Files.writeString(folder.resolve("b.json"), "{");
        assertEquals(Program.BAD_INPUT, run("due", folder.toString()));
        assertEquals(3, out().lines().count(), out());
        assertTrue(err().contains("b.json"), err());
        assertEquals(Program.BAD_INPUT, run("due", file.toString()));
        assertTrue(err().contains("is not a folder"), err());
    }

    private Pile read() throws IOException {
        return new PileReader(KnowledgeReader.packed().vocabulary())
                .read("heap.json", Files.readAllBytes(file))
                .pile()
                .orElseThrow();
    }

    private int run(String... args) {
        out.reset();
        err.reset();
        return new Program(new Terminal(
                        new ByteArrayInputStream(new byte[0]),
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
