package heapwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.web.site.Site;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.ConnectException;
import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** What the server does with requests that are not a gardener's. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SafetyIT {

    private static final Pattern SEAL = Pattern.compile("name=\"_seal\" value=\"([0-9a-f]{64})\"");

    private Path folder;

    private TestServer server;
    private final HttpClient client = HttpClient.newHttpClient();

    @BeforeAll
    void start(@TempDir Path given) {
        folder = given;
        server = TestServer.over(folder.resolve("piles"));
    }

    @AfterAll
    void stop() {
        server.close();
    }

    private HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return client.send(HttpRequest.newBuilder(URI.create(server.at(path))).build(), BodyHandlers.ofString());
    }

    private HttpResponse<String> post(String path, String form, String... headers)
            throws IOException, InterruptedException {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(server.at(path)))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString(form));
        if (headers.length > 0) {
            request.headers(headers);
        }
        return client.send(request.build(), BodyHandlers.ofString());
    }

    /** Sends what a well-behaved client would not. */
    private String raw(String request) throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), server.port())) {
            socket.setSoTimeout(60_000);
            socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
            socket.getOutputStream().flush();
            InputStream in = socket.getInputStream();
            return new String(in.readNBytes(4_096), StandardCharsets.ISO_8859_1);
        }
    }

    private String withHost(String host) throws IOException {
        return raw("GET / HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n");
    }

    @Test
    void onlyTheNamesOfThisMachineAreServed() throws IOException {
        for (String own : List.of("localhost:" + server.port(), "127.0.0.1:" + server.port(), "[::1]", "LOCALHOST")) {
            assertTrue(withHost(own).startsWith("HTTP/1.1 200"), own);
        }
        for (String foreign : List.of("heap.example", "localhost.example", "127.0.0.1.example:80", "192.0.2.1")) {
            assertTrue(withHost(foreign).startsWith("HTTP/1.1 421"), foreign);
        }
    }

    @Test
    void whoNamesNoMachineIsTurnedAway() throws IOException {
        assertTrue(raw("GET / HTTP/1.0\r\n\r\n").startsWith("HTTP/1.1 421"));
        assertTrue(raw("GET / HTTP/1.1\r\nConnection: close\r\n\r\n").startsWith("HTTP/1.1 400"));
        assertTrue(raw("GET / HTTP/1.1\r\nHost: localhost\r\nHost: heap.example\r\n\r\n")
                .startsWith("HTTP/1.1 400"));
    }

    @Test
    void onlyTheLoopbackAddressListens() throws IOException {
        assertEquals(1, server.listensOn().size());
        assertTrue(
                server.listensOn().get(0).getAddress().isLoopbackAddress(),
                server.listensOn().toString());
        for (InetAddress other : otherAddresses()) {
            assertFalse(reached(other, server.port()), other + " answers");
        }
    }

    /** The check above can fail: a server that is told to listen everywhere is reached at the same addresses. */
    @Test
    void aServerToldToListenEverywhereIsReachedFromElsewhere() throws IOException {
        try (WebServer open = WebServer.start(server.site(), new WebOptions("0.0.0.0", 0), fault -> {})) {
            assertTrue(open.listensOn().get(0).getAddress().isAnyLocalAddress());
            for (InetAddress other : otherAddresses()) {
                assertTrue(reached(other, open.port()), other + " does not answer");
            }
        }
    }

    /** Addresses of this machine beside the usual one; Linux takes all of 127.0.0.0/8 as its own. */
    private static List<InetAddress> otherAddresses() throws IOException {
        List<InetAddress> others = new ArrayList<>();
        if (System.getProperty("os.name").equals("Linux")) {
            others.add(InetAddress.getByName("127.0.0.2"));
        }
        for (NetworkInterface card : Collections.list(NetworkInterface.getNetworkInterfaces())) {
            Collections.list(card.getInetAddresses()).stream()
                    .filter(address -> address instanceof Inet4Address && !address.isLoopbackAddress())
                    .forEach(others::add);
        }
        return others;
    }

    private static boolean reached(InetAddress address, int port) throws IOException {
        try (Socket socket = new Socket()) {
            socket.connect(new InetSocketAddress(address, port), 30_000);
            return true;
        } catch (ConnectException | SocketTimeoutException refused) {
            return false;
        }
    }

    @Test
    void everyAnswerForbidsWhatIsNotOurs() throws IOException, InterruptedException {
        for (String path : List.of("/", "/nowhere", "/api/signs", "/api/nowhere", "/checkup", "/settings")) {
            HttpResponse<String> answer = get(path);
            String policy =
                    answer.headers().firstValue("Content-Security-Policy").orElse("");
            assertTrue(policy.startsWith("default-src 'none'"), path);
            assertFalse(policy.contains("unsafe"), path);
            assertEquals(
                    "nosniff",
                    answer.headers().firstValue("X-Content-Type-Options").orElse(""),
                    path);
            assertEquals("DENY", answer.headers().firstValue("X-Frame-Options").orElse(""), path);
            assertTrue(answer.headers().firstValue("Server").isEmpty(), path);
        }
    }

    @Test
    void pagesHoldNoScriptOrStyleInLine() throws IOException, InterruptedException {
        for (String path : List.of("/", "/checkup?y=smells-sour", "/result?y=smells-sour", "/why/example", "/build")) {
            String page = get(path).body();
            assertFalse(page.contains("<script>") || page.contains("<style") || page.contains(" style="), path);
            assertFalse(Pattern.compile(" on[a-z]+=").matcher(page).find(), path);
        }
    }

    @Test
    void aWriteNeedsTheSealOfThisVisit() throws IOException, InterruptedException {
        assertEquals(403, post("/piles", "name=Heap&built=2026-11-01").statusCode());
        HttpResponse<String> page = get("/piles");
        Matcher seal = SEAL.matcher(page.body());
        assertTrue(seal.find());
        String form = "name=Heap&built=2026-11-01&_seal=" + seal.group(1);
        assertEquals(403, post("/piles", form).statusCode(), "without the cookie");
        String cookie = page.headers().firstValue("Set-Cookie").orElseThrow();
        assertTrue(cookie.contains("HttpOnly") && cookie.contains("SameSite=Strict"), cookie);
        String visit = cookie.substring(0, cookie.indexOf(';'));
        assertEquals(
                403,
                post("/piles", form.replace(seal.group(1), "0".repeat(64)), "Cookie", visit)
                        .statusCode());
        assertEquals(303, post("/piles", form, "Cookie", visit).statusCode());
        assertTrue(Files.exists(folder.resolve("piles/heap.json")));
    }

    @Test
    void nothingIsTakenFromAnotherSite() throws IOException, InterruptedException {
        String own = "http://localhost:" + server.port();
        assertEquals(303, post("/checkup", "sign.smoke=yes", "Origin", own).statusCode());
        assertEquals(
                403,
                post("/checkup", "sign.smoke=yes", "Origin", "http://heap.example")
                        .statusCode());
        assertEquals(403, post("/checkup", "sign.smoke=yes", "Origin", "null").statusCode());
        assertEquals(
                403,
                post("/checkup", "sign.smoke=yes", "Sec-Fetch-Site", "cross-site")
                        .statusCode());
    }

    @Test
    void noPathIsMadeFromAName() throws IOException, InterruptedException {
        Files.writeString(folder.resolve("secret.json"), "{\"heapwright\":\"pile/1\",\"name\":\"secret\"}");
        for (String path : List.of(
                "/piles/..%2Fsecret",
                "/piles/%2e%2e%2fsecret",
                "/piles/..%5Csecret",
                "/assets/x/..%2F..%2Fmessages.properties",
                "/assets/x/..%2fpage.css",
                "/api/piles/..%2Fsecret")) {
            HttpResponse<String> answer = get(path);
            assertTrue(answer.statusCode() == 404 || answer.statusCode() == 400, path + " " + answer.statusCode());
            assertFalse(answer.body().contains("secret\""), path);
        }
    }

    @Test
    void whatIsTooLargeIsTurnedAway() throws IOException, InterruptedException {
        String large = "x".repeat((int) WebServer.LARGEST_BODY + 1);
        assertEquals(413, post("/checkup", large).statusCode());
        HttpRequest api = HttpRequest.newBuilder(URI.create(server.at("/api/checkup")))
                .header("Content-Type", "application/json")
                .POST(BodyPublishers.ofString(large))
                .build();
        HttpResponse<String> answer = client.send(api, BodyHandlers.ofString());
        assertEquals(413, answer.statusCode());
        assertTrue(answer.headers().firstValue("Content-Type").orElse("").startsWith("application/problem+json"));
        assertTrue(raw("GET / HTTP/1.1\r\nHost: localhost\r\nX: " + "x".repeat(9_000) + "\r\n\r\n")
                .startsWith("HTTP/1.1 431"));
    }

    @Test
    void whatHidesItsLengthIsMeasuredAsItComes() throws IOException, InterruptedException {
        byte[] large = "x".repeat((int) WebServer.LARGEST_BODY + 1).getBytes(StandardCharsets.UTF_8);
        for (String path : List.of("/checkup", "/api/checkup")) {
            HttpRequest unmeasured = HttpRequest.newBuilder(URI.create(server.at(path)))
                    .header(
                            "Content-Type",
                            path.startsWith("/api") ? "application/json" : "application/x-www-form-urlencoded")
                    .POST(BodyPublishers.ofInputStream(() -> new ByteArrayInputStream(large)))
                    .build();
            assertEquals(413, client.send(unmeasured, BodyHandlers.ofString()).statusCode(), path);
        }
    }

    @Test
    void aDocumentNestedTooDeepIsAProblemAndNotACrash() throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(URI.create(server.at("/api/checkup")))
                .header("Content-Type", "application/json")
                .POST(BodyPublishers.ofString("[".repeat(100_000)))
                .build();
        HttpResponse<String> answer = client.send(request, BodyHandlers.ofString());
        assertEquals(422, answer.statusCode());
    }

    @Test
    void noAnswerShowsWhereTheProgramFailed() throws IOException, InterruptedException {
        String broken = raw("GET /%zz HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n");
        assertTrue(broken.startsWith("HTTP/1.1 400"), broken);
        for (String body :
                List.of(broken, get("/nowhere").body(), get("/api/nowhere").body())) {
            assertFalse(body.contains("Exception") || body.contains("at heapwright") || body.contains("Jetty"), body);
        }
        assertEquals(404, get("/nowhere").statusCode());
        assertEquals(405, post("/knowledge", "").statusCode());
    }

    @Test
    void ourOwnFailureIsOneSentence() throws IOException, InterruptedException {
        Clock broken = Clock.offset(Clock.fixed(Instant.MAX, ZoneOffset.UTC), Duration.ofDays(1));
        Site site = server.site();
        Site failing = Site.of(site.advisor(), site.journal(), site.catalogue(), broken, "test");
        try (WebServer failed = WebServer.start(failing, WebOptions.loopback(0), fault -> {})) {
            for (String path : List.of("checkup?y=soggy")) {
                HttpResponse<String> answer = client.send(
                        HttpRequest.newBuilder(URI.create(failed.address() + path))
                                .build(),
                        BodyHandlers.ofString());
                assertEquals(500, answer.statusCode(), path);
                assertTrue(answer.body().contains("our fault"), answer.body());
                assertFalse(answer.body().contains("Exception") || answer.body().contains(".java"), answer.body());
            }
        }
    }

    @Test
    void whatAPersonTypesIsShownAsText() throws IOException, InterruptedException {
        String evil = "%3Cscript%3Ealert(1)%3C%2Fscript%3E%22%27";
        for (String path :
                List.of("/knowledge?q=" + evil, "/build?r=" + evil + "~1~bucket~", "/checkup?core=" + evil)) {
            assertFalse(get(path).body().contains("<script>alert"), path);
        }
    }

    @Test
    void aTakenPortIsSaidSo() {
        CannotListenException taken = assertThrows(
                CannotListenException.class,
                () -> WebServer.start(server.site(), WebOptions.loopback(server.port()), fault -> {})
                        .close());
        assertEquals(CannotListenException.Why.PORT_TAKEN, taken.why());
    }
}
