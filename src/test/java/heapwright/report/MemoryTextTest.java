package heapwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What is asked of earlier advice")
class MemoryTextTest {

    private static List<String> lines(String step) {
        Words words = new Words(TestPile.KNOWLEDGE, Catalogue.english(), Units.METRIC);
        return new MemoryText(words)
                .lines(TestPile.of("'asOf': '2026-11-20', 'built': '2026-10-01', 'advised': [{'date': '2026-11-01',"
                        + " 'step': '" + step + "', 'look': '2026-11-15'}],"
                        + " 'log': [{'date': '2026-11-20', 'seen': ['smells-earthy']}]"));
    }

    @Test
    @DisplayName("is whether work helped, once its day to look has come")
    void work() {
        assertTrue(
                lines("turn-fully").get(0).contains("Did it help?"),
                lines("turn-fully").toString());
    }

    @Test
    @DisplayName("is nothing of rest: to leave a pile alone is no work that could have helped")
    void rest() {
        assertEquals(List.of(), lines("leave-alone"));
        assertEquals(List.of(), lines("give-it-a-week"));
    }
}
