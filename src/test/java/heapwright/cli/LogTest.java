package heapwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

@DisplayName("The log")
class LogTest {

    private static final Logger OURS = LoggerFactory.getLogger("heapwright.invented");
    private static final Logger THEIRS = LoggerFactory.getLogger("org.example.invented");

    private final ByteArrayOutputStream told = new ByteArrayOutputStream();
    private final PrintStream to = new PrintStream(told, true, StandardCharsets.UTF_8);

    /** The log is the platform's, and so is what the tests before and after hear. */
    @AfterEach
    void silent() {
        Log.server(new PrintStream(OutputStream.nullOutputStream()), false, fault -> {});
    }

    private String told() {
        return told.toString(StandardCharsets.UTF_8);
    }

    @Test
    @DisplayName("tells warnings of a server with their trace, and nothing lighter")
    void server() {
        List<Throwable> seen = new ArrayList<>();
        Log.server(to, false, seen::add);
        OURS.info("light");
        THEIRS.info("light");
        assertEquals("", told());
        Exception fault = new IllegalStateException("broken", new IllegalArgumentException("the cause"));
        THEIRS.warn("A thing failed", fault);
        assertEquals(List.of(fault), seen);
        assertTrue(
                told().matches(
                                "(?s)\\d{4}-\\d\\d-\\d\\d \\d\\d:\\d\\d:\\d\\d WARNING org.example.invented: A thing failed\\R.*"),
                told());
        assertTrue(told().contains("IllegalStateException: broken"), told());
        assertTrue(told().contains("at heapwright.cli.LogTest.server(LogTest.java:"), told());
        assertTrue(told().contains("caused by java.lang.IllegalArgumentException: the cause"), told());
    }

    @Test
    @DisplayName("tells all of ours and the news of others when it is asked for")
    void debug() {
        Log.debug(to);
        OURS.debug("heard");
        THEIRS.info("heard too");
        THEIRS.debug("too much");
        assertTrue(told().contains("heapwright.invented: heard"), told());
        assertTrue(told().contains("org.example.invented: heard too"), told());
        assertFalse(told().contains("too much"), told());
    }

    @Test
    @DisplayName("keeps what was sent from looking like a line of its own")
    void oneLine() {
        Log.server(to, false, fault -> {});
        OURS.warn("sent: {}", "a\r\n2026-01-01 00:00:00 SEVERE heapwright: forged");
        assertEquals(1, told().lines().count(), told());
    }

    @Test
    @DisplayName("is opened by --debug at any command")
    void option() {
        Program program = new Program(new Terminal(new ByteArrayInputStream(new byte[0]), to, to, false));
        assertEquals(Program.OK, program.run("signs", "--debug"));
        OURS.warn("heard");
        assertTrue(told().contains("heapwright.invented: heard"), told());
    }
}
