package heapwright.pile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Every document in {@code cases/invalid} is refused with exactly the problems that stand beside it in
 * {@code NAME.expected.json}: pointer, found, closest, and allowed unless that depends on the tables.
 */
class InvalidCasesTest {

    static final Path FOLDER = Path.of("cases", "invalid");

    private final PileReader reader = new PileReader(new TestVocabulary());
    private final ObjectMapper mapper = new ObjectMapper();

    static List<Path> documents() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.filter(file -> file.toString().endsWith(".json")
                            && !file.toString().endsWith(".expected.json"))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void thereAreEnough() throws IOException {
        assertTrue(documents().size() >= 25);
    }

    @TestFactory
    Stream<DynamicTest> refused() throws IOException {
        return documents().stream()
                .map(file -> DynamicTest.dynamicTest(file.getFileName().toString(), () -> check(file)));
    }

    private void check(Path file) throws IOException {
        String name = file.getFileName().toString();
        List<Problem> problems = reader.read(name, Files.readAllBytes(file)).problems();
        JsonNode expected = mapper.readTree(
                FOLDER.resolve(name.replace(".json", ".expected.json")).toFile());
        assertTrue(expected.isArray() && !expected.isEmpty(), "expects nothing");
        assertEquals(
                expected.size(),
                problems.size(),
                () -> String.join("\n", problems.stream().map(Problem::message).toList()));
        for (int i = 0; i < problems.size(); i++) {
            Problem problem = problems.get(i);
            JsonNode wanted = expected.get(i);
            assertEquals(wanted.path("pointer").asText(), problem.pointer());
            assertEquals(wanted.path("found").asText(), problem.found(), problem.pointer());
            if (wanted.has("allowed")) {
                assertEquals(wanted.path("allowed").asText(), problem.allowed(), problem.pointer());
            }
            assertEquals(wanted.path("closest").asText(""), problem.closest().orElse(""), problem.pointer());
        }
    }
}
