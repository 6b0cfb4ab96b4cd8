package heapwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Requests that nobody could make sense of are told so, and never called a failure of the program. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@Timeout(120)
class RubbishIT {

    private static final String FORM = "application/x-www-form-urlencoded";
    private static final String PARTS = "multipart/form-data; boundary=XX";
    private static final String PART = "--XX\r\nContent-Disposition: form-data; name=\"core\"\r\n\r\n";
    private static final String END = "\r\n--XX--\r\n";

    private TestServer server;

    @BeforeAll
    void start(@TempDir Path folder) {
        server = TestServer.over(folder.resolve("piles"));
    }

    @AfterAll
    void stop() {
        server.close();
    }

    /** What is sent, by what should come of it. */
    record Sent(String what, String status, String request) {
        @Override
        public String toString() {
            return what;
        }
    }

    private static Sent get(String status, String path) {
        return new Sent("GET " + path, status, "GET " + path + " HTTP/1.1\r\n" + HOST + "\r\n");
    }

    private static final String HOST = "Host: localhost\r\nConnection: close\r\n";

    private static Sent post(String what, String status, String path, String type, String body) {
        String head = "POST " + path + " HTTP/1.1\r\n" + HOST + "Content-Type: " + type + "\r\n";
        return new Sent(what, status, head + "Content-Length: " + body.length() + "\r\n\r\n" + body);
    }

    private static Sent chunked(String what, String status, String path, String type, String body) {
        String head = "POST " + path + " HTTP/1.1\r\n" + HOST + "Content-Type: " + type + "\r\n";
        return new Sent(what, status, head + "Transfer-Encoding: chunked\r\n\r\n" + body);
    }

    static List<Sent> rubbish() {
        String large = "x".repeat((int) WebServer.LARGEST_BODY + 1);
        String field = "x".repeat((int) WebServer.LARGEST_BODY - 1_000);
        return List.of(
                get("400", "/piles/%u002e"),
                get("400", "/api/piles/%u002e"),
                get("400", "/piles/%zz"),
                get("400", "/piles/%ff"),
                get("400", "/piles/%"),
                get("400", "http://localhost/piles/%u002e"),
                post("an alphabet nobody knows", "400", "/checkup", FORM + "; charset=nonesuch", "core=1"),
                post("an alphabet without a name", "400", "/checkup", FORM + "; charset=%%%", "core=1"),
                post("a document in such", "400", "/api/checkup", "application/json; charset=nonesuch", "{}"),
                post("a document without a name", "400", "/api/checkup", "application/json; charset=%%%", "{}"),
                chunked("a chunk of no length", "400", "/checkup", FORM, "zz\r\nabc\r\n"),
                chunked("a chunk of no length, later", "400", "/checkup", FORM, "3\r\na=1\r\nqq\r\n"),
                chunked("a document in such a chunk", "400", "/api/checkup", "application/json", "zz\r\nabc\r\n"),
                post("parts without a boundary", "415", "/checkup", "multipart/form-data", PART + "1" + END),
                post("parts without an end", "415", "/checkup", PARTS, PART + "1\r\n"),
                post("no parts at all", "415", "/checkup", PARTS, "garbage"),
                post("parts of nothing", "415", "/checkup", PARTS, ""),
                post("a part without a head", "415", "/checkup", PARTS, "--XX\r\nfoo\r\n\r\nbar" + END),
                post("garbage for settings", "415", "/settings", PARTS, "garbage"),
                post(
                        "parts in an alphabet nobody knows",
                        "415",
                        "/checkup",
                        PARTS,
                        PART.replace("core", "_charset_") + "nonesuch\r\n" + PART + "1" + END),
                post("parts larger than allowed", "413", "/checkup", PARTS, PART + large + END),
                post("a large field in a part", "415", "/checkup", PARTS, PART + field + END),
                post("many parts", "415", "/checkup", PARTS, (PART + "1\r\n").repeat(5_000) + END),
                post("sound parts", "415", "/checkup", PARTS, PART.replace("core", "sign.smoke") + "yes" + END),
                post("parts in capitals", "415", "/checkup", PARTS.replace("multipart", "MULTIPART"), PART + "1" + END),
                post("parts for a document", "415", "/api/checkup", PARTS, PART + "{}" + END),
                chunked("large parts of no told length", "415", "/checkup", PARTS, chunks(PART + large + END)),
                chunked("a large form of no told length", "413", "/checkup", FORM, chunks("core=" + large)),
                chunked(
                        "a large document of no told length",
                        "413",
                        "/api/checkup",
                        "application/json",
                        chunks(large)));
    }

    private static String chunks(String body) {
        return Integer.toHexString(body.length()) + "\r\n" + body + "\r\n0\r\n\r\n";
    }

    private String answer(String request) throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), server.port())) {
            socket.setSoTimeout(60_000);
            socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
            socket.getOutputStream().flush();
            InputStream in = socket.getInputStream();
            return new String(in.readNBytes(4_096), StandardCharsets.ISO_8859_1);
        }
    }

    @ParameterizedTest
    @MethodSource("rubbish")
    void isNotServed(Sent sent) throws IOException {
        String answer = answer(sent.request());
        assertTrue(answer.startsWith("HTTP/1.1 " + sent.status() + " "), answer);
        assertFalse(answer.contains("our fault") || answer.contains("Exception"), answer);
    }

    @Test
    void brokenEscapesInKeptAnswersAreTold() throws Exception {
        FormClient person = new FormClient(server.at(""));
        FormClient.Form keep = person.form("/result?y=smells-sour", "/piles").with("name", "Heap");
        assertEquals(400, person.send(keep.with("answers", "y=%zz")).statusCode());
        assertEquals(303, person.send(keep).statusCode());
    }

    @Test
    void aServerToldToListenOnEveryAddressOfBothKindsAnswersItsOwn() throws IOException, InterruptedException {
        try (WebServer open = WebServer.start(server.site(), new WebOptions("::", 0), fault -> {})) {
            assertEquals("http://localhost:" + open.port() + "/", open.address());
            for (String own : List.of("http://127.0.0.1:" + open.port(), "http://[::1]:" + open.port())) {
                if (own.contains("[") && !reachable("::1", open.port())) {
                    continue;
                }
                assertEquals(200, new FormClient(own).get("/settings").statusCode(), own);
            }
            for (Map.Entry<String, String> host : Map.of(
                            "[::]",
                            "200",
                            "[::1]",
                            "200",
                            "heap.example",
                            "421",
                            "192.0.2.1",
                            "421",
                            "[2001:db8::1]",
                            "421")
                    .entrySet()) {
                try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), open.port())) {
                    String request = "GET / HTTP/1.1\r\nConnection: close\r\nHost: " + host.getKey() + "\r\n\r\n";
                    socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
                    String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.ISO_8859_1);
                    assertTrue(answer.startsWith("HTTP/1.1 " + host.getValue()), host + ": " + answer);
                }
            }
        }
    }

    private static boolean reachable(String address, int port) {
        try {
            new Socket(address, port).close();
            return true;
        } catch (IOException noSuchKindHere) {
            return false;
        }
    }
}
