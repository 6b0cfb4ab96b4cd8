package heapwright.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A season with one pile on the phone, from day to day: kept from a recipe in October, one advice helps, one fails, a
 * frost, a thaw, finished in May. {@code heapwright.cli.SeasonIT} lives the same at the command line.
 */
@NeedsChromium
class SeasonJobIT {

    /** A paragraph of how a job is done is longer than its name. */
    private static final int HOW_TO = 80;

    private static final String HEAP = "/piles/heap-by-the-shed";

    private final Days days = new Days();

    @TempDir
    private Path folder;

    private TestServer server;

    private Page page;

    @Test
    void aSeasonIsLivedOnThePhone() throws Exception {
        try (TestServer started = TestServer.over(folder, days);
                Chrome chrome = new Chrome();
                BrowserContext visitor = chrome.phone(false)) {
            server = started;
            page = visitor.newPage();
            autumn();
            winter();
            spring();
        }
    }

    private void autumn() throws Exception {
        days.are("2024-10-12");
        page.navigate(server.at("/build?r=leaves-mixed~60~bucket~&r=kitchen-scraps~14~bucket~"
                + "&r=grass-clippings~10~bucket~&length=100&width=100&height=100"));
        page.locator("#keep #f-name").fill("Heap by the shed");
        Chrome.button(page, "Keep it as a pile").click();
        page.waitForURL("**" + HEAP);
        page.locator("a[href$='/edit']").click();
        page.locator("#f-kind").selectOption("slatted-bin");
        page.locator("#f-latitude").fill("60.2");
        page.locator("#f-climate").selectOption("inland");
        Chrome.button(page, "Keep this").last().click();
        page.waitForURL("**" + HEAP + "?noted=told");
        assertThat(page.locator(".verdict")).containsText("Nothing to put right");

        days.are("2024-10-20");
        note("41", "7");
        days.are("2024-11-03");
        note("14", "5", "soggy", "smells-sour");
        assertThat(page.locator(".verdict")).containsText("too much water");
        List<String> wet = howTos();
        takeOn();

        days.are("2024-11-12");
        page.navigate(server.at(HEAP));
        assertThat(page.locator("h2:has-text('Did it help?')")).isVisible();
        Chrome.button(page, "It helped").click();
        page.waitForURL("**" + HEAP + "?noted=1");
        page.locator("#f-material").fill("leaves-mixed");
        page.locator("#f-amount").fill("3");
        page.locator("#f-unit").selectOption("wheelbarrow");
        page.locator("input[name=done][value=turned-fully]").check();
        note("27", "6");
        assertThat(page.locator(".verdict")).not().containsText("too much water");
        assertEquals(List.of(), repeated(wet, howTos()), "what helped is not told again");
    }

    private void winter() throws Exception {
        days.are("2024-12-20");
        note("6", "-12", "frost-crust");
        assertThat(page.locator(".verdict")).containsText("winter slowness");
        List<String> frost = howTos();
        assertTrue(frost.stream().noneMatch(h -> h.contains("outside in")), "nobody turns it in frost: " + frost);
        takeOn();
        days.are("2025-01-20");
        page.navigate(server.at(HEAP));
        Chrome.button(page, "It did not help").click();
        page.waitForURL("**" + HEAP + "?noted=1");
        note("-1", "-9");
        assertThat(page.locator(".verdict")).containsText("a frozen pile");
        assertEquals(List.of(), repeated(frost, howTos()), "what failed is not told in the same words");
    }

    private void spring() throws Exception {
        days.are("2025-03-28");
        note("5", "6", "soggy");
        assertThat(page.locator(".verdict")).containsText("too much water");
        assertThat(page.locator(".verdict")).not().containsText("a frozen pile");
        takeOn();
        days.are("2025-04-22");
        page.navigate(server.at(HEAP));
        Chrome.button(page, "It helped").click();
        page.waitForURL("**" + HEAP + "?noted=1");
        note("24", "9");
        assertThat(page.locator(".verdict")).not().containsText("too much water");

        days.are("2025-05-20");
        note("17", "15", "dark-crumbly", "smells-earthy", "no-reheat-after-turning");
        assertThat(page.locator(".verdict")).containsText("finished compost");
        page.navigate(server.at(HEAP + "/result"));
        assertThat(page.locator("main")).containsText("Test whether it is ready");
        page.navigate(server.at(HEAP + "/heat"));
        assertThat(page.locator("main")).containsText("does not show the core hot enough");
        page.navigate(server.at(HEAP));
        for (String figure : List.of("41 °C", "-12 °C", "-1 °C", "3 wheelbarrows of leaves", "17 °C")) {
            assertThat(page.locator("section[aria-labelledby=h-course]")).containsText(figure);
        }
        String file = Files.readString(folder.resolve("heap-by-the-shed.json"));
        assertFalse(file.contains("\"struck\""), file);
        assertTrue(file.contains("\"helped\"") && file.contains("\"did-not-help\""), file);
    }

    /** Notes a day in the form of the page. */
    private void note(String core, String outdoor, String... seen) {
        if (!page.url().contains(HEAP + "?")
                || page.locator("#f-material").inputValue().isEmpty()) {
            page.navigate(server.at(HEAP));
        }
        assertEquals(days.today().toString(), page.locator("#f-date").inputValue(), "the form offers today");
        page.locator("#f-core").fill(core);
        page.locator("#f-out").fill(outdoor);
        for (String sign : seen) {
            page.evaluate("document.querySelectorAll('details').forEach(d => d.open = true)");
            page.locator("input[name=seen][value=" + sign + "]").check();
        }
        Chrome.button(page, "Keep the note").click();
        assertThat(page.locator("main")).containsText("Noted and kept");
    }

    private void takeOn() {
        page.navigate(server.at(HEAP));
        Chrome.button(page, "I will do this").click();
        page.waitForURL("**" + HEAP + "?noted=1");
        assertThat(page.locator(".verdict")).containsText("Taken on: ");
    }

    /** The long paragraphs of the jobs on the page of the advice. */
    private List<String> howTos() {
        page.navigate(server.at(HEAP + "/result"));
        return page.locator("main p").locator("visible=true").allInnerTexts().stream()
                .map(String::strip)
                .filter(t -> t.length() > HOW_TO && !t.contains("WARNING") && !t.contains("CAUTION"))
                .filter(t -> !t.startsWith("Heapwright advises"))
                .toList();
    }

    private static List<String> repeated(List<String> before, List<String> now) {
        return now.stream().filter(before::contains).toList();
    }

    /** A clock that a test sets from day to day. */
    private static final class Days extends Clock {
        private volatile Instant now = Instant.EPOCH;

        void are(String day) {
            now = Instant.parse(day + "T10:00:00Z");
        }

        LocalDate today() {
            return LocalDate.ofInstant(now, ZoneOffset.UTC);
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return now;
        }
    }
}
