package heapwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.casebook.Case;
import heapwright.casebook.Casebook;
import heapwright.casebook.Mentions;
import heapwright.report.Catalogue;
import heapwright.report.ExplainText;
import heapwright.report.ExplainText.Told;
import heapwright.report.Units;
import heapwright.report.Words;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@DisplayName("heapwright explain")
class ExplainCommandTest {

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private int run(String... line) {
        return new Program(new Terminal(
                        new ByteArrayInputStream(new byte[0]),
                        new PrintStream(out, true, StandardCharsets.UTF_8),
                        new PrintStream(err, true, StandardCharsets.UTF_8),
                        false))
                .run(line);
    }

    private String page() {
        return out.toString(StandardCharsets.UTF_8).replaceAll("\\s+", " ");
    }

    @Test
    @DisplayName("tells of everything that has an id what it says and how that is known")
    void everything() {
        ExplainText explain = new ExplainText(
                new Words(TestPile.KNOWLEDGE, Catalogue.english(), Units.METRIC), TestPile.ADVISOR.rules());
        assertTrue(explain.ids().size() > 1800, "only " + explain.ids().size());
        for (String id : explain.ids()) {
            List<Told> all = explain.of(id);
            assertFalse(all.isEmpty(), id);
            all.forEach(told -> {
                assertFalse(told.name().isBlank(), id);
                assertFalse(told.lines().isEmpty(), id);
                told.lines().forEach(l -> assertFalse(l.text().isBlank(), id + " " + l.key()));
            });
        }
    }

    @Test
    @DisplayName("tells of a cause what speaks for it and against it, each with its row, strength and source")
    void cause() {
        assertEquals(Program.OK, run("explain", "compacted"));
        assertTrue(page().contains("Cause compacted: material packed too densely"), page());
        assertTrue(page().contains("For: WEIGH-601 (strongly): it has slumped into a dense mass."), page());
        assertTrue(page().contains("Against: WEIGH-610 (strongly): "), page());
    }

    @Test
    @DisplayName("tells of all things that share an id")
    void shared() {
        assertEquals(Program.OK, run("explain", "rain-gets-in"));
        assertTrue(page().startsWith("Cause rain-gets-in: "), page());
        assertTrue(page().contains(" Sign rain-gets-in: "), page());
    }

    @Tag("thorough")
    @Test
    @DisplayName("names the case that fails without a rule")
    void holder() {
        assertEquals(Program.OK, run("explain", "WEIGH-5190", "--cases", "cases/seasons"));
        assertTrue(page().contains("Cases: 1 manure-and-straw.json, 2025-10-14"), page());
        assertTrue(page().matches(".*Speaks in: \\d+ .*manure-and-straw.json, 2025-10-14.*"), page());
    }

    @Tag("thorough")
    @Test
    @DisplayName("tells beside each rule in which cases it speaks, in none where it is silent")
    void index() {
        assertEquals(Program.OK, run("rules", "--cases", "cases/seasons", "weigh"));
        assertTrue(page().contains("Cases in which it speaks: 0. "), page());
        assertTrue(
                page().matches(
                                ".*WEIGH-5190 [^.]*\\. (?:(?!WEIGH).)*Cases in which it speaks: [1-9]\\d*\\. .*manure-and-straw.json.*"),
                page());
        assertEquals(Program.BAD_INPUT, run("rules", "--cases", "no-such", "weigh"));
    }

    @Test
    @DisplayName("names the cases that demand a remedy, tell a sign, hold a material or rest on a source")
    void mentions() {
        List<Case> seasons = new Casebook(TestPile.KNOWLEDGE).below(Path.of("cases", "seasons"));
        for (String id : List.of("mix-in-dry-carbon", "frozen-through", "straw-general", "let-others-lift", "COMMON")) {
            List<Case> found = Mentions.of(id, seasons);
            assertFalse(found.isEmpty(), id);
        }
        assertEquals(List.of(), Mentions.of("urea", seasons));
    }

    @Test
    @DisplayName("offers the nearest id for one that is not known, and ends with 2")
    void unknown() {
        assertEquals(Program.BAD_INPUT, run("explain", "too-wett"));
        assertTrue(err.toString(StandardCharsets.UTF_8).contains("Did you mean \"too-wet\"?"));
        assertEquals("", out.toString(StandardCharsets.UTF_8));
    }
}
