package heapwright.pile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import heapwright.pile.Advised.Outcome;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Work that is taken on, in a document")
class AdvisedDocumentTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 10);
    private static final LocalDate LOOK = LocalDate.of(2026, 11, 18);
    private static final Advised TURN = new Advised(DAY, "turn-fully", "", LOOK);
    private static final Advised BURY = new Advised(DAY, "bury-food", "two spades", LOOK);

    private static AdvisedDocument document(String fields) {
        String json = ("{'heapwright': 'pile/1', 'name': 'Heap'" + fields + "}").replace('\'', '"');
        return new AdvisedDocument(json.getBytes(StandardCharsets.UTF_8));
    }

    private static JsonNode tree(AdvisedDocument document) throws IOException {
        return new ObjectMapper().readTree(document.bytes());
    }

    private static List<String> told(AdvisedDocument document) throws IOException {
        return tree(document).get("advised").findValuesAsText("step").stream().toList();
    }

    @Test
    @DisplayName("is added after what is there, once for a day")
    void keeping() throws IOException {
        AdvisedDocument first = document("").keeping(List.of(TURN));
        assertEquals(List.of("turn-fully"), told(first));
        assertEquals("Heap", tree(first).get("name").asText());
        assertEquals(List.of("bury-food", "turn-fully"), told(first.keeping(List.of(BURY, TURN))));
        Advised later = new Advised(DAY.plusDays(1), "turn-fully", "", LOOK);
        assertEquals(List.of("turn-fully", "turn-fully"), told(first.keeping(List.of(later))));
        assertTrue(new String(first.bytes(), StandardCharsets.UTF_8).endsWith("}\n"));
    }

    @Test
    @DisplayName("is told anew while it is open, and stands once its outcome is told")
    void again() throws IOException {
        Advised done = TURN.with(Outcome.DONE, DAY);
        Advised helped = TURN.with(Outcome.HELPED, LOOK);
        AdvisedDocument first = document("").keeping(List.of(TURN));
        assertEquals(
                1, told(first.telling(List.of(done)).keeping(List.of(TURN))).size());
        assertEquals(
                2, told(first.telling(List.of(helped)).keeping(List.of(TURN))).size());
    }

    @Test
    @DisplayName("takes what came of it, and no step but the one that was meant")
    void telling() throws IOException {
        AdvisedDocument both = document(", 'asOf': '2026-11-12'").keeping(List.of(TURN, BURY));
        JsonNode tree = tree(both.telling(List.of(TURN.with(Outcome.HELPED, LOOK))));
        assertEquals("helped", tree.get("advised").get(0).get("outcome").asText());
        assertEquals("2026-11-18", tree.get("advised").get(0).get("told").asText());
        assertFalse(tree.get("advised").get(1).has("told"));
        assertEquals("2026-11-18", tree.get("asOf").asText());
        Advised other = new Advised(DAY.plusDays(1), "turn-fully", "", LOOK).with(Outcome.HELPED, LOOK);
        assertFalse(tree(both.telling(List.of(other))).get("advised").get(0).has("told"));
    }

    @Test
    @DisplayName("keeps the outcome that was told first, and a day of advice that is later or not named")
    void stands() throws IOException {
        AdvisedDocument told = document(", 'asOf': '2026-11-20'")
                .keeping(List.of(TURN))
                .telling(List.of(TURN.with(Outcome.HELPED, LOOK)));
        assertEquals("2026-11-20", tree(told).get("asOf").asText());
        JsonNode again = tree(told.telling(List.of(TURN.with(Outcome.DID_NOT_HELP, LOOK))));
        assertEquals("helped", again.get("advised").get(0).get("outcome").asText());
        assertFalse(tree(document("").keeping(List.of(TURN)).telling(List.of(TURN.with(Outcome.HELPED, LOOK))))
                .has("asOf"));
    }

    @Test
    @DisplayName("asks from its day to look on, until its outcome is told")
    void asks() {
        assertFalse(TURN.asks(LOOK.minusDays(1)));
        assertTrue(TURN.asks(LOOK));
        assertTrue(TURN.with(Outcome.DONE, DAY).asks(LOOK));
        assertFalse(TURN.with(Outcome.NOT_DONE, DAY).asks(LOOK));
        assertEquals(DAY, TURN.since());
        assertEquals(LOOK, TURN.with(Outcome.DONE, LOOK).since());
        assertEquals(Optional.of(DAY), TURN.with(Outcome.DONE, DAY.minusDays(1)).told());
    }
}
