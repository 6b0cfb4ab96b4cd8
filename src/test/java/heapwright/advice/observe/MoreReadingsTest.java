package heapwright.advice.observe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.advice.fact.Reads;
import heapwright.advice.fact.Reads.Basis;
import heapwright.knowledge.Reading;
import heapwright.pile.Pile;
import heapwright.process.mixture.Materials;
import heapwright.process.mixture.Mixture;
import heapwright.process.mixture.MixtureCalculator;
import heapwright.process.mixture.PileMixture;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The readings of a pile")
class MoreReadingsTest {

    private static final String RECIPE = "'recipe': [{'material': 'leaves-mixed', 'amount': 90, 'unit': 'kg'},"
            + "{'material': 'wood-ash', 'amount': 4, 'unit': 'kg'}, {'material': 'soil', 'amount': 5, 'unit': 'kg'},"
            + "{'material': 'urea', 'amount': 1, 'unit': 'kg'}]";

    private static Pile pile(String fields) {
        return TestPile.of("'built': '2026-10-10', 'asOf': '2026-11-21', " + fields);
    }

    private static Optional<Mixture> mixture(Pile pile) {
        Materials materials = Materials.of(TestPile.KNOWLEDGE.materials(), pile.materials());
        return PileMixture.of(pile, materials, new MixtureCalculator());
    }

    private static Map<Reading, Reads> all(Pile pile) {
        return new Quantities(pile, TestPile.KNOWLEDGE, mixture(pile))
                .readings().stream().collect(Collectors.toMap(Reads::reading, Function.identity()));
    }

    private static Map<Reading, Reads> all(String fields) {
        return all(pile(fields));
    }

    private static void close(double low, double likely, double high, Reads reads) {
        assertEquals(low, reads.low(), 1e-9, reads::toString);
        assertEquals(likely, reads.likely(), 1e-9, reads::toString);
        assertEquals(high, reads.high(), 1e-9, reads::toString);
    }

    /** Of 100 kg four are ash and five soil; a kilogram of urea brings 460 g of nitrogen. */
    @Test
    @DisplayName("weigh ash, soil and fertiliser against the whole and against its volume")
    void loads() {
        Pile pile = pile(RECIPE);
        Map<Reading, Reads> all = all(pile);
        Mixture mix = mixture(pile).orElseThrow();
        assertEquals(4, all.get(Reading.ASH_LOAD).likely(), 1e-9);
        assertEquals(5, all.get(Reading.SOIL_SHARE).likely(), 1e-9);
        Reads nitrogen = all.get(Reading.FERTILISER_NITROGEN);
        close(
                460 / mix.settledM3().high(),
                460 / mix.settledM3().likely(),
                460 / mix.settledM3().low(),
                nitrogen);
        double ashDensity =
                TestPile.KNOWLEDGE.materials().get("wood-ash").densityKgM3().typical();
        assertEquals(
                4 * 1000 / ashDensity / mix.settledM3().likely(),
                all.get(Reading.ASH_VOLUME).likely(),
                1e-9);
        assertEquals(Basis.ESTIMATED, nitrogen.basis());
    }

    /** A kilogram of soda, which is dry, in a hundred of straw; what was cooked with salt does not count. */
    @Test
    @DisplayName("weigh salted stuff against all dry matter, and food not at all")
    void salt() {
        String straw = "{'material': 'straw-general', 'amount': 100, 'unit': 'kg'}";
        String soda = ", {'material': 'baking-soda', 'amount': 1, 'unit': 'kg'}";
        String food = ", {'material': 'cooked-food', 'amount': 20, 'unit': 'kg'}";
        double water = TestPile.KNOWLEDGE
                .materials()
                .get("straw-general")
                .moisturePct()
                .typical();
        double wet =
                TestPile.KNOWLEDGE.materials().get("baking-soda").moisturePct().typical();
        double dry = 1 - wet / 100;
        assertEquals(
                100 * dry / (100 - water + dry),
                all("'recipe': [" + straw + soda + "]").get(Reading.SALT_LOAD).likely(),
                1e-9);
        assertEquals(
                0,
                all("'recipe': [" + straw + food + "]").get(Reading.SALT_LOAD).likely(),
                1e-9);
        Map<Reading, Reads> added = all("'container': {'volume': {'value': 1, 'unit': 'm3'}}, 'log': [{'date':"
                + " '2026-11-05', 'added': [{'material': 'baking-soda', 'amount': 1, 'unit': 'kg'}]}]");
        assertTrue(added.get(Reading.SALT_LOAD).likely() < 1, added::toString);
    }

    /** A point either way a week: six weeks after it was built the recipe's moisture is six points less sure. */
    @Test
    @DisplayName("are less sure of the moisture with every week")
    void drift() {
        Pile pile = pile(RECIPE);
        Mixture mix = mixture(pile).orElseThrow();
        close(
                Math.max(0, mix.moisturePct().low() - 6),
                mix.moisturePct().likely(),
                Math.min(100, mix.moisturePct().high() + 6),
                all(pile).get(Reading.MOISTURE));
    }

