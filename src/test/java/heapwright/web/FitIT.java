package heapwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import heapwright.knowledge.KnowledgeReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.api.io.TempDir;

/** The pages fit a phone and a sheet of paper whatever the face of the letters, not just in the one of this machine. */
@NeedsChromium
@TestInstance(Lifecycle.PER_CLASS)
class FitIT {

    /** What reaches over the right edge outside of what scrolls by itself; nothing may be cut off there unseen either. */
    private static final String OVER_THE_EDGE = """
            width => [...document.querySelectorAll('body *')]
              .filter(e => !e.closest('.scroll, .unseen, svg') && e.getClientRects().length > 0)
              .filter(e => e.getBoundingClientRect().right > width + 0.5)
              .map(e => e.tagName + ' "' + e.textContent.trim().slice(0, 30) + '"')
            """;

    /** WCAG 2.2, 1.4.10 (reflow): a page of this width scrolls one way only. */
    private static final int NARROW = 320;

    private static final int HEIGHT = 740;

    private TestServer server;
    private Chrome chrome;
    private List<Face> faces;

    @BeforeAll
    void start(@TempDir Path folder) throws IOException {
        VisitedPages.furnish(folder);
        server = TestServer.over(folder);
        chrome = new Chrome();
        faces = facesOfThisMachine();
    }

    @AfterAll
    void stop() {
        chrome.close();
        server.close();
    }

    private List<Face> facesOfThisMachine() {
        List<Face> here = new ArrayList<>();
        try (BrowserContext visitor = chrome.phone(true)) {
            Page page = visitor.newPage();
            page.navigate(server.at("/"));
            for (Face face : Face.values()) {
                Optional<String> missing = face.missing(page);
                missing.ifPresent(what -> {
                    assertFalse(NeedsChromium.Condition.demanded(), "missing: " + what);
                    System.out.println("The pages are not tried in " + what + ", which is missing.");
                });
                if (missing.isEmpty()) {
                    here.add(face);
                }
            }
        }
        return here;
    }

    @Test
    void noPageScrollsSidewaysOnAPhoneNorWithTextTwiceAsLarge() {
        List<String> found = new ArrayList<>();
        try (BrowserContext visitor = chrome.phone(true)) {
            Page page = visitor.newPage();
            for (String path : VisitedPages.ALL) {
                page.navigate(server.at(path));
                page.evaluate("document.querySelectorAll('details').forEach(d => d.open = true)");
                for (Face face : faces) {
                    face.putOn(page);
                    page.evaluate("document.documentElement.style.fontSize = ''");
                    page.setViewportSize(NARROW, HEIGHT);
                    over(page, NARROW).ifPresent(what -> found.add(face + " " + NARROW + " px " + path + " " + what));
                    page.setViewportSize(Chrome.PHONE, HEIGHT);
                    for (String size : List.of("100%", "200%")) {
                        page.evaluate("size => document.documentElement.style.fontSize = size", size);
                        over(page, Chrome.PHONE)
                                .ifPresent(what -> found.add(face + " " + size + " " + path + " " + what));
                    }
                }
            }
        }
        assertEquals(List.of(), found);
    }

    private static Optional<String> over(Page page, int width) {
        int wide = (Integer) page.evaluate("document.documentElement.scrollWidth");
        List<?> elements = (List<?>) page.evaluate(OVER_THE_EDGE, width);
        return wide <= width && elements.isEmpty() ? Optional.empty() : Optional.of(wide + " " + elements);
    }

    @Test
    void aResultACourseAndAPlanPrintOnOneSheetOfEitherSize() {
        List<String> found = new ArrayList<>();
        try (BrowserContext visitor = chrome.visitor(Chrome.DESK, ColorScheme.DARK, true)) {
            Page page = visitor.newPage();
            for (String path : VisitedPages.SHEETS) {
                page.navigate(server.at(path));
                for (Face face : faces) {
                    if (face == Face.SPACED) {
                        continue; // The criterion is about the screen; printed so, a page may go on overleaf.
                    }
                    face.putOn(page);
                    for (String sheet : List.of("A4", "Letter")) {
                        int sheets = sheets(page, sheet);
                        if (sheets != 1) {
                            found.add(face + " " + sheet + " " + path + " " + sheets);
                        }
                    }
                }
            }
        }
        assertEquals(List.of(), found);
    }

    @Test
    void theBlankListPrintsOnTwoSheetsOfEitherSize() {
        try (BrowserContext visitor = chrome.visitor(Chrome.DESK, ColorScheme.DARK, false)) {
            Page page = visitor.newPage();
            page.navigate(server.at("/checkup/blank"));
            int questions = KnowledgeReader.packed().signs().size();
            assertEquals(questions, page.locator(".checklist li").count());
            for (Face face : faces) {
                if (face == Face.SPACED) {
                    continue;
                }
                face.putOn(page);
                for (String sheet : List.of("A4", "Letter")) {
                    assertEquals(2, sheets(page, sheet), face + " " + sheet);
                }
            }
        }
    }

    private static int sheets(Page page, String sheet) {
        byte[] pdf = page.pdf(new Page.PdfOptions().setFormat(sheet));
        Matcher pages = Pattern.compile("/Type\\s*/Page\\b(?!s)").matcher(new String(pdf, StandardCharsets.ISO_8859_1));
        int count = 0;
        while (pages.find()) {
            count++;
        }
        return count;
    }

    @Test
    void theChecksSeeWhatDoesNotFit() {
        try (BrowserContext visitor = chrome.phone(true)) {
            Page page = visitor.newPage();
            page.navigate(server.at("/why/example"));
            assertEquals(Optional.empty(), over(page, Chrome.PHONE));
            int usual = (Integer) page.evaluate("document.querySelector('h1').scrollWidth");
            Face.VERY_WIDE.putOn(page);
            page.evaluate("document.querySelector('h1').style.cssText = 'white-space: nowrap; display: inline-block'");
            assertTrue((Integer) page.evaluate("document.querySelector('h1').scrollWidth") > usual);
            assertTrue(over(page, Chrome.PHONE).orElse("").contains("H1"));
            page.reload(); // What is too wide is printed smaller, which would save a sheet.
            page.evaluate("document.querySelector('main').style.minHeight = '300mm'");
            assertEquals(2, sheets(page, "A4"));
        }
    }
}
