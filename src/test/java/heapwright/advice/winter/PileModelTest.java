package heapwright.advice.winter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.knowledge.Sign;
import heapwright.pile.Pile;
import heapwright.process.climate.LocalYear;
import heapwright.process.heat.Event;
import heapwright.process.heat.Matter;
import heapwright.process.heat.PileState;
import heapwright.process.heat.Weather;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("A pile file as the model takes it")
class PileModelTest {

    @Test
    @DisplayName("needs a recipe")
    void recipe() {
        Pile pile = WinterPiles.pile(WinterPiles.COLD_YEAR, WinterPiles.bin("none", "none"), "", "");
        assertTrue(PileModel.of(pile, WinterPiles.materials(pile), List.of(), List.of())
                .isEmpty());
    }

    private static Optional<WhyUnmodelled> lacking(String fields) {
        Pile pile = TestPile.of("'asOf': '2026-11-05', " + fields);
        Optional<WhyUnmodelled> why = PileModel.lacking(pile, WinterPiles.materials(pile));
        assertEquals(
                why.isEmpty(),
                PileModel.of(pile, WinterPiles.materials(pile), List.of(), List.of())
                        .isPresent());
        return why;
    }

    private static String leaves(double kg) {
        return "'built': '2026-10-10', 'recipe': [{'material': 'leaves-mixed', 'amount': " + kg + ", 'unit': 'kg'}]";
    }

    /** 900 days before 5 November 2026 is 19 May 2024; the largest home heap is 50 t, or 100 m³ where no recipe tells. */
    @Test
    @DisplayName("is none where it is too old, too large, cold by kind, next to nothing or not told")
    void lacking() {
        assertEquals(Optional.empty(), lacking(leaves(200)));
        assertEquals(Optional.of(WhyUnmodelled.NO_RECIPE), lacking("'built': '2026-10-10'"));
        assertEquals(Optional.of(WhyUnmodelled.TOO_LITTLE), lacking(leaves(0.01)));
        assertEquals(Optional.empty(), lacking(leaves(0.02)));
        assertEquals(Optional.of(WhyUnmodelled.COLD_KIND), lacking(leaves(50) + ", 'container': {'kind': 'worm-bin'}"));
        assertEquals(Optional.empty(), lacking(leaves(200).replace("2026-10-10", "2024-05-19")));
        assertEquals(Optional.of(WhyUnmodelled.TOO_OLD), lacking(leaves(200).replace("2026-10-10", "2024-05-18")));
        assertEquals(Optional.empty(), lacking(leaves(50_000)));
        assertEquals(Optional.of(WhyUnmodelled.TOO_LARGE), lacking(leaves(50_001)));
        String fed =
                ", 'log': [{'date': '2026-10-20', 'added': [{'material': 'leaves-mixed', 'amount': 2, 'unit': 'kg'}]}]";
        assertEquals(Optional.of(WhyUnmodelled.TOO_LARGE), lacking(leaves(49_999) + fed), "with what was fed later");
    }

    private static Optional<PileModel> typical(String fields) {
        Pile pile = TestPile.of("'built': '2026-10-10', 'asOf': '2026-11-05', 'container': {" + fields + "}");
        return PileModel.typical(pile, WinterPiles.materials(pile));
    }

    @Test
    @DisplayName("of unknown stuff is a usual mix in the size told, else in that of its kind")
    void typical() {
        PileModel told = typical("'kind': 'open-heap', 'volume': {'value': 2, 'unit': 'm3'}")
                .orElseThrow();
        assertTrue(told.typical());
        assertEquals(2, told.start().matter().volumeM3(), 1e-9);
        assertEquals(0.56, told.start().matter().moisture(), 1e-9);
        assertTrue(
                typical("'kind': 'slatted-bin'").orElseThrow().start().matter().volumeM3() > 0.1);
        assertEquals(Optional.empty(), typical("'kind': 'worm-bin'"));
        assertEquals(Optional.empty(), typical("'kind': 'open-heap', 'volume': {'value': 101, 'unit': 'm3'}"));
        assertTrue(typical("'kind': 'open-heap', 'volume': {'value': 100, 'unit': 'm3'}")
                .isPresent());
    }

    @Test
    @DisplayName("begins on the day on which the first of its stuff went in, with that alone")
    void begun() {
        String day = "{'material': 'leaves-mixed', 'amount': 80, 'unit': 'kg', 'date': '2026-10-";
        Pile pile = WinterPiles.pile(WinterPiles.COLD_YEAR, "'kind': 'open-heap'", day + "20'}," + day + "25'}", "");
        PileModel model = WinterPiles.model(pile);
        assertEquals(16, model.age());
        assertEquals(80, model.start().matter().dryKg() + model.start().matter().waterKg(), 1e-9);
        assertEquals(1, model.events().size());
        assertEquals(5, model.events().get(0).day());
    }

