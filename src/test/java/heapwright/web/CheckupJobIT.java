package heapwright.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import heapwright.knowledge.KnowledgeReader;
import heapwright.knowledge.SignInfo;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The checkup of a gardener, by thumb and without scripts. */
@NeedsChromium
class CheckupJobIT extends Visits {

    @Test
    void aFirstUsefulAnswerTakesUnderTenTaps() {
        try (BrowserContext visitor = chrome.phone(true)) {
            Page page = visitor.newPage();
            page.navigate(server.at("/"));
            page.locator(".door a[href='/checkup']").click();
            page.locator("summary", new Page.LocatorOptions().setHasText("What you smell"))
                    .click();
            page.locator("label:has(input[name='sign.smells-sour'][value=yes])").click();
            page.waitForSelector("#live .stands");
            int taps = 3;
            for (; taps < 6; taps++) {
                String before = page.locator("#next-ask").textContent();
                page.locator("button[name=next][value$=':no']").click();
                page.waitForCondition(
                        () -> !page.locator("#next-ask").textContent().equals(before));
            }
            Chrome.button(page, "Show the whole result").click();
            page.waitForURL("**/result?**");
            assertTrue(taps + 1 < 10);
            assertThat(page.locator(".verdict h1")).containsText(Pattern.compile("[Ll]ikely: "));
            assertThat(page.locator(".firststep h3").first()).isVisible();
        }
    }

    /** A screen of a common phone is 844 px high; asked for by those who use it. */
    @Test
    void theAnswerTheJobTheCareAndTheDateStandOnTwoScreens() {
        try (BrowserContext visitor = chrome.phone(true)) {
            Page page = visitor.newPage();
            for (String said : List.of(
                    "y=soggy.smells-sour.core-cold&built=3",
                    "y=smells-ammonia.matted-grass&built=1",
                    "y=dust-dry&built=4")) {
                page.navigate(server.at("/result?" + said));
                BoundingBox date = page.locator(".lookday").boundingBox();
                assertTrue(date.y + date.height <= 2 * 844, said + ": the date ends at " + (date.y + date.height));
                BoundingBox care = page.locator(".careline").boundingBox();
                BoundingBox job = page.locator(".firststep h3").first().boundingBox();
                assertTrue(care.y + care.height <= job.y, said + ": the care stands before the work");
            }
        }
    }

    @Test
    void answersStayOnGoingBack() {
        for (boolean scripts : List.of(true, false)) {
            try (BrowserContext visitor = chrome.phone(scripts)) {
                Page page = visitor.newPage();
                page.navigate(server.at("/checkup"));
                page.locator("details.sense:has(input[name='sign.smells-ammonia']) summary")
                        .click();
                page.locator("input[name='sign.smells-ammonia'][value=yes]").check();
                Chrome.button(page, "Show the whole result").click();
                page.waitForURL("**/result?**");
                page.goBack();
                page.waitForURL("**/checkup**");
                assertTrue(
                        page.locator("input[name='sign.smells-ammonia'][value=yes]")
                                .isChecked(),
                        "back, scripts " + scripts);
                page.goForward();
                page.locator(".crumbs a").click();
                assertTrue(
                        page.locator("input[name='sign.smells-ammonia'][value=yes]")
                                .isChecked(),
                        "link, scripts " + scripts);
            }
        }
    }

    @Test
    void aCheckupWorksWithoutScripts() {
        try (BrowserContext visitor = chrome.phone(false)) {
            Page page = visitor.newPage();
            page.navigate(server.at("/checkup"));
            String first = page.locator("#next-ask").textContent();
            page.locator("button[name=next][value$=':yes']").click();
            page.waitForURL("**/checkup?**");
            assertThat(page.locator("#next-ask")).not().hasText(first);
            assertThat(page.locator("#next-ask")).containsText("?");
            assertThat(page.locator(".sofar")).containsText("One question answered");
            String second = page.locator("#next-ask").textContent();
            page.locator("button[name=next][value$=':pass']").click();
            assertThat(page.locator("#next-ask")).not().hasText(second);
            Chrome.button(page, "Show the whole result").click();
            page.waitForURL("**/result?**");
            page.locator("summary", new Page.LocatorOptions().setHasText("in 100"))
                    .first()
                    .click();
            assertTrue(page.locator(".finding[open] .evidence li").count() > 0);
            assertThat(page.locator("[data-print]:visible")).hasCount(0);
        }
    }

