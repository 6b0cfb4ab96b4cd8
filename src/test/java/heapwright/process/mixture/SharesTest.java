package heapwright.process.mixture;

import static heapwright.process.mixture.TestMaterials.CHIPS;
import static heapwright.process.mixture.TestMaterials.LEAVES;
import static heapwright.process.mixture.TestMaterials.TWIGS;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import heapwright.knowledge.Trait;
import java.util.List;
import org.junit.jupiter.api.Test;

class SharesTest {

    private static final Mixture MIX = new MixtureCalculator(64)
            .mix(List.of(
                    Portion.ofKilograms(LEAVES, 210),
                    Portion.ofKilograms(TWIGS, 24),
                    Portion.ofKilograms(CHIPS, 32.6)));

    /** Settled: 210 kg of leaves are a cubic metre, 24 kg of twigs a tenth, 32.6 kg of chips a tenth too. */
    @Test
    void coarseStuffIsCountedByTheSpaceItTakes() {
        assertEquals(100 * 0.2 / 1.2, MIX.coarseSharePct(), 1e-9);
        assertEquals(100 * 1 / 1.2, MIX.sharePct(Trait.LEAVES), 1e-9);
        assertEquals(0, MIX.sharePct(Trait.GRASS));
    }

    /** Dry: 62 % of the leaves, 55 % of the twigs, 65 % of the chips. */
    @Test
    void woodIsCountedByItsDryMass() {
        double wood = 24 * 0.55 + 32.6 * 0.65;
        assertEquals(100 * wood / (wood + 210 * 0.62), MIX.woodySharePct(), 1e-9);
    }

    /** By hand leaves lie at 80, likely 115, at most 150 kg in the cubic metre. */
    @Test
    void aWeightFillsMoreBucketsTheLooserItLies() {
        Band litres = Portion.ofKilograms(LEAVES, 12).litres();
        assertEquals(80, litres.low(), 1e-9);
        assertEquals(12000.0 / 115, litres.likely(), 1e-9);
        assertEquals(150, litres.high(), 1e-9);
        Band kilograms = Portion.ofLitres(LEAVES, 100).kgWet();
        assertEquals(8, kilograms.low(), 1e-9);
        assertEquals(15, kilograms.high(), 1e-9);
    }

    @Test
    void lessThanNothingIsNoPortion() {
        for (double amount : new double[] {-0.1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThrows(IllegalArgumentException.class, () -> Portion.ofKilograms(LEAVES, amount));
            assertThrows(IllegalArgumentException.class, () -> Portion.ofLitres(LEAVES, amount));
        }
        assertEquals(Band.ZERO, Portion.ofKilograms(LEAVES, 0).kgWet());
    }
}
