package heapwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("heapwright serve")
class ServeCommandTest {

    @TempDir
    private Path folder;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @Test
    @DisplayName("says that a port is taken, where to look and what to write instead")
    void portTaken() throws IOException {
        try (ServerSocket other = new ServerSocket(0, 1, InetAddress.getByName("127.0.0.1"))) {
            String port = String.valueOf(other.getLocalPort());
            assertEquals(Program.BAD_INPUT, run("serve", "--no-browser", "--port", port, "--piles", folder.toString()));
            String said = err.toString(StandardCharsets.UTF_8);
            assertTrue(said.contains("port " + port + " is taken"), said);
            assertTrue(
                    said.contains("http://localhost:" + port + "/") && said.contains("heapwright serve --port"), said);
            assertTrue(!said.contains("Exception") && !said.contains("\tat "), said);
            assertEquals("", out.toString(StandardCharsets.UTF_8));
        }
    }

    @Test
    @DisplayName("refuses a port that no machine has")
    void noPort() {
        assertEquals(Program.BAD_INPUT, run("serve", "--port", "70000"));
        assertTrue(err.toString(StandardCharsets.UTF_8).contains("allowed are 0 to 65535"));
    }

    private int run(String... args) {
        return new Program(new Terminal(
                        new ByteArrayInputStream(new byte[0]),
                        new PrintStream(out, true, StandardCharsets.UTF_8),
                        new PrintStream(err, true, StandardCharsets.UTF_8),
                        false))
                .run(args);
    }
}
