package heapwright.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A pile is told right after it was made, kept from a recipe, and opened from a file. */
@NeedsChromium
class EditJobIT extends Visits {

    private String file(String id) throws IOException {
        return Files.readString(folder.resolve(id + ".json"));
    }

    private List<String> files(String begin) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(f -> f.getFileName().toString())
                    .filter(f -> f.startsWith(begin))
                    .toList();
        }
    }

    @Test
    void aPileIsToldRightAndWhatNobodyTouchedStays() throws IOException {
        Files.writeString(folder.resolve("told.json"), """
                {"heapwright": "pile/1", "name": "Heap", "built": "2026-11-01", "asOf": "2026-11-20",
                 "container": {"length": {"value": 3.3333, "unit": "ft"}},
                 "recipe": [{"material": "leaves-mixed", "amount": 12, "unit": "bucket", "chopped": true}],
                 "log": [{"date": "2026-11-10", "measured": {"core": {"value": 44, "unit": "C"}}}]}
                """);
        try (BrowserContext visitor = chrome.phone(false)) {
            Page page = visitor.newPage();
            page.navigate(server.at("/piles/told"));
            page.locator("a[href$='/edit']").click();
            page.locator("#f-built").fill("when the geese left");
            page.locator("#f-width").fill("1/2 wide");
            Chrome.button(page, "Keep this").last().click();
            assertThat(page.locator("#e-built")).containsText("when the geese left");
            assertThat(page.locator("#e-width")).containsText("1/2 wide");
            page.locator("#f-built").fill("2026-11-15");
            page.locator("#f-width").fill("95½");
            Chrome.button(page, "Keep this").last().click();
            assertThat(page.locator("#e-built")).containsText("from before that day");
            page.locator("#f-built").fill("10 weeks");
            page.locator("[name='r0.amount']").fill("0,5");
            page.locator("[name='r1.material']").fill("Straw");
            page.locator("[name='r1.amount']").fill("1/2");
            page.locator("#f-kind").selectOption("slatted-bin");
            page.locator("input[value=rats-about]").check();
            page.locator("#f-minutes").fill("half an hour");
            page.locator("input[value=fork]").check();
            Chrome.button(page, "Keep this").last().click();
            assertThat(page.locator("#e-minutes")).containsText("half an hour");
            page.locator("#f-minutes").fill("30");
            Chrome.button(page, "Keep this").last().click();
            page.waitForURL("**/piles/told?noted=told");
            assertThat(page.locator("main")).containsText("Built about 16 September 2026");
            String now = file("told");
            for (String kept : List.of(
                    "1.01598984",
                    "\"value\": 0.955",
                    "\"chopped\": true",
                    "\"amount\": 0.5",
                    "straw",
                    "slatted-bin",
                    "rats-about",
                    "\"minutes\": 30",
                    "\"lacks\": [\"fork\"]")) {
                assertTrue(now.contains(kept), kept + " in " + now);
            }
        }
    }

    @Test
    void twoWindowsTellDifferentThingsAndBothStand() throws IOException {
        Files.writeString(
                folder.resolve("two.json"),
                "{\"heapwright\": \"pile/1\", \"name\": \"Two\", \"built\": \"2026-11-01\", \"asOf\": \"2026-11-02\"}");
        try (BrowserContext visitor = chrome.phone(false)) {
            Page one = visitor.newPage();
            Page other = visitor.newPage();
            one.navigate(server.at("/piles/two/edit"));
            other.navigate(server.at("/piles/two/edit"));
            one.locator("#f-length").fill("100");
            one.locator("#f-height").fill("80");
            Chrome.button(one, "Keep this").last().click();
            one.waitForURL("**/piles/two?noted=told");
            other.locator("#f-width").fill("120");
            other.locator("#f-height").fill("90");
            Chrome.button(other, "Keep this").last().click();
            assertThat(other.locator("#e-height")).containsText("80");
            assertEquals("90", other.locator("#f-height").inputValue());
            assertEquals("100", other.locator("#f-length").inputValue(), "what the other window told is shown");
            Chrome.button(other, "Keep this").last().click();
            other.waitForURL("**/piles/two?noted=told");
            String now = file("two");
            assertTrue(now.contains("0.9") && now.contains("1.2") && now.contains("\"length\""), now);
            assertEquals(List.of("two.json"), files("two"));
        }
    }

    @Test
    void aRecipeIsKeptAsAPileOnceHoweverOftenItIsTapped() throws IOException {
        for (boolean scripts : List.of(false, true)) {
            try (BrowserContext visitor = chrome.phone(scripts)) {
                Page page = visitor.newPage();
                page.navigate(server.at("/build?r=leaves~10~bucket~&r=grass~1½~bucket~20&length=100"));
                page.locator("#keep #f-name").fill("Kept recipe " + scripts);
                if (scripts) {
                    page.locator("[name='r2.material']").fill("straw");
                    page.locator("[name='r2.amount']").fill("3");
                    page.locator("#keep #f-name").focus();
                    page.waitForCondition(
                            () -> page.locator("#keep-recipe").inputValue().contains("straw"));
                    Chrome.button(page, "Keep it as a pile").dblclick();
                } else {
                    Chrome.button(page, "Keep it as a pile").click();
                }
                page.waitForURL("**/piles/kept-recipe-" + scripts);
                String now = file("kept-recipe-" + scripts);
                assertTrue(now.contains("1.5") && now.contains("\"built\": \"2026-11-25\""), now);
                assertEquals(scripts, now.contains("straw"));
            }
        }
        assertEquals(2, files("kept-recipe").size());
    }

    @Test
    void aFileIsOpenedSeenAndKept() throws IOException {
        Path elsewhere = Files.createTempFile("heap", ".json");
        for (boolean scripts : List.of(false, true)) {
            try (BrowserContext visitor = chrome.phone(scripts)) {
                Page page = visitor.newPage();
                page.navigate(server.at("/piles"));
                page.locator("a[href='/open']").click();
                Files.writeString(elsewhere, "{\"heapwright\": \"pile/1\", \"nam\": \"x\"}");
                page.locator("#f-file").setInputFiles(elsewhere);
                Chrome.button(page, "Show its checkup").click();
                assertThat(page.locator("#faults")).containsText("nam");
                Files.writeString(elsewhere, """
                        {"heapwright": "pile/1", "name": "Brought along %s", "built": "2026-11-01",
                         "log": [{"date": "2026-11-20", "seen": ["soggy", "smells-sour"], "note": "naïve – ½"}]}
                        """.formatted(scripts));
                page.locator("#f-file").setInputFiles(elsewhere);
                Chrome.button(page, "Show its checkup").click();
                assertThat(page.locator(".verdict")).containsText("Brought along");
                assertEquals(List.of(), files("brought-along-" + scripts));
                assertThat(page.locator("a[href='']")).hasCount(0);
                Chrome.button(page, "Keep it").click();
                page.waitForURL("**/piles/brought-along-" + scripts);
                assertTrue(file("brought-along-" + scripts).contains("naïve – ½"));
            }
        }
        Files.delete(elsewhere);
    }

    @Test
    void withoutAConnectionTheAnswersStayAndItTriesAgain() throws IOException {
        Files.writeString(
                folder.resolve("offline.json"),
                "{\"heapwright\": \"pile/1\", \"name\": \"Off\", \"built\": \"2026-11-01\", \"asOf\": \"2026-11-02\"}");
        try (BrowserContext visitor = chrome.phone(true)) {
            Page page = visitor.newPage();
            page.navigate(server.at("/piles/offline"));
            page.locator("#f-core").fill("31");
            visitor.setOffline(true);
            Chrome.button(page, "Keep the note").click();
            assertThat(page.locator("#offline")).isVisible();
            assertEquals("31", page.locator("#f-core").inputValue());
            assertFalse(file("offline").contains("31"));
            visitor.setOffline(false);
            page.waitForURL("**/piles/offline?noted=1");
            assertThat(page.locator("table")).containsText("31 °C");
        }
    }
}
