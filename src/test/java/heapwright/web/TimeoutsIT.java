package heapwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** For whom the server waits, and for whom it does not. The limits are short here; the tests wait for what happens. */
@Timeout(value = 5, unit = TimeUnit.MINUTES)
class TimeoutsIT {

    private static final Duration LONG = Duration.ofMinutes(10);
    private static final Duration SHORT = Duration.ofMillis(500);

    /** Between two bytes of a slow sender. */
    private static final int PAUSE_MS = 50;

    private static final int PIECE = 64 << 10;

    private static final String HEAD = "POST /checkup HTTP/1.1\r\nHost: localhost\r\n"
            + "Content-Type: application/x-www-form-urlencoded\r\nContent-Length: ";

    @TempDir
    private Path folder;

    private static Socket connected(TestServer server) throws IOException {
        return connected(server.port());
    }

    private static Socket connected(int port) throws IOException {
        return new Socket(InetAddress.getLoopbackAddress(), port);
    }

    private static void send(Socket socket, String text) throws IOException {
        socket.getOutputStream().write(text.getBytes(StandardCharsets.ISO_8859_1));
        socket.getOutputStream().flush();
    }

    /** Lets a text trickle, and tells how many bytes were taken until the server had enough. */
    private static int trickle(Socket socket, String text) throws IOException {
        socket.setSoTimeout(PAUSE_MS);
        for (int i = 0; i < text.length(); i++) {
            try {
                send(socket, text.substring(i, i + 1));
                if (socket.getInputStream().read() < 0) {
                    return i;
                }
            } catch (SocketTimeoutException stillListening) {
                continue;
            } catch (IOException cutOff) {
                return i;
            }
        }
        throw new AssertionError("the server took all of it");
    }

    @Test
    void aHeadThatTricklesIsCutOff() throws IOException {
        try (TestServer server = TestServer.over(folder, new Timeouts(LONG, SHORT, SHORT));
                Socket socket = connected(server)) {
            trickle(socket, "GET / HTTP/1.1\r\nHost: localhost\r\nX-Slow: " + "x".repeat(5_000));
        }
    }

    @Test
    void aBodyThatTricklesIsCutOff() throws IOException {
        try (TestServer server = TestServer.over(folder, new Timeouts(LONG, SHORT, SHORT));
                Socket socket = connected(server)) {
            send(socket, HEAD + "5000\r\n\r\n");
            trickle(socket, "x".repeat(5_000));
        }
    }

    @Test
    void whoFallsSilentIsCutOff() throws IOException {
        try (TestServer server = TestServer.over(folder, new Timeouts(SHORT, LONG, SHORT));
                Socket socket = connected(server)) {
            send(socket, "GET / HTTP/1.1\r\nHost: local");
            InputStream in = socket.getInputStream();
            String last = new String(in.readAllBytes(), StandardCharsets.ISO_8859_1);
            assertTrue(last.isEmpty() || last.startsWith("HTTP/1.1 408"), last);
        }
    }

    /** A browser keeps its connection for many requests; they may take longer together than one may alone. */
    @Test
    void whoAsksQuicklyAndOftenIsServedOnOneConnection() throws IOException {
        try (TestServer server = TestServer.over(folder, new Timeouts(LONG, SHORT, SHORT));
                Socket socket = connected(server)) {
            long begin = System.nanoTime();
            int asked = 0;
            while (asked < 20 || System.nanoTime() - begin < 4 * SHORT.toNanos()) {
                send(socket, "GET /settings HTTP/1.1\r\nHost: localhost\r\n\r\n");
                assertEquals("HTTP/1.1 200 OK", answer(socket.getInputStream()), "request " + asked);
                asked++;
            }
        }
    }

    @Test
    void aRequestUnderWayIsFinishedBeforeTheServerStops() throws Exception {
        TestServer server = TestServer.over(folder, new Timeouts(LONG, LONG, Duration.ofMinutes(3)));
        int port = server.port();
        try (Socket socket = connected(server)) {
            String body = "sign.smells-sour=yes&go=result";
            send(socket, HEAD + body.length() + "\r\nExpect: 100-continue\r\n\r\n");
            assertEquals("HTTP/1.1 100 Continue", answer(socket.getInputStream()));
            CompletableFuture<Void> stopped = CompletableFuture.runAsync(server::close);
            while (listens(port)) {
                Thread.onSpinWait();
            }
            send(socket, body);
            assertEquals("HTTP/1.1 303 See Other", answer(socket.getInputStream()));
            stopped.get();
        }
        assertThrows(IOException.class, () -> connected(port).close());
    }

    private static boolean listens(int port) {
        try {
            connected(port).close();
            return true;
        } catch (IOException refused) {
            return false;
        }
    }

