package heapwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.deque.html.axecore.args.AxeRunOptions;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.AxeResults;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
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

/** Every page in a real browser: no barrier that axe-core finds, in both schemes; nothing from outside. */
@NeedsChromium
@TestInstance(Lifecycle.PER_CLASS)
class PagesIT {

    private static final List<String> WCAG =
            List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22a", "wcag22aa", "best-practice");

    private static final int THUMB = 44;

    /** Among links those that stand by themselves, and not within a sentence. */
    private static final String SMALL = """
            least => [...document.querySelectorAll(
                'button, .button, a, .picks label, summary, select, input:not([type=radio], [type=checkbox])')]
              .filter(e => e.tagName !== 'A' || e.matches('.button, .head a, .tabs a, .danger-note a, .door a')
                || e.parentElement.textContent.trim() === e.textContent.trim())
              .filter(e => !e.closest('svg, td') && e.offsetParent !== null && e.getBoundingClientRect().height < least)
              .map(e => e.tagName + ' "' + (e.textContent || e.name).trim().slice(0, 30) + '" ' + e.getBoundingClientRect().height)
            """;

    private Path folder;

    private TestServer server;
    private Chrome chrome;

    @BeforeAll
    void start(@TempDir Path given) throws IOException {
        folder = given;
        VisitedPages.furnish(folder);
        server = TestServer.over(folder);
        chrome = new Chrome();
    }

    @AfterAll
    void stop() {
        chrome.close();
        server.close();
    }

    private static void openAll(Page page) {
        page.evaluate("document.querySelectorAll('details').forEach(d => d.open = true)");
    }

    @Test
    void noPageHasABarrierInLight() {
        assertEquals(List.of(), barriers(ColorScheme.LIGHT));
    }

    @Test
    void noPageHasABarrierInDark() {
        assertEquals(List.of(), barriers(ColorScheme.DARK));
    }

    private List<String> barriers(ColorScheme scheme) {
        List<String> found = new ArrayList<>();
        try (BrowserContext visitor = chrome.visitor(Chrome.PHONE, scheme, true)) {
            Page page = visitor.newPage();
            for (String path : VisitedPages.ALL) {
                page.navigate(server.at(path));
                openAll(page);
                barriersOf(page).forEach(barrier -> found.add(path + ": " + barrier));
            }
        }
        return found;
    }

    private static List<String> barriersOf(Page page) {
        AxeResults results = new AxeBuilder(page)
                .options(violationsOnly())
                .withTags(WCAG)
                .setLegacyMode(true)
                .analyze();
        return results.getViolations().stream()
                .map(rule -> rule.getId() + " " + rule.getNodes().get(0).getHtml())
                .toList();
    }

    /** What a page shows once it is used: a notice that nothing can be reached, and what is wrong with what was typed. */
    @Test
    void whatAPageShowsInUseHasNoBarrier() {
        try (BrowserContext visitor = chrome.visitor(Chrome.PHONE, ColorScheme.LIGHT, true)) {
            Page page = visitor.newPage();
            page.navigate(server.at("/piles/heap-by-the-birches"));
            page.locator("#f-core").fill("much");
            Chrome.button(page, "Keep the note").click();
            page.locator("#faults").waitFor();
            assertEquals(List.of(), barriersOf(page));
            page.locator("#f-core").fill("31");
            visitor.setOffline(true);
            Chrome.button(page, "Keep the note").click();
            page.locator("#offline").waitFor();
            assertEquals(List.of(), barriersOf(page));
        }
    }

