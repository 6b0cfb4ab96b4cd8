package heapwright.pile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import heapwright.pile.LoggedDays.Day;
import heapwright.pile.TypedEntry.Added;
import heapwright.pile.TypedEntry.Figure;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("An entry that is put into a document")
class TypedIntoTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 10);
    private static final String NOTE = "From a logger";

    private static byte[] document(String fields) {
        return ("{'heapwright': 'pile/1'" + fields + "}").replace('\'', '"').getBytes(StandardCharsets.UTF_8);
    }

    private static JsonNode tree(byte[] document) throws IOException {
        return new ObjectMapper().readTree(document);
    }

    private static TypedEntry empty() {
        return new TypedEntry(DAY, List.of(), List.of(), Map.of(), List.of(), List.of(), Map.of(), " ");
    }

    private static TypedEntry note(String note) {
        return new TypedEntry(DAY, List.of(), List.of(), Map.of(), List.of(), List.of(), Map.of(), note);
    }

    @Test
    @DisplayName("is empty only when it tells nothing of any kind")
    void isEmpty() {
        assertTrue(empty().empty());
        assertFalse(note("x").empty());
        List<String> none = List.of();
        List<String> one = List.of("soggy");
        Map<String, Figure> no = Map.of();
        List<Added> nothing = List.of();
        Map<String, String> untested = Map.of();
        assertFalse(new TypedEntry(DAY, one, none, no, none, nothing, untested, "").empty());
        assertFalse(new TypedEntry(DAY, none, one, no, none, nothing, untested, "").empty());
        assertFalse(new TypedEntry(DAY, none, none, Map.of("core", new Figure(50, "C")), none, nothing, untested, "")
                .empty());
        assertFalse(new TypedEntry(DAY, none, none, no, one, nothing, untested, "").empty());
        assertFalse(new TypedEntry(DAY, none, none, no, none, List.of(new Added("straw", 1, "bucket")), untested, "")
                .empty());
        assertFalse(new TypedEntry(DAY, none, none, no, none, nothing, Map.of("bag", "good"), "").empty());
    }

    @Test
    @DisplayName("stands with all that was typed, and nothing that was not")
    void all() throws IOException {
        TypedEntry full = new TypedEntry(
                DAY,
                List.of("soggy"),
                List.of("smells-sour"),
                Map.of("core", new Figure(50, "C")),
                List.of("turned-fully"),
                List.of(new Added("straw", 2, "bucket")),
                Map.of("bag", "good", "ph", "poor"),
                " after rain ");
        String entry =
                tree(full.into(document(""))).get("log").get(0).toString().replace('"', '\'');
        assertEquals(
                "{'date':'2026-11-10','seen':['soggy'],'notSeen':['smells-sour'],"
                        + "'measured':{'core':{'value':50.0,'unit':'C'}},'done':['turned-fully'],"
                        + "'added':[{'material':'straw','amount':2.0,'unit':'bucket'}],"
                        + "'tested':[{'test':'bag','result':'good'},{'test':'ph','result':'poor'}],"
                        + "'note':'after rain'}",
                entry);
        assertEquals(
                "{'date':'2026-11-10','note':'x'}",
                tree(note("x").into(document(""))).get("log").get(0).toString().replace('"', '\''));
    }

    @Test
    @DisplayName("stands after those of its day and before later ones, and moves an earlier day of advice on")
    void place() throws IOException {
        byte[] before = document(", 'asOf': '2026-11-09', 'log': [{'date': '2026-11-09'}, {'date': '2026-11-10',"
                + " 'note': 'first'}, {'date': '2026-11-11'}]");
        JsonNode tree = tree(note("second").into(before));
        assertEquals(
                List.of("2026-11-09", "2026-11-10", "2026-11-10", "2026-11-11"),
                tree.get("log").findValuesAsText("date"));
        assertEquals("second", tree.get("log").get(2).get("note").asText());
        assertEquals("2026-11-10", tree.get("asOf").asText());
        assertEquals(
                "2026-11-12",
                tree(note("x").into(document(", 'asOf': '2026-11-12'")))
                        .get("asOf")
                        .asText());
        assertFalse(tree(note("x").into(document(""))).has("asOf"));
    }

    @Test
    @DisplayName("of a logger replaces the logger's own of the same day and leaves what a person noted")
    void logger() throws IOException {
        byte[] before = document(", 'asOf': '2026-11-09', 'log': [{'date': '2026-11-09', 'note': '" + NOTE + ": old'},"
                + " {'date': '2026-11-10', 'note': '" + NOTE + ": old'}, {'date': '2026-11-10', 'note': 'mine'},"
                + " {'date': '2026-11-12', 'seen': ['steam']}]");
        Day day = new Day(
                DAY, OptionalDouble.of(55.26), OptionalDouble.of(48.04), OptionalDouble.empty(), ": 24 readings");
        JsonNode log = tree(new LoggedDays(List.of(day), NOTE).into(before)).get("log");
        assertEquals(List.of(NOTE + ": old", "mine", NOTE + ": 24 readings"), log.findValuesAsText("note"));
        assertEquals(List.of("2026-11-09", "2026-11-10", "2026-11-10", "2026-11-12"), log.findValuesAsText("date"));
        JsonNode measured = log.get(2).get("measured");
        assertEquals(55.3, measured.get("core").get("value").asDouble());
        assertEquals(48.0, measured.get("coreLowest").get("value").asDouble());
        assertEquals("C", measured.get("core").get("unit").asText());
        assertFalse(measured.has("outdoor"));
    }

    @Test
    @DisplayName("of a logger moves the day of advice on to its last day, and never back")
    void advance() throws IOException {
        List<Day> days = List.of(
                new Day(DAY, OptionalDouble.of(50), OptionalDouble.empty(), OptionalDouble.empty(), ""),
                new Day(DAY.plusDays(1), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.of(-2), ""));
        LoggedDays logged = new LoggedDays(days, NOTE);
        assertEquals(
                "2026-11-11",
                tree(logged.into(document(", 'asOf': '2026-11-10'")))
                        .get("asOf")
                        .asText());
        assertEquals(
                "2026-11-20",
                tree(logged.into(document(", 'asOf': '2026-11-20'")))
                        .get("asOf")
                        .asText());
        JsonNode bare = tree(logged.into(document("")));
        assertFalse(bare.has("asOf"));
        assertEquals(
                -2,
                bare.get("log")
                        .get(1)
                        .get("measured")
                        .get("outdoor")
                        .get("value")
                        .asDouble());
    }
}
