package heapwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.author.Check;
import heapwright.author.RuleCheck;
import heapwright.author.RuleFile;
import heapwright.casebook.Case;
import heapwright.casebook.Casebook;
import heapwright.casebook.Verdict;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("A template to copy")
class TemplatesTest {

    private static final Path TEMPLATES = Path.of("docs", "templates");
    private static final Path RULES = Path.of("rules");
    private static final Check CHECK = new Check(TestPile.KNOWLEDGE, TestPile.ADVISOR.rules());

    @TempDir
    private Path folder;

    private static String text(String name) throws IOException {
        return Files.readString(TEMPLATES.resolve(name)).strip();
    }

    /** A table with the template as its first row. */
    private List<String> faultsWith(String table, String row) throws IOException {
        Path file = folder.resolve(table);
        Files.createDirectories(file.getParent());
        String shipped = Files.readString(RULES.resolve(table));
        int rows = shipped.indexOf('[') + 1;
        Files.writeString(file, shipped.substring(0, rows) + row + ",\n" + shipped.substring(rows));
        return CHECK.of(folder, List.of()).faults();
    }

    @Test
    @DisplayName("of a case can be read, and agrees")
    void aCase() throws IOException {
        Files.copy(TEMPLATES.resolve("case.json"), folder.resolve("case.json"));
        List<Case> cases = new Casebook(TestPile.KNOWLEDGE).below(folder);
        assertEquals(1, cases.size());
        assertEquals(List.of(), Verdict.of(cases.get(0), TestPile.ADVISOR).misses());
    }

    @Test
    @DisplayName("of a row of evidence or a material fits among the shipped ones")
    void rows() throws IOException {
        assertEquals(List.of(), faultsWith("evidence/too-wet.json", text("row-of-evidence.json")));
        assertEquals(List.of(), faultsWith("tables/materials.json", text("material.json")));
    }

    @Test
    @DisplayName("of a rule keeps the house rules and takes no id that is there")
    void rule() throws IOException {
        RuleFile file = RuleFile.of("derive/template.drl", text("rule.drl") + "\n");
        assertEquals(List.of(), new RuleCheck(TestPile.KNOWLEDGE.sources().keySet()).faults(List.of(file)));
        assertEquals(1, file.rules().size());
        assertTrue(TestPile.ADVISOR.rules().stream()
                .noneMatch(r -> r.id().equals(file.rules().get(0).id())));
    }

    @Test
    @DisplayName("of a place has no faults")
    void place() {
        assertEquals(
                List.of(),
                CHECK.ofLocal(TEMPLATES.resolve("my-place"), List.of()).faults());
    }

    @Test
    @DisplayName("stands in the list of templates, and each folder of cases in the list of folders")
    void listed() throws IOException {
        listed(TEMPLATES, text("README.md"));
        listed(Path.of("cases"), Files.readString(Path.of("cases", "README.md")));
    }

    private static void listed(Path folder, String readme) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            List<String> names = files.map(f -> f.getFileName().toString())
                    .filter(n -> !n.equals("README.md"))
                    .toList();
            assertFalse(names.isEmpty());
            names.forEach(n -> assertTrue(readme.contains("`" + n + "`"), n + " is not listed in " + folder));
        }
    }
}
