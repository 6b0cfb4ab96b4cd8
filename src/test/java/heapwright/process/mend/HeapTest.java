package heapwright.process.mend;

import static heapwright.process.mixture.TestMaterials.GRASS;
import static heapwright.process.mixture.TestMaterials.KITCHEN;
import static heapwright.process.mixture.TestMaterials.LEAVES;
import static heapwright.process.mixture.TestMaterials.MANURE;
import static heapwright.process.mixture.TestMaterials.UREA;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.process.dose.PileStock;
import heapwright.process.dose.TestLimits;
import heapwright.process.mixture.Composition;
import heapwright.process.mixture.MixtureCalculator;
import heapwright.process.mixture.Portion;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Piles, offers and goals in round figures. */
class HeapTest {

    private static final double PLENTY = Double.POSITIVE_INFINITY;
    private static final Goals ANY_WATER = new Goals(0, 100, 25, 35, PLENTY);

    /** 200 kg of grass: 82 % water, half of the 36 kg dry is carbon, at C:N 17; settled at (237 + 475) / 2. */
    @Test
    void aStockIsTakenAtItsLikelyFigures() {
        Heap heap = Heap.of(PileStock.of(new MixtureCalculator().mix(List.of(Portion.ofKilograms(GRASS, 200)))));
        assertEquals(200, heap.wetKg(), 1e-9);
        assertEquals(164, heap.waterKg(), 1e-9);
        assertEquals(18, heap.carbonKg(), 1e-9);
        assertEquals(18.0 / 17, heap.nitrogenKg(), 1e-9);
        assertEquals(200.0 / 356, heap.volumeM3(), 1e-9);
        assertEquals(356, heap.densityKgM3(), 1e-9);
        assertEquals(82, heap.moisturePct(), 1e-9);
        assertEquals(17, heap.carbonToNitrogen(), 1e-9);
    }

    @Test
    void whatIsAddedAddsUpVolumeToo() {
        Heap heap = new Heap(100, 60, 18, 0.6, 0.2).with(Offer.of(LEAVES, PLENTY), 21);
        assertEquals(121, heap.wetKg(), 1e-9);
        assertEquals(60 + 21 * 0.38, heap.waterKg(), 1e-9);
        assertEquals(0.2 + 21.0 / 210, heap.volumeM3(), 1e-9, "leaves settle at (150 + 270) / 2 kg a cubic metre");
    }

    @Test
    void withoutNitrogenTheRatioIsEndlessAndWithoutCarbonNone() {
        assertEquals(PLENTY, new Heap(100, 60, 18, 0, 0.2).carbonToNitrogen());
        assertEquals(0, new Heap(100, 60, 0, 0, 0.2).carbonToNitrogen());
        assertEquals(0, new Heap(100, 60, 0, 1, 0.2).carbonToNitrogen());
    }

    @Test
    void halfAPileIsNoPile() {
        Mender mender = new Mender(TestLimits.LIMITS);
        assertThrows(IllegalArgumentException.class, () -> mender.mend(new Heap(0, 0, 0, 0, 1), List.of()));
        assertThrows(IllegalArgumentException.class, () -> mender.mend(new Heap(100, 50, 20, 1, 0), List.of()));
    }

    /** The good ranges of the test limits: 50 to 60 % water, C:N 25 to 35, up to 600 kg in the cubic metre. */
    @ParameterizedTest
    @CsvSource({
        "50, 30, 500, ",
        "60, 30, 500, ",
        "49.9, 30, 500, TOO_DRY",
        "60.1, 30, 500, TOO_WET",
        "55, 25, 500, ",
        "55, 35, 500, ",
        "55, 24.9, 500, TOO_MUCH_NITROGEN",
        "55, 35.1, 500, TOO_LITTLE_NITROGEN",
        "55, 30, 600, ",
        "55, 30, 600.1, TOO_DENSE"
    })
    void theEndsOfAGoalBelongToIt(double moisture, double ratio, double density, MissedGoal missed) {
        Goals goals = Goals.good(TestLimits.LIMITS);
        Heap heap = new Heap(100, moisture, 18, 18 / ratio, 100 / density);
        assertEquals(missed == null ? Set.of() : Set.of(missed), Plan.misses(heap, goals));
        assertEquals(missed == null, goals.met(heap));
        Plan plan = new Mender(TestLimits.LIMITS).mend(heap, List.of());
        assertEquals(missed == null, plan.meetsAll());
    }

    /** A kilogram of nitrogen as fertiliser counts as 200 kg carried; what is carried by hand counts as it weighs. */
    @Test
    void workIsWhatIsCarried() {
        assertEquals(1, Offer.of(LEAVES, PLENTY).effortPerKg());
        assertEquals(0.46 * 200, Offer.of(UREA, PLENTY).effortPerKg(), 1e-9);
        assertTrue(Offer.of(UREA, PLENTY).fertiliser());
        assertFalse(Offer.of(LEAVES, PLENTY).fertiliser());
    }

