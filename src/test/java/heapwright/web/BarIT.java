package heapwright.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The line at the foot of a checkup on a phone: what stands so far, and the way to the result. */
@NeedsChromium
class BarIT extends Visits {

    private static final int TABS = 90;

    /** What of the element in focus lies under the line, in pixels. */
    private static final String UNDER = """
            () => {
              const bar = document.querySelector('.bar'), e = document.activeElement;
              if (bar.contains(e) || e === document.body) return 0;
              const low = Math.min(e.getBoundingClientRect().bottom, window.innerHeight);
              const box = bar.getBoundingClientRect();
              return box.top >= window.innerHeight || e.getBoundingClientRect().top >= box.bottom ? 0 : Math.max(0, low - box.top);
            }
            """;

    /** WCAG 2.2, 2.4.12 (focus not obscured, enhanced): forwards and backwards, in the usual face and twice as large. */
    @Test
    void theLineCoversNothingThatHasTheFocus() {
        for (boolean scripts : List.of(true, false)) {
            try (BrowserContext visitor = chrome.phone(scripts)) {
                Page page = visitor.newPage();
                page.setViewportSize(Thumb.WIDTH, Thumb.HEIGHT);
                for (String size : List.of("100%", "200%")) {
                    page.navigate(server.at("/checkup?y=smells-sour.soggy"));
                    page.evaluate("size => document.documentElement.style.fontSize = size", size);
                    page.evaluate("document.querySelectorAll('details.sense').forEach(d => d.open = true)");
                    page.locator("details.sense summary").first().focus();
                    List<Object> covered = new ArrayList<>();
                    for (String key : List.of("Tab", "Shift+Tab")) {
                        for (int i = 0; i < TABS; i++) {
                            page.keyboard().press(key);
                            double under = ((Number) page.evaluate(UNDER)).doubleValue();
                            if (under > 0.5) {
                                covered.add(under + " px of "
                                        + page.evaluate("document.activeElement.name + document.activeElement.value"));
                            }
                        }
                    }
                    assertEquals(List.of(), covered, size + ", scripts " + scripts);
                }
            }
        }
    }

    @Test
    void theLineTellsWhatStandsAndLeadsToTheResult() {
        try (BrowserContext visitor = chrome.phone(true)) {
            Page page = visitor.newPage();
            page.setViewportSize(Thumb.WIDTH, Thumb.HEIGHT);
            page.navigate(server.at("/checkup"));
            assertThat(page.locator("#bar")).not().isVisible();
            page.locator("details.sense:has(input[name='sign.smells-sour']) summary")
                    .click();
            page.locator("label:has(input[name='sign.smells-sour'][value=yes])").click();
            assertThat(page.locator("#bar")).isVisible();
            assertEquals(
                    page.locator(".sofar .stands").textContent(),
                    page.locator("#bar span").textContent());
            double foot =
                    page.locator(".bar").boundingBox().y + page.locator(".bar").boundingBox().height;
            assertTrue(Math.abs(foot - Thumb.HEIGHT) < 1, "it stands at the foot of the screen: " + foot);
            page.locator(".bar button").click();
            page.waitForURL("**/result?y=smells-sour**");
        }
    }

    @Test
    void theLineIsAButtonWithoutScriptsAndStandsStillOnADesk() {
        try (BrowserContext visitor = chrome.phone(false)) {
            Page page = visitor.newPage();
            page.navigate(server.at("/checkup?y=smells-sour"));
            assertThat(page.locator("#bar")).not().isVisible();
            page.locator("details.sense summary").first().scrollIntoViewIfNeeded();
            page.locator(".bar button").click();
            page.waitForURL("**/result?y=smells-sour**");
            page.setViewportSize(Chrome.DESK, Thumb.HEIGHT);
            page.navigate(server.at("/checkup?y=smells-sour"));
            assertEquals("static", page.evaluate("getComputedStyle(document.querySelector('.bar')).position"));
        }
    }
}
