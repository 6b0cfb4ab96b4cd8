package heapwright.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * What takes long is shown as it comes. Measured on 2026-11-30 on two busy cores, with a browser slowed down six times: the
 * first words of a plan after 0.6 to 1.6 s, its winter after 1.3 to 2.8 s. The figures are of that hour and no promise;
 * what is asserted is the order, and that a page that waits says so.
 */
@NeedsChromium
class WaitingIT extends Visits {

    private static final String PLAN =
            "/build?r=leaves~10~bucket~&r=grass~16~bucket~20&length=100&width=100&height=100";

    /** A phone of the slower sort beside this machine. */
    private static final int SLOWER = 6;

    @Test
    void theNumbersOfAPlanAreSentBeforeItsWinterIsWorkedOut() throws IOException, InterruptedException {
        HttpResponse<InputStream> answer = HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(URI.create(server.at(PLAN))).build(),
                        HttpResponse.BodyHandlers.ofInputStream());
        assertTrue(answer.headers().firstValue("Content-Length").isEmpty(), "sent in one piece");
        String page = new String(answer.body().readAllBytes(), StandardCharsets.UTF_8);
        int numbers = page.indexOf("id=\"verdict\"");
        int waits = page.indexOf("class=\"waits");
        int winter = page.indexOf("id=\"h-outlook\"");
        assertTrue(0 < numbers && numbers < waits && waits < winter, numbers + " " + waits + " " + winter);
        assertTrue(page.strip().endsWith("</html>"));
        assertFalse(page.contains("<!--late-->"));
    }

    @Test
    void theNoteOfWaitingGoesWhenTheWinterHasCome() {
        try (BrowserContext visitor = chrome.phone(false)) {
            Page page = visitor.newPage();
            page.navigate(server.at(PLAN));
            assertThat(page.locator("#h-outlook")).isVisible();
            assertThat(page.locator(".waits")).isHidden();
        }
    }

    /** The answer is held back here, so that a fast machine shows what a slow one does. */
    @Test
    void whileItIsWorkedOutThePageSaysSoAndCallsOffWhatIsNoLongerWanted() {
        try (BrowserContext visitor = chrome.phone(true)) {
            Page page = visitor.newPage();
            JsonObject rate = new JsonObject();
            rate.addProperty("rate", SLOWER);
            visitor.newCDPSession(page).send("Emulation.setCPUThrottlingRate", rate);
            page.navigate(server.at(PLAN));
            List<Route> held = new ArrayList<>();
            List<String> calledOff = new ArrayList<>();
            page.route("**/build/outlook", held::add);
            page.onRequestFailed(request -> calledOff.add(request.url()));
            change(page, "12");
            page.waitForCondition(() -> held.size() == 1);
            assertThat(page.locator("#outlook")).hasAttribute("aria-busy", "true");
            String told = (String)
                    page.evaluate("() => getComputedStyle(document.getElementById('outlook'), '::before').content");
            assertTrue(told.contains("Working out the winter"), told);
            change(page, "14");
            page.waitForCondition(() -> held.size() == 2 && calledOff.size() == 1);
            held.get(1).resume();
            assertThat(page.locator("#outlook")).not().hasAttribute("aria-busy", "true");
            assertThat(page.locator("#h-outlook")).isVisible();
            assertEquals(1, calledOff.size());
        }
    }

    private static void change(Page page, String amount) {
        page.locator("#recipe input[name$=amount]")
                .locator("visible=true")
                .first()
                .fill(amount);
        page.locator("#recipe input[name$=amount]")
                .locator("visible=true")
                .first()
                .dispatchEvent("change");
    }
}
