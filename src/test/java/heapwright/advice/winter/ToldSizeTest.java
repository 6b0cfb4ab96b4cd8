package heapwright.advice.winter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.pile.Pile;
import heapwright.process.heat.Constants;
import heapwright.process.heat.Day;
import heapwright.process.heat.Event;
import heapwright.process.heat.Retrace;
import heapwright.process.mixture.MixtureCalculator;
import heapwright.process.mixture.PileMixture;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Invented: 840 L of leaves and manure on 10 October. */
@DisplayName("The size told")
class ToldSizeTest {

    private static final String RECIPE =
            "{'material': 'leaves-mixed', 'amount': 540, 'unit': 'L'}, {'material': 'manure-horse-straw', 'amount': 300, 'unit': 'L'}";
    private static final double LOOSE = 0.84;

    private static Pile pile(String container, String log) {
        return TestPile.of("'built': '2026-10-10', 'asOf': '2026-11-05', 'place': {" + WinterPiles.COLD_YEAR
                + "}, 'container': {" + container + "}, 'recipe': [" + RECIPE + "], 'log': [" + log + "]");
    }

    private static String heap(double volume) {
        return "'kind': 'open-heap', 'volume': {'value': " + volume + ", 'unit': 'm3'}";
    }

    private static String sides(String kind, double length, double height) {
        return "'kind': '" + kind + "', 'length': {'value': " + length
                + ", 'unit': 'm'}, 'width': {'value': 1, 'unit': 'm'}," + "'height': {'value': " + height
                + ", 'unit': 'm'}";
    }

    private static double start(Pile pile) {
        return WinterPiles.model(pile).start().matter().volumeM3();
    }

    private static double kilograms(Pile pile) {
        var matter = WinterPiles.model(pile).start().matter();
        return matter.dryKg() + matter.waterKg();
    }

    static Stream<List<Object>> sizes() {
        return Stream.of(
                List.of(heap(0.5), 0.5),
                List.of(heap(0.84), 0.84),
                List.of(heap(1.9), 1.9),
                List.of(sides("open-heap", 1.9, 1), 1.9),
                List.of(sides("slatted-bin", 0.8, 1), 0.8));
    }

    @ParameterizedTest
    @MethodSource("sizes")
    @DisplayName("is that of the model on the day it was built")
    void onTheDay(List<Object> told) {
        assertEquals((double) told.get(1), start(pile((String) told.get(0), "")), 1e-9);
    }

    @Test
    @DisplayName("says how much there is where it is more than the recipe makes as filled by hand")
    void more() {
        double recipe = kilograms(pile("'kind': 'open-heap'", ""));
        assertEquals(recipe, kilograms(pile(heap(0.5), "")), 1e-6);
        assertEquals(recipe, kilograms(pile(heap(LOOSE), "")), 1e-6);
        assertEquals(1.9 / LOOSE * recipe, kilograms(pile(heap(1.9), "")), 1e-6);
        assertEquals(recipe, kilograms(pile(sides("slatted-bin", 1.9, 1), "")), 1e-6, "a bin need not be full");
    }

    @Test
    @DisplayName("is one with the weight that doses and readings go by")
    void oneWeight() {
        Pile pile = pile(heap(1.9), "");
        double weighed = PileMixture.asItLies(pile, WinterPiles.materials(pile), new MixtureCalculator())
                .orElseThrow()
                .masses()
                .wet()
                .likely();
        assertEquals(weighed, kilograms(pile), 1e-6);
    }

    @Test
    @DisplayName("of a pile fed later is not that of its first load")
    void fed() {
        String later = "{'date': '2026-10-20', 'added': [{'material': 'leaves-mixed', 'amount': 540, 'unit': 'L'}]}";
        Pile pile = pile(heap(1.9), later);
        assertEquals(kilograms(pile("'kind': 'open-heap'", "")), kilograms(pile), 1e-6);
    }

    /** Twenty cubic metres are logged on a twentieth of one: the size told makes less of what was added, too. */
    @Test
    @DisplayName("makes less of what was added as well, where size and stuff cannot belong together")
    void addedToo() {
        Pile tiny = pile(
                "'kind': 'unknown', 'length': {'value': 1, 'unit': 'm'}, 'width': {'value': 0.05, 'unit': 'm'},"
                        + " 'height': {'value': 1, 'unit': 'm'}",
                "{'date': '2026-10-20', 'added': [{'material': 'npk-10-10-10', 'amount': 20000, 'unit': 'L'}]}");
        PileModel model = WinterPiles.model(tiny);
        double added = model.events().stream()
                .filter(Event.Add.class::isInstance)
                .mapToDouble(e -> ((Event.Add) e).matter().nitrogenKg())
                .sum();
        assertTrue(added < 100, "kg of nitrogen in 50 L: " + added);
    }

    private static Day last(Pile pile) {
        PileModel model = WinterPiles.model(pile);
        return Retrace.of(model.setup(), model.cores(), Constants.standard())
                .course()
                .last();
    }

    private static String height(String date, double metres) {
        return "{'date': '" + date + "', 'measured': {'height': {'value': " + metres + ", 'unit': 'm'}}}";
    }

    @Test
    @DisplayName("as a height measured since is that of the model on that day, and it settles on from there")
    void measured() {
        String ground = sides("open-heap", 1.2, 0.7);
        for (double metres : List.of(0.35, 0.5, 0.65)) {
            assertEquals(
                    metres, last(pile(ground, height("2026-11-05", metres))).heightM(), 0.02 * metres);
        }
        Day later = last(pile(ground, height("2026-10-20", 0.5)));
        assertTrue(later.heightM() < 0.5 && later.heightM() > 0.35, "after two weeks more " + later.heightM());
        double plain = last(pile(ground, "")).heightM();
        assertTrue(plain < 0.7, "untold it settles as the recipe does: " + plain);
    }

    @Test
    @DisplayName("is never denser than stuff can lie")
    void densest() {
        Day day = last(pile(sides("open-heap", 1.2, 0.7), height("2026-11-05", 0.05)));
        assertTrue(day.massKg() / day.volumeM3() < 1000, day.massKg() / day.volumeM3() + " kg/m³");
    }
}
