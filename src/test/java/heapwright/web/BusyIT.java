package heapwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.load.PileFiles;
import heapwright.web.work.Bounds;
import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** What the server does when more is asked of it than it can do at once. */
@DisplayName("A busy server")
@Timeout(300)
class BusyIT {

    private static final int LARGE = 80_000;
    private static final Duration LONG = Duration.ofMinutes(2);

    private final HttpClient client =
            HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();

    @TempDir
    private Path folder;

    private static HttpRequest checkup(TestServer server, byte[] document) {
        return HttpRequest.newBuilder(URI.create(server.at("/api/checkup")))
                .header("Content-Type", "application/json")
                .POST(BodyPublishers.ofByteArray(document))
                .build();
    }

    private int status(TestServer server, String path) throws IOException, InterruptedException {
        return client.send(HttpRequest.newBuilder(URI.create(server.at(path))).build(), BodyHandlers.discarding())
                .statusCode();
    }

    @Test
    @DisplayName("asks who brings one large document too many to come again, and serves everybody else meanwhile")
    void oneTooMany() throws Exception {
        byte[] document = PileFiles.ofBytes(LARGE, 1);
        try (TestServer server = TestServer.over(folder, new Bounds(2, 50, LONG, LARGE, 1, LONG));
                Socket slow = new Socket(InetAddress.getLoopbackAddress(), server.port())) {
            String head = "POST /api/checkup HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\n"
                    + "Content-Length: " + document.length + "\r\nExpect: 100-continue\r\n\r\n";
            slow.getOutputStream().write(head.getBytes(StandardCharsets.ISO_8859_1));
            // It says "continue" when it begins to take the body in: from then on the one place is taken.
            byte[] told = slow.getInputStream().readNBytes("HTTP/1.1 100".length());
            assertEquals("HTTP/1.1 100", new String(told, StandardCharsets.ISO_8859_1));

            HttpResponse<String> second = client.send(checkup(server, document), BodyHandlers.ofString());
            assertEquals(503, second.statusCode());
            assertEquals("5", second.headers().firstValue("Retry-After").orElse("none"));
            assertTrue(second.body().contains("\"status\" : 503"), second.body());

            assertEquals(200, status(server, "/"));
            assertEquals(200, status(server, "/piles"));
            byte[] small = PileFiles.ofBytes(LARGE / 2, 2);
            assertEquals(
                    200,
                    client.send(checkup(server, small), BodyHandlers.ofString()).statusCode());

            slow.getOutputStream().write(document);
            byte[] rest = slow.getInputStream().readNBytes(200);
            assertTrue(new String(rest, StandardCharsets.ISO_8859_1).contains("HTTP/1.1 200"), "the first is served");
            assertEquals(
                    200,
                    client.send(checkup(server, document), BodyHandlers.ofString())
                            .statusCode());
        }
    }

    @Test
    @DisplayName("answers everybody, with advice or with 503, and goes on as before")
    void crowd() throws Exception {
        try (TestServer server = TestServer.over(folder, new Bounds(1, 3, LONG, LARGE, 1, LONG))) {
            List<CompletableFuture<HttpResponse<String>>> answers = new ArrayList<>();
            for (int i = 0; i < 30; i++) {
                byte[] document = PileFiles.ofBytes(LARGE / 4, i);
                answers.add(client.sendAsync(checkup(server, document), BodyHandlers.ofString()));
            }
            List<Integer> all = answers.stream().map(a -> a.join().statusCode()).toList();
            assertTrue(all.stream().allMatch(s -> s == 200 || s == 503), all.toString());
            assertTrue(all.contains(200) && all.contains(503), all.toString());
            assertEquals(200, status(server, "/checkup"));
        }
    }

    @Test
    @DisplayName("tells a person in words that it is busy")
    void inWords() throws Exception {
        try (TestServer server = TestServer.over(folder, new Bounds(1, 1, Duration.ZERO, LARGE, 1, LONG))) {
            HttpResponse<String> answer = client.send(
                    HttpRequest.newBuilder(URI.create(server.at("/checkup"))).build(), BodyHandlers.ofString());
            assertEquals(503, answer.statusCode());
            assertTrue(answer.body().contains("Too much is being asked at once"), answer.body());
            assertEquals("5", answer.headers().firstValue("Retry-After").orElse("none"));
        }
    }
}
