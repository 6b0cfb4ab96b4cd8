package heapwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** The interface for programs, held to its own description. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ApiIT {

    private static final String PILE = """
            {"heapwright": "pile/1", "name": "Heap by the wall", "asOf": "2026-11-24", "built": "2026-11-01",
             "recipe": [{"material": "leaves", "amount": 10, "unit": "bucket"},
                        {"material": "grass-clippings", "amount": 6, "unit": "bucket"}],
             "log": [{"date": "2026-11-24", "seen": ["smells-sour", "soggy"], "notSeen": ["smells-ammonia"]}]}
            """;

    private Path folder;

    private final ObjectMapper mapper = new ObjectMapper();
    private final HttpClient client = HttpClient.newHttpClient();
    private TestServer server;
    private JsonNode described;

    @BeforeAll
    void start(@TempDir Path given) throws IOException, InterruptedException {
        folder = given;
        server = TestServer.over(folder);
        described = mapper.readTree(send("GET", "/api/openapi.json", null).body());
    }

    @AfterAll
    void stop() {
        server.close();
    }

    private HttpResponse<String> send(String method, String path, String body, String... headers)
            throws IOException, InterruptedException {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(server.at(path)))
                .method(method, body == null ? BodyPublishers.noBody() : BodyPublishers.ofString(body));
        if (body != null) {
            request.header("Content-Type", "application/json");
        }
        if (headers.length > 0) {
            request.headers(headers);
        }
        return client.send(request.build(), BodyHandlers.ofString());
    }

    /** What an answer has that its description does not allow. */
    private List<Error> faults(String path, String method, HttpResponse<String> answer) throws IOException {
        JsonNode responses = described.path("paths").path(path).path(method).path("responses");
        JsonNode response = responses.path(Integer.toString(answer.statusCode()));
        assertFalse(response.isMissingNode(), path + " does not describe " + answer.statusCode());
        if (response.has("$ref")) {
            response = described.at(response.get("$ref").asText().substring(1));
        }
        String type = answer.headers().firstValue("Content-Type").orElseThrow().split(";")[0];
        JsonNode schema = response.path("content").path(type).path("schema");
        assertFalse(schema.isMissingNode(), path + " does not describe " + type);
        com.fasterxml.jackson.databind.node.ObjectNode whole = mapper.createObjectNode();
        whole.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        whole.set("components", described.get("components"));
        whole.set("allOf", mapper.createArrayNode().add(schema));
        Schema checked = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(mapper.writeValueAsString(whole), InputFormat.JSON);
        return checked.validate(answer.body(), InputFormat.JSON);
    }

    private void fits(String path, String method, HttpResponse<String> answer) throws IOException {
        assertEquals(List.of(), faults(path, method, answer), answer.body());
    }

    @Test
    void theDescriptionIsOpenApi31AndNamesEveryAddress() {
        assertEquals("3.1.0", described.path("openapi").asText());
        Set<String> operations = new TreeSet<>();
        described
                .path("paths")
                .properties()
                .forEach(path -> path.getValue().properties().forEach(operation -> {
                    if (!operation.getKey().equals("parameters")) {
                        assertTrue(
                                operations.add(
                                        operation.getValue().path("operationId").asText()),
                                path.getKey());
                        assertTrue(operation.getValue().has("responses"), path.getKey());
                    }
                }));
        Set<String> served = new TreeSet<>();
        server.routes().stream().filter(r -> r.startsWith("/api/")).forEach(served::add);
        Set<String> named = new TreeSet<>();
        described.path("paths").fieldNames().forEachRemaining(named::add);
        assertEquals(served, named);
    }

    @Test
    void everyReferenceInTheDescriptionLeadsSomewhere() {
        for (JsonNode reference : described.findValues("$ref")) {
            assertFalse(described.at(reference.asText().substring(1)).isMissingNode(), reference.asText());
        }
    }

    @Test
    void tablesFitTheirDescription() throws IOException, InterruptedException {
        for (String table : List.of("signs", "causes", "remedies", "materials", "sources")) {
            HttpResponse<String> answer = send("GET", "/api/" + table, null);
            fits("/api/" + table, "get", answer);
            assertTrue(mapper.readTree(answer.body()).path(table).size() > 10, table);
        }
        JsonNode found =
                mapper.readTree(send("GET", "/api/materials?q=maple", null).body());
        assertTrue(
                found.path("materials").size() < 20 && !found.path("materials").isEmpty());
    }

    @Test
    void aCheckupOfAPileGivesTheAdviceOfTheCommandLine() throws IOException, InterruptedException {
        HttpResponse<String> answer = send("POST", "/api/checkup?trace=true", PILE);
        fits("/api/checkup", "post", answer);
        JsonNode advice = mapper.readTree(answer.body());
        assertTrue(advice.path("findings").size() > 0 && advice.path("trace").size() > 0);
        assertEquals(400, send("POST", "/api/checkup?units=cubits", PILE).statusCode());
    }

    @Test
    void anAuditFitsItsDescription() throws IOException, InterruptedException {
        fits("/api/audit", "post", send("POST", "/api/audit?ownRatio=41", PILE));
        HttpResponse<String> none = send("POST", "/api/audit", "{\"heapwright\": \"pile/1\"}");
        assertEquals(422, none.statusCode());
        fits("/api/audit", "post", none);
    }

    @Test
    void whatIsWrongIsToldWithItsPlace() throws IOException, InterruptedException {
        HttpResponse<String> answer = send("POST", "/api/checkup", PILE.replace("smells-sour", "smels-sour"));
        assertEquals(422, answer.statusCode());
        fits("/api/checkup", "post", answer);
        JsonNode error = mapper.readTree(answer.body()).path("errors").path(0);
        assertEquals("/log/0/seen/0", error.path("pointer").asText());
        assertEquals("smells-sour", error.path("closest").asText());
        HttpRequest plain = HttpRequest.newBuilder(URI.create(server.at("/api/checkup")))
                .header("Content-Type", "text/plain")
                .POST(BodyPublishers.ofString(PILE))
                .build();
        HttpResponse<String> untold = client.send(plain, BodyHandlers.ofString());
        assertEquals(415, untold.statusCode());
        fits("/api/checkup", "post", untold);
    }

    @Test
    void aPileIsMadeChangedAndFetchedBack() throws IOException, InterruptedException {
        HttpResponse<String> made = send("POST", "/api/piles", PILE.replace("Heap by the wall", "Heap of the api"));
        assertEquals(201, made.statusCode());
        String address = made.headers().firstValue("Location").orElseThrow();
        String first = made.headers().firstValue("ETag").orElseThrow();
        HttpResponse<String> opened = send("GET", address, null);
        fits("/api/piles/{id}", "get", opened);
        assertEquals(made.body(), opened.body());
        assertEquals(428, send("PUT", address, made.body()).statusCode());
        String changed = made.body().replace("Heap of the api", "Heap behind the api");
        HttpResponse<String> saved = send("PUT", address, changed, "If-Match", first);
        assertEquals(200, saved.statusCode(), saved.body());
        HttpResponse<String> late =
                send("PUT", address, made.body().replace("Heap of", "Late heap of"), "If-Match", first);
        assertEquals(412, late.statusCode());
        fits("/api/piles/{id}", "put", late);
        String kept = late.headers().firstValue("Location").orElseThrow();
        assertTrue(send("GET", kept, null).body().contains("Late heap"));
        assertTrue(send("GET", address, null).body().contains("Heap behind"));
        fits("/api/piles/{id}/advice", "get", send("GET", address + "/advice", null));
        HttpResponse<String> gone = send("DELETE", address, null);
        fits("/api/piles/{id}", "delete", gone);
        assertEquals(404, send("GET", address, null).statusCode());
        fits("/api/removed", "get", send("GET", "/api/removed", null));
        String removed = mapper.readTree(gone.body()).path("id").asText();
        fits("/api/removed/{id}/fetch-back", "post", send("POST", "/api/removed/" + removed + "/fetch-back", null));
        assertEquals(200, send("GET", address, null).statusCode());
    }

    @Test
    void aBrokenFileIsListedWithItsProblemAndLeftAlone() throws IOException, InterruptedException {
        Files.writeString(folder.resolve("broken.json"), "{\"heapwright\": ");
        HttpResponse<String> list = send("GET", "/api/piles", null);
        fits("/api/piles", "get", list);
        assertTrue(list.body().contains("problems"));
        HttpResponse<String> opened = send("GET", "/api/piles/broken", null);
        assertEquals(409, opened.statusCode());
        fits("/api/piles/{id}", "get", opened);
        assertEquals(
                409, send("PUT", "/api/piles/broken", PILE, "If-Match", "\"x\"").statusCode());
        assertEquals("{\"heapwright\": ", Files.readString(folder.resolve("broken.json")));
    }
}
