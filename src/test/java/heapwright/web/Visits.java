package heapwright.web;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.api.io.TempDir;

/** A server over a folder of its own and a browser, for the jobs that a gardener does at the pages. */
@TestInstance(Lifecycle.PER_CLASS)
abstract class Visits {

    Path folder;
    TestServer server;
    Chrome chrome;

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
}