    @Test
    @DisplayName("know the longest piece that was not chopped")
    void pieces() {
        String recipe = "'recipe': [{'material': 'twigs', 'amount': 1, 'unit': 'kg', 'piece': {'value': 40, 'unit':"
                + " 'cm'}, 'chopped': true}, {'material': 'twigs', 'amount': 1, 'unit': 'kg', 'piece': {'value': 20,"
                + " 'unit': 'cm'}}, {'material': 'twigs', 'amount': 1, 'unit': 'kg', 'piece': {'value': 5, 'unit':"
                + " 'cm'}}]";
        assertEquals(20, all(recipe).get(Reading.LONGEST_PIECE).likely());
        assertFalse(all(RECIPE).containsKey(Reading.LONGEST_PIECE));
    }

    @Test
    @DisplayName("know the measured density within a twentieth and the pH within two tenths")
    void measured() {
        Map<Reading, Reads> all =
                all("'log': [{'date': '2026-11-20', 'measured': {'bulkDensity': {'value': 600, 'unit':"
                        + " 'kg/m3'}, 'ph': {'value': 6, 'unit': 'pH'}}}]");
        close(570, 600, 630, all.get(Reading.WET_DENSITY));
        close(5.8, 6, 6.2, all.get(Reading.PH));
        Map<Reading, Reads> edge = all("'log': [{'date': '2026-11-20', 'measured': {'ph': {'value': 14, 'unit': 'pH'},"
                + " 'moisture': {'value': 99, 'unit': '%'}}}]");
        assertEquals(14, edge.get(Reading.PH).high(), "no more than there is");
        assertEquals(100, edge.get(Reading.MOISTURE).high());
    }

    @Test
    @DisplayName("of one kind are the latest of them")
    void latest() {
        Map<Reading, Reads> all =
                all("'log': [{'date': '2026-11-18', 'measured': {'core': {'value': 30, 'unit': 'C'}}},"
                        + "{'date': '2026-11-20', 'measured': {'core': {'value': 20, 'unit': 'C'}}},"
                        + "{'date': '2026-11-21', 'measured': {}}]");
        assertEquals(20, all.get(Reading.CORE_TEMPERATURE).likely());
        assertEquals(30, all.get(Reading.PEAK_TEMPERATURE).likely());
    }

    private static final String BIN = "'container': {'length': {'value': 2, 'unit': 'm'}, 'width': {'value': 1.5,"
            + " 'unit': 'm'}, 'height': {'value': 0.8, 'unit': 'm'}%s}";

    @Test
    @DisplayName("know height and volume from the bin, and rather from what was stated or measured")
    void size() {
        Map<Reading, Reads> bin = all(BIN.formatted(""));
        assertEquals(0.8, bin.get(Reading.HEIGHT).likely(), 1e-9);
        assertEquals(2.4, bin.get(Reading.VOLUME).likely(), 1e-9);
        Map<Reading, Reads> sunk = all(BIN.formatted("")
                + ", 'log': [{'date': '2026-10-12', 'measured': {'height': {'value': 0.5, 'unit':" + " 'm'}}}]");
        assertEquals(0.5, sunk.get(Reading.HEIGHT).likely(), 1e-9, "a height holds until it is measured anew");
        assertEquals(1.5, sunk.get(Reading.VOLUME).likely(), 1e-9);
        Map<Reading, Reads> stated = all("'container': {'volume': {'value': 3, 'unit': 'm3'}}");
        assertEquals(3, stated.get(Reading.VOLUME).likely(), 1e-9);
        Map<Reading, Reads> both = all("'container': {'volume': {'value': 3, 'unit': 'm3'}}, " + RECIPE);
        assertEquals(3, both.get(Reading.VOLUME).likely(), 1e-9);
        Map<Reading, Reads> recipe = all(RECIPE);
        assertEquals(Basis.ESTIMATED, recipe.get(Reading.VOLUME).basis());
        assertFalse(all("'name': 'x'").containsKey(Reading.VOLUME));
    }

    /** Where nobody told when it was built, a month before the first note: from half to twice that old. */
    @Test
    @DisplayName("are unsure of an age that nobody told")
    void age() {
        Pile pile = TestPile.of("'asOf': '2026-11-21', 'log': [{'date': '2026-11-21'}]");
        Map<Reading, Reads> all = all(pile);
        close(15, 30, 59, all.get(Reading.AGE));
        close(15, 30, 59, all.get(Reading.DAYS_SINCE_TURN));
        assertEquals(Basis.ESTIMATED, all.get(Reading.AGE).basis());
        close(42, 42, 42, all("'name': 'x'").get(Reading.AGE));
    }

    @Test
    @DisplayName("count days from the last full turn, today's too")
    void turned() {
        assertEquals(
                0,
                all("'log': [{'date': '2026-11-21', 'done': ['turned-fully']}]")
                        .get(Reading.DAYS_SINCE_TURN)
                        .likely());
    }

    @Test
    @DisplayName("of the hand are told from those of an oven")
    void hand() {
        assertTrue(Squeeze.from(new Reads(Reading.MOISTURE, 50, 55, 60, Basis.REPORTED)));
        assertFalse(Squeeze.from(new Reads(Reading.MOISTURE, 50, 55, 60, Basis.MEASURED)));
        assertFalse(Squeeze.from(new Reads(Reading.VOLUME, 1, 1, 1, Basis.REPORTED)));
    }
}
