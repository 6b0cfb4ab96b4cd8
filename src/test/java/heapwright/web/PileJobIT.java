package heapwright.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.file.Files;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A pile that is kept, from its first note on, by thumb and without scripts. */
@NeedsChromium
class PileJobIT extends Visits {

    @Test
    void aPileIsMadeNotedDeletedAndFetchedBackWithoutScripts() {
        try (BrowserContext visitor = chrome.phone(false)) {
            Page page = visitor.newPage();
            page.navigate(server.at("/why"));
            page.locator("#f-name").fill("Behind the shed & co");
            page.locator("#f-built").fill("2026-11-01");
            Chrome.button(page, "Make it").click();
            assertThat(page.locator("h1")).hasText("Behind the shed & co");
            note(page, "2026-11-05", "48");
            note(page, "2026-11-20", "9");
            assertThat(page.locator("table tbody tr")).hasCount(2);
            page.locator("#f-core").fill("much");
            Chrome.button(page, "Keep the note").click();
            assertThat(page.locator("#faults")).containsText("much");
            page.locator("a", new Page.LocatorOptions().setHasText("Why it stopped"))
                    .last()
                    .click();
            assertThat(page.locator("circle.coredot")).hasCount(2);
            page.locator(".crumbs a").click();
            Chrome.button(page, "Delete this pile").click();
            assertThat(page.locator("main")).containsText("is deleted");
            Chrome.button(page, "Fetch it back").click();
            assertThat(page.locator("h1")).hasText("Behind the shed & co");
        }
    }

    private void note(Page page, String day, String core) {
        page.locator("#f-date").fill(day);
        page.locator("#f-core").fill(core);
        page.locator("input[name=seen][value=smells-sour]").check();
        page.locator("input[value=loosened]").check();
        Chrome.button(page, "Keep the note").click();
        assertThat(page.locator("main")).containsText("Noted and kept");
    }

    @Test
    void twoWindowsOnOnePileLoseNothing() throws IOException {
        Files.writeString(
                folder.resolve("shared.json"),
                "{\"heapwright\": \"pile/1\", \"name\": \"Shared\", \"built\": \"2026-11-01\", \"asOf\": \"2026-11-02\"}");
        try (BrowserContext visitor = chrome.phone(false)) {
            Page one = visitor.newPage();
            Page other = visitor.newPage();
            one.navigate(server.at("/piles/shared"));
            other.navigate(server.at("/piles/shared"));
            note(one, "2026-11-03", "31");
            other.locator("#f-date").fill("2026-11-04");
            other.locator("#f-core").fill("44");
            Chrome.button(other, "Keep the note").click();
            assertThat(other.locator("main")).containsText("Noted and kept");
            assertThat(other.locator("table")).containsText("31 °C");
            assertThat(other.locator("table")).containsText("44 °C");
            assertEquals(
                    List.of("shared.json"),
                    Files.list(folder)
                            .map(f -> f.getFileName().toString())
                            .filter(f -> f.startsWith("shared"))
                            .toList());
        }
    }

    @Test
    void answersAreKeptAsAPile() {
        try (BrowserContext visitor = chrome.phone(true)) {
            Page page = visitor.newPage();
            page.navigate(server.at("/result?y=soggy.smells-sour&n=smells-ammonia&built=2&out=-2"));
            page.locator("#keep-name").fill("Kept answers");
            Chrome.button(page, "Keep it").click();
            assertThat(page.locator("h1")).hasText("Kept answers");
            assertThat(page.locator("table")).containsText("sour smell");
        }
    }

    /** One tap takes the work on, one tells what came of it, also without scripts. */
    @Test
    void whatWasTakenOnIsAskedAfter() throws IOException {
        LocalDate today = LocalDate.now(TestServer.DAY);
        Files.writeString(folder.resolve("remembered.json"), """
                {"heapwright": "pile/1", "name": "Remembered", "built": "%1$s", "asOf": "%2$s",
                 "log": [{"date": "%2$s", "seen": ["soggy", "smells-sour"]}],
                 "advised": [{"date": "%2$s", "step": "cover-against-rain", "look": "%2$s"}]}
                """.formatted(today.minusDays(30), today.minusDays(9)));
        for (boolean scripts : List.of(false, true)) {
            try (BrowserContext visitor = chrome.phone(scripts)) {
                Page page = visitor.newPage();
                page.navigate(server.at("/piles/remembered"));
                if (!scripts) {
                    assertThat(page.locator("h2:has-text('Did it help?')")).isVisible();
                    Chrome.button(page, "It did not help").click();
                    page.waitForURL("**/piles/remembered?noted=1");
                    assertThat(page.locator("h2:has-text('Did it help?')")).hasCount(0);
                    assertTrue(Files.readString(folder.resolve("remembered.json"))
                            .contains("\"outcome\": \"did-not-help\""));
                } else {
                    Chrome.button(page, "I will do this").click();
                    page.waitForURL("**/piles/remembered?noted=1");
                    assertThat(page.locator(".verdict")).containsText("Taken on: ");
                    assertThat(page.locator("button:has-text('I will do this')"))
                            .hasCount(0);
                }
            }
        }
    }

    /** Of several steps of a day each is answered by itself; one that is not due yet can be told to be done. */
    @Test
    void eachStepIsAnsweredByItself() throws IOException {
        LocalDate today = LocalDate.now(TestServer.DAY);
        Files.writeString(folder.resolve("several.json"), """
                {"heapwright": "pile/1", "name": "Several", "built": "%1$s", "asOf": "%2$s",
                 "log": [{"date": "%2$s", "seen": ["soggy", "smells-sour"]}],
                 "advised": [{"date": "%2$s", "step": "cover-against-rain", "look": "%2$s"},
                             {"date": "%2$s", "step": "mix-in-dry-carbon", "look": "%2$s"},
                             {"date": "%2$s", "step": "insulate", "look": "%3$s"}]}
                """.formatted(
                        today.minusDays(30), today.minusDays(9), today.plusDays(9)));
        try (BrowserContext visitor = chrome.phone(false)) {
            Page page = visitor.newPage();
            page.navigate(server.at("/piles/several"));
            page.locator("section summary:has-text('Or one by one')").click();
            page.locator("form[aria-label^='Mix dry'] button:has-text('It helped')")
                    .click();
            page.waitForURL("**/piles/several?noted=1");
            page.locator("section form[aria-label^='Taken on'] button:has-text('I did not do it')")
                    .click();
            page.waitForURL("**/piles/several?noted=1");
            page.locator("button:has-text('It is done')").click();
            page.waitForURL("**/piles/several?noted=1");
            assertThat(page.locator(".verdict")).containsText("Done: Wrap and cover the pile");
            String kept = Files.readString(folder.resolve("several.json"));
            assertTrue(
                    kept.replaceAll("\\s+", " ")
                            .contains("\"mix-in-dry-carbon\", \"look\": \"" + today.minusDays(9)
                                    + "\", \"outcome\": \"helped\", \"told\": \"" + today + "\""),
                    kept);
            assertTrue(kept.contains("\"outcome\": \"not-done\""), kept);
            assertTrue(kept.contains("\"outcome\": \"done\""), kept);
        }
    }
}
