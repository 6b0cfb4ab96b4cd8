package heapwright.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The pages of knowledge are short at first sight, and what is looked for is found in them without a network. */
@NeedsChromium
class KnowledgeIT extends Visits {

    private static final int PHONE_WIDTH = 390;
    private static final int PHONE_HEIGHT = 844;

    /** Phone screens at first sight; 35 before the lists were folded away. */
    private static final double SCREENS = 6;

    private static final List<String> PAGES = List.of(
            "/knowledge",
            "/knowledge?q=wet",
            "/knowledge?q=e",
            "/knowledge/causes",
            "/knowledge/causes/too-wet",
            "/knowledge/remedies",
            "/knowledge/remedies/add-urea",
            "/knowledge/materials",
            "/knowledge/materials/leaves-mixed",
            "/knowledge/cautions",
            "/knowledge/sources");

    private static double screens(Page page) {
        return ((Number) page.evaluate("document.documentElement.scrollHeight")).doubleValue() / PHONE_HEIGHT;
    }

    @Test
    void everyPageIsAFewScreensOfAPhoneAtFirstSightWithTheSearchAbove() {
        List<String> tooLong = new ArrayList<>();
        for (boolean scripts : List.of(true, false)) {
            try (BrowserContext visitor = chrome.phone(scripts)) {
                Page page = visitor.newPage();
                page.setViewportSize(PHONE_WIDTH, PHONE_HEIGHT);
                for (String path : PAGES) {
                    page.navigate(server.at(path));
                    double screens = screens(page);
                    if (screens > SCREENS) {
                        tooLong.add(path + " " + screens);
                    }
                    if (path.indexOf('/', 1) == path.lastIndexOf('/')) {
                        assertTrue(page.locator("#q").boundingBox().y < PHONE_HEIGHT / 2.0, path);
                    }
                }
            }
        }
        assertEquals(List.of(), tooLong);
    }

    @Test
    void whatIsTypedFiltersTheListWithoutANetwork() {
        try (BrowserContext visitor = chrome.phone(true)) {
            Page page = visitor.newPage();
            page.navigate(server.at("/knowledge/materials"));
            Locator shown = page.locator("[data-filter] li").locator("visible=true");
            assertThat(shown).hasCount(0);
            visitor.setOffline(true);
            page.locator("#q").fill("oak lea");
            assertThat(shown.first())
                    .containsText(
                            "oak",
                            new com.microsoft.playwright.assertions.LocatorAssertions.ContainsTextOptions()
                                    .setIgnoreCase(true));
            assertTrue(shown.count() < 10, "shown: " + shown.count());
            assertThat(page.locator("#filtered")).containsText(shown.count() + " here");
            page.locator("#q").fill("no such stuff");
            assertThat(shown).hasCount(0);
            page.locator("#q").fill("");
            assertThat(page.locator("details.group").locator("visible=true").first())
                    .isVisible();
            assertThat(page.locator("#filtered")).hasText("");
        }
    }

    @Test
    void theListOfAllIsFilteredByOtherNamesToo() {
        try (BrowserContext visitor = chrome.phone(true)) {
            Page page = visitor.newPage();
            page.navigate(server.at("/knowledge"));
            page.locator("#q").fill("tampons");
            Locator shown = page.locator("[data-filter] li").locator("visible=true");
            assertThat(shown).hasCount(1);
            assertThat(shown).containsText("sanitary items");
        }
    }

    @Test
    void withoutScriptsTheSearchIsAPlainFormAndItsFirstFindsAreShownAtOnce() {
        try (BrowserContext visitor = chrome.phone(false)) {
            Page page = visitor.newPage();
            page.navigate(server.at("/knowledge/materials"));
            page.locator("#q").fill("oak");
            page.locator(".search button").click();
            assertTrue(page.url().endsWith("/knowledge?q=oak"), page.url());
            assertTrue(page.locator("[data-filter] li").locator("visible=true").count() > 0);
            page.navigate(server.at("/knowledge?q=e"));
            assertThat(page.locator("[data-filter] > ul > li")).hasCount(12);
        }
    }

    @Test
    void whatAnAddressNamesIsUnfolded() {
        try (BrowserContext visitor = chrome.phone(true)) {
            Page page = visitor.newPage();
            page.navigate(server.at("/knowledge/remedies"));
            // ::first-letter, which sets the capital, takes hold of blocks only (CSS Pseudo-Elements 4).
            assertThat(page.locator("summary .cap").first()).hasCSS("display", "inline-block");
            page.navigate(server.at("/knowledge/sources#RYNK92"));
            assertThat(page.locator("#RYNK92")).isVisible();
            page.navigate(server.at("/knowledge/cautions#cold-hands"));
            assertThat(page.locator("#cold-hands p").first()).isVisible();
        }
    }
}
