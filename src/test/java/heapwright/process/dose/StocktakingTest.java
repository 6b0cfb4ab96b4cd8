package heapwright.process.dose;

import static org.junit.jupiter.api.Assertions.assertEquals;

import heapwright.pile.Pile;
import heapwright.pile.PileReader;
import heapwright.pile.Vocabulary;
import heapwright.process.mixture.Band;
import heapwright.process.mixture.Basis;
import heapwright.process.mixture.Materials;
import heapwright.process.mixture.MixtureCalculator;
import heapwright.process.mixture.TestMaterials;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What is told best goes first: recipe, a height of today, the size when built, nothing. */
class StocktakingTest {

    private static final String BIN = "\"container\":{\"length\":{\"value\":2,\"unit\":\"m\"},"
            + "\"width\":{\"value\":1,\"unit\":\"m\"},\"height\":{\"value\":1,\"unit\":\"m\"}}";

    private static PileStock stock(String fields) {
        String document = "{\"heapwright\":\"pile/1\",\"asOf\":\"2026-11-21\"," + fields + "}";
        Pile pile = new PileReader(new Words())
                .read("x", document.getBytes(StandardCharsets.UTF_8))
                .pile()
                .orElseThrow();
        return Stocktaking.of(pile, Materials.of(TestMaterials.all()), new MixtureCalculator());
    }

    @Test
    void aRecipeIsWeighed() {
        PileStock stock = stock(BIN + ",\"recipe\":[{\"material\":\"leaves-mixed\",\"amount\":300,\"unit\":\"kg\"}]");
        assertEquals(300, stock.wetKg().likely(), 1e-9);
        assertEquals(Basis.ESTIMATED, stock.recipeBasis());
    }

    @Test
    void aHeightOfTodayIsTheVolumeOfToday() {
        PileStock stock = stock(
                BIN + ",\"log\":[{\"date\":\"2026-11-20\",\"measured\":{\"height\":{\"value\":60,\"unit\":\"cm\"}}}]");
        assertEquals(Band.exact(1.2), stock.volumeM3());
        assertEquals(Basis.REPORTED, stock.volumeBasis());
    }

    @Test
    void ofTheSizeWhenBuiltAHalfToAllIsLeft() {
        PileStock stock = stock(BIN);
        assertEquals(new Band(1, 1.6, 2), stock.volumeM3());
        assertEquals(Basis.ESTIMATED, stock.volumeBasis());
    }

    @Test
    void ofNothingItIsTheUsualPile() {
        PileStock stock = stock("\"name\":\"x\"");
        assertEquals(new Band(0.5, 1, 1.5), stock.volumeM3());
        assertEquals(Basis.ASSUMED, stock.volumeBasis());
    }

    private static final class Words implements Vocabulary {
        @Override
        public Collection<String> signs() {
            return List.of();
        }

        @Override
        public Map<String, String> signAliases() {
            return Map.of();
        }

        @Override
        public Collection<String> materials() {
            return TestMaterials.all().keySet();
        }

        @Override
        public Map<String, String> materialAliases() {
            return Map.of();
        }

        @Override
        public Map<String, Double> measures() {
            return Map.of();
        }

        @Override
        public Map<String, String> measureAliases() {
            return Map.of();
        }

        @Override
        public Map<String, double[]> limits() {
            return Map.of();
        }
    }
}
