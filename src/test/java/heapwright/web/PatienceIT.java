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
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** For whom the server waits, and for whom it does not. The limits are short here; the tests wait for what happens. */
@Timeout(value = 5, unit = TimeUnit.MINUTES)
class PatienceIT {

    private static final Duration LONG = Duration.ofMinutes(10);
    private static final Duration SHORT = Duration.ofMillis(500);

    /** Between two bytes of a slow sender. */
    private static final int PAUSE_MS = 50;

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
        try (TestServer server = TestServer.over(folder, new Patience(LONG, SHORT, SHORT));
                Socket socket = connected(server)) {
            trickle(socket, "GET / HTTP/1.1\r\nHost: localhost\r\nX-Slow: " + "x".repeat(5_000));
        }
    }

    @Test
    void aBodyThatTricklesIsCutOff() throws IOException {
        try (TestServer server = TestServer.over(folder, new Patience(LONG, SHORT, SHORT));
                Socket socket = connected(server)) {
            send(socket, HEAD + "5000\r\n\r\n");
            trickle(socket, "x".repeat(5_000));
        }
    }

    @Test
    void whoFallsSilentIsCutOff() throws IOException {
        try (TestServer server = TestServer.over(folder, new Patience(SHORT, LONG, SHORT));
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
        try (TestServer server = TestServer.over(folder, new Patience(LONG, SHORT, SHORT));
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
        TestServer server = TestServer.over(folder, new Patience(LONG, LONG, Duration.ofMinutes(3)));
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

    /** A browser that is answered while it still sends does not show the answer: it says that the connection broke. */
    @Test
    void whoSendsABodyThatIsTooLongIsHeardOutAndTold() throws Exception {
        try (TestServer server = TestServer.over(folder)) {
            for (String type : List.of("application/x-www-form-urlencoded", "multipart/form-data; boundary=b")) {
                for (String path : List.of("/checkup", "/settings", "/api/checkup")) {
                    String body = "a".repeat(3 << 20);
                    assertEquals("HTTP/1.1 413", answerByPieces(server, path, type, body), path + " " + type);
                }
            }
        }
    }

    /** Sends a body by pieces that a server has time to answer between, and gives the head of the answer. */
    private static String answerByPieces(TestServer server, String path, String type, String body) throws Exception {
        byte[] all = body.getBytes(StandardCharsets.ISO_8859_1);
        int piece = 64 << 10;
        try (Socket socket = connected(server)) {
            send(
                    socket,
                    "POST " + path + " HTTP/1.1\r\nHost: localhost\r\nContent-Type: " + type + "\r\nContent-Length: "
                            + all.length + "\r\n\r\n");
            for (int sent = 0; sent < all.length; sent += piece) {
                socket.getOutputStream().write(all, sent, Math.min(piece, all.length - sent));
                socket.getOutputStream().flush();
                Thread.sleep(20);
            }
            return new String(socket.getInputStream().readNBytes(12), StandardCharsets.ISO_8859_1);
        }
    }
}
