package heapwright.advice.winter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("What would have kept a pile warm")
class HindsightTest {

    private static final String BIN = WinterPiles.bin("none", "none");

    private static String damp(String day, int moisture) {
        return "{'date': '" + day + "', 'measured': {'moisture': {'value': " + moisture + ", 'unit': '%'}}},";
    }

    /** A pile whose core was 3 °C on the day of advice. */
    private static List<Hindsight> of(String built, String asOf, String container, String recipe, String log) {
        return Hindsight.of(Story.of(WinterPiles.model(TestPile.of("'built': '" + built + "', 'asOf': '" + asOf
                + "', 'place': {" + WinterPiles.COLD_YEAR + "}, 'container': {" + container + "}, 'recipe': [" + recipe
                + "], 'log': [" + log + "{'date': '" + asOf
                + "', 'measured': {'core': {'value': 3, 'unit': 'C'}}}]"))));
    }

    private static boolean tells(List<Hindsight> all, Choice choice) {
        return all.stream().anyMatch(h -> h.choice() == choice);
    }

    @Test
    @DisplayName("is told from the seventh day on")
    void fromTheSeventhDay() {
        String log = damp("2026-09-10", 25);
        assertEquals(List.of(), of("2026-09-10", "2026-09-16", BIN, WinterPiles.GOOD, log));
        assertTrue(tells(of("2026-09-10", "2026-09-17", BIN, WinterPiles.GOOD, log), Choice.WETTER));
    }

    @ParameterizedTest(name = "{0} % when it was built")
    @CsvSource({"28, true", "58, false"})
    @DisplayName("goes by the water that was measured when it was built, not by the recipe")
    void asMeasured(int moisture, boolean wetter) {
        List<Hindsight> all = of("2026-10-10", "2026-11-05", BIN, WinterPiles.GOOD, damp("2026-10-10", moisture));
        assertEquals(wetter, tells(all, Choice.WETTER), all.toString());
        assertFalse(tells(all, Choice.DRIER), all.toString());
    }

    @Test
    @DisplayName("names building it four weeks earlier, and as warm as it was then, where it was built into the cold")
    void earlier() {
        String mix = "{'material': 'leaves-shredded', 'amount': 60, 'unit': 'bucket'},"
                + "{'material': 'manure-horse-straw', 'amount': 36, 'unit': 'bucket'}";
        List<Hindsight> all = of("2026-11-01", "2026-12-06", "'kind': 'open-heap'", mix, "");
        assertTrue(tells(all, Choice.EARLIER), all.toString());
    }

    @Test
    @DisplayName("names what clearly helps and no more than three, the most warm days first")
    void bestFirst() {
        List<Hindsight> all = of("2026-09-10", "2026-11-05", BIN, WinterPiles.GOOD, damp("2026-09-10", 30));
        assertTrue(all.size() > 1 && all.size() <= 3, all.toString());
        for (Hindsight one : all) {
            assertTrue(one.moreWarmDays().likely() >= 2 && one.warmerC().likely() >= 2, one.toString());
        }
        inOrder(all);
        inOrder(of("2026-09-10", "2026-09-22", BIN, WinterPiles.GOOD, damp("2026-09-10", 70)));
    }

    private static void inOrder(List<Hindsight> all) {
        for (int i = 1; i < all.size(); i++) {
            assertTrue(worth(all.get(i)) <= worth(all.get(i - 1)), all.toString());
        }
    }

    /** A day of 40 °C counts as much as ten kelvin on average. */
    private static double worth(Hindsight one) {
        return one.moreWarmDays().likely() + one.warmerC().likely() / 10;
    }
}
