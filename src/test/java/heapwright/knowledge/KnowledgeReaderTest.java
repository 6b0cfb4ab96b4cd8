package heapwright.knowledge;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The reader of the tables")
class KnowledgeReaderTest {

    @Test
    @DisplayName("takes every field of a row")
    void fields() throws IOException {
        SignInfo sign = new KnowledgeReader(name ->
                        changed(name, "signs.json", t -> t.replaceFirst("\"met\": \"[a-z]+\"", "\"met\": \"often\"")))
                .read()
                .signs()
                .values()
                .iterator()
                .next();
        String table = text("signs.json");
        assertEquals(SignInfo.Met.OFTEN, sign.met());
        for (String told : List.of(sign.id().id(), sign.ask(), sign.say(), sign.deny(), sign.how(), sign.shortName())) {
            assertTrue(table.contains("\"" + told + "\""), told);
        }
        Material sawdust = KnowledgeReader.packed().materials().get("sawdust");
        assertEquals(Optional.empty(), sawdust.keepOut());
        assertTrue(sawdust.carbonToNitrogen().low() < sawdust.carbonToNitrogen().high());
    }

    @ParameterizedTest
    @DisplayName("says of a fault where it is, what was found and what is allowed")
    @CsvSource(delimiter = '|', textBlock = """
                    "met": "often"      | "met": "daily"            | /met: found "daily". Allowed: one of often, seldom, sometimes.
                    "met": "often"      | "met": 3                  | /met: found 3.0. Allowed: text in double quotes.
                    "met": "often"      | "mett": "often"           | /met: found nothing. Allowed: text in double quotes.
                    "met": "often"      | "met": "often", "x": 1    | /x: found a field of this name. Allowed: only [aliases,
                    "met": "often"      | "met": "often", "met": "often" | : found the field "met" twice in one object. Allowed: each field once.
                    "aliases": [        | "aliases": [ 7,           | /aliases: found 7.0 in the list. Allowed: a list of texts.
                    "aliases": [        | "aliases": "", "b": [     | /aliases: found "". Allowed: a list.
                    "signs": [          | "sign": [                 | /signs: found nothing. Allowed: a list.
                    "signs": [          | "signs": [ 4,             | /signs: found something else than an object in the list.
                    "signs": [          | "signs": ,                | : found something that is not JSON at column
                    "met": "often",     | "met": "often"            | Allowed: a comma between one item and the next
                    "met": "often",     | "met": often,             | Allowed: words in double quotes, such as
                    """)
    void faults(String there, String instead, String message) {
        KnowledgeFault fault = assertThrows(
                KnowledgeFault.class,
                () -> new KnowledgeReader(name -> changed(name, "signs.json", t -> {
                            assertTrue(t.contains(there), there);
                            return t.replaceFirst(Pattern.quote(there), Matcher.quoteReplacement(instead));
                        }))
                        .read());
        // A misspelt field is both missing and one too many.
        assertEquals(
                instead.contains("mett") || instead.contains("\"b\"") ? 2 : 1,
                fault.faults().size(),
                fault.getMessage());
        String told = fault.faults().get(0);
        assertTrue(told.matches("(?s)signs\\.json, line [0-9]+.*") && told.contains(message), told);
    }

    @Test
    @DisplayName("tells every fault of one row, with the nearest name")
    void oneRow() {
        KnowledgeFault fault = assertThrows(
                KnowledgeFault.class,
                () -> new KnowledgeReader(name -> changed(
                                name,
                                "limits.json",
                                t -> t.replaceFirst(
                                        "(?s)\"value\": [0-9.]+,\\s+\"unit\": \"%\",\\s+\"lowest\"",
                                        "\"value\": 1e999, \"unit\": 7, \"lowst\"")))
                        .read());
        List<String> told = fault.faults();
        assertEquals(4, told.size(), fault.getMessage());
        assertTrue(told.get(0).contains("/value: found a number too large"), told.get(0));
        assertTrue(told.get(1).contains("/unit: found 7.0"), told.get(1));
        assertTrue(told.get(2).contains("/lowest: found nothing"), told.get(2));
        assertTrue(told.get(3).contains("/lowst: found a field of this name"), told.get(3));
        assertTrue(told.get(3).endsWith("Did you mean \"lowest\"?"), told.get(3));
    }

