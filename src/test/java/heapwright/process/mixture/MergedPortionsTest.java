package heapwright.process.mixture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import heapwright.advice.TestPile;
import heapwright.knowledge.Material;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Portions of one material")
class MergedPortionsTest {

    private static final Material LEAVES = TestPile.KNOWLEDGE.materials().get("leaves-mixed");
    private static final Material GRASS = TestPile.KNOWLEDGE.materials().get("grass-clippings");

    @Test
    @DisplayName("are one for the draws, weighed and measured apart, and make the same mixture")
    void together() {
        List<Portion> split = new ArrayList<>();
        for (int i = 0; i < 2000; i++) {
            split.add(Portion.ofKilograms(LEAVES, 0.01));
            split.add(Portion.ofLitres(LEAVES, 0.02));
            split.add(Portion.ofKilograms(GRASS, 0.005));
        }
        List<Portion> whole =
                List.of(Portion.ofKilograms(LEAVES, 20), Portion.ofLitres(LEAVES, 40), Portion.ofKilograms(GRASS, 10));
        assertEquals(3, MergedPortions.of(split).size());
        Mixture one = new MixtureCalculator().mix(split);
        Mixture other = new MixtureCalculator().mix(whole);
        same(other.carbonToNitrogen(), one.carbonToNitrogen());
        same(other.moisturePct(), one.moisturePct());
        same(other.settledM3(), one.settledM3());
        assertEquals(6000, one.contributions().size());
    }

    @Test
    @DisplayName("stay as they are where no two are alike")
    void apart() {
        List<Portion> portions = List.of(Portion.ofKilograms(LEAVES, 1), Portion.ofKilograms(GRASS, 1));
        assertSame(portions, MergedPortions.of(portions));
    }

    private static void same(Band wanted, Band found) {
        assertEquals(wanted.low(), found.low(), 1e-9 * wanted.low());
        assertEquals(wanted.likely(), found.likely(), 1e-9 * wanted.likely());
        assertEquals(wanted.high(), found.high(), 1e-9 * wanted.high());
    }
}
