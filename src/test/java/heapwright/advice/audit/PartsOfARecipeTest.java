package heapwright.advice.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.knowledge.Limit;
import heapwright.knowledge.Material;
import heapwright.process.dose.Limits;
import heapwright.process.mixture.Density;
import heapwright.process.mixture.Materials;
import heapwright.process.mixture.Portion;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Of a recipe")
class PartsOfARecipeTest {

    private static final Limits LIMITS = new Limits(TestPile.KNOWLEDGE.limits().entrySet().stream()
            .collect(Collectors.toMap(Map.Entry::getKey, one -> one.getValue().value())));
    private static final LocalDate BUILT = LocalDate.of(2026, 10, 31);

    private static Material material(String id) {
        return TestPile.KNOWLEDGE.materials().get(id);
    }

    private static Portion kg(String id, double kilograms) {
        return Portion.ofKilograms(material(id), kilograms);
    }

    private static final double TEASPOON = 0.005;

    private static double kilograms(Trimming trimming, String id) {
        return trimming.portions().stream()
                .filter(one -> one.material().id().equals(id))
                .mapToDouble(one -> one.kgWet().likely())
                .sum();
    }

    @Test
    @DisplayName("soil is cut back to its share of the weight of all but ash")
    void soil() {
        double share = LIMITS.share(Limit.SOIL_MAX_SHARE);
        Trimming cut = Trimming.of(List.of(kg("leaves-mixed", 90), kg("soil", 60), kg("soil", 20)), LIMITS, TEASPOON);
        double kept = kilograms(cut, "soil");
        assertEquals(share, kept / (kept + 90), 1e-9);
        assertEquals(90, kilograms(cut, "leaves-mixed"), 1e-9);
        assertEquals(2, cut.trimmed().size());
        assertEquals(
                kept * 1000 / Density.byHand(material("soil")).likely(),
                cut.trimmed().stream().mapToDouble(Trimming.Trimmed::litres).sum(),
                1e-6);
        assertEquals(3.0, cut.trimmed().get(0).litres() / cut.trimmed().get(1).litres(), 1e-9);
        double just = 90 * share / (1 - share);
        assertTrue(Trimming.of(List.of(kg("leaves-mixed", 90), kg("soil", just - 0.01)), LIMITS, TEASPOON)
                .trimmed()
                .isEmpty());
        assertTrue(
                Trimming.of(List.of(kg("soil", 60)), LIMITS, TEASPOON).trimmed().isEmpty(),
                "soil alone is what is wanted");
        double withAsh = kilograms(
                Trimming.of(List.of(kg("leaves-mixed", 90), kg("soil", 80), kg("wood-ash", 40)), LIMITS, TEASPOON),
                "soil");
        assertEquals(kept, withAsh, 1e-9, "ash does not make room for soil");
    }

    @Test
    @DisplayName("ash is cut back to its litres to a cubic metre of the rest as it settles")
    void ash() {
        Trimming cut = Trimming.of(List.of(kg("leaves-mixed", 90), kg("wood-ash", 20)), LIMITS, TEASPOON);
        double settled = 90 / Density.settled(material("leaves-mixed")).likely();
        assertEquals(1, cut.trimmed().size());
        assertEquals(LIMITS.of(Limit.ASH_MAX) * settled, cut.trimmed().get(0).litres(), 1e-9);
        assertEquals("wood-ash", cut.trimmed().get(0).material().id());
        assertTrue(Trimming.of(List.of(kg("leaves-mixed", 90), kg("wood-ash", 0.01)), LIMITS, TEASPOON)
                .trimmed()
                .isEmpty());
        assertTrue(Trimming.of(List.of(kg("wood-ash", 20)), LIMITS, TEASPOON)
                .trimmed()
                .isEmpty());
    }

    private static double litres(Trimming trimming, String id) {
        return trimming.trimmed().stream()
                .filter(one -> one.material().id().equals(id))
                .mapToDouble(Trimming.Trimmed::litres)
                .sum();
    }

    private static double moisture(List<Portion> portions) {
        double wet = portions.stream().mapToDouble(one -> one.kgWet().likely()).sum();
        double dry = portions.stream()
                .mapToDouble(one ->
                        one.kgWet().likely() * (1 - one.material().moisturePct().typical() / 100))
                .sum();
        return 1 - dry / wet;
    }

