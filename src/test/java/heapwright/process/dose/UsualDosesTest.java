package heapwright.process.dose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.knowledge.KnowledgeReader;
import heapwright.knowledge.Material;
import heapwright.knowledge.UsualDose;
import heapwright.pile.Container;
import heapwright.process.dose.Term.Key;
import heapwright.process.mixture.Band;
import heapwright.process.mixture.Basis;
import heapwright.process.mixture.Materials;
import heapwright.process.mixture.TestMaterials;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Common practice against the need; the printed figures are derived in the notes on amendments. */
class UsualDosesTest {

    private static final double MATCHBOX = 0.020;
    private static final double TABLESPOON = 0.01479;

    @Test
    @DisplayName("P4: a litre of ash is about 400 g, 0.1 % of a cubic metre of pile")
    void ash() {
        List<Term> terms = of(UsualDose.ASH_BY_THE_LITRE);
        assertEquals(new Band(356, 400, 500), value(terms, Key.DOSE_MASS));
        assertEquals(0.1, value(terms, Key.SHARE_OF_PILE_MASS).likely(), 1e-9);
        List<Term> two = of(UsualDose.ASH_BY_THE_LITRE, TestDoses.ofSize(2));
        assertEquals(new Band(712, 800, 1000), value(two, Key.DOSE_MASS), "a litre to the cubic metre");
        assertEquals(100 * 0.8 / 1100, value(two, Key.SHARE_OF_PILE_MASS).likely(), 1e-9);
    }

    @Test
    @DisplayName("P5: yeast and sugar bring about 10 g of carbon, under 1 g of nitrogen and 1 point of moisture")
    void yeastAndSugar() {
        List<Term> terms = of(UsualDose.YEAST_AND_SUGAR, stock(500, 55));
        assertEquals(35, value(terms, Key.DOSE_MASS).likely(), 0.5);
        assertEquals(10.4 + 4.5, value(terms, Key.CARBON_GIVEN).likely(), 0.5);
        assertTrue(value(terms, Key.NITROGEN_GIVEN).likely() < 1);
        assertEquals(1, value(terms, Key.MOISTURE_RISE).likely(), 0.15);
        assertEquals(10, value(terms, Key.WATER_GIVEN).likely());
    }

    @Test
    @DisplayName("P6: two matchboxes of urea are 30 g with 14 g of nitrogen, 1.5 % of a need of 0.92 kg, at 0.3 %")
    void urea() {
        List<Term> terms = of(UsualDose.UREA_BY_THE_MATCHBOX);
        assertEquals(30, value(terms, Key.DOSE_MASS).likely(), 0.01);
        assertEquals(14, value(terms, Key.NITROGEN_GIVEN).likely(), 0.5);
        assertEquals(920, value(terms, Key.NITROGEN_NEED).likely(), 1);
        assertEquals(1.5, value(terms, Key.SHARE_OF_NEED).likely(), 0.05);
        assertEquals(3, value(terms, Key.SOLUTION_STRENGTH).likely(), 0.01);
    }

    @Test
    @DisplayName("P7: two tablespoons of baking soda are 27.6 g with 7.6 g of sodium")
    void bakingSoda() {
        List<Term> terms = of(UsualDose.BAKING_SODA);
        assertEquals(27.6, value(terms, Key.DOSE_MASS).likely(), 0.1);
        assertEquals(7.6, value(terms, Key.SODIUM).likely(), 0.1);
    }

    @Test
    void brothBringsSaltAndHardlyAnyWater() {
        List<Term> terms = of(UsualDose.BROTH);
        assertTrue(value(terms, Key.SODIUM).likely() > 1);
        assertTrue(value(terms, Key.MOISTURE_RISE).likely() < 0.3);
    }

    /** By weights of a spoon and of a cubic yard (SPOONTAB and CALREC in sources.json): lime 1.15, soil 1.25 kg a litre. */
    @Test
    @DisplayName("a litre of lime is 1.15 kg, a bucket of soil 12.5 kg, three in a hundred of a cubic metre of pile")
    void limeAndSoil() {
        List<Term> lime = of(UsualDose.LIME_ON_THE_LAYERS);
        assertEquals(1150, value(lime, Key.DOSE_MASS).likely(), 1e-9);
        assertEquals(1100, value(lime, Key.DOSE_MASS).low(), 1e-9);
        List<Term> soil = of(UsualDose.SOIL_ON_THE_LAYERS);
        assertEquals(12_500, value(soil, Key.DOSE_MASS).likely(), 1e-9);
        assertEquals(100 * 12.5 / 400, value(soil, Key.SHARE_OF_PILE_MASS).likely(), 1e-9);
    }

    @Test
    void whereNothingLacksThereIsNoShareOfANeed() {
        PileStock rich = new PileStock(
                Band.exact(400),
                Band.exact(160),
                Band.exact(60),
                Band.exact(70),
                Band.exact(20),
                0.8,
                Band.exact(1),
                400,
                0,
                60,
                Basis.ESTIMATED,
                Basis.ESTIMATED,
                Basis.ESTIMATED,
                Basis.ESTIMATED);
        assertTrue(
                of(UsualDose.UREA_BY_THE_MATCHBOX, rich).stream().noneMatch(term -> term.key() == Key.SHARE_OF_NEED));
    }

    private static List<Term> of(UsualDose dose) {
        return of(dose, stock(400, 70));
    }

    private static List<Term> of(UsualDose dose, PileStock stock) {
        Map<String, Material> materials = new HashMap<>(TestMaterials.all());
        Material soda = TestMaterials.material(
                "baking-soda",
                Material.Group.MINERAL,
                TestMaterials.f(1, 1, 1),
                TestMaterials.f(0, 0, 0),
                TestMaterials.f(0, 0, 0),
                TestMaterials.f(930, 933, 1000));
        materials.put(soda.id(), soda);
        for (String strewn : List.of("lime-ground", "soil")) {
            materials.put(strewn, KnowledgeReader.packed().materials().get(strewn));
        }
        DoseContext context = new DoseContext(
                stock,
                Shape.of(Container.unknown(), 1),
                TestLimits.LIMITS,
                Materials.of(materials),
                List.of(),
                TestDoses.OCTOBER,
                false);
        return UsualDoses.of(dose, context, MATCHBOX, TABLESPOON);
    }

    /** 120 kg of dry matter with 46 % carbon at C:N 60, one cubic metre. */
    private static PileStock stock(double wetKg, double moisturePct) {
        return new PileStock(
                Band.exact(wetKg),
                Band.exact(120),
                Band.exact(moisturePct),
                Band.exact(120 * 0.46),
                Band.exact(60),
                0.83,
                Band.exact(1),
                wetKg,
                0,
                moisturePct,
                Basis.ESTIMATED,
                Basis.ESTIMATED,
                Basis.ESTIMATED,
                Basis.ESTIMATED);
    }

    private static Band value(List<Term> terms, Key key) {
        return terms.stream()
                .filter(term -> term.key() == key)
                .findFirst()
                .orElseThrow()
                .value();
    }
}
