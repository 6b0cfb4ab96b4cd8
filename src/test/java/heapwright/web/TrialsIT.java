package heapwright.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.networknt.schema.InputFormat;
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
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.api.io.TempDir;

/** Steps tried before they are done, a checkup of a pile of the folder, notes with many signs, and the winter of a recipe. */
@NeedsChromium
@TestInstance(Lifecycle.PER_CLASS)
class TrialsIT {

    private static final String WHY = "/piles/heap-by-the-birches/why";
    private static final List<String> WCAG = List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa");

    private final ObjectMapper mapper = new ObjectMapper();
    private final HttpClient client = HttpClient.newHttpClient();
    private Path folder;
    private String example;
    private TestServer server;
    private Chrome chrome;

    @BeforeAll
    void start(@TempDir Path given) throws IOException {
        folder = given;
        TestServer.plantExample(folder);
        example = Files.readString(folder.resolve("heap-by-the-birches.json"));
        server = TestServer.over(folder);
        chrome = new Chrome();
    }

    @AfterAll
    void stop() {
        chrome.close();
        server.close();
    }

    private void pile(String id, String log) throws IOException {
        Files.writeString(
                folder.resolve(id + ".json"),
                "{\"heapwright\": \"pile/1\", \"name\": \"" + id
                        + "\", \"built\": \"2026-11-01\", \"asOf\": \"2026-11-20\","
                        + " \"recipe\": [{\"material\": \"leaves-mixed\", \"amount\": 20, \"unit\": \"bucket\"},"
                        + " {\"material\": \"grass clippings\", \"amount\": 10, \"unit\": \"bucket\"}], \"log\": ["
                        + log
                        + "]}");
    }

    @Test
    void aTickShowsItsCourseWithoutScripts() {
        try (BrowserContext visitor = chrome.phone(false)) {
            Page page = visitor.newPage();
            page.navigate(server.at(WHY));
            assertThat(page.locator("#tried .line-with")).hasCount(0);
            page.locator("input[name=step][value=loosen-sides-and-top]").check();
            page.locator("input[name=step][value=mix-in-dry-carbon]").check();
            Chrome.button(page, "Show what it would do").click();
            assertTrue(page.url().contains("step=loosen-sides-and-top")
                    && page.url().contains("step=mix-in-dry-carbon"));
            assertTrue(
                    page.locator("input[name=step][value=loosen-sides-and-top]").isChecked());
            assertThat(page.locator("#tried polyline.line-with")).hasCount(1);
            assertThat(page.locator("#tried polyline.line-without")).hasCount(1);
            assertThat(page.locator("#try-answer")).containsText("40 °C");
            assertThat(page.locator("#tried tbody tr")).hasCount(18);
        }
    }

    @Test
    void theChartFollowsEveryTickAndTheAddressKeepsIt() {
        try (BrowserContext visitor = chrome.phone(true)) {
            Page page = visitor.newPage();
            page.navigate(server.at(WHY));
            String alone = page.locator("#try-desc").textContent();
            page.locator("input[name=step][value=loosen-sides-and-top]").check();
            page.waitForSelector("#tried polyline.line-with", new Page.WaitForSelectorOptions());
            assertNotEquals(alone, page.locator("#try-desc").textContent());
            String one = page.locator("#tried polyline.line-with").first().getAttribute("points");
            page.locator("input[name=step][value=mix-in-dry-carbon]").check();
            page.waitForCondition(() -> !one.equals(
                    page.locator("#tried polyline.line-with").first().getAttribute("points")));
            assertEquals(
                    page.locator("#try-answer").textContent(),
                    page.locator("#said").textContent());
            page.reload();
            assertTrue(
                    page.locator("input[name=step][value=loosen-sides-and-top]").isChecked());
            page.locator("input[name=step][value=loosen-sides-and-top]").uncheck();
            page.locator("input[name=step][value=mix-in-dry-carbon]").uncheck();
            page.waitForCondition(
                    () -> page.locator("#tried polyline.line-with").count() == 0);
            assertFalse(page.url().contains("step="));
        }
    }

    /** What tells the two courses apart must not be colour: the lines differ in their dashes, the bands in their patterns. */
    @Test
    void theCoursesCanBeToldApartInGrey() {
        try (BrowserContext visitor = chrome.phone(false)) {
            Page page = visitor.newPage();
            page.navigate(server.at(WHY + "?step=loosen-sides-and-top"));
            String dash = "e => getComputedStyle(e).strokeDasharray";
            String with = (String) page.locator("#tried polyline.line-with").evaluate(dash);
            String without =
                    (String) page.locator("#tried polyline.line-without").evaluate(dash);
            String outdoor = (String) page.locator("#tried polyline.line-out").evaluate(dash);
            assertEquals(3, java.util.Set.of(with, without, outdoor).size());
            String fill = "e => getComputedStyle(e).fill";
            assertNotEquals(
                    page.locator("#tried polygon.band-with").evaluate(fill),
                    page.locator("#tried polygon.band-without").evaluate(fill));
            assertTrue(page.locator("#try-title").textContent().length() > 10);
            assertTrue(page.locator("#try-desc").textContent().contains("°C"));
        }
    }

