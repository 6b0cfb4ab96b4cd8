package heapwright.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import org.junit.jupiter.api.Test;

/** A recipe before it is built, by thumb and without scripts. */
@NeedsChromium
class RecipeJobIT extends Visits {

    @Test
    void aRecipeIsReckonedWithoutScripts() {
        try (BrowserContext visitor = chrome.phone(false)) {
            Page page = visitor.newPage();
            page.navigate(server.at("/build"));
            page.locator("[name='r0.material']").fill("leaves");
            page.locator("[name='r0.amount']").fill("10");
            page.locator("[name='r1.material']").fill("gras clippings");
            page.locator("[name='r1.amount']").fill("6,5");
            Chrome.button(page, "Work it out").click();
            assertThat(page.locator("#numbers")).containsText("Did you mean");
            page.locator("[name='r1.material']").fill("grass clippings");
            Chrome.button(page, "Work it out").click();
            page.waitForURL("**/build?r=**");
            assertTrue(page.locator("#verdict").textContent().length() > 5);
            assertThat(page.locator("#numbers")).containsText("C:N");
            assertEquals("6,5", page.locator("[name='r1.amount']").inputValue());
            Chrome.button(page, "More rows").click();
            assertThat(page.locator("[name$='.material'][name^=r]")).hasCount(7);
            assertEquals(
                    "Leaves, mixed, autumn",
                    page.locator("[name='r0.material']").inputValue());
        }
    }

    @Test
    void numbersFollowAsRowsAreTyped() {
        try (BrowserContext visitor = chrome.phone(true)) {
            Page page = visitor.newPage();
            page.navigate(server.at("/build"));
            page.locator("[name='r0.material']").fill("straw");
            page.locator("[name='r0.amount']").fill("8");
            page.locator("[name='r1.material']").focus();
            page.waitForSelector("#numbers .verdict");
            assertTrue(page.url().contains("r=straw"));
        }
    }
}
