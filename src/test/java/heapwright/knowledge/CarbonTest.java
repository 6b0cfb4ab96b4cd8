package heapwright.knowledge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Carbon of the materials")
class CarbonTest {

    /** Fat and char: their carbon is no 1 in 1.8 of what burns. */
    private static final Set<String> NO_PLANT = Set.of("fat-oil", "motor-oil", "biochar");

    @Test
    @DisplayName("is nowhere more than the ash leaves room for")
    void most() {
        TestPile.KNOWLEDGE.materials().values().stream()
                .filter(m -> m.carbonToNitrogen().typical() > 0 && !NO_PLANT.contains(m.id()))
                .forEach(m -> assertTrue(
                        m.carbonPct().typical() <= m.mostCarbonPct() + 0.05,
                        m.id() + ": " + m.carbonPct().typical() + " > " + m.mostCarbonPct()));
    }

    /**
     * Elemental analyses: cellulose has 44.4 % carbon and protein about 53 % (chemistry); grass and straw 44 to 50 %,
     * wood 48 to 52 % (the energy research centre's fuel database, from memory); spent coffee above 50 % (Materials 15,
     * 6722, 2022, abstract).
     */
    @ParameterizedTest(name = "{0}: {1} to {2} %")
    @DisplayName("lies where analyses find it, within the 2 to 10 % that the ash rule is good for")
    @CsvSource({
        "grass-clippings, 44, 52.5",
        "straw-general, 44, 52.5",
        "straw-oat, 44, 52.5",
        "corn-cobs, 45, 54.5",
        "cardboard, 42, 53.5",
        "fruit-waste, 44, 53",
        "manure-layers, 28, 44",
        "chips-hardwood, 47, 52",
        "coffee-grounds, 50, 58"
    })
    void analyses(String material, double low, double high) {
        double carbon = TestPile.KNOWLEDGE.materials().get(material).carbonPct().typical();
        assertTrue(carbon >= low && carbon <= high, material + " " + carbon);
    }

    @Test
    @DisplayName("is what nitrogen and C:N make, nowhere more than the ash leaves room for")
    void made() {
        TestPile.KNOWLEDGE.materials().values().stream()
                .filter(m -> m.carbonToNitrogen().typical() > 0)
                .forEach(m -> {
                    double made =
                            m.nitrogenPct().typical() * m.carbonToNitrogen().typical();
                    assertEquals(1, made / m.carbonPct().typical(), 0.02, m.id());
                    assertTrue(NO_PLANT.contains(m.id()) || made <= 1.02 * m.mostCarbonPct(), m.id() + " " + made);
                });
    }

    @Test
    @DisplayName(
            "of grass clippings is derived; the 3.4 % nitrogen that is printed beside a C:N of 17 stands in the note")
    void printed() {
        Material grass = TestPile.KNOWLEDGE.materials().get("grass-clippings");
        assertEquals(17, grass.carbonToNitrogen().typical());
        assertEquals(Known.DERIVED, grass.carbonPct().known());
        assertEquals(Known.DERIVED, grass.nitrogenPct().known());
        assertTrue(grass.note().contains("3.4 %"), grass.note());
    }

    @Test
    @DisplayName("of human faeces is their own, not that of a pig")
    void faeces() {
        Material faeces = TestPile.KNOWLEDGE.materials().get("human-faeces");
        Material pig = TestPile.KNOWLEDGE.materials().get("manure-pig");
        assertTrue(faeces.carbonToNitrogen().high() < pig.carbonToNitrogen().typical(), faeces.note());
        assertEquals(74.6, faeces.moisturePct().typical(), "median of a review (Rose and others 2015, abstract)");
    }
}
