package heapwright.process.mixture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.process.mixture.CarbonCheck.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CarbonCheckTest {

    @ParameterizedTest
    @CsvSource({
        "sawdust RYNK92, 0.24, 442, 106",
        "sawdust BC98 averages, 0.43, 475, 204",
        "softwood bark, 0.14, 496, 69",
        "telephone books, 0.7, 772, 540",
        "newsprint, 0.10, 625, 62",
        "broiler litter BC98, 4.7, 15, 70",
        "barley straw, 0.76, 99, 75",
        "poultry GOL72, 6.3, 15, 95",
        "seaweed, 1.9, 79, 150",
        "sheep, 3.8, 33, 125",
        "algae, 1.9, 100, 190"
    })
    void publishedPairsWithMoreCarbonThanThereCanBe(String what, double nitrogen, double ratio, double carbon) {
        CarbonCheck check = CarbonCheck.of(ratio, nitrogen);
        assertEquals(carbon, check.carbonPct(), 0.8, what);
        assertEquals(Verdict.TOO_MUCH_CARBON, check.verdict(), what);
    }

    @ParameterizedTest
    @CsvSource({
        "lumber-mill waste, 0.13, 170, 22",
        "peanut shoots, 0.6, 20, 12",
        "urine, 16.5, 0.8, 13",
        "mussel, 3.6, 2.2, 8"
    })
    void publishedPairsWithLittleCarbon(String what, double nitrogen, double ratio, double carbon) {
        CarbonCheck check = CarbonCheck.of(ratio, nitrogen);
        assertEquals(carbon, check.carbonPct(), 0.5, what);
        assertEquals(Verdict.LITTLE_CARBON, check.verdict(), what);
    }

    @ParameterizedTest
    @CsvSource({
        "sawdust mended, 0.11, 442", "newsprint mended, 0.08, 625", "BAR78 poultry, 6.3, 7.3", "leaves, 0.9, 54",
        "grass, 3.4, 17", "horse, 1.6, 30", "cottonseed, 7.7, 7", "barley straw mended, 0.47, 99"
    })
    void pairsThatCanBe(String what, double nitrogen, double ratio) {
        assertEquals(Verdict.POSSIBLE, CarbonCheck.of(ratio, nitrogen).verdict(), what);
    }

    @Test
    void theEdgesAre30And60() {
        assertEquals(Verdict.POSSIBLE, CarbonCheck.of(30, 1).verdict());
        assertEquals(Verdict.LITTLE_CARBON, CarbonCheck.of(29.9, 1).verdict());
        assertEquals(Verdict.POSSIBLE, CarbonCheck.of(60, 1).verdict());
        assertEquals(Verdict.TOO_MUCH_CARBON, CarbonCheck.of(60.1, 1).verdict());
    }

    @Test
    void thePineNeedleMisprintPassesTheCarbonAndFailsTheUsualRange() {
        assertEquals(Verdict.POSSIBLE, CarbonCheck.of(10, 4).verdict());
        assertTrue(CarbonCheck.isUnusual(10, TestMaterials.f(60, 90, 110)));
        assertFalse(CarbonCheck.isUnusual(80, TestMaterials.f(60, 90, 110)));
    }
}