    @Test
    @DisplayName("keeps mass and shares within what is possible, and the bin full at most")
    void matter() {
        Matter m = WinterPiles.model(WinterPiles.good("")).start().matter();
        assertTrue(m.volumeM3() <= 1.1 * 1.1 * 1.1 + 1e-9);
        assertTrue(m.moisture() > 0.45 && m.moisture() < 0.75, "moisture " + m.moisture());
        assertTrue(m.quickShare() + m.slowShare() + m.ligninShare() <= 1 + 1e-9);
        assertTrue(m.quickShare() > 0.1 && m.slowShare() > m.ligninShare() / 4);
    }

    @Test
    @DisplayName("makes kitchen waste quicker, wetter and sourer than straw")
    void kinds() {
        Matter soft = matterOf("{'material': 'fruit-waste', 'amount': 100, 'unit': 'bucket'}");
        Matter straw = matterOf("{'material': 'straw-wheat', 'amount': 100, 'unit': 'bucket'}");
        assertTrue(soft.quickShare() > 2 * straw.quickShare());
        assertTrue(soft.moisture() > straw.moisture() + 0.3);
        assertTrue(soft.acidIndex() > straw.acidIndex() + 0.3);
        assertTrue(soft.pieceCm() < straw.pieceCm());
    }

    @Test
    @DisplayName("takes chopped pieces at their length and stems as thin")
    void pieces() {
        Matter wood = matterOf(
                "{'material': 'twigs', 'amount': 100, 'unit': 'bucket', 'piece': {'value': 20, 'unit': 'cm'}}");
        Matter stalks = matterOf(
                "{'material': 'corn-stalks', 'amount': 100, 'unit': 'bucket', 'piece': {'value': 20, 'unit': 'cm'}}");
        assertEquals(20, wood.pieceCm(), 0.01);
        assertEquals(10, stalks.pieceCm(), 0.01);
    }

    private static Matter matterOf(String recipe) {
        return WinterPiles.model(WinterPiles.pile(WinterPiles.COLD_YEAR, WinterPiles.bin("none", "none"), recipe, ""))
                .start()
                .matter();
    }

    @Test
    @DisplayName("puts the record on its days")
    void record() {
        PileModel model = WinterPiles.model(
                WinterPiles.good(
                        "{'date': '2026-10-20', 'done': ['turned-fully'], 'measured': {'core': {'value': 55, 'unit': 'C'}}},"
                                + "{'date': '2026-10-25', 'added': [{'material': 'kitchen-scraps', 'amount': 2, 'unit': 'bucket'}]}"));
        assertEquals(26, model.age());
        assertTrue(model.events().contains(new Event.Turn(10)));
        assertTrue(model.events().stream().anyMatch(e -> e instanceof Event.Add && e.day() == 15));
        assertEquals(1, model.cores().size());
        assertEquals(10, model.cores().get(0).day());
    }

    @Test
    @DisplayName("lets a measured moisture count from the day after it was last hot")
    void marks() {
        PileModel model = WinterPiles.model(
                WinterPiles.good(
                        "{'date': '2026-10-20', 'measured': {'core': {'value': 55, 'unit': 'C'}}},"
                                + "{'date': '2026-11-05', 'measured': {'moisture': {'value': 30, 'unit': '%'}, 'core': {'value': 12, 'unit': 'C'}}}"));
        assertEquals(List.of(11, 26), model.marks().stream().map(m -> m.day()).toList(), "and on its own day");
        assertEquals(0.30, model.marks().get(0).moisture().orElse(0), 1e-9);
    }

    @Test
    @DisplayName("takes a dry middle for dry whatever the recipe gives")
    void felt() {
        Pile pile = WinterPiles.good("");
        PileModel model = PileModel.of(pile, WinterPiles.materials(pile), List.of(), List.of(Sign.DRY_UNDER_DAMP_SKIN))
                .orElseThrow();
        assertTrue(model.marks().get(0).bounds().orElseThrow().mostMoisture() < 0.4);
    }

    @Test
    @DisplayName("says where the weather comes from, and bends it to what was read outdoors")
    void climate() {
        String bin = WinterPiles.bin("none", "none");
        assertEquals(
                LocalYear.Known.ASSUMED,
                WinterPiles.model(WinterPiles.pile("", bin, WinterPiles.GOOD, ""))
                        .climate()
                        .known());
        assertEquals(
                LocalYear.Known.LATITUDE,
                WinterPiles.model(WinterPiles.pile("'latitude': 60", bin, WinterPiles.GOOD, ""))
                        .climate()
                        .known());
        PileModel plain = WinterPiles.model(WinterPiles.good(""));
        PileModel read = WinterPiles.model(
                WinterPiles.good("{'date': '2026-10-30', 'measured': {'outdoor': {'value': -12, 'unit': 'C'}}}"));
        assertEquals(LocalYear.Known.MONTHS, plain.climate().known());
        assertTrue(read.climate().weather().airC(20) < plain.climate().weather().airC(20) - 5);
        assertEquals(
                plain.climate().weather().airC(100), read.climate().weather().airC(100), 1e-9);
    }

