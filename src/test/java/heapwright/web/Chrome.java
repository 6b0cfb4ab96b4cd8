package heapwright.web;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ColorScheme;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The Chromium of the system, without a window. */
final class Chrome implements AutoCloseable {

    static final int PHONE = 360;
    static final int DESK = 1200;

    /** Names a Chromium that is in none of the usual places: {@code -Dchromium=/opt/chromium/chrome}. */
    static final String PLACE = "chromium";

    private static final int PHONE_HEIGHT = 740;
    private static final List<String> NAMES = List.of("chromium", "chromium-browser", "google-chrome", "chrome");

    /** Long, since a machine that builds may have little time for a browser; what is there at once costs none of it. */
    private static final double WAITS_MS = 120_000;

    private final Playwright playwright;
    private final Browser browser;

    Chrome() {
        PlaywrightAssertions.setDefaultAssertionTimeout(WAITS_MS);
        playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        browser = playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(found().orElseThrow(() -> new IllegalStateException(NeedsChromium.MISSING)))
                        .setTimeout(WAITS_MS)
                        .setArgs(List.of(
                                "--no-sandbox",
                                "--disable-gpu",
                                "--disable-dev-shm-usage",
                                "--disable-quic",
                                "--no-first-run",
                                "--disable-background-networking",
                                "--disable-component-update",
                                "--disable-sync")));
    }

    /** Where Chromium is on this machine, if it is. */
    static Optional<Path> found() {
        String named = System.getProperty(PLACE);
        if (named != null) {
            return Optional.of(Path.of(named)).filter(Files::isExecutable);
        }
        List<Path> folders = Stream.concat(
                        Stream.of("/usr/bin"),
                        Arrays.stream(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator)))
                .map(Path::of)
                .toList();
        return NAMES.stream()
                .flatMap(name -> folders.stream().map(folder -> folder.resolve(name)))
                .filter(Files::isExecutable)
                .findFirst();
    }

    /** A fresh visitor with a phone, in the light. */
    BrowserContext phone(boolean scripts) {
        return visitor(PHONE, ColorScheme.LIGHT, scripts);
    }

    /** The first button with a text that can be seen. */
    static Locator button(Page page, String text) {
        return page.locator("button", new Page.LocatorOptions().setHasText(text))
                .locator("visible=true")
                .first();
    }

    /** A fresh visitor. */
    BrowserContext visitor(int width, ColorScheme scheme, boolean scripts) {
        BrowserContext visitor = browser.newContext(new Browser.NewContextOptions()
                .setViewportSize(width, PHONE_HEIGHT)
                .setColorScheme(scheme)
                .setLocale("en-GB")
                .setJavaScriptEnabled(scripts));
        visitor.setDefaultTimeout(WAITS_MS);
        visitor.setDefaultNavigationTimeout(WAITS_MS);
        return visitor;
    }

    @Override
    public void close() {
        browser.close();
        playwright.close();
    }
}
