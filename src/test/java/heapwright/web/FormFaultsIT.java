package heapwright.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What is wrong with a form is told on top, in focus, in plain words, each with a link to its field. */
@NeedsChromium
class FormFaultsIT extends Visits {

    private static final String PILE = "/piles/heap-by-the-birches";

    /** What only who writes a pile file would understand: names of fields, places in a document, machine figures. */
    private static final Pattern MACHINE = Pattern.compile(
            "[a-z][A-Z][a-z]|/[a-z]+/|found the text|found \"|without quotes|[0-9]E[0-9]|line [0-9]|id of a|m3\\b|[0-9]\\.0\\b");

    /** Sends a form with wrong fields and looks at what comes back. */
    private void refused(boolean scripts, String path, List<String> typed, String send, List<String> told) {
        try (BrowserContext visitor = chrome.phone(scripts)) {
            Page page = visitor.newPage();
            page.navigate(server.at(path));
            page.evaluate("document.querySelectorAll('main details').forEach(d => d.open = true)");
            for (String one : typed) {
                String[] parts = one.split("=", 2);
                page.locator("[name='" + parts[0] + "']").first().fill(parts[1]);
            }
            page.locator(send).locator("visible=true").last().click();
            Locator faults = page.locator("#faults");
            faults.waitFor();
            assertEquals("faults", page.evaluate("document.activeElement.id"), path + ", scripts " + scripts);
            assertTrue(faults.boundingBox().y < page.viewportSize().height, "the summary is in sight");
            String text = faults.innerText();
            told.forEach(part -> assertTrue(text.contains(part), path + " tells " + part + ":\n" + text));
            assertFalse(MACHINE.matcher(text).find(), text);
            for (Locator link : faults.locator("a").all()) {
                assertEquals(
                        1,
                        page.locator("[id='" + link.getAttribute("href").substring(1) + "']")
                                .count());
            }
            assertEquals(told.size(), faults.locator("li a").count(), text);
            faults.locator("a").first().focus();
            page.keyboard().press("Enter");
            page.waitForFunction("document.activeElement.matches('[aria-invalid]')");
            assertThat(page.locator(":focus")).hasAttribute("aria-invalid", "true");
        }
    }

    @Test
    void whatIsWrongIsToldInPlainWordsOnTop() throws IOException {
        TestServer.plantExample(folder);
        for (boolean scripts : List.of(true, false)) {
            refused(
                    scripts,
                    "/checkup?y=soggy",
                    List.of("core=999000000", "out=warm", "built=soon"),
                    ".bar button",
                    List.of("999000000 cannot be right", "“warm” is not understood", "“soon”"));
            refused(
                    scripts,
                    PILE,
                    List.of("core=999", "material=gras clippings", "amount=many"),
                    "button.main:has-text('Keep the note')",
                    List.of("999 cannot be right", "Did you mean “Grass clippings", "“many” is not understood"));
            refused(
                    scripts,
                    "/build",
                    List.of(
                            "r0.material=straw",
                            "r0.amount=-3",
                            "r1.material=nonesuch",
                            "r1.amount=2",
                            "length=9999999"),
                    "button.main:has-text('Work it out')",
                    List.of("Length: 9999999 cannot be right. It lies between 5 and 5000 cm", "-3", "“nonesuch”"));
            refused(
                    scripts,
                    PILE + "/edit",
                    List.of("height=tall", "latitude=200", "minutes=long"),
                    "button.main:has-text('Keep')",
                    List.of("“tall” is not understood", "between −90 and 90", "“long” is not understood"));
            refused(
                    scripts,
                    "/piles",
                    List.of("name= ", "built=soon"),
                    "section form button",
                    List.of("name", "“soon”"));
        }
    }

    @Test
    void aSpanIsToldInTheUnitThatIsTypedIn() {
        try (BrowserContext visitor = chrome.phone(false)) {
            Page page = visitor.newPage();
            page.navigate(server.at("/settings"));
            page.locator("input[value=us]").check();
            Chrome.button(page, "Keep these settings").click();
            page.navigate(server.at("/checkup?y=soggy&core=999"));
            assertThat(page.locator("#faults")).containsText("between −76 and 248 °F");
        }
    }
}
