package heapwright.process.dose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

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

/** What is told best goes first: a height of today, the size told, what a recipe settles to, nothing. */
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
    void theSizeToldCountsThoughAsLittleAsHalfOfItMayBeLeft() {
        PileStock stock = stock(BIN);
        assertEquals(new Band(1, 2, 2), stock.volumeM3());
        assertEquals(Basis.REPORTED, stock.volumeBasis());
    }

    @Test
    void theSizeToldBeatsWhatARecipeSettlesTo() {
        PileStock stock = stock(BIN + ",\"recipe\":[{\"material\":\"leaves-mixed\",\"amount\":300,\"unit\":\"kg\"}]");
        assertEquals(Band.exact(2), stock.volumeM3());
        assertEquals(Basis.REPORTED, stock.volumeBasis());
    }

    /** 5 kg of leaves do not fill two cubic metres: they say what is in there, the size says how much. */
    @Test
    void aSizeThatCannotBelongToTheRecipeSaysHowMuchThereIs() {
        PileStock stock = stock(BIN + ",\"recipe\":[{\"material\":\"leaves-mixed\",\"amount\":5,\"unit\":\"kg\"}]");
        assertEquals(Band.exact(2), stock.volumeM3());
        assertEquals(2 * 210, stock.wetKg().likely(), 1e-6, "at 210 kg/m³, as leaves lie");
        assertEquals(54, stock.carbonToNitrogen().likely(), 1e-6);
    }

    @Test
    void whatWasAddedToAnUnknownPileIsNotThatPile() {
        String added = ",\"log\":[{\"date\":\"2026-11-20\",\"added\":[{\"material\":\"leaves-mixed\","
                + "\"amount\":3,\"unit\":\"kg\"}]}]";
        PileStock stock = stock(BIN + added);
        assertEquals(2 * 550, stock.wetKg().likely(), 1e-9);
        assertEquals(Basis.ASSUMED, stock.recipeBasis());
        assertEquals(550, stock("\"name\":\"x\"" + added).wetKg().likely(), 1e-9);
        double heaped =
                stock("\"name\":\"x\"" + added.replace("3,", "600,")).volumeM3().likely();
        assertEquals(600 / 210.0, heaped, 1e-9, "no pile is smaller than what went in");
    }

    @Test
    void aTumblerOfUnknownSizeIsNoCubicMetre() {
        PileStock stock = stock("\"container\":{\"kind\":\"tumbler\"}");
        assertTrue(stock.volumeM3().high() < 0.4);
        assertEquals(Basis.ASSUMED, stock.volumeBasis());
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