    @Test
    @DisplayName("finds summer in July in the north and in January in the south")
    void hemispheres() {
        String bin = WinterPiles.bin("none", "none");
        PileModel north = WinterPiles.model(WinterPiles.pile("'latitude': 60", bin, WinterPiles.GOOD, ""));
        PileModel south = WinterPiles.model(WinterPiles.pile("'latitude': -45", bin, WinterPiles.GOOD, ""));
        assertTrue(north.climate().january() < 0);
        assertTrue(south.climate().january() > 15);
    }

    @Test
    @DisplayName("lets covers and straw hold back air and heat")
    void surroundings() {
        var bare = WinterPiles.model(WinterPiles.good("")).start().envelope();
        var wrapped = WinterPiles.model(WinterPiles.pile(
                        WinterPiles.COLD_YEAR, WinterPiles.bin("straw-or-leaves", "straw"), WinterPiles.GOOD, ""))
                .start()
                .envelope();
        var sealed = WinterPiles.model(WinterPiles.pile(
                        WinterPiles.COLD_YEAR, WinterPiles.bin("sealed-plastic", "none"), WinterPiles.GOOD, ""))
                .start()
                .envelope();
        assertTrue(wrapped.topResistance() > bare.topResistance() + 1);
        assertTrue(wrapped.sideResistance() > bare.sideResistance() + 1);
        assertTrue(sealed.topOpen() < 0.1);
        assertEquals(0, sealed.rainShare(), 1e-9);
        assertFalse(bare.topOpen() < 0.9);
    }

    @ParameterizedTest
    @CsvSource({"-20, 9", "7, 11", "25, 25", "31, 25"})
    @DisplayName("built in another weather is as warm as its stuff was then, neither frozen nor hot")
    void builtInAnotherWeather(double outdoors, double warmth) {
        PileModel model = WinterPiles.model(WinterPiles.good(""));
        PileState told = model.start();
        PileState other = model.builtIn(Weather.daily(outdoors, 50), told);
        assertEquals(warmth, other.coreC(), 2.5);
        assertEquals(
                new PileState(
                        told.lengthM(),
                        told.widthM(),
                        told.matter(),
                        other.coreC(),
                        other.coreC(),
                        told.envelope(),
                        told.stage()),
                other);
    }

    private static double builtAt(double outdoors, String recipe, Sign... seen) {
        Pile pile = TestPile.of("'built': '2026-01-10', 'asOf': '2026-01-15', 'place': {'monthlyMeanC': ["
                + String.join(",", java.util.Collections.nCopies(12, "" + outdoors)) + "]}, 'recipe': [" + recipe
                + "], 'log': [{'date': '2026-01-10',"
                + "'measured': {'outdoor': {'value': " + outdoors + ", 'unit': 'C'}}}]");
        PileModel model = PileModel.of(pile, WinterPiles.materials(pile), List.of(), List.of(seen))
                .orElseThrow();
        assertEquals(model.start().coreC(), model.start().skinC());
        return model.start().coreC();
    }

    @Test
    @DisplayName("starts as warm as its stuff comes from a stable, a kitchen, a shed or the garden")
    void startsByMaterial() {
        String litter = "{'material': 'manure-hen-home', 'amount': 300, 'unit': 'L'}";
        String scraps = "{'material': 'kitchen-scraps', 'amount': 300, 'unit': 'L'}";
        String straw = "{'material': 'straw-general', 'amount': 300, 'unit': 'L'}";
        String leaves = "{'material': 'leaves-mixed', 'amount': 300, 'unit': 'L'}";
        assertEquals(15, builtAt(-5, litter), 1e-9);
        assertEquals(10, builtAt(-5, scraps), 1e-9);
        assertEquals(5, builtAt(-5, straw), 1e-9);
        assertEquals(0.5, builtAt(-5, leaves), 1e-9, "thawed enough to be raked");
        double mixed = builtAt(-5, litter + "," + leaves);
        assertTrue(mixed > 3 && mixed < 15, "between " + mixed);
        assertEquals(19, builtAt(19, leaves), 0.5, "in the warm as it is outdoors");
        assertEquals(25, builtAt(34, litter), 1e-9);
    }

    @Test
    @DisplayName("starts frozen only where it was said to be frozen or snow was in it")
    void frozenWhereSaid() {
        String leaves = "{'material': 'leaves-mixed', 'amount': 300, 'unit': 'L'}";
        assertEquals(-5, builtAt(-5, leaves, Sign.SNOW_MIXED_IN), 1e-9);
        assertEquals(-10, builtAt(-20, leaves, Sign.SNOW_MIXED_IN), 1e-9, "colder stuff cannot be forked");
        assertEquals(-5, builtAt(-5, leaves, Sign.FROZEN_THROUGH), 1e-9, "five days after it was built");
        assertTrue(builtAt(-5, leaves, Sign.CORE_COLD) > 0);
    }
}