    @Test
    @DisplayName("tells the faults of all tables at once")
    void together() {
        KnowledgeFault fault =
                assertThrows(KnowledgeFault.class, () -> new KnowledgeReader(KnowledgeReaderTest::threeBroken).read());
        assertEquals(20, fault.faults().size(), fault.getMessage());
        assertAll(
                () -> assertEquals(
                        "causes.json: the table is missing", fault.faults().get(0)),
                () -> assertEquals(
                        "remedies.json: no rows under \"remedies\"",
                        fault.faults().get(1)),
                () -> assertTrue(fault.faults().get(2).contains("/limits/0/id"), fault.getMessage()),
                () -> assertTrue(fault.faults().get(11).contains("/limits/1/id"), fault.getMessage()));
    }

    @Test
    @DisplayName("knows the same rows as a general reader of JSON")
    void sameAsJackson() throws IOException {
        Knowledge knowledge = KnowledgeReader.packed();
        var rows = new ObjectMapper().readTree(text("materials.json")).get("materials");
        assertEquals(rows.size(), knowledge.materials().size());
        for (var row : rows) {
            Material material = knowledge.materials().get(row.get("id").asText());
            Set<String> traits = new TreeSet<>();
            row.get("traits").forEach(t -> traits.add(t.asText()));
            assertAll(
                    material.id(),
                    () -> assertEquals(
                            row.at("/carbonPct/typical").asDouble(),
                            material.carbonPct().typical()),
                    () -> assertEquals(
                            row.at("/densityKgM3/high").asDouble(),
                            material.densityKgM3().high()),
                    () -> assertEquals(row.has("keepOut"), material.keepOut().isPresent()),
                    () -> assertEquals(
                            traits,
                            material.traits().stream().map(Trait::id).collect(Collectors.toCollection(TreeSet::new))));
        }
    }

    @Test
    @DisplayName("finds that the tables packed with the program hang together, which is not looked at when it starts")
    void packedHangTogether() {
        Knowledge checked = new KnowledgeReader(name -> stream(text(name))).read();
        assertEquals(checked.evidence(), KnowledgeReader.packed().evidence());
    }

    @Test
    @DisplayName("asks that nitrogen and C:N of a material make its carbon")
    void carbon() {
        KnowledgeFault fault = assertThrows(
                KnowledgeFault.class,
                () -> new KnowledgeReader(name -> changed(
                                name, "materials.json", t -> t.replaceFirst("\"typical\": 3.04,", "\"typical\": 3.4,")))
                        .read());
        assertEquals(1, fault.faults().size(), fault.getMessage());
        assertTrue(
                fault.faults().get(0).contains("grass-clippings: nitrogen of 3.4 % and C:N of 17.0 make 57.8 % carbon"),
                fault.getMessage());
    }

    private static InputStream threeBroken(String name) throws IOException {
        return switch (name) {
            case "causes.json" -> null;
            case "remedies.json" -> stream("{\"remedies\": []}");
            case "limits.json" -> stream("{\"limits\": [{\"id\": \"no-such\"},\n{}]}");
            default -> stream(text(name));
        };
    }

    private static InputStream changed(String name, String table, UnaryOperator<String> change) throws IOException {
        return stream(name.equals(table) ? change.apply(text(name)) : text(name));
    }

    private static InputStream stream(String text) {
        return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
    }

    private static String text(String name) throws IOException {
        try (InputStream in = KnowledgeReader.class.getResourceAsStream("/heapwright/tables/" + name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
