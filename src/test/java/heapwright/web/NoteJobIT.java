package heapwright.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Notes that were wrong: refused where they can be seen to be, else put right or taken back, also without scripts. */
@NeedsChromium
class NoteJobIT extends Visits {

    private void plant(String id, String log) throws IOException {
        Files.writeString(folder.resolve(id + ".json"), """
                {"heapwright": "pile/1", "name": "Heap", "built": "2026-11-01", "asOf": "2026-11-20", "log": [%s]}
                """.formatted(log));
    }

    private String file(String id) throws IOException {
        return Files.readString(folder.resolve(id + ".json"));
    }

    @Test
    void aNoteIsPutRightTakenBackAndPutBack() throws IOException {
        plant("wrong", """
                {"date": "2026-11-10", "seen": ["soggy"], "notSeen": ["smells-sour"],
                 "measured": {"core": {"value": 94, "unit": "C"}, "ph": {"value": 6.5, "unit": "pH"}}},
                {"date": "2026-11-12", "note": "first frost"}""");
        for (boolean scripts : List.of(false, true)) {
            try (BrowserContext visitor = chrome.phone(scripts)) {
                Page page = visitor.newPage();
                page.navigate(server.at("/piles/wrong"));
                page.locator("a[href$='/notes']").click();
                if (!scripts) {
                    page.locator("a.button:has-text('Correct it')").last().click();
                    assertEquals("94", page.locator("#f-core").inputValue());
                    assertTrue(page.locator("input[value=soggy]").isChecked());
                    page.locator("#f-core").fill("49");
                    Chrome.button(page, "Keep it so").click();
                    page.waitForURL("**/piles/wrong?noted=corrected");
                    assertThat(page.locator("table")).containsText("49 °C");
                    String now = file("wrong");
                    assertTrue(now.contains("\"ph\"") && now.contains("\"notSeen\""), "the rest stays");
                    assertTrue(now.indexOf("94") > now.indexOf("\"struck\""), "the old reading is kept aside");
                } else {
                    page.locator("a.button:has-text('Take it back')").last().click();
                    assertThat(page.locator("h1")).hasText("Take this note back?");
                    Chrome.button(page, "Take it back").click();
                    page.waitForURL("**/piles/wrong?noted=taken-back");
                    assertThat(page.locator("table")).not().containsText("49 °C");
                    page.locator("a[href$='/notes']").click();
                    page.locator("summary", new Page.LocatorOptions().setHasText("Notes taken back (2)"))
                            .click();
                    page.locator("button:has-text('49 °C')").click();
                    page.waitForURL("**/piles/wrong?noted=put-back");
                    assertThat(page.locator("table")).containsText("49 °C");
                }
            }
        }
    }

    @Test
    void twoWindowsThatPutOneNoteRightLoseNothing() throws IOException {
        plant("both", "{\"date\": \"2026-11-10\", \"note\": \"one\"}");
        try (BrowserContext visitor = chrome.phone(false)) {
            Page one = visitor.newPage();
            Page other = visitor.newPage();
            for (Page page : List.of(one, other)) {
                page.navigate(server.at("/piles/both/notes"));
                page.locator("a.button:has-text('Correct it')").click();
            }
            one.locator("#f-note").fill("two");
            Chrome.button(one, "Keep it so").click();
            one.waitForURL("**/piles/both?noted=corrected");
            other.locator("#f-note").fill("three");
            Chrome.button(other, "Keep it so").click();
            assertThat(other.locator("#faults")).containsText("in another window");
            assertEquals("three", other.locator("#f-note").inputValue());
            Chrome.button(other, "Keep the note").click();
            String now = file("both");
            assertTrue(now.contains("two") && now.contains("three") && now.contains("one"), now);
        }
    }

    @Test
    void whatCannotBeANoteIsRefusedAndKeptInTheForm() throws IOException {
        plant("refused", "");
        String before = file("refused");
        try (BrowserContext visitor = chrome.phone(false)) {
            Page page = visitor.newPage();
            page.navigate(server.at("/piles/refused"));
            // HTML living standard, date state: maxlength and size do not apply.
            assertThat(page.locator("input[type=date][maxlength], input[type=date][size]"))
                    .hasCount(0);
            Chrome.button(page, "Keep the note").click();
            assertThat(page.locator("#faults")).containsText("nothing to note");
            page.locator("#f-date").fill("2026-11-26");
            page.locator("#f-core").fill("20");
            Chrome.button(page, "Keep the note").click();
            assertThat(page.locator("#faults")).containsText("still to come");
            assertEquals("20", page.locator("#f-core").inputValue());
            page.locator("#f-date").fill("2026-11-25");
            page.locator("#f-amount").fill("1½");
            Chrome.button(page, "Keep the note").click();
            assertThat(page.locator("#faults")).containsText("of what 1½ was put in");
            assertEquals(before, file("refused"));
            page.locator("#f-material").fill("straw");
            Chrome.button(page, "Keep the note").click();
            page.waitForURL("**/piles/refused?noted=1");
            assertTrue(file("refused").contains("1.5"));
            assertFalse(file("refused").contains("struck"));
        }
    }
}
