package heapwright.author;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("The check of what was written")
class CheckTest {

    private static final Path RULES = Path.of("rules");
    private static final Check CHECK = new Check(TestPile.KNOWLEDGE, TestPile.ADVISOR.rules());

    @TempDir
    private Path folder;

    private CheckReport check() {
        return CHECK.of(folder, List.of());
    }

    private void write(String name, String text) throws IOException {
        Files.createDirectories(folder.resolve(name).getParent());
        Files.writeString(folder.resolve(name), text);
    }

    private void change(String name, UnaryOperator<String> change) throws IOException {
        String before = Files.readString(RULES.resolve(name));
        String after = change.apply(before);
        assertTrue(!before.equals(after), name + " is unchanged");
        write(name, after);
    }

    private void copyAll() throws IOException {
        try (Stream<Path> files = Files.walk(RULES)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path to = folder.resolve(RULES.relativize(file));
                Files.createDirectories(to.getParent());
                Files.copy(file, to);
            }
        }
    }

    private void inAll(String pass, String there, String instead) throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve(pass))) {
            for (Path file : files.toList()) {
                Files.writeString(file, Files.readString(file).replace(there, instead));
            }
        }
    }

    @Test
    @DisplayName("finds no fault in what is shipped, packed or as a folder, and nothing dead, doubtful or too long")
    void shipped() {
        CheckReport packed = CHECK.ofShipped(List.of());
        CheckReport asFolder = CHECK.of(RULES, List.of());
        assertEquals(List.of(), packed.faults());
        assertEquals(List.of(), asFolder.faults());
        assertEquals(packed.tables(), asFolder.tables());
        assertEquals(packed.rows(), asFolder.rows());
        assertTrue(packed.rules() > 600, "only " + packed.rules());
        assertEquals(List.of(), others(packed));
        assertEquals(List.of(), others(asFolder));
    }

    /** What is worth a look, but for sources that only the model, the courses or the cases name. */
    private static List<String> others(CheckReport report) {
        return report.looks().stream()
                .filter(look -> !look.startsWith("tables/sources.json"))
                .toList();
    }

    @Test
    @DisplayName("tells the faults of all tables, rows and rules at once, those within a row and those between tables")
    void allAtOnce() throws IOException {
        change("tables/limits.json", t -> t.replaceFirst("\"unit\": \"%\"", "\"unit\": 5"));
        change("tables/causes.json", t -> t.replaceFirst("\"kind\": \"[a-z]+\"", "\"kind\": \"fualt\""));
        change("tables/cautions.json", t -> t.replaceFirst("\"CALREC\"", "\"CALRECC\""));
        change("tables/remedies.json", t -> t.substring(0, t.length() / 2));
        change("evidence/matted.json", t -> t.replaceFirst("WEIGH-", "WIEGH-"));
        change("derive/water.drl", t -> t.replaceFirst("Sign.SOGGY", "Sign.SOGY"));
        write("tables/cause.json", "{}");
        write("evidence/to-wet.json", "{}");
        write("drive/water.drl", "");
        List<String> faults = check().faults();
        for (String part : List.of(
                "tables/limits.json, line 3, /limits/0/unit: found 5.0. Allowed: text in double quotes.",
                "/kind: found \"fualt\". Allowed: one of ",
                "tables/cautions.json, line 3, dust-and-spores: found the source \"CALRECC\". Allowed: a key of"
                        + " sources.json. Did you mean \"CALREC\"?",
                ": found the end of the file in the middle of something. Allowed: a file in which every { [ and \" is closed.",
                "evidence/matted.json, line 3, WIEGH-",
                "found Sign.SOGY. Allowed: one of the ",
                "tables/cause.json: found a table of this name. Allowed: the names of the shipped ones. Did you mean"
                        + " \"tables/causes.json\"?",
                "Did you mean \"evidence/too-wet.json\"?",
                "drive/water.drl: found rules here. Allowed: in the folder of a pass")) {
            assertEquals(1, faults.stream().filter(f -> f.contains(part)).count(), part + " in " + faults);
        }
        assertEquals(9, faults.size(), String.join("\n", faults));
    }

    @Test
    @DisplayName("misses the row of a fixed set, and does not take what follows from a fault for another")
    void following() throws IOException {
        change(
                "tables/sources.json",
                t -> t.replaceFirst("(?s)(\"key\": \"CALREC\",\\s+)\"what\": \"", "$1\"waht\": \""));
        change("tables/cautions.json", t -> t.replaceFirst("\"id\": \"dust-and-spores\"", "\"id\": \"dust\""));
        List<String> faults = check().faults();
        assertEquals(4, faults.size(), String.join("\n", faults));
        assertTrue(faults.stream().anyMatch(f -> f.equals("tables/cautions.json: no row for dust-and-spores")));
        assertTrue(faults.stream().anyMatch(f -> f.contains("/waht: found a field of this name")));
    }

    @Test
    @DisplayName("takes a part of the tables with the shipped ones beside them")
    void part() throws IOException {
        change("evidence/too-wet.json", t -> t.replaceFirst("\"strength\": \"[a-z]+\"", "\"strength\": \"slight\""));
        CheckReport report = check();
        assertEquals(List.of(), report.faults());
        assertEquals(1, report.tables());
        assertEquals(0, report.rules());
    }

    @Test
    @DisplayName("finds rows that can never speak, steps that nothing offers and states that nothing asks for")
    void dead() throws IOException {
        copyAll();
        inAll("remedy", "new Proposes( Remedy.ADD_UREA", "new Proposes( Remedy.TURN_FULLY");
        inAll("derive", "Holds( Condition.RAW_OUTSIDE_BURNT_INSIDE )", "Holds( Condition.DRY )");
        change(
                "evidence/matted.json",
                t -> t.replaceFirst(
                        "\"matted\": \\[",
                        "\"matted\": [\n"
                                + row(
                                        4991,
                                        "{\"reading\": \"ph\", \"side\": \"likely-above\", \"limit\": \"freezing\"}")
                                + row(4992, "{\"failed\": [\"add-urea\"]}")));
        CheckReport report = check();
        assertEquals(List.of(), report.faults());
        String looks = String.join("\n", report.looks());
        assertTrue(looks.contains("WEIGH-4991: can never speak: nothing compares ph with freezing"), looks);
        assertTrue(looks.contains("WEIGH-4992: can never speak: nothing ever offers the step add-urea"), looks);
        assertTrue(looks.contains("tables/remedies.json, add-urea: can never be offered"), looks);
        assertTrue(
                looks.contains("can never speak: no rule in derive names the state raw-outside-burnt-inside"), looks);
    }

    @Test
    @DisplayName("finds texts too long, sources that nothing names and rows that contradict each other")
    void looks() throws IOException {
        change(
                "evidence/matted.json",
                t -> t.replaceFirst(
                        "\"matted\": \\[",
                        "\"matted\": [\n"
                                + row(4991, "{\"seen\": [\"smells-earthy\"]}")
                                        .replace("So it is.", "So " + "very ".repeat(40) + "much.")
                                + row(4992, "{\"seen\": [\"smells-earthy\"]}").replace("\"for\"", "\"against\"")));
        change(
                "tables/sources.json",
                t -> t.replaceFirst(
                        "\"sources\": \\[",
                        "\"sources\": [{\"key\": \"NOBODY99\", \"what\": \"Invented.\", \"known\": \"from-memory\"},"));
        String looks = String.join("\n", check().looks());
        assertTrue(looks.contains("WEIGH-4991, because: is 208 letters long; 150 or fewer fit its place"), looks);
        assertTrue(looks.contains("WEIGH-4992: speaks against on what WEIGH-4991 speaks for on."), looks);
        assertTrue(looks.contains("NOBODY99"), looks);
        assertTrue(!String.join("\n", CHECK.of(folder, List.of("NOBODY99")).looks())
                .contains("NOBODY99"));
    }

    @Test
    @DisplayName("reads nothing outside the folder, nothing that is no file, nothing huge and nothing deep")
    void hostile() throws IOException {
        Path outside = Files.createTempDirectory("outside");
        Files.writeString(outside.resolve("limits.json"), "{\"limits\": [\"secret\"]}");
        Files.createDirectories(folder.resolve("tables"));
        Files.createSymbolicLink(folder.resolve("tables/limits.json"), outside.resolve("limits.json"));
        Files.createDirectory(folder.resolve("tables/causes.json"));
        Files.write(folder.resolve("tables/signs.json"), new byte[5 << 20]);
        write("tables/measures.json", "[".repeat(100_000));
        Files.write(folder.resolve("tables/materials.json"), new byte[] {(byte) 0xff, (byte) 0xfe, 0, 1});
        write("tables/waits.json", "");
        write("tables/uses.json", "{\"uses\": [null, 3, {}]}");
        List<String> faults = check().faults();
        for (String part : List.of(
                "tables/limits.json: cannot be read: it leads out of the folder",
                "tables/causes.json: cannot be read: it is no plain file",
                "tables/signs.json: cannot be read: it is larger than 4 MiB",
                "tables/measures.json, line 1: found something longer or deeper than any table is.",
                "tables/materials.json, line 1: found bytes that are no letters of UTF-8.",
                "tables/waits.json: found no object",
                "/uses: found something else than an object in the list",
                "/uses/2/id: found nothing")) {
            assertTrue(faults.stream().anyMatch(f -> f.contains(part)), part + " is not in " + faults);
        }
        assertTrue(faults.stream().noneMatch(f -> f.contains("secret")), faults.toString());
    }

    @Test
    @DisplayName("says what would do where a folder has nothing of the kind")
    void nothing() {
        List<String> faults = check().faults();
        assertEquals(1, faults.size());
        assertTrue(
                faults.get(0).contains("found no tables, no evidence and no rules. Allowed: a folder laid out like"));
    }

    @Test
    @Tag("thorough")
    @DisplayName("tells of any mangled table where it is mangled, and never falls over it")
    void mangled() throws IOException {
        Random random = new Random(15);
        List<Path> files;
        try (Stream<Path> all = Files.walk(RULES)) {
            files = all.filter(f -> f.toString().matches(".*\\.(json|drl)"))
                    .sorted()
                    .toList();
        }
        for (int i = 0; i < 120; i++) {
            Path file = files.get(random.nextInt(files.size()));
            String text = Files.readString(file);
            int at = random.nextInt(text.length());
            int to = Math.min(text.length(), at + 1 + random.nextInt(40));
            String mangled =
                    switch (random.nextInt(3)) {
                        case 0 -> text.substring(0, at) + text.substring(to);
                        case 1 -> text.substring(0, at) + "\"" + text.substring(at);
                        default -> text.substring(0, at) + random.nextInt(1000) + text.substring(to);
                    };
            Path mark = folder.resolve(RULES.relativize(file));
            Files.createDirectories(mark.getParent());
            Files.write(mark, mangled.getBytes(StandardCharsets.UTF_8));
            String name = RULES.relativize(file).toString();
            check().faults().forEach(f -> assertTrue(f.contains(".json") || f.startsWith(name), name + ": " + f));
            Files.delete(mark);
        }
    }

    private static String row(int number, String when) {
        return "{\"id\": \"WEIGH-" + number + "\", \"speaks\": \"for\", \"strength\": \"fair\", \"witness\": \"smell\","
                + " \"when\": " + when + ", \"because\": \"So it is.\", \"source\": \"JUDGEMENT\", \"known\":"
                + " \"judgement\"},\n";
    }
}