    /** A bucket of ten litres holds 1.15 kg of leaves, filled by hand at (80 + 150) / 2 kg a cubic metre. */
    @Test
    void byTheBucketABucketIsOne() {
        Offer leaves = Offer.of(LEAVES, PLENTY);
        assertEquals(1.15, leaves.bucketKg(10), 1e-12);
        assertEquals(1, leaves.byTheBucket(10).effortPerKg() * 1.15, 1e-12);
    }

    @Test
    void whatIsTakenIsGone() {
        assertEquals(6, Offer.of(LEAVES, 10).less(4).mostKg());
        assertEquals(0, Offer.of(LEAVES, 10).less(12).mostKg());
        assertEquals(PLENTY, Offer.of(LEAVES, PLENTY).less(4).mostKg());
    }

    /** Hen manure is the richest of the three, so the least of it is to be carried. */
    @Test
    void ofSeveralThatUnlockItTheLeastWorkIsNamed() {
        Mender mender = new Mender(TestLimits.LIMITS, ANY_WATER);
        Heap starved = new Heap(300, 165, 65, 0.9, 0.8);
        List<Offer> common = List.of(Offer.of(GRASS, PLENTY), Offer.of(MANURE, PLENTY), Offer.of(KITCHEN, PLENTY));
        assertEquals(
                "manure-hen-home",
                mender.unlock(starved, List.of(), common, Mender.Most.TWO)
                        .get(0)
                        .id());
        assertTrue(common.stream()
                .allMatch(one -> mender.mend(starved, List.of(one)).meetsAll()));
        assertEquals(List.of(), mender.unlock(starved, List.of(), List.of(Offer.of(LEAVES, PLENTY)), Mender.Most.TWO));
    }

    /** 100 kg at half water; a kilogram of dry salt in 50 kg of water: 100 of 151 kg are water. */
    @Test
    void theWaterOfASolutionIsWaterInTheHeap() {
        Offer salt = new Offer("salt", new Composition(0, 0, 46), 800, 800, PLENTY, 90, true, 0);
        Heap damp = new Heap(100, 50, 20, 0.5, 0.3);
        assertEquals(100 * 50.0 / 101, damp.with(salt, 1).moisturePct(), 1e-9);
        Heap fed = damp.with(salt.dissolvedIn(50), 1);
        assertEquals(100 * 100.0 / 151, fed.moisturePct(), 1e-9);
        assertEquals(0.96, fed.nitrogenKg(), 1e-9);
        assertEquals(90 + 50, salt.dissolvedIn(50).effortPerKg(), 1e-9, "the water is carried too");
        assertEquals(50, salt.dissolvedIn(50).less(1).carrierKg(), 1e-9);
    }

    @Test
    void ofTwoAlikeTheFirstByNameIsNamed() {
        Mender mender = new Mender(TestLimits.LIMITS, ANY_WATER);
        Heap starved = new Heap(300, 165, 65, 0.9, 0.8);
        Offer rich = new Offer("b", new Composition(60, 40, 4), 400, 400, PLENTY, 1, false, 0);
        Offer twin = new Offer("a", new Composition(60, 40, 4), 400, 400, PLENTY, 1, false, 0);
        assertEquals(
                "a",
                mender.unlock(starved, List.of(), List.of(rich, twin), Mender.Most.TWO)
                        .get(0)
                        .id());
    }

    /** What is carried in is one dose, however much; only fertiliser is split. */
    @Test
    void aHeapOfLeavesIsOneDose() {
        Heap soggy = new Heap(600, 420, 80, 3.3, 1.2);
        Plan plan = new Mender(TestLimits.LIMITS, new Goals(0, 60, 0, 1000, PLENTY))
                .mend(soggy, List.of(Offer.of(LEAVES, PLENTY)));
        assertEquals(1, plan.additions().size());
        assertEquals(1, plan.additions().get(0).parts());
        assertEquals(
                plan.additions().get(0).kg() / 0.115, plan.additions().get(0).litres(), 1e-9);
    }

    /** Where two goals cannot both be met, the sum of what is missed is as small as it can be. */
    @Test
    void aPileTooFarGoneComesAsNearAsWhatIsAtHandBringsIt() {
        Heap starvedAndDry = new Heap(300, 100, 85, 0.9, 0.8);
        Plan plan = new Mender(TestLimits.LIMITS).mend(starvedAndDry, List.of(Offer.of(GRASS, 30), Offer.water()));
        assertEquals(Set.of(MissedGoal.TOO_LITTLE_NITROGEN), plan.misses());
        assertEquals(
                30,
                plan.additions().stream()
                        .filter(one -> one.material().equals("grass-clippings"))
                        .mapToDouble(Addition::kg)
                        .sum(),
                1e-4,
                "all of the grass, since each kilogram brings nitrogen");
        assertEquals(50, plan.after().moisturePct(), 1e-3, "and no more water than is needed");
    }
}