    @Test
    @DisplayName("water is cut back to what makes it damp, and left out where the rest is wet enough")
    void water() {
        double most = LIMITS.share(Limit.MOISTURE_GOOD_HIGH);
        Trimming cut =
                Trimming.of(List.of(kg("leaves-mixed", 50), kg("water", 60), kg("water", 120)), LIMITS, TEASPOON);
        assertEquals(most, moisture(cut.portions()), 1e-9);
        assertEquals(kilograms(cut, "water"), litres(cut, "water"), 1e-9);
        assertEquals(50, kilograms(cut, "leaves-mixed"), 1e-9);
        assertTrue(Trimming.of(List.of(kg("leaves-mixed", 50), kg("water", 20)), LIMITS, TEASPOON)
                .trimmed()
                .isEmpty());
        Trimming wet = Trimming.of(List.of(kg("grass-clippings", 50), kg("water", 20)), LIMITS, TEASPOON);
        assertEquals(List.of(kg("grass-clippings", 50)), wet.portions());
        assertEquals(0, wet.trimmed().get(0).litres());
        assertTrue(wet.leavesOut(material("water")));
        assertFalse(wet.leavesOut(material("grass-clippings")), "that goes in");
        assertFalse(cut.leavesOut(material("water")), "some of it goes in");
        Material broth = TestPile.of(
                        "'asOf': '2026-11-21', 'materials': [{'id': 'my-broth', 'like': 'water', 'moisture': {'value': 60, 'unit': '%'}}]")
                .materials()
                .stream()
                .map(own -> Materials.of(TestPile.KNOWLEDGE.materials(), List.of(own))
                        .get(own.id()))
                .findFirst()
                .orElseThrow();
        assertFalse(Density.fillsGaps(broth), "stuff like water with dry matter is no water");
        assertTrue(Density.fillsGaps(material("water")));
    }

    @Test
    @DisplayName(
            "salted stuff is cut back to the salt that compost may hold; food is not, and bare salt stuff alone neither")
    void salt() {
        Trimming cut = Trimming.of(List.of(kg("leaves-mixed", 50), kg("seaweed", 100)), LIMITS, TEASPOON);
        Material seaweed = material("seaweed");
        double dry = kilograms(cut, "seaweed") * (1 - seaweed.moisturePct().typical() / 100);
        double leaves = 50 * (1 - material("leaves-mixed").moisturePct().typical() / 100);
        assertEquals(
                LIMITS.share(Limit.SALT_LOAD_MAX),
                dry * seaweed.saltPct().orElseThrow().typical() / 100 / (dry + leaves),
                1e-9);
        assertEquals(50, kilograms(cut, "leaves-mixed"), 1e-9, "the leaves stay");
        assertEquals(1, cut.trimmed().size());
        assertTrue(Trimming.of(List.of(kg("leaves-mixed", 50), kg("seaweed", 2)), LIMITS, TEASPOON)
                .trimmed()
                .isEmpty());
        assertTrue(Trimming.of(List.of(kg("seaweed", 20)), LIMITS, TEASPOON)
                .trimmed()
                .isEmpty());
        assertTrue(Trimming.of(List.of(kg("leaves-mixed", 5), kg("cooked-food", 20)), LIMITS, TEASPOON)
                .trimmed()
                .isEmpty());
    }

    @Test
    @DisplayName("fertiliser is cut back to the nitrogen that is lacking, and left out of what is rich")
    void fertiliser() {
        Portion leaves = kg("leaves-mixed", 50);
        Portion droppings = kg("manure-hen-home", 18);
        double lacking = lacking(leaves) + lacking(droppings);
        Trimming cut = Trimming.of(List.of(leaves, droppings, kg("urea", 2)), LIMITS, TEASPOON);
        assertEquals(lacking / (material("urea").typicalNitrogenPct() / 100), kilograms(cut, "urea"), 1e-9);
        Trimming bag = Trimming.of(List.of(leaves, droppings, kg("urea", 25)), LIMITS, TEASPOON);
        assertEquals(kilograms(cut, "urea"), kilograms(bag, "urea"), 1e-9, "as much of a bag as of two kilograms");
        assertTrue(Trimming.of(List.of(leaves, kg("urea", 0.1)), LIMITS, TEASPOON)
                .trimmed()
                .isEmpty());
        Trimming rich = Trimming.of(List.of(kg("manure-hen-home", 50), kg("urea", 0.1)), LIMITS, TEASPOON);
        assertEquals(0, kilograms(rich, "urea"));
        assertEquals("urea", rich.trimmed().get(0).material().id());
    }