    @Test
    void theChecksSeeWhatIsWrong() {
        try (BrowserContext visitor = chrome.visitor(Chrome.PHONE, ColorScheme.LIGHT, true)) {
            Page page = visitor.newPage();
            page.navigate(server.at("/knowledge"));
            page.evaluate("() => {"
                    + "document.querySelector('label[for=q]').remove();"
                    + "document.querySelector('h1').style.color = '#ddd';"
                    + "document.querySelector('.search button').style.minHeight = '0'; }");
            String barriers = String.join("\n", barriersOf(page));
            assertTrue(barriers.contains("label") && barriers.contains("color-contrast"), barriers);
            page.evaluate("document.querySelector('.search button').style.padding = '0'");
            page.evaluate("document.querySelector('.tabs a').style.minHeight = '0'");
            assertEquals(2, ((List<?>) page.evaluate(SMALL, THUMB)).size());
        }
    }

    /** All else that axe-core would tell of every element takes most of its time. There are no frames to look into. */
    private static AxeRunOptions violationsOnly() {
        AxeRunOptions options = new AxeRunOptions();
        options.setResultTypes(List.of("violations"));
        options.setIFrames(false);
        return options;
    }

    @Test
    void noPageAsksForAnythingFromOutside() {
        List<String> asked = new ArrayList<>();
        List<String> said = new ArrayList<>();
        try (BrowserContext visitor = chrome.visitor(Chrome.DESK, ColorScheme.LIGHT, true)) {
            Page page = visitor.newPage();
            page.onRequest(request -> {
                if (!request.url().startsWith(server.at("/"))) {
                    asked.add(request.url());
                }
            });
            page.onConsoleMessage(message -> {
                if (message.text().contains("Content Security Policy")) {
                    said.add(message.text());
                }
            });
            VisitedPages.ALL.forEach(path -> page.navigate(server.at(path)));
        }
        assertEquals(List.of(), asked);
        assertEquals(List.of(), said);
    }

    @Test
    void everyLinkLeadsSomewhere() {
        List<String> dead = new ArrayList<>();
        try (BrowserContext visitor = chrome.visitor(Chrome.DESK, ColorScheme.LIGHT, false)) {
            Page page = visitor.newPage();
            List<String> links = new ArrayList<>();
            for (String path : VisitedPages.ALL) {
                page.navigate(server.at(path));
                page.locator("a[href]").all().forEach(a -> links.add(a.getAttribute("href")));
            }
            links.stream()
                    .map(link -> link.replaceFirst("#.*", ""))
                    .filter(link -> link.startsWith("/"))
                    .distinct()
                    .forEach(link -> {
                        int status = visitor.request().get(server.at(link)).status();
                        if (status >= 400) {
                            dead.add(link + " " + status);
                        }
                    });
            assertTrue(links.size() > 100);
        }
        assertEquals(List.of(), dead);
    }

    /** Every button, answer, fold and link that stands by itself; not those within a sentence. WCAG 2.2 asks for 24, cold fingers for more. */
    @Test
    void whatAThumbPressesIsLarge() {
        List<String> small = new ArrayList<>();
        try (BrowserContext visitor = chrome.visitor(Chrome.PHONE, ColorScheme.LIGHT, true)) {
            Page page = visitor.newPage();
            for (String path : VisitedPages.ALL) {
                page.navigate(server.at(path));
                openAll(page);
                ((List<?>) page.evaluate(SMALL, THUMB)).forEach(found -> small.add(path + " " + found));
            }
        }
        assertEquals(List.of(), small);
    }

    @Test
    void theChartHasATitleADescriptionAndItsTable() {
        try (BrowserContext visitor = chrome.visitor(Chrome.PHONE, ColorScheme.LIGHT, false)) {
            Page page = visitor.newPage();
            page.navigate(server.at("/why/example"));
            assertTrue(page.locator("svg.chart > title").textContent().contains("Heap by the birches"));
            assertTrue(page.locator("svg.chart > desc").textContent().contains("49"));
            assertEquals(11, page.locator("circle.coredot").count());
            assertEquals(11, page.locator("[aria-labelledby=h-table] tbody tr").count());
            String day = page.locator(".days a").first().getAttribute("href");
            assertEquals(1, page.locator("tr" + day).count());
        }
    }
}