    @Test
    void newScreensHaveNoBarrierAndDoNotScrollSideways() {
        List<String> found = new ArrayList<>();
        for (ColorScheme scheme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
            try (BrowserContext visitor = chrome.visitor(Chrome.PHONE, scheme, true)) {
                Page page = visitor.newPage();
                for (String path : List.of(
                        WHY + "?step=loosen-sides-and-top&step=mix-in-dry-carbon",
                        "/piles/heap-by-the-birches",
                        "/piles/heap-by-the-birches/checkup?y=soggy",
                        "/piles/heap-by-the-birches/checkup/result?y=soggy",
                        "/build?r=leaves~10~bucket~&r=grass%20clippings~6~bucket~&latitude=60")) {
                    page.navigate(server.at(path));
                    page.evaluate("document.querySelectorAll('details').forEach(d => d.open = true)");
                    for (Rule rule :
                            new AxeBuilder(page).withTags(WCAG).analyze().getViolations()) {
                        found.add(path + ": " + rule.getId() + " "
                                + rule.getNodes().get(0).getHtml());
                    }
                    int wide = (Integer) page.evaluate("document.documentElement.scrollWidth");
                    if (wide > Chrome.PHONE) {
                        found.add(path + " " + wide);
                    }
                }
            }
        }
        assertEquals(List.of(), found);
    }

