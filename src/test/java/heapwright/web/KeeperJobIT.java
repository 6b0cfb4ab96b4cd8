package heapwright.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.file.Files;
import org.junit.jupiter.api.Test;

/** Who looks after a pile is asked once, and offered for the next. */
@NeedsChromium
class KeeperJobIT extends Visits {

    private String file(String id) throws IOException {
        return Files.readString(folder.resolve(id + ".json"));
    }

    @Test
    void whoLooksAfterItIsOfferedForTheNextPile() throws IOException {
        Files.writeString(folder.resolve("first.json"), """
                {"heapwright": "pile/1", "name": "First", "built": "2026-11-24", "asOf": "2026-11-24",
                 "keeper": {"minutes": 30, "lacks": ["fork"]},
                 "log": [{"date": "2026-11-24", "seen": ["cannot-lift"]}]}
                """);
        try (BrowserContext visitor = chrome.phone(false)) {
            Page page = visitor.newPage();
            page.navigate(server.at("/piles"));
            assertThat(page.locator("input[name=keeper]")).isChecked();
            assertThat(page.locator("label:has(input[name=keeper])"))
                    .containsText("Looked after as “First”: 30 minutes on a day; without a fork");
            page.locator("#f-name").fill("Second");
            Chrome.button(page, "Make it").click();
            page.waitForURL("**/piles/second");
            String second = file("second");
            assertTrue(
                    second.contains("\"minutes\": 30") && second.contains("fork") && second.contains("cannot-lift"),
                    second);
            page.navigate(server.at("/build?r=leaves~10~bucket~"));
            page.locator("input[name=keeper]").uncheck();
            page.locator("#keep #f-name").fill("Third");
            Chrome.button(page, "Keep it as a pile").click();
            page.waitForURL("**/piles/third");
            assertFalse(file("third").contains("keeper"), file("third"));
        }
    }

    @Test
    void theyAreOfferedWhereAnswersAreKeptAsAPileAndNoAnswerIsOverruled() throws IOException {
        Files.writeString(folder.resolve("first.json"), """
                {"heapwright": "pile/1", "name": "First", "built": "2026-11-24", "asOf": "2026-11-24",
                 "keeper": {"minutes": 30}, "log": [{"date": "2026-11-24", "seen": ["cannot-lift"]}]}
                """);
        try (BrowserContext visitor = chrome.phone(false)) {
            Page page = visitor.newPage();
            page.navigate(server.at("/result?y=soggy"));
            assertThat(page.locator("input[name=keeper]")).isChecked();
            page.locator("#keep-name").fill("Fourth");
            Chrome.button(page, "Keep it").click();
            page.waitForURL("**/piles/fourth");
            assertTrue(
                    file("fourth").contains("\"minutes\": 30") && file("fourth").contains("cannot-lift"));
            page.navigate(server.at("/result?y=soggy&n=cannot-lift"));
            page.locator("#keep-name").fill("Fifth");
            Chrome.button(page, "Keep it").click();
            page.waitForURL("**/piles/fifth");
            assertTrue(file("fifth").contains("\"minutes\": 30"), file("fifth"));
            assertFalse(file("fifth").matches("(?s).*\"seen\"[^]]*cannot-lift.*"), file("fifth"));
            page.navigate(server.at("/result?y=soggy.cannot-lift"));
            assertThat(page.locator("#keep-name")).isVisible();
            assertThat(page.locator("input[name=keeper]")).hasCount(0);
        }
    }
}
