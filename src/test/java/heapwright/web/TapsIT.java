package heapwright.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** How many taps and screens of a phone each job takes; the guide tells the same figures. */
@NeedsChromium
class TapsIT extends Visits {

    private static final Path GUIDE = Path.of("docs", "guide", "README.md");

    private static Locator sign(Page page, String id) {
        return page.locator("label:has(input[name='sign." + id + "'][value=yes])");
    }

    /** The row of the guide's table that tells the figures of a job. */
    private static void told(String job, String figures) throws IOException {
        String row = "| " + job + " | " + figures + " |";
        System.out.println(row);
        assertTrue(Files.readAllLines(GUIDE).contains(row), "the guide does not have the row\n" + row);
    }

    @Test
    void aFirstUsefulAnswerTakesFiveTapsAndTwoScreensAtMost() throws IOException {
        for (boolean scripts : List.of(true, false)) {
            try (BrowserContext visitor = chrome.phone(scripts)) {
                Page page = visitor.newPage();
                Thumb thumb = new Thumb(page);
                thumb.open(server.at("/"));
                thumb.tap(sign(page, "smells-sour"));
                thumb.tap(sign(page, "soggy"));
                thumb.tapTo(Chrome.button(page, "Show what to do"), "**/result?**");
                thumb.look(page.locator(".firststep .dose").first());
                assertThat(page.locator(".firststep h3").first()).isVisible();
                assertTrue(thumb.taps() <= 5 && thumb.screens() <= 2, thumb.taps() + " " + thumb.screens());
                told(
                        "Two signs, to the first step with its amount",
                        thumb.taps() + " taps, " + thumb.screens() + " screens");
            }
        }
    }

    @Test
    void theUsualChecklistWithAnAgeTakesEightTapsAtMost() throws IOException {
        for (boolean scripts : List.of(true, false)) {
            try (BrowserContext visitor = chrome.phone(scripts)) {
                Page page = visitor.newPage();
                Thumb thumb = new Thumb(page);
                thumb.open(server.at("/"));
                for (String id : List.of("smells-sour", "soggy", "core-cold", "long-uncut-pieces")) {
                    thumb.tap(sign(page, id));
                }
                thumb.type(page.locator("#f-built"), "3");
                thumb.tapTo(Chrome.button(page, "Show what to do"), "**/result?**");
                assertTrue(page.url().contains("y=smells-sour.soggy.core-cold.long-uncut-pieces")
                        && page.url().contains("built=3"));
                assertThat(page.locator(".verdict h1")).containsText(Pattern.compile("too much water"));
                thumb.look(page.locator(".lookday"));
                assertTrue(thumb.taps() <= 8, thumb.taps() + " taps");
                told(
                        "Sour, soggy, cold, woody, three weeks old, to the day to look again",
                        thumb.taps() + " taps, " + thumb.screens() + " screens");
            }
        }
    }

    @Test
    void aRecipeOfFourMaterialsTakesTwelveFieldsAtMost() throws IOException {
        try (BrowserContext visitor = chrome.phone(false)) {
            Page page = visitor.newPage();
            Thumb thumb = new Thumb(page);
            thumb.open(server.at("/"));
            thumb.tapTo(page.locator(".door a[href='/build']"), "**/build");
            List<String> materials = List.of("leaves", "grass clippings", "straw", "kitchen scraps");
            for (int row = 0; row < materials.size(); row++) {
                thumb.type(page.locator("[name='r" + row + ".material']"), materials.get(row));
                thumb.type(page.locator("[name='r" + row + ".amount']"), String.valueOf(row + 3));
            }
            thumb.tapTo(Chrome.button(page, "Work it out"), "**/build?r=**");
            assertThat(page.locator("#numbers .verdict")).hasCount(1);
            assertTrue(thumb.fields() <= 12, thumb.fields() + " fields");
            told("A recipe of four materials", thumb.fields() + " fields");
        }
    }

    @Test
    void aNoteAWeekLaterTakesFourTapsAtMost() throws IOException {
        TestServer.plantExample(folder);
        try (BrowserContext visitor = chrome.phone(false)) {
            Page page = visitor.newPage();
            Thumb thumb = new Thumb(page);
            thumb.open(server.at("/"));
            thumb.tapTo(page.locator(".head a[href='/piles']"), "**/piles");
            thumb.tapTo(page.locator(".shelf h2 a").first(), "**/piles/heap-by-the-birches");
            thumb.tap(page.locator("label:has(input[name=seen][value='smells-earthy'])"));
            thumb.tapTo(Chrome.button(page, "Keep the note"), "**/heap-by-the-birches?noted=1");
            assertTrue(
                    Files.readString(folder.resolve("heap-by-the-birches.json")).contains("smells-earthy"));
            assertTrue(thumb.taps() <= 4, thumb.taps() + " taps");
            told("A note a week later", thumb.taps() + " taps");
        }
    }

    @Test
    void smokeIsOneTapAway() {
        try (BrowserContext visitor = chrome.phone(false)) {
            Page page = visitor.newPage();
            Thumb thumb = new Thumb(page);
            thumb.open(server.at("/"));
            thumb.tapTo(page.locator(".danger-note a"), "**/result?y=smoke");
            assertThat(page.locator(".verdict.danger")).hasCount(1);
            assertEquals(1, thumb.taps());
        }
    }

    /** Without anything tapped there is nothing to answer: the questions follow. An age that is none is told there. */
    @Test
    void theFirstPageAsksOnWhereItIsToldNothing() {
        try (BrowserContext visitor = chrome.phone(false)) {
            Page page = visitor.newPage();
            page.navigate(server.at("/"));
            Chrome.button(page, "Show what to do").click();
            page.waitForURL("**/checkup?**");
            page.navigate(server.at("/"));
            sign(page, "soggy").click();
            page.locator("#f-built").fill("soon");
            Chrome.button(page, "Show what to do").click();
            assertThat(page.locator("#faults")).containsText("soon");
            assertTrue(page.locator("input[name='sign.soggy'][value=yes]").isChecked());
        }
    }

    @Test
    void theHeadOfAPhonePageIsOneRowWhoseMenuWorksWithoutScripts() {
        try (BrowserContext visitor = chrome.phone(false)) {
            Page page = visitor.newPage();
            for (int width : List.of(320, 360, Thumb.WIDTH)) {
                page.setViewportSize(width, Thumb.HEIGHT);
                for (String path : List.of("/piles", "/why")) {
                    page.navigate(server.at(path));
                    double height = page.locator(".head").boundingBox().height;
                    assertTrue(height <= 60, "the head of " + path + " is " + height + " px high at " + width);
                }
            }
            assertThat(page.locator(".head a[href='/why']")).not().isVisible();
            page.locator(".menu summary").focus();
            page.keyboard().press("Enter");
            assertThat(page.locator(".menu a[aria-current=page]")).isVisible();
            double foot = page.locator(".head").boundingBox().height;
            assertTrue(page.locator("main").boundingBox().y >= foot, "what opens covers nothing");
            page.locator(".menu a[href='/build']").click();
            page.waitForURL("**/build");
            page.setViewportSize(Chrome.DESK, Thumb.HEIGHT);
            assertThat(page.locator(".menu summary")).not().isVisible();
            assertThat(page.locator(".head a[href='/settings']")).isVisible();
            page.locator(".head a[href='/settings']").focus();
            page.keyboard().press("Enter");
            page.waitForURL("**/settings");
        }
    }
}
