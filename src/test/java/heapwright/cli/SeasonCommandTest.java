package heapwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("heapwright season")
class SeasonCommandTest {

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private int run(String in, String... args) {
        out.reset();
        err.reset();
        Terminal terminal = new Terminal(
                new ByteArrayInputStream(in.getBytes(StandardCharsets.UTF_8)),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                false);
        return new Program(terminal).run(args);
    }

    @Test
    @DisplayName("needs no file, and says then what year it stands on")
    void withoutFile() {
        assertEquals(Program.OK, run("", "season"));
        assertTrue(out.toString(StandardCharsets.UTF_8).contains("usual year with a cold winter"));
        assertEquals(Program.OK, run("", "season", "--full"));
        assertTrue(out.toString(StandardCharsets.UTF_8).contains("Local rules come first"));
        assertEquals("", err.toString(StandardCharsets.UTF_8));
    }

    @Test
    @DisplayName("takes place and kind from a pile's file")
    void ofAPile() {
        String pile =
                "{\"heapwright\": \"pile/1\", \"name\": \"Bin by the shed\", \"asOf\": \"2026-11-30\", \"container\": {\"kind\": \"fed-bin\"},"
                        + "\"place\": {\"monthlyMeanC\": [-9,-9,-3,4,11,15,18,16,10,4,-2,-7]}}";
        assertEquals(Program.OK, run(pile, "season", "--full", "-"));
        String said = out.toString(StandardCharsets.UTF_8);
        assertTrue(said.startsWith("Bin by the shed: what to do,"), said);
        assertTrue(said.contains("Keep filling from the top"), said);
        assertFalse(said.contains("usual year"), said);
    }

    @Test
    @DisplayName("writes the whole year for programs")
    void json() {
        assertEquals(Program.OK, run("", "season", "--json"));
        String said = out.toString(StandardCharsets.UTF_8);
        assertTrue(said.contains("\"yearKnown\" : \"assumed\""), said);
        assertTrue(said.contains("\"for\" : \"leaves\""), said);
    }

    @Test
    @DisplayName("says nothing of seasons while the heap smokes")
    void danger() {
        String pile = "{\"heapwright\": \"pile/1\", \"asOf\": \"2026-11-30\","
                + "\"log\": [{\"date\": \"2026-11-30\", \"seen\": [\"smoke\"]}]}";
        assertEquals(Program.OK, run(pile, "season", "-"));
        String said = out.toString(StandardCharsets.UTF_8);
        assertTrue(said.contains("fire service"), said);
        assertFalse(said.contains("Kitchen scraps"), said);
        assertTrue(said.contains("heapwright checkup --full"), "the rest stands where it is said to stand: " + said);
    }

    @Test
    @DisplayName("refuses a file that is not there")
    void noFile() {
        assertEquals(Program.BAD_INPUT, run("", "season", "no-such-pile.json"));
        assertTrue(err.toString(StandardCharsets.UTF_8).contains("there is no file"));
    }
}
