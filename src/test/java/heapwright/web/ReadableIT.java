package heapwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Media;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.api.io.TempDir;

/** Tables of options are cards on a phone, and what is written in charts can be read on each of screen, desk and paper. */
@NeedsChromium
@TestInstance(Lifecycle.PER_CLASS)
class ReadableIT {

    private static final String PLAN =
            "/build?r=leaves~10~bucket~&r=grass~16~bucket~20&length=100&width=100&height=100";
    private static final List<String> CHARTS =
            List.of("/why/example", "/piles/heap-by-the-birches", "/piles/heap-by-the-birches/why");

    private static final int NARROW = 320;
    private static final int TABLET = 700;
    private static final int HEIGHT = 844;

    private static final double LEAST_PX = 11;
    private static final double LEAST_PT = 8;
    private static final double PX_A_PT = 96.0 / 72;

    /** The width of what is printed on, px: A4 without its margins of 12 mm, at 96 px an inch. */
    private static final int SHEET = (int) ((210 - 2 * 12) / 25.4 * 96);

    /** The smallest letters in charts as they are drawn, px. */
    private static final String SMALLEST = """
            () => Math.min(...[...document.querySelectorAll('svg text')]
              .filter(t => t.getClientRects().length > 0)
              .map(t => parseFloat(getComputedStyle(t).fontSize) * t.getScreenCTM().a))
            """;

    /** Pairs of labels of one chart that lie over each other. */
    private static final String OVERLAPS = """
            () => { const found = [];
              for (const svg of document.querySelectorAll('svg.chart, svg.ahead')) {
                const all = [...svg.querySelectorAll('text')].map(t => ({ t, r: t.getBoundingClientRect() })).filter(x => x.r.width > 0);
                for (let i = 0; i < all.length; i++) for (let j = i + 1; j < all.length; j++) {
                  const a = all[i].r, b = all[j].r;
                  if (a.left < b.right - 1 && b.left < a.right - 1 && a.top < b.bottom - 3 && b.top < a.bottom - 3) found.push(all[i].t.textContent + ' / ' + all[j].t.textContent);
                } }
              return found; }
            """;

    private TestServer server;
    private Chrome chrome;

    @BeforeAll
    void start(@TempDir Path folder) throws IOException {
        TestServer.plantExample(folder);
        server = TestServer.over(folder);
        chrome = new Chrome();
    }

    @AfterAll
    void stop() {
        chrome.close();
        server.close();
    }

    private static String display(Page page, String selector) {
        return (String) page.evaluate("s => getComputedStyle(document.querySelector(s)).display", selector);
    }

    @Test
    void aTableOfOptionsIsCardsOnAPhoneAndATableOnADeskAndOnPaper() {
        try (BrowserContext visitor = chrome.phone(true)) {
            Page page = visitor.newPage();
            for (int width : List.of(NARROW, Chrome.PHONE)) {
                page.setViewportSize(width, HEIGHT);
                page.navigate(server.at(PLAN));
                assertEquals("block", display(page, "#outlook tbody tr"));
                assertEquals(
                        List.of(),
                        page.evaluate(
                                "() => [...document.querySelectorAll('.cards')].filter(c => c.scrollWidth > c.clientWidth)"
                                        + ".map(c => c.getAttribute('aria-label') + c.scrollWidth)"),
                        "scrolls sideways at " + width);
                assertTrue(page.locator("#outlook tbody td[data-label]").count() >= 16, "labels");
                String label = (String) page.evaluate(
                        "() => getComputedStyle(document.querySelector('#outlook tbody td'), '::before').content");
                assertTrue(label.contains("Days above"), label);
            }
            page.setViewportSize(TABLET, HEIGHT);
            assertEquals("table-row", display(page, "#outlook tbody tr"));
            page.setViewportSize(Chrome.PHONE, HEIGHT);
            page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
            assertEquals("table-row", display(page, "#outlook tbody tr"));
        }
    }

    @Test
    void whatIsWrittenInChartsIsLargeEnoughOnEveryScreenAndOnPaper() {
        List<String> small = new ArrayList<>();
        try (BrowserContext visitor = chrome.visitor(Chrome.DESK, ColorScheme.LIGHT, true)) {
            Page page = visitor.newPage();
            for (String path : CHARTS) {
                page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.SCREEN));
                page.navigate(server.at(path));
                for (int width : List.of(NARROW, Chrome.PHONE, 641, TABLET, 961, Chrome.DESK, 1280)) {
                    page.setViewportSize(width, HEIGHT);
                    look(page, path + " at " + width, LEAST_PX, small);
                }
                page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
                page.setViewportSize(SHEET, HEIGHT);
                look(page, path + " printed", LEAST_PT * PX_A_PT, small);
            }
        }
        assertEquals(List.of(), small);
    }

    private static void look(Page page, String where, double least, List<String> small) {
        double px = ((Number) page.evaluate(SMALLEST)).doubleValue();
        if (px < least) {
            small.add(where + ": " + px + " px");
        }
        List<?> over = (List<?>) page.evaluate(OVERLAPS);
        if (!over.isEmpty()) {
            small.add(where + ": " + over);
        }
    }
}
