package heapwright.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import heapwright.advice.engine.RuleInfo;
import heapwright.advice.engine.Rulebook;
import heapwright.knowledge.Id;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.KnowledgeReader;
import heapwright.knowledge.Known;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The sources of figures and rules")
class SourcesTest {

    /** How much a grade says; what is derived or measured claims nothing of a source. */
    private static final Map<Known, Integer> RANK = Map.of(
            Known.PUBLISHED, 5,
            Known.PUBLISHED_PART, 4,
            Known.QUOTED, 3,
            Known.FROM_MEMORY, 2,
            Known.COMMON_PRACTICE, 1,
            Known.JUDGEMENT, 0,
            Known.DERIVED, 0,
            Known.MEASURED, 0);

    private static final ObjectMapper JSON = new ObjectMapper();

    private final Knowledge knowledge = KnowledgeReader.packed();

    @Test
    @DisplayName("carry them: no figure, row or rule claims a better grade than its best source has")
    void grades() {
        List<String> wrong = new ArrayList<>();
        for (Path file : files(Path.of("rules"), ".json")) {
            if (!file.endsWith("sources.json")) {
                claims(file.getFileName().toString(), tree(file), wrong);
            }
        }
        for (RuleInfo rule : Rulebook.packed().rules()) {
            claim(rule.id(), rule.evidence(), List.of(rule.source()), wrong);
        }
        assertEquals(List.of(), wrong);
    }

    @Test
    @DisplayName("a better grade than the source's is found")
    void tooGood() throws IOException {
        List<String> wrong = new ArrayList<>();
        claims(
                "x.json",
                JSON.readTree("{\"rows\": [{\"id\": \"a\", \"source\": \"RYNK92\", \"known\": \"published\"},"
                        + " {\"id\": \"b\", \"sources\": [\"RYNK92\", \"GOTLIST\"], \"known\": \"published\"}]}"),
                wrong);
        assertEquals(1, wrong.size(), wrong.toString());
    }

    @Test
    @DisplayName("are all used: by a table, a rule, a case, a page of method or a figure in the program")
    void used() {
        Set<String> words = Stream.of("rules", "cases", "src", "docs/method", "docs/decisions")
                .flatMap(folder -> files(Path.of(folder), "").stream())
                .filter(file -> !file.endsWith("sources.json"))
                .filter(file -> file.toString().matches(".*\\.(json|drl|java|md|properties)"))
                .flatMap(SourcesTest::words)
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> idle = new TreeSet<>(knowledge.sources().keySet());
        idle.removeAll(words);
        assertEquals(Set.of(), idle);
    }

    @Test
    @DisplayName("say what they are")
    void told() {
        knowledge.sources().values().forEach(s -> assertTrue(s.what().length() > 12, s.key()));
    }

    private void claims(String where, JsonNode node, List<String> wrong) {
        if (node.path("known").isTextual() && (node.has("source") || node.has("sources"))) {
            List<String> keys = new ArrayList<>();
            Stream.of(node.path("source"), node.path("sources")).forEach(n -> {
                if (n.isTextual()) {
                    keys.add(n.asText());
                }
                n.forEach(k ->
                        keys.add(k.isTextual() ? k.asText() : k.path("source").asText()));
            });
            claim(
                    where + " " + node.path("id").asText(),
                    known(node.path("known").asText()),
                    keys,
                    wrong);
        }
        String inner = node.has("id") ? where + " " + node.path("id").asText() : where;
        node.forEach(child -> claims(inner, child, wrong));
    }

    private void claim(String where, Known known, List<String> keys, List<String> wrong) {
        int best = keys.stream()
                .filter(knowledge.sources()::containsKey)
                .mapToInt(k -> RANK.get(knowledge.sources().get(k).known()))
                .max()
                .orElse(RANK.get(Known.PUBLISHED));
        if (RANK.get(known) > best) {
            wrong.add(where + " is " + known.id() + ", more than " + keys);
        }
    }

    private static Known known(String id) {
        return Arrays.stream(Known.values())
                .filter(k -> ((Id) k).id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static JsonNode tree(Path file) {
        try {
            return JSON.readTree(file.toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Stream<String> words(Path file) {
        try {
            return Pattern.compile("[^A-Za-z0-9-]+").splitAsStream(Files.readString(file, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Path> files(Path folder, String ending) {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile)
                    .filter(p -> p.toString().endsWith(ending))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
