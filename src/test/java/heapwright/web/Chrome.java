package heapwright.web;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** The Chromium of the system, without a window. */
final class Chrome implements AutoCloseable {

    static final int PHONE = 360;
    static final int DESK = 1200;

    private static final int PHONE_HEIGHT = 740;
    private static final String USUAL_PLACE = "/usr/bin/chromium";

    private final Playwright playwright;
    private final Browser browser;

    Chrome() {
        playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        browser = playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(Path.of(System.getProperty("chromium", USUAL_PLACE)))
                        .setArgs(List.of(
                                "--no-sandbox",
                                "--disable-gpu",
                                "--disable-quic",
                                "--no-first-run",
                                "--disable-background-networking",
                                "--disable-component-update",
                                "--disable-sync")));
    }

    /** A fresh visitor. */
    BrowserContext visitor(int width, ColorScheme scheme, boolean scripts) {
        return browser.newContext(new Browser.NewContextOptions()
                .setViewportSize(width, PHONE_HEIGHT)
                .setColorScheme(scheme)
                .setJavaScriptEnabled(scripts));
    }

    @Override
    public void close() {
        browser.close();
        playwright.close();
    }
}
