package heapwright.web;

import heapwright.advice.Advisor;
import heapwright.journal.Journal;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.KnowledgeReader;
import heapwright.report.Catalogue;
import heapwright.web.site.Site;
import heapwright.web.work.Bounds;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetSocketAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;

/** The page on a port of its own, over a folder of its own, on a day that stays the same. */
final class TestServer implements AutoCloseable {

    static final Clock DAY = Clock.fixed(Instant.parse("2026-11-25T10:00:00Z"), ZoneOffset.UTC);

    private final WebServer server;
    private final Site site;

    private TestServer(WebServer server, Site site) {
        this.server = server;
        this.site = site;
    }

    static TestServer over(Path folder) {
        return over(folder, Catalogue.english());
    }

    /** A server whose day the clock tells. */
    static TestServer over(Path folder, Clock clock) {
        return over(folder, Catalogue.english(), Timeouts.USUAL, Bounds.usual(), clock);
    }

    static TestServer over(Path folder, Timeouts patience) {
        return over(folder, Catalogue.english(), patience);
    }

    static TestServer over(Path folder, Bounds bounds) {
        return over(folder, Catalogue.english(), Timeouts.USUAL, bounds);
    }

    static TestServer over(Path folder, Catalogue catalogue) {
        return over(folder, catalogue, Timeouts.USUAL);
    }

    private static TestServer over(Path folder, Catalogue catalogue, Timeouts patience) {
        return over(folder, catalogue, patience, Bounds.usual());
    }

    private static TestServer over(Path folder, Catalogue catalogue, Timeouts patience, Bounds bounds) {
        return over(folder, catalogue, patience, bounds, DAY);
    }

    private static TestServer over(Path folder, Catalogue catalogue, Timeouts patience, Bounds bounds, Clock clock) {
        // A server in a test tells what a server tells: warnings, and not that it started and stopped.
        Logger.getLogger("").setLevel(Level.WARNING);
        Knowledge knowledge = KnowledgeReader.packed();
        Advisor advisor = Advisor.packed(knowledge);
        Site site = Site.of(advisor, new Journal(folder, knowledge.vocabulary(), clock), catalogue, clock, "test");
        return new TestServer(WebServer.start(site, WebOptions.loopback(0), patience, bounds, fault -> {}), site);
    }

    /** Puts the example that the page shows into a folder, as a pile of its own. */
    static void plantExample(Path folder) throws IOException {
        try (InputStream in = WebServer.class.getResourceAsStream("example.json")) {
            Files.copy(in, folder.resolve("heap-by-the-birches.json"));
        }
    }

    int port() {
        return server.port();
    }

    List<InetSocketAddress> listensOn() {
        return server.listensOn();
    }

    List<String> routes() {
        return server.addresses();
    }

    Site site() {
        return site;
    }

    /** An address of the server; the path begins with a slash. */
    String at(String path) {
        return "http://localhost:" + port() + path;
    }

    @Override
    public void close() {
        server.close();
    }
}
