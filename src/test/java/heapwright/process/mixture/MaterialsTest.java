package heapwright.process.mixture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.knowledge.Known;
import heapwright.knowledge.Material;
import heapwright.pile.OwnMaterial;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class MaterialsTest {

    private static final OptionalDouble NONE = OptionalDouble.empty();

    @Test
    void anOwnFigureReplacesTheRangeAndTheRestStays() {
        Material own = resolve(own("my-leaves", "leaves-mixed", NONE, NONE, NONE, of(22), of(95)));
        assertEquals(22, own.moisturePct().low());
        assertEquals(22, own.moisturePct().high());
        assertEquals(Known.MEASURED, own.moisturePct().known());
        assertEquals(Materials.REPORTED, own.densityKgM3().source());
        assertEquals(TestMaterials.LEAVES.carbonToNitrogen(), own.carbonToNitrogen());
        assertEquals(Material.Group.CARBON_RICH, own.group());
    }

    @Test
    void anOwnNitrogenAloneMovesTheRatioAndKeepsTheCarbon() {
        Material own = resolve(own("my-leaves", "leaves-mixed", NONE, NONE, of(1.2), NONE, NONE));
        assertEquals(48.6 / 1.2, own.carbonToNitrogen().typical(), 1e-9);
        assertTrue(own.nitrogenOnSameSample());
        assertEquals(1.2, own.typicalNitrogenPct(), 1e-9);
    }

    @Test
    void anOwnRatioAloneDerivesTheNitrogen() {
        Material own = resolve(own("my-leaves", "leaves-mixed", of(30), NONE, NONE, NONE, NONE));
        assertFalse(own.nitrogenOnSameSample());
        assertEquals(48.6 / 30, own.typicalNitrogenPct(), 1e-9);
    }

    @Test
    void ratioAndNitrogenTogetherGiveTheCarbon() {
        Material own = resolve(own("my-leaves", "leaves-mixed", of(40), NONE, of(1.1), NONE, NONE));
        assertEquals(44, own.carbonPct().typical(), 1e-9);
        assertTrue(own.nitrogenOnSameSample());
    }

    @Test
    void whereAllThreeDisagreeRatioAndCarbonCount() {
        Material own = resolve(own("my-leaves", "leaves-mixed", of(40), of(48), of(3), NONE, NONE));
        assertFalse(own.nitrogenOnSameSample());
        assertEquals(1.2, own.typicalNitrogenPct(), 1e-9);
    }

    @Test
    void theIdOfAKnownMaterialOverridesIt() {
        Materials materials = Materials.of(
                TestMaterials.all(), List.of(own("straw-general", "straw-general", NONE, NONE, NONE, of(18), NONE)));
        assertEquals(18, materials.get("straw-general").moisturePct().typical());
    }

    @Test
    void alikeNothingKnownNamesTheField() {
        OwnMaterial odd = own("my-stuff", "moon-dust", NONE, NONE, NONE, NONE, NONE);
        IllegalArgumentException error =
                assertThrows(IllegalArgumentException.class, () -> Materials.of(TestMaterials.all(), List.of(odd)));
        assertTrue(error.getMessage().contains("moon-dust"));
    }

    private static Material resolve(OwnMaterial own) {
        return Materials.of(TestMaterials.all(), List.of(own)).get(own.id());
    }

    private static OwnMaterial own(
            String id,
            String like,
            OptionalDouble ratio,
            OptionalDouble carbon,
            OptionalDouble nitrogen,
            OptionalDouble moisture,
            OptionalDouble density) {
        return new OwnMaterial(id, like, "", ratio, carbon, nitrogen, moisture, density);
    }

    private static OptionalDouble of(double value) {
        return OptionalDouble.of(value);
    }
}