    @Test
    void aWrongTemperatureIsToldAndKept() {
        try (BrowserContext visitor = chrome.phone(false)) {
            Page page = visitor.newPage();
            page.navigate(server.at("/checkup?y=soggy"));
            page.locator("summary", new Page.LocatorOptions().setHasText("The pile and the weather"))
                    .click();
            page.locator("#f-core").fill("warm");
            Chrome.button(page, "Show the whole result").click();
            assertThat(page.locator("#faults")).containsText("warm");
            assertEquals("warm", page.locator("#f-core").inputValue());
            assertTrue(page.locator("input[name='sign.soggy'][value=yes]").isChecked());
            page.locator("#f-core").fill("12,5");
            Chrome.button(page, "Show the whole result").click();
            page.waitForURL("**/result?**");
        }
    }

    @Test
    void smokeComesBeforeEverythingElse() {
        try (BrowserContext visitor = chrome.phone(true)) {
            Page page = visitor.newPage();
            page.navigate(server.at("/result?y=smoke.soggy.smells-sour"));
            assertThat(page.locator(".verdict.danger[role=alert]")).hasCount(1);
            assertTrue(page.locator(".verdict h1").textContent().startsWith("DANGER"));
            assertThat(page.locator("main")).containsText("fire service");
        }
    }

    @Test
    void smokeLeavesOnlyQuestionsFromOutside() {
        for (boolean scripts : List.of(true, false)) {
            try (BrowserContext visitor = chrome.phone(scripts)) {
                Page page = visitor.newPage();
                page.navigate(server.at("/"));
                page.locator(".danger-note a").click();
                assertThat(page.locator(".verdict.danger")).hasCount(1);
                assertThat(page.locator("main > section").first()).containsText("fire service");
                page.locator(".crumbs a").click();
                assertThat(page.locator("#live > section").first()).containsText("fire service");
                asksOnlyFromOutside(page);
            }
        }
        try (BrowserContext visitor = chrome.phone(true)) {
            Page page = visitor.newPage();
            page.navigate(server.at("/checkup"));
            page.locator("summary", new Page.LocatorOptions().setHasText("What you see"))
                    .click();
            page.locator("label:has(input[name='sign.smoke'][value=yes])").click();
            assertThat(page.locator("#live .danger")).hasCount(1);
            asksOnlyFromOutside(page);
        }
    }

    /** Under a danger nobody is sent to the pile to find something out. */
    private static void asksOnlyFromOutside(Page page) {
        Set<String> outside = KnowledgeReader.packed().signs().values().stream()
                .filter(s -> s.where() == SignInfo.Where.OUTSIDE)
                .map(s -> s.id().id())
                .collect(Collectors.toSet());
        for (Locator button : page.locator("#next button").all()) {
            String sign = button.getAttribute("value").split(":")[0];
            assertTrue(outside.contains(sign), sign);
        }
    }

    @Test
    void theResultIsSavedAsJsonAndAsCalendar() throws IOException {
        try (BrowserContext visitor = chrome.phone(true)) {
            Page page = visitor.newPage();
            page.navigate(server.at("/result?y=soggy.smells-sour.core-cold&built=2"));
            Download json = page.waitForDownload(
                    () -> page.locator("a.button[href*='advice.json']").click());
            assertTrue(Files.readString(json.path()).contains("\"heapwright\" : \"advice\""));
            Download calendar = page.waitForDownload(
                    () -> page.locator(".firststep a[href*='look-again.ics']").click());
            assertTrue(Files.readString(calendar.path()).startsWith("BEGIN:VCALENDAR\r\n"));
        }
    }

    @Test
    void settingsStay() {
        try (BrowserContext visitor = chrome.phone(false)) {
            Page page = visitor.newPage();
            page.navigate(server.at("/settings"));
            page.locator("input[value=us]").check();
            page.locator("input[value=large]").check();
            Chrome.button(page, "Keep these settings").click();
            assertThat(page.locator(".calm")).hasCount(1);
            page.navigate(server.at("/why/example"));
            assertThat(page.locator("[aria-labelledby=h-table] table")).containsText("°F");
            assertEquals("large", page.locator("html").getAttribute("class"));
        }
    }
}
