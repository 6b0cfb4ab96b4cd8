package heapwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.load.PileFiles;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A server in a process of its own, with far less memory than it needs. */
@DisplayName("A server whose memory runs out")
@Timeout(value = 10, unit = TimeUnit.MINUTES)
class OutOfMemoryIT {

    private static final int ROUNDS = 60;
    private static final int AT_ONCE = 8;
    private static final int LARGE = 1_000_000;

    private final HttpClient client =
            HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();

    @TempDir
    private Path folder;

    @Test
    @DisplayName("ends with a message and a code of failure instead of living on deaf")
    void ends() throws Exception {
        Process server = start("-XX:+UseSerialGC", "-Xmx26m");
        try {
            String address = address(server);
            byte[] document = PileFiles.ofBytes(LARGE, 1);
            for (int i = 0; i < ROUNDS && server.isAlive(); i++) {
                ask(address, document);
            }
            assertTrue(server.waitFor(1, TimeUnit.MINUTES), "it lives on");
        } finally {
            server.destroyForcibly();
        }
        String said = Files.readString(folder.resolve("err.txt"));
        assertEquals(Program.OUR_FAILURE, server.exitValue(), said);
        assertTrue(said.contains("heapwright: memory has run out"), said);
        assertFalse(said.contains("memory has run out") && said.split("memory has run out").length > 2, said);
    }

    /** Sends documents at the same moment; whatever comes of it, for the server may end meanwhile. */
    private void ask(String address, byte[] document) {
        List<java.util.concurrent.CompletableFuture<?>> answers = new ArrayList<>();
        for (int i = 0; i < AT_ONCE; i++) {
            HttpRequest request = HttpRequest.newBuilder(URI.create(address + "api/checkup"))
                    .timeout(Duration.ofSeconds(30))
                    .header("Content-Type", "application/json")
                    .POST(BodyPublishers.ofByteArray(document))
                    .build();
            answers.add(client.sendAsync(request, BodyHandlers.discarding()).exceptionally(fault -> null));
        }
        answers.forEach(java.util.concurrent.CompletableFuture::join);
    }

    private Process start(String... options) throws IOException {
        List<String> command = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString()));
        command.addAll(List.of(options));
        command.addAll(List.of(
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName(),
                ServeCommand.NAME,
                "--no-browser",
                "--port",
                "0",
                "--piles",
                folder.resolve("piles").toString()));
        return new ProcessBuilder(command)
                .redirectOutput(folder.resolve("out.txt").toFile())
                .redirectError(folder.resolve("err.txt").toFile())
                .start();
    }

    private String address(Process server) throws Exception {
        Path out = folder.resolve("out.txt");
        while (server.isAlive()) {
            String said = Files.exists(out) ? Files.readString(out).strip() : "";
            if (said.startsWith("http")) {
                return said;
            }
            Thread.sleep(50);
        }
        throw new AssertionError("it ended before it listened: " + Files.readString(folder.resolve("err.txt")));
    }
}
