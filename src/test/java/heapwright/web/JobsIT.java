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
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.api.io.TempDir;

/** The three jobs of a gardener, by thumb, by keyboard only, and without scripts. */
@NeedsChromium
@TestInstance(Lifecycle.PER_CLASS)
class JobsIT {

    private static final int MOST_TABS = 400;

    private Path folder;

    private TestServer server;
    private Chrome chrome;

    @BeforeAll
    void start(@TempDir Path given) {
        folder = given;
        server = TestServer.over(folder);
        chrome = new Chrome();
    }

    @AfterAll
    void stop() {
        chrome.close();
        server.close();
    }

    @Test
    void aFirstUsefulAnswerTakesUnderTenTaps() {
        try (BrowserContext visitor = chrome.phone(true)) {
            Page page = visitor.newPage();
            page.navigate(server.at("/"));
            page.locator(".door a").first().click();
            page.locator("summary", new Page.LocatorOptions().setHasText("nose"))
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
                    "y=soggy.smells-sour.core-cold&age=21",
                    "y=smells-ammonia.matted-grass&age=7",
                    "y=dust-dry&age=30")) {
                page.navigate(server.at("/result?" + said));
                BoundingBox date = page.locator(".lookday").boundingBox();
                assertTrue(date.y + date.height <= 2 * 844, said + ": the date ends at " + (date.y + date.height));
                BoundingBox care = page.locator(".careline").boundingBox();
                BoundingBox job = page.locator(".firststep h3").first().boundingBox();
                assertTrue(care.y + care.height <= job.y, said + ": the care stands before the work");
            }
        }
    }

    /** One tap takes the work on, one tells what came of it, also without scripts. */
    @Test
    void whatWasTakenOnIsAskedAfter() throws IOException {
        LocalDate today = LocalDate.now(TestServer.DAY);
        Files.writeString(folder.resolve("remembered.json"), """
                {"heapwright": "pile/1", "name": "Remembered", "built": "%1$s", "asOf": "%2$s",
                 "log": [{"date": "%2$s", "seen": ["soggy", "smells-sour"]}],
                 "advised": [{"date": "%2$s", "step": "cover-against-rain", "look": "%2$s"}]}
                """.formatted(today.minusDays(30), today.minusDays(9)));
        for (boolean scripts : List.of(false, true)) {
            try (BrowserContext visitor = chrome.phone(scripts)) {
                Page page = visitor.newPage();
                page.navigate(server.at("/piles/remembered"));
                if (!scripts) {
                    assertThat(page.locator("h2:has-text('Did it help?')")).isVisible();
                    Chrome.button(page, "It did not help").click();
                    page.waitForURL("**/piles/remembered?noted=1");
                    assertThat(page.locator("h2:has-text('Did it help?')")).hasCount(0);
                    assertTrue(Files.readString(folder.resolve("remembered.json"))
                            .contains("\"outcome\": \"did-not-help\""));
                } else {
                    Chrome.button(page, "I will do this").click();
                    page.waitForURL("**/piles/remembered?noted=1");
                    assertThat(page.locator(".verdict")).containsText("Taken on: ");
                    assertThat(page.locator("button:has-text('I will do this')"))
                            .hasCount(0);
                }
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
            page.locator("summary", new Page.LocatorOptions().setHasText("eye")).click();
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
            page.navigate(server.at("/result?y=soggy.smells-sour.core-cold&age=14"));
            Download json = page.waitForDownload(
                    () -> page.locator("a.button[href*='advice.json']").click());
            assertTrue(Files.readString(json.path()).contains("\"heapwright\" : \"advice\""));
            Download calendar = page.waitForDownload(
                    () -> page.locator(".firststep a[href*='look-again.ics']").click());
            assertTrue(Files.readString(calendar.path()).startsWith("BEGIN:VCALENDAR\r\n"));
        }
    }

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

    @Test
    void aPileIsMadeNotedDeletedAndFetchedBackWithoutScripts() {
        try (BrowserContext visitor = chrome.phone(false)) {
            Page page = visitor.newPage();
            page.navigate(server.at("/why"));
            page.locator("#f-name").fill("Behind the shed & co");
            page.locator("#f-built").fill("2026-11-01");
            Chrome.button(page, "Make it").click();
            assertThat(page.locator("h1")).hasText("Behind the shed & co");
            note(page, "2026-11-05", "48");
            note(page, "2026-11-20", "9");
            assertThat(page.locator("table tbody tr")).hasCount(2);
            page.locator("#f-core").fill("much");
            Chrome.button(page, "Keep the note").click();
            assertThat(page.locator("#faults")).containsText("much");
            page.locator("a", new Page.LocatorOptions().setHasText("Why it stopped"))
                    .last()
                    .click();
            assertThat(page.locator("circle.coredot")).hasCount(2);
            page.locator(".crumbs a").click();
            Chrome.button(page, "Delete this pile").click();
            assertThat(page.locator("main")).containsText("is deleted");
            Chrome.button(page, "Fetch it back").click();
            assertThat(page.locator("h1")).hasText("Behind the shed & co");
        }
    }

    private void note(Page page, String day, String core) {
        page.locator("#f-date").fill(day);
        page.locator("#f-core").fill(core);
        page.locator("input[name=seen][value=smells-sour]").check();
        page.locator("input[value=loosened]").check();
        Chrome.button(page, "Keep the note").click();
        assertThat(page.locator("main")).containsText("Noted and kept");
    }

    @Test
    void twoWindowsOnOnePileLoseNothing() throws IOException {
        Files.writeString(
                folder.resolve("shared.json"),
                "{\"heapwright\": \"pile/1\", \"name\": \"Shared\", \"built\": \"2026-11-01\", \"asOf\": \"2026-11-02\"}");
        try (BrowserContext visitor = chrome.phone(false)) {
            Page one = visitor.newPage();
            Page other = visitor.newPage();
            one.navigate(server.at("/piles/shared"));
            other.navigate(server.at("/piles/shared"));
            note(one, "2026-11-03", "31");
            other.locator("#f-date").fill("2026-11-04");
            other.locator("#f-core").fill("44");
            Chrome.button(other, "Keep the note").click();
            assertThat(other.locator("h1")).hasText("Changed meanwhile");
            List<Locator> both = other.locator(".shelf a").all();
            assertEquals(2, both.size());
            both.get(1).click();
            assertThat(other.locator("table")).containsText("44 °C");
            other.navigate(server.at("/piles/shared"));
            assertThat(other.locator("table")).containsText("31 °C");
        }
    }

    @Test
    void answersAreKeptAsAPile() {
        try (BrowserContext visitor = chrome.phone(true)) {
            Page page = visitor.newPage();
            page.navigate(server.at("/result?y=soggy.smells-sour&n=smells-ammonia&age=14&out=-2"));
            page.locator("#keep-name").fill("Kept answers");
            Chrome.button(page, "Keep it").click();
            assertThat(page.locator("h1")).hasText("Kept answers");
            assertThat(page.locator("table")).containsText("sour smell");
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
            tabTo(page, ".questions button[value=result]");
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
