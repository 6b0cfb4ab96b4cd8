package heapwright.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import org.junit.jupiter.api.Test;

/** Every job of a gardener by keyboard alone. */
@NeedsChromium
class KeyboardIT extends Visits {

    private static final int MOST_TABS = 400;

    /** Presses Tab until an element that fits has the focus. */
    private static void tabTo(Page page, String selector) {
        for (int i = 0; i < MOST_TABS; i++) {
            page.keyboard().press("Tab");
            if ((Boolean) page.evaluate("s => document.activeElement.matches(s)", selector)) {
                assertTrue(
                        (Boolean)
                                page.evaluate("() => getComputedStyle(document.activeElement).outlineStyle !== 'none'"),
                        "focus can be seen on " + selector);
                return;
            }
        }
        throw new AssertionError("the keyboard does not reach " + selector);
    }

    @Test
    void theKeyboardAloneDoesACheckup() {
        try (BrowserContext visitor = chrome.phone(true)) {
            Page page = visitor.newPage();
            page.navigate(server.at("/"));
            tabTo(page, ".door a[href='/checkup']");
            page.keyboard().press("Enter");
            page.waitForURL("**/checkup");
            tabTo(page, "button[name=next][value$=':yes']");
            page.keyboard().press("Enter");
            page.waitForSelector("#live .stands");
            assertEquals("next-ask", page.evaluate("document.activeElement.id"));
            tabTo(page, "details.sense:has(input[name='sign.smells-musty']) summary");
            page.keyboard().press("Enter");
            tabTo(page, "input[name='sign.smells-musty']");
            page.keyboard().press("ArrowUp");
            page.keyboard().press("ArrowUp");
            assertEquals("yes", page.evaluate("document.querySelector(\"[name='sign.smells-musty']:checked\").value"));
            tabTo(page, ".bar button[value=result]");
            page.keyboard().press("Enter");
            page.waitForURL("**/result?**");
            tabTo(page, ".finding summary");
            page.keyboard().press("Enter");
            assertThat(page.locator(".finding[open]")).hasCount(1);
        }
    }

    @Test
    void theKeyboardAloneAsksWhyAPileStopped() {
        try (BrowserContext visitor = chrome.phone(true)) {
            Page page = visitor.newPage();
            page.navigate(server.at("/"));
            tabTo(page, ".door a[href='/why']");
            page.keyboard().press("Enter");
            page.waitForURL("**/why");
            tabTo(page, "#f-name");
            page.keyboard().type("By keyboard");
            tabTo(page, "main form button");
            page.keyboard().press("Enter");
            page.waitForURL("**/piles/by-keyboard");
            tabTo(page, "#f-core");
            page.keyboard().type("9");
            tabTo(page, "section form button.main");
            page.keyboard().press("Enter");
            page.waitForURL("**/piles/by-keyboard?noted=1");
            tabTo(page, "a[href$='/why'].button");
            page.keyboard().press("Enter");
            page.waitForURL("**/by-keyboard/why");
            assertThat(page.locator("circle.coredot")).hasCount(1);
        }
    }

    @Test
    void theKeyboardAloneReckonsARecipe() {
        try (BrowserContext visitor = chrome.phone(true)) {
            Page page = visitor.newPage();
            page.navigate(server.at("/"));
            tabTo(page, ".door a[href='/build']");
            page.keyboard().press("Enter");
            page.waitForURL("**/build");
            tabTo(page, "[name='r0.material']");
            page.keyboard().type("straw");
            tabTo(page, "[name='r0.amount']");
            page.keyboard().type("5");
            page.keyboard().press("Enter");
            page.waitForURL("**/build?r=**");
            assertThat(page.locator("#numbers .verdict")).hasCount(1);
        }
    }
}
