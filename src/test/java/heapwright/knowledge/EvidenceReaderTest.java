package heapwright.knowledge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The rows of evidence")
class EvidenceReaderTest {

    private static final Path FOLDER = Path.of("rules", "evidence");

    /** Invented: no row of the tables. */
    private static final String ROW = "{\"id\": \"WEIGH-4999\", \"speaks\": \"for\", \"strength\": \"fair\","
            + " \"witness\": \"smell\", \"when\": {\"seen\": [\"smells-earthy\"]},"
            + " \"because\": \"So it is.\", \"source\": \"JUDGEMENT\", \"known\": \"judgement\"}";

    @Test
    @DisplayName("stand in one file for each cause, and in no other")
    void files() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            assertEquals(
                    Arrays.stream(Cause.values())
                            .map(c -> c.id() + ".json")
                            .sorted()
                            .toList(),
                    files.map(f -> f.getFileName().toString()).sorted().toList());
        }
    }

    @Test
    @DisplayName("are read as a general reader of JSON reads them, in the same order")
    void sameAsJackson() throws IOException {
        List<Evidence> rows = KnowledgeReader.packed().evidence();
        int next = 0;
        for (Cause cause : Cause.values()) {
            JsonNode file = new ObjectMapper()
                    .readTree(FOLDER.resolve(cause.id() + ".json").toFile());
            for (JsonNode told : file.get(cause.id())) {
                Evidence row = rows.get(next++);
                assertEquals(told.get("id").asText(), row.id());
                assertEquals(cause, row.cause(), row.id());
                assertEquals(told.get("speaks").asText(), row.speaks().id(), row.id());
                assertEquals(told.get("strength").asText(), row.strength().id(), row.id());
                assertEquals(told.get("witness").asText(), row.witness().id(), row.id());
                assertEquals(told.get("because").asText(), row.because(), row.id());
                assertEquals(told.get("source").asText(), row.source(), row.id());
                assertEquals(told.get("known").asText(), row.known().id(), row.id());
                assertEquals(told.get("when"), written(row.when()), row.id());
            }
        }
        assertEquals(rows.size(), next);
    }

    private static JsonNode written(When when) {
        var node = new ObjectMapper().createObjectNode();
        if (when instanceof When.Seen seen) {
            seen.anyOf().forEach(s -> node.withArray("seen").add(s.id()));
        } else if (when instanceof When.Denied denied) {
            denied.anyOf().forEach(s -> node.withArray("denied").add(s.id()));
        } else if (when instanceof When.WentIn went) {
            went.anyOf().forEach(t -> node.withArray("wentIn").add(t.id()));
        } else if (when instanceof When.Holds holds) {
            node.put("holds", holds.condition().id());
        } else if (when instanceof When.HoldsNot not) {
            node.put("holdsNot", not.condition().id());
        } else if (when instanceof When.ModelSays says) {
            node.put("model", says.finding().id());
        } else if (when instanceof When.KeptOut kept) {
            node.put("keepOut", kept.kind().id());
        } else if (when instanceof When.Helped helped) {
            helped.anyOf().forEach(r -> node.withArray("helped").add(r.id()));
        } else if (when instanceof When.Failed failed) {
            failed.anyOf().forEach(r -> node.withArray("failed").add(r.id()));
        } else if (when instanceof When.Placed placed) {
            node.put("reading", placed.reading().id());
            node.put("side", placed.side().id());
            node.put("limit", placed.limit().id());
            if (placed.measured()) {
                node.put("measured", true);
            }
        }
        return node;
    }

    @Test
    @DisplayName("may wait for any kind of thing, one at a time")
    void kinds() {
        for (String when : List.of(
                "{\"seen\": [\"soggy\", \"slimy\"]}",
                "{\"denied\": [\"soggy\"]}",
                "{\"holds\": \"wet\"}",
                "{\"holdsNot\": \"wet\"}",
                "{\"reading\": \"ph\", \"side\": \"likely-below\", \"limit\": \"ph-acid\"}",
                "{\"reading\": \"ph\", \"side\": \"likely-below\", \"limit\": \"ph-acid\", \"measured\": true}",
                "{\"model\": \"spent\"}",
                "{\"wentIn\": [\"grass\"]}",
                "{\"helped\": [\"turn-fully\", \"insulate\"]}",
                "{\"failed\": [\"turn-fully\"]}",
                "{\"keepOut\": \"" + KeepOutClass.values()[0].id() + "\"}")) {
            Evidence row = read(ROW.replace("{\"seen\": [\"smells-earthy\"]}", when));
            assertEquals(when.replace(" ", ""), written(row.when()).toString());
        }
    }

    @ParameterizedTest
    @DisplayName("are refused with file, line, field, what was found and what is allowed")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            "speaks": "for"              | "speaks": "maybe"              | /0/speaks: found "maybe". Allowed: one of against, for.
            "strength": "fair"           | "strength": 5                  | /0/strength: found 5.0. Allowed: text in double quotes.
            "strength": "fair"           | "strength": "huge"             | /0/strength: found "huge". Allowed: one of decisive, fair, slight, strong.
            "witness": "smell"           | "witness": "nose"              | /0/witness: found "nose". Allowed: one of acidity,
            "known": "judgement"         | "knwon": "judgement"           | /0/known: found nothing. Allowed: text in double quotes.
            "known": "judgement"         | "known": "judgement", "x": 1   | /0/x: found a field of this name. Allowed: only [because,
            {"seen": ["smells-earthy"]}  | {"seen": ["smells-earthly"]}   | /0/when/seen: found "smells-earthly". Allowed: one of
            {"seen": ["smells-earthy"]}  | {"seen": "smells-earthy"}      | /0/when/seen: found "smells-earthy". Allowed: a list. Example: [ … ].
            {"seen": ["smells-earthy"]}  | {"seen": []}                   | /0/when/seen: found an empty list. Allowed: one id or more.
            {"seen": ["smells-earthy"]}  | {}                             | /0/when/: found none of the kinds. Allowed: exactly one of seen, denied,
            {"seen": ["smells-earthy"]}  | {"seen": ["soggy"], "holds": "wet"} | /0/when/: found seen and holds. Allowed: exactly one of seen, denied,
            {"seen": ["smells-earthy"]}  | {"smelt": ["soggy"]}           | /0/when/: found none of the kinds. Allowed: exactly one of seen, denied,
            {"seen": ["smells-earthy"]}  | {"seen": ["soggy"], "measured": true} | /0/when/measured: found a field of this name. Allowed: only [
            {"seen": ["smells-earthy"]}  | {"reading": "ph", "side": "below", "limit": "ph-acid"} | /0/when/side: found "below". Allowed: one of likely-above,
            {"seen": ["smells-earthy"]}  | {"reading": "ph", "side": "likely-below"} | /0/when/limit: found nothing. Allowed: text in double quotes.
            """)
    void faults(String there, String instead, String message) {
        assertTrue(ROW.contains(there), there);
        List<String> faults = assertThrows(KnowledgeFault.class, () -> read(ROW.replace(there, instead)))
                .faults();
        // A misspelt field is both missing and one too many.
        assertEquals(instead.contains("knwon") ? 2 : 1, faults.size(), faults.toString());
        assertTrue(
                faults.get(0).startsWith("evidence/matted.json, line 2, /matted")
                        && faults.get(0).contains(message),
                faults.get(0));
    }

    @ParameterizedTest
    @DisplayName("are refused where they do not hang together with the rest")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            WEIGH-4999                   | WEIGH-1                     | an id is WEIGH- and a number
            WEIGH-4999                   | WEIGH-4999-too-wet          | an id is WEIGH- and a number
            WEIGH-4999                   | WEIGH-1202                  | the id stands twice
            So it is.                    | So it is                    | must be one sentence
            So it is.                    | So it is. And more.         | must be one sentence
            "JUDGEMENT"                  | "NOBODY"                    | found the source "NOBODY". Allowed: a key of sources.json.
            {"seen": ["smells-earthy"]}  | {"holdsNot": "slimy-after-fat"} | is a name for several parts
            """)
    void misfits(String there, String instead, String message) {
        List<String> faults = assertThrows(KnowledgeFault.class, () -> read(ROW.replace(there, instead)))
                .faults();
        assertEquals(1, faults.size(), faults.toString());
        assertTrue(
                faults.get(0).startsWith("evidence/matted.json ")
                        && faults.get(0).contains(message),
                faults.get(0));
    }

    @Test
    @DisplayName("are refused where a second row speaks on the same")
    void same() {
        List<String> faults = assertThrows(KnowledgeFault.class, () -> read(ROW + "," + ROW.replace("4999", "4998")))
                .faults();
        assertEquals(List.of("evidence/matted.json WEIGH-4998: WEIGH-4999 already speaks on the same"), faults);
    }

    @Test
    @DisplayName("are missed where a file is missing")
    void missing() {
        KnowledgeFault fault = assertThrows(
                KnowledgeFault.class,
                () -> new KnowledgeReader(name -> name.equals("evidence/matted.json") ? null : packed(name)).read());
        assertEquals(List.of("evidence/matted.json: the table is missing"), fault.faults());
    }

    /** The one row of a table of evidence on matted stuff. */
    private static Evidence read(String rows) {
        String table = "{\"matted\": [\n" + rows + "]}";
        return new KnowledgeReader(name -> name.equals("evidence/matted.json")
                        ? new ByteArrayInputStream(table.getBytes(StandardCharsets.UTF_8))
                        : packed(name))
                .read().evidence().stream()
                        .filter(row -> row.cause() == Cause.MATTED)
                        .findFirst()
                        .orElseThrow();
    }

    private static InputStream packed(String name) {
        return KnowledgeReader.class.getResourceAsStream("/heapwright/tables/" + name);
    }
}
