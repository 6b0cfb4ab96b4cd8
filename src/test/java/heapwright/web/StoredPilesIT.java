package heapwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import heapwright.load.PileFiles;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is kept in memory of the piles of the folder is never what they were before. */
@DisplayName("The piles of the folder")
class StoredPilesIT {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    private final HttpClient client =
            HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();

    @TempDir
    private Path folder;

    private HttpResponse<String> get(TestServer server, String path) throws IOException, InterruptedException {
        return client.send(HttpRequest.newBuilder(URI.create(server.at(path))).build(), BodyHandlers.ofString());
    }

    private static void note(ObjectNode document, String sign, int core) {
        ObjectNode entry = document.withArray("log").addObject().put("date", "2026-11-21");
        entry.putArray("seen").add(sign);
        entry.putObject("measured").putObject("core").put("value", core).put("unit", "C");
    }

    @Test
    @DisplayName("get new advice after a save, in either units, and after a change by another program")
    void fresh() throws Exception {
        PileFiles.plant(folder, 1, 10);
        try (TestServer server = TestServer.over(folder)) {
            String advice = get(server, "/api/piles/heap-1/advice").body();
            assertEquals(advice, get(server, "/api/piles/heap-1/advice").body());
            assertNotEquals(
                    advice, get(server, "/api/piles/heap-1/advice?units=us").body());
            assertFalse(get(server, "/piles/heap-1").body().contains("63 °C"));

            HttpResponse<String> stored = get(server, "/api/piles/heap-1");
            ObjectNode document = (ObjectNode) MAPPER.readTree(stored.body());
            note(document, "smells-sour", 63);
            HttpResponse<String> saved = client.send(
                    HttpRequest.newBuilder(URI.create(server.at("/api/piles/heap-1")))
                            .header("Content-Type", "application/json")
                            .header(
                                    "If-Match",
                                    stored.headers().firstValue("ETag").orElseThrow())
                            .PUT(BodyPublishers.ofString(document.toString()))
                            .build(),
                    BodyHandlers.ofString());
            assertEquals(200, saved.statusCode(), saved.body());
            String after = get(server, "/api/piles/heap-1/advice").body();
            assertNotEquals(advice, after);
            assertTrue(get(server, "/piles/heap-1").body().contains("63 °C"));
            assertTrue(get(server, "/piles").body().contains("11 days noted"));

            note(document, "steam", 64);
            Files.write(folder.resolve("heap-1.json"), MAPPER.writeValueAsBytes(document));
            assertNotEquals(after, get(server, "/api/piles/heap-1/advice").body());
            assertTrue(get(server, "/piles/heap-1").body().contains("64 °C"));
        }
    }

    @Test
    @DisplayName("say on their page which figures to look at again")
    void figuresThatCannotBothBeSo() throws Exception {
        String document = """
                {"heapwright": "pile/1", "name": "Heap", "built": "2026-11-01", "asOf": "2026-11-21",
                 "container": {"volume": {"value": %d, "unit": "m3"}},
                 "recipe": [{"material": "leaves-mixed", "amount": 160, "unit": "kg"}]}
                """;
        Files.writeString(folder.resolve("far-too-large.json"), document.formatted(27));
        Files.writeString(folder.resolve("as-large-as-told.json"), document.formatted(1));
        try (TestServer server = TestServer.over(folder)) {
            String doubted = get(server, "/piles/far-too-large").body();
            assertTrue(doubted.contains("Please check the size: you gave 27"), doubted);
            assertFalse(get(server, "/piles/as-large-as-told").body().contains("Please check"));
        }
    }

    @Test
    @DisplayName("are listed a hundred at a time to a person, and all at once to a program")
    void pages() throws Exception {
        PileFiles.plant(folder, 250, 1);
        try (TestServer server = TestServer.over(folder)) {
            for (String list : new String[] {"/piles", "/why"}) {
                String first = get(server, list).body();
                assertTrue(first.contains("Piles 1 to 100 of 250."), list);
                assertTrue(first.contains("href=\"" + list + "?from=100\""), list);
                assertFalse(first.contains("rel=\"prev\""), list);
                String last = get(server, list + "?from=200").body();
                assertTrue(last.contains("Piles 201 to 250 of 250."), list);
                assertFalse(last.contains("rel=\"next\""), list);
                assertEquals(
                        last.replaceAll("_seal.*", ""),
                        get(server, list + "?from=999999").body().replaceAll("_seal.*", ""));
            }
            assertEquals(200, get(server, "/piles?from=-1").statusCode());
            assertEquals(
                    250,
                    MAPPER.readTree(get(server, "/api/piles").body())
                            .path("piles")
                            .size());
        }
    }
}
