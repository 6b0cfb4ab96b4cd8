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
import java.nio.file.Files;
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
            assertTrue(said.startsWith("heapwright: port " + port + " is taken"), said);
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

    @Test
    @DisplayName("says that a host is unknown or elsewhere, and not that the port is taken")
    void wrongHost() {
        for (String[] wrong : new String[][] {
            {"nonesuch.invalid", "no machine is known by that name"},
            {"192.0.2.7", "no address of this machine"},
        }) {
            err.reset();
            int code = run("serve", "--no-browser", "--port", "0", "--host", wrong[0], "--piles", folder.toString());
            String said = err.toString(StandardCharsets.UTF_8);
            assertEquals(Program.BAD_INPUT, code, said);
            assertTrue(said.contains("--host " + wrong[0]) && said.contains(wrong[1]), said);
            assertTrue(!said.contains("taken") && !said.contains("Exception"), said);
            assertEquals("", out.toString(StandardCharsets.UTF_8));
        }
    }

    @Test
    @DisplayName("says that a folder is none")
    void wrongFolder() throws IOException {
        Path file = Files.writeString(folder.resolve("notes.txt"), "x");
        assertEquals(Program.BAD_INPUT, run("serve", "--no-browser", "--port", "0", "--piles", file.toString()));
        assertTrue(err.toString(StandardCharsets.UTF_8).contains("notes.txt\" is not a folder"));
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
