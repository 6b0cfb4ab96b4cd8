package heapwright.process.mixture;

import static heapwright.process.mixture.TestMaterials.f;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.knowledge.Material;
import heapwright.knowledge.Material.Group;
import heapwright.process.mixture.Averaging.Shortcut;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Wrong shortcuts that are in print: the balance differs, and the gap is told. */
class AveragingTest {

    private static final Material GRASS = of("grass", 20, 82, 237);
    private static final Material LEAVES = of("leaves", 60, 38, 150);
    private static final Material NEEDLES = of("needles", 110, 30, 100);
    private static final Material OLD_MANURE = of("manure", 15, 72, 800);

    @Test
    @DisplayName("garden advice page, published: 2 parts grass 20 and 1 part leaves 60 are printed as 33")
    void twoPartsGrassOnePartLeaves() {
        Averaging found = explain(33, Portion.ofLitres(GRASS, 20), Portion.ofLitres(LEAVES, 10));
        assertEquals(Shortcut.BY_VOLUME, found.shortcut());
        assertEquals(33.3, found.average(), 0.1);
        assertEquals(30.7, found.balanced(), 0.05);
        assertEquals(2.7, found.gap(), 0.05);
    }

    @Test
    @DisplayName("garden advice page, published: 2 grass 20, 1 needles 110 and 1 manure 15 are printed as 165/4 = 41")
    void grassNeedlesAndManure() {
        Averaging found = explain(
                41, Portion.ofLitres(GRASS, 20), Portion.ofLitres(NEEDLES, 10), Portion.ofLitres(OLD_MANURE, 10));
        assertEquals(Shortcut.BY_VOLUME, found.shortcut());
        assertEquals(41.25, found.average(), 1e-9);
        assertEquals(19.1, found.balanced(), 0.05);
        assertEquals(22.1, found.gap(), 0.05);
    }

    @Test
    @DisplayName("NMSU09, published: 4 parts dairy manure 20 and 1 part leaves 80 are printed as 160:5 = 32")
    void fourPartsManureOnePartLeaves() {
        Material leaves = of("leaves", 80, 20, 100);
        Material manure = of("manure", 20, 79, 710);
        Averaging found = explain(32, Portion.ofLitres(manure, 40), Portion.ofLitres(leaves, 10));
        assertEquals(Shortcut.BY_VOLUME, found.shortcut());
        assertEquals(32, found.average(), 1e-9);
        assertTrue(found.gap() > 4, "gap " + found.gap());
    }

    @Test
    @DisplayName("attributed to a state extension, quoted: 1.00 litter 7.5 to 0.11 straw 130 is printed for C:N 30")
    void litterAndStrawByWetWeight() {
        Composition litter = new Composition(37, 38, 38 / 7.5);
        Composition straw = new Composition(12, 50, 50.0 / 130);
        double[] printed = {1, 0.11};
        assertEquals(8.9, Equations.mixCarbonToNitrogen(printed, litter, straw), 0.05, "far from 30");
        double linear = (30 - 7.5) / (130 - 30);
        assertEquals(0.225, linear, 1e-9, "the linear rule itself, without the slip in print");
        assertEquals(2.12, Equations.secondForCarbonToNitrogen(1, litter, straw, 30), 0.01, "by the balance");
    }

    @Test
    @DisplayName("E17a county handout, derived: 5 lb of rotted manure 25 take 0.83 lb of stalks 60 by the linear rule")
    void linearRuleForManureAndStalks() {
        assertEquals(0.83, 5 * (30.0 - 25) / (60 - 30), 0.01);
        Composition manure = Composition.ofRatio(72, 25, 38.2 / 25);
        Composition stalks = Composition.ofRatio(12, 60, 46.2 / 60);
        double balanced = Equations.secondForCarbonToNitrogen(5, manure, stalks, 30);
        assertEquals(0.53, balanced, 0.01);
    }

    @Test
    @DisplayName("E17b county handout, published: half grass 20 and half leaves 40 by weight are printed as 30")
    void halfAndHalf() {
        Material leaves = of("leaves", 40, 38, 150);
        Averaging found = explain(30, Portion.ofKilograms(GRASS, 10), Portion.ofKilograms(leaves, 10));
        assertEquals(Shortcut.BY_WET_WEIGHT, found.shortcut());
        assertEquals(30, found.average(), 1e-9);
        assertEquals(32.7, found.balanced(), 0.1);
        assertEquals(found.average() - found.balanced(), found.gap());
    }

    @Test
    void theBalanceItselfIsNoShortcut() {
        List<Portion> portions = List.of(Portion.ofLitres(GRASS, 20), Portion.ofLitres(NEEDLES, 20));
        double balanced =
                new MixtureCalculator().mix(portions).allCarbonToNitrogen().likely();
        assertTrue(Averaging.explain(balanced, portions).isEmpty());
        assertTrue(Averaging.explain(200, portions).isEmpty());
    }

    private static Averaging explain(double own, Portion... portions) {
        return Averaging.explain(own, List.of(portions)).orElseThrow();
    }

    private static Material of(String id, double ratio, double moisture, double density) {
        return TestMaterials.material(
                id,
                Group.CARBON_RICH,
                f(ratio, ratio, ratio),
                f(48, 48, 48),
                f(moisture, moisture, moisture),
                f(density, density, density));
    }
}