    /** Below zero for what has more nitrogen than its carbon holds, kg. */
    private static double lacking(Portion portion) {
        Material of = portion.material();
        double dry = portion.kgWet().likely() * (1 - of.moisturePct().typical() / 100);
        return dry / 100 * (of.carbonPct().typical() / LIMITS.of(Limit.CN_GOOD_LOW) - of.typicalNitrogenPct());
    }

    /** 50 kg of leaves at 38 % take up 27.5 L before they are wetter than 60 %, (31 - 0.4 * 50) / 0.4, and each kilogram of urea 1.5 L. */
    @Test
    @DisplayName("fertiliser is cut back to what the water it is dissolved in leaves good, before any water is poured")
    void solution() {
        Trimming cut = Trimming.of(List.of(kg("leaves-mixed", 50), kg("urea", 2), kg("water", 20)), LIMITS, TEASPOON);
        assertEquals(27.5 / (1 / LIMITS.share(Limit.SOLUTION_MAX) - 1.5), kilograms(cut, "urea"), 1e-9);
        assertEquals(0, kilograms(cut, "water"), 1e-9);
        Trimming less =
                Trimming.of(List.of(kg("leaves-mixed", 50), kg("urea", 0.1), kg("water", 20)), LIMITS, TEASPOON);
        assertEquals(0.1, kilograms(less, "urea"), 1e-9);
        assertEquals(27.5 - 0.1 * (1 / LIMITS.share(Limit.SOLUTION_MAX) - 1.5), kilograms(less, "water"), 1e-9);
        Trimming few = Trimming.of(List.of(kg("leaves-mixed", 0.05), kg("urea", 2)), LIMITS, TEASPOON);
        assertEquals(0, kilograms(few, "urea"), "less than a teaspoon is left out");
    }

    @Test
    @DisplayName("fertiliser goes in as many doses as keep the nitrogen of a day within its limit")
    void feeding() {
        Material urea = material("urea");
        double share = urea.typicalNitrogenPct() / 100;
        double once = LIMITS.of(Limit.NITROGEN_MAX) / 1000 / share;
        List<BuildPlan.Feed> feeds = Feeding.of(Map.of(urea, 5 * once), LIMITS, 2, BUILT);
        assertEquals(1, feeds.size());
        BuildPlan.Feed feed = feeds.get(0);
        assertEquals(3, feed.parts(), "two cubic metres hold twice as much, and five halves are three");
        assertEquals(5 * once / 3, feed.kgEach(), 1e-9);
        assertEquals(feed.kgEach() * 1000 / Density.byHand(urea).likely(), feed.litresEach(), 1e-9);
        assertEquals(feed.kgEach() * 1000 / LIMITS.solutionGramsPerLitre(), feed.waterLitres(), 1e-9);
        long apart = Math.round(LIMITS.of(Limit.NITROGEN_DOSE_INTERVAL));
        assertEquals(List.of(BUILT, BUILT.plusDays(apart), BUILT.plusDays(2 * apart)), feed.days());
        assertEquals(
                2, Feeding.of(Map.of(urea, 4 * once), LIMITS, 2, BUILT).get(0).parts(), "just as much as it may");
        assertEquals(
                1, Feeding.of(Map.of(urea, 0.1 * once), LIMITS, 2, BUILT).get(0).parts());
    }

    @Test
    @DisplayName("two fertilisers share the limit, and only what dissolves comes in water")
    void together() {
        Material urea = material("urea");
        Material sulphate = material("ammonium-sulphate");
        double once = LIMITS.of(Limit.NITROGEN_MAX) / 1000;
        Map<Material, Double> both = new LinkedHashMap<>();
        both.put(urea, once / (urea.typicalNitrogenPct() / 100));
        both.put(sulphate, once / (sulphate.typicalNitrogenPct() / 100));
        assertTrue(Feeding.of(both, LIMITS, 1, BUILT).stream().allMatch(feed -> feed.parts() == 2));
        assertTrue(Feeding.isFertiliser(urea));
        assertFalse(Feeding.isFertiliser(material("leaves-mixed")));
    }
}