    /** Reads one answer with its body and gives its first line. */
    private static String answer(InputStream in) throws IOException {
        StringBuilder head = new StringBuilder();
        while (head.indexOf("\r\n\r\n") < 0) {
            int next = in.read();
            if (next < 0) {
                throw new IOException("cut off after: " + head);
            }
            head.append((char) next);
        }
        int length = 0;
        for (String line : head.toString().split("\r\n")) {
            if (line.toLowerCase(Locale.ROOT).startsWith("content-length:")) {
                length = Integer.parseInt(line.substring(line.indexOf(':') + 1).strip());
            }
        }
        in.readNBytes(length);
        return head.substring(0, head.indexOf("\r\n"));
    }

    private static final String FORM = "application/x-www-form-urlencoded";
    private static final String PARTS = "multipart/form-data; boundary=b";
    private static final String JSON = "application/json";
    private static final String HERE = "Host: localhost\r\n";

    private static final String LONG_BODY = "a".repeat(3 << 20);

    /** Within what is read, and more parts than Jetty would look at. */
    private static final String MANY_PARTS =
            "--b\r\nContent-Disposition: form-data; name=\"core\"\r\n\r\n1\r\n".repeat(15_000) + "--b--\r\n";

    /** A body that is answered without having been read to its end, and how. */
    private record Unread(String status, String request, String head, String type, String body) {
        @Override
        public String toString() {
            return request + " " + head.strip() + " " + type + " " + body.length();
        }
    }

    private static Stream<Unread> unread() {
        Stream<Unread> tooLong = Stream.of(FORM, PARTS)
                .flatMap(type -> Stream.of("/checkup", "/settings", "/api/checkup")
                        .map(path -> new Unread("413", "POST " + path, HERE, type, LONG_BODY)));
        Stream<Unread> inParts = Stream.of("/checkup", "/settings", "/api/checkup")
                .map(path -> new Unread("415", "POST " + path, HERE, PARTS, MANY_PARTS));
        Stream<Unread> forOthers = Stream.of(
                new Unread("404", "POST /nowhere", HERE, FORM, LONG_BODY),
                new Unread("405", "PUT /knowledge", HERE, FORM, LONG_BODY),
                new Unread("421", "POST /checkup", "Host: heap.example\r\n", FORM, LONG_BODY),
                new Unread("403", "POST /checkup", HERE + "Origin: http://heap.example\r\n", FORM, LONG_BODY),
                new Unread("413", "GET /settings", HERE, FORM, LONG_BODY),
                new Unread("200", "GET /checkup", HERE, PARTS, MANY_PARTS));
        return Stream.of(tooLong, inParts, forOthers).flatMap(bodies -> bodies);
    }

    private static Stream<Unread> unreadInChunks() {
        return Stream.of(
                new Unread("413", "POST /checkup", HERE, FORM, LONG_BODY),
                new Unread("413", "POST /settings", HERE, FORM, LONG_BODY),
                new Unread("413", "POST /api/checkup", HERE, JSON, LONG_BODY),
                new Unread("415", "POST /checkup", HERE, PARTS, LONG_BODY),
                new Unread("415", "POST /checkup", HERE, PARTS, MANY_PARTS),
                new Unread("404", "POST /nowhere", HERE, FORM, LONG_BODY),
                new Unread("200", "GET /checkup", HERE, FORM, LONG_BODY));
    }

    /** A browser that is answered while it still sends does not show the answer: it says that the connection broke. */
    @ParameterizedTest
    @MethodSource("unread")
    void whoSendsWhatIsNotReadIsHeardOutAndTold(Unread unread) throws Exception {
        String length = "Content-Length: " + unread.body().length() + "\r\n";
        assertEquals("HTTP/1.1 " + unread.status(), answerByPieces(unread, length, piece -> piece, ""));
    }

    @ParameterizedTest
    @MethodSource("unreadInChunks")
    void whoSendsItInChunksIsHeardOutAndToldToo(Unread unread) throws Exception {
        UnaryOperator<String> chunk = piece -> Integer.toHexString(piece.length()) + "\r\n" + piece + "\r\n";
        String answer = answerByPieces(unread, "Transfer-Encoding: chunked\r\n", chunk, "0\r\n\r\n");
        assertEquals("HTTP/1.1 " + unread.status(), answer);
    }

    /** Sends a body by pieces that a server has time to answer between, and gives the head of the answer. */
    private String answerByPieces(Unread unread, String length, UnaryOperator<String> wrapped, String end)
            throws Exception {
        try (TestServer server = TestServer.over(folder);
                Socket socket = connected(server)) {
            send(
                    socket,
                    unread.request() + " HTTP/1.1\r\n" + unread.head() + "Content-Type: " + unread.type() + "\r\n"
                            + length + "\r\n");
            for (int sent = 0; sent < unread.body().length(); sent += PIECE) {
                String piece =
                        unread.body().substring(sent, Math.min(unread.body().length(), sent + PIECE));
                send(socket, wrapped.apply(piece));
                Thread.sleep(20);
            }
            send(socket, end);
            return new String(socket.getInputStream().readNBytes(12), StandardCharsets.ISO_8859_1);
        }
    }
}