    private HttpResponse<String> send(String method, String path, String body)
            throws IOException, InterruptedException {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(server.at(path)))
                .method(method, body == null ? BodyPublishers.noBody() : BodyPublishers.ofString(body))
                .header("Content-Type", "application/json");
        return client.send(request.build(), BodyHandlers.ofString());
    }

    @Test
    void theInterfaceTriesTheSameSteps() throws IOException, InterruptedException {
        HttpResponse<String> answer =
                send("POST", "/api/what-if?step=loosen-sides-and-top&step=mix-in-dry-carbon", example);
        assertEquals(200, answer.statusCode(), answer.body());
        JsonNode described =
                mapper.readTree(send("GET", "/api/openapi.json", null).body());
        ObjectNode whole = mapper.createObjectNode();
        whole.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        whole.set("components", described.get("components"));
        whole.set(
                "allOf",
                mapper.createArrayNode()
                        .add(described
                                .path("paths")
                                .path("/api/what-if")
                                .at("/post/responses/200/content/application~1json/schema")));
        assertEquals(
                List.of(),
                SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                        .getSchema(mapper.writeValueAsString(whole), InputFormat.JSON)
                        .validate(answer.body(), InputFormat.JSON));
        JsonNode tried = mapper.readTree(answer.body());
        assertEquals(2, tried.path("together").size());
        assertTrue(tried.path("days").path(5).has("withC"));
        HttpResponse<String> stored =
                send("GET", "/api/piles/heap-by-the-birches/what-if?step=loosen-sides-and-top", null);
        assertEquals(200, stored.statusCode(), stored.body());
        assertEquals(
                "loosen-sides-and-top",
                mapper.readTree(stored.body()).path("together").path(0).asText());
        assertEquals(400, send("POST", "/api/what-if?step=dance", example).statusCode());
        HttpResponse<String> other = send("POST", "/api/what-if?step=catch-leachate", example);
        assertEquals(422, other.statusCode());
        assertTrue(other.body().contains("loosen-sides-and-top"), other.body());
        String bare = "{\"heapwright\":\"pile/1\",\"asOf\":\"2026-11-20\"}";
        assertEquals(422, send("POST", "/api/what-if", bare).statusCode());
    }

    @Test
    void aCheckupOfAPileKnowsItAndIsNotedInIt() throws IOException {
        for (boolean scripts : List.of(true, false)) {
            String id = scripts ? "known-with" : "known-without";
            pile(id, "{\"date\": \"2026-11-10\", \"measured\": {\"core\": {\"value\": 44, \"unit\": \"C\"}}}");
            try (BrowserContext visitor = chrome.phone(scripts)) {
                Page page = visitor.newPage();
                page.navigate(server.at("/piles/" + id));
                page.locator("a", new Page.LocatorOptions().setHasText("Check it now"))
                        .click();
                assertThat(page.locator("h1")).containsText(id);
                assertThat(page.locator("#f-built")).hasCount(0);
                page.locator("summary", new Page.LocatorOptions().setHasText("What you smell"))
                        .click();
                page.locator("input[name='sign.smells-sour'][value=yes]").check();
                page.locator("summary", new Page.LocatorOptions().setHasText("Temperatures"))
                        .click();
                page.locator("#f-core").fill("9");
                Chrome.button(page, "Show the whole result").click();
                page.waitForURL("**/checkup/result?**");
                assertThat(page.locator(".kicker").first()).containsText(id);
                assertTrue(page.content().contains("C:N"), "its recipe counts");
                assertThat(page.locator("#assumed")).hasCount(0);
                Chrome.button(page, "Note these signs in my pile").click();
                assertThat(page.locator("main")).containsText("Noted and kept");
                assertThat(page.locator("table")).containsText("sour smell");
                assertThat(page.locator("table")).containsText("9 °C");
                assertThat(page.locator("table")).containsText("44 °C");
            }
        }
    }

    @Test
    void signsNotedInAPileThatChangedMeanwhileGoInAsWell() throws IOException {
        pile("twice", "");
        try (BrowserContext visitor = chrome.phone(false)) {
            Page result = visitor.newPage();
            result.navigate(server.at("/piles/twice/checkup/result?y=soggy&on=2026-11-24"));
            Page other = visitor.newPage();
            other.navigate(server.at("/piles/twice"));
            other.locator("#f-core").fill("31");
            Chrome.button(other, "Keep the note").click();
            assertThat(other.locator("main")).containsText("Noted and kept");
            Chrome.button(result, "Note these signs in my pile").click();
            assertThat(result.locator("main")).containsText("Noted and kept");
            assertThat(result.locator("table")).containsText("31 °C");
            assertThat(result.locator("table")).containsText("soggy");
        }
    }

    @Test
    void aNoteTakesManySigns() throws IOException {
        for (boolean scripts : List.of(true, false)) {
            String id = "many-" + scripts;
            pile(id, "");
            try (BrowserContext visitor = chrome.phone(scripts)) {
                Page page = visitor.newPage();
                page.navigate(server.at("/piles/" + id));
                page.locator("input[name=seen][value=smells-sour]").check();
                page.locator("input[name=seen][value=smells-ammonia]").check();
                page.locator("#f-seen summary", new Page.LocatorOptions().setHasText("What you feel"))
                        .click();
                page.locator("input[name=seen][value=soggy]").check();
                page.locator("#f-core").fill("12");
                page.locator("input[name=done][value=turned-fully]").check();
                page.locator("#f-material").fill("grass clippings");
                page.locator("#f-amount").fill("2");
                Chrome.button(page, "Keep the note").click();
                assertThat(page.locator("main")).containsText("Noted and kept");
                Locator row = page.locator("tbody tr").first();
                for (String told : List.of("sour smell", "ammonia smell", "12 °C", "turned fully", "soggy")) {
                    assertThat(row).containsText(told);
                }
            }
        }
    }

    @Test
    void aWrongNoteIsToldAtItsFieldAndKeepsEveryTick() throws IOException {
        pile("wrong", "");
        for (boolean scripts : List.of(true, false)) {
            try (BrowserContext visitor = chrome.phone(scripts)) {
                Page page = visitor.newPage();
                page.navigate(server.at("/piles/wrong"));
                page.locator("input[name=seen][value=smells-sour]").check();
                page.locator("#f-seen summary", new Page.LocatorOptions().setHasText("What you feel"))
                        .click();
                page.locator("input[name=seen][value=soggy]").check();
                page.locator("#f-core").fill("warm");
                page.locator("#f-material").fill("clippings");
                page.locator("#f-amount").fill("2");
                Chrome.button(page, "Keep the note").click();
                assertThat(page.locator("#e-core")).containsText("warm");
                assertThat(page.locator("#e-material")).containsText("may mean several things");
                assertThat(page.locator("#e-material")).containsText("Pick one");
                assertEquals("warm", page.locator("#f-core").inputValue());
                assertEquals("clippings", page.locator("#f-material").inputValue());
                assertTrue(page.locator("input[name=seen][value=smells-sour]").isChecked());
                assertTrue(page.locator("input[name=seen][value=soggy]").isChecked());
            }
        }
    }

    @Test
    void aRecipeShowsItsWinterWithAndWithoutScripts() {
        for (boolean scripts : List.of(true, false)) {
            try (BrowserContext visitor = chrome.phone(scripts)) {
                Page page = visitor.newPage();
                page.navigate(server.at("/build"));
                assertThat(page.locator("#h-outlook")).hasCount(0);
                page.locator("[name='r0.material']").fill("leaves");
                page.locator("[name='r0.amount']").fill("60");
                page.locator("[name='r1.material']").fill("Grass Clippings");
                page.locator("[name='r1.amount']").fill("40");
                if (scripts) {
                    page.locator("[name='r2.material']").focus();
                } else {
                    page.locator("button.main[name=go]")
                            .locator("visible=true")
                            .first()
                            .click();
                }
                page.waitForSelector("#h-outlook");
                for (String told : List.of(
                        "Chance that it freezes through",
                        "Days with the core above 40 °C",
                        "Days with the core above 55 °C",
                        "Weight",
                        "Volume compared with today",
                        "eady")) {
                    assertThat(page.locator("#outlook")).containsText(told);
                }
                assertTrue(page.locator("#outlook tbody tr").count() >= 4);
                assertThat(page.locator("#outlook")).containsText("no place is given");
            }
        }
        try (BrowserContext visitor = chrome.phone(false)) {
            Page page = visitor.newPage();
            page.navigate(server.at("/build?r=leaves~60~bucket~&r=grass%20clippings~40~bucket~&latitude=61"));
            assertThat(page.locator("#outlook")).containsText("your latitude");
            page.navigate(server.at("/build?r=leaves~60~bucket~&latitude=161"));
            assertThat(page.locator("#e-latitude")).containsText("161");
        }
    }
}
