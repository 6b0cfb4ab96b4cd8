package heapwright.process.mend;

import static heapwright.process.mixture.TestMaterials.GRASS;
import static heapwright.process.mixture.TestMaterials.LEAVES;
import static heapwright.process.mixture.TestMaterials.MANURE;
import static heapwright.process.mixture.TestMaterials.STRAW;
import static heapwright.process.mixture.TestMaterials.UREA;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.process.dose.TestLimits;
import heapwright.process.mixture.Equations;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Least work, exactly and in whole buckets, against every other number of buckets. */
class WholeBucketsTest {

    private static final double PLENTY = Double.POSITIVE_INFINITY;
    private static final double BUCKET = 10;
    private static final Goals GOALS = Goals.good(TestLimits.LIMITS);
    private static final Mender MENDER = new Mender(TestLimits.LIMITS);

    /** 600 kg at 70 % come to 60 % with 600 × (60 − 70) / (12 − 60) = 125 kg of straw; leaves would be more to carry. */
    @Test
    @DisplayName("the least work is found whichever way stands first")
    void eitherWayRound() {
        Heap soggy = new Heap(600, 420, 80, 3.3, 1.2);
        Offer leaves = Offer.of(LEAVES, PLENTY);
        Offer straw = Offer.of(STRAW, PLENTY);
        double least = Equations.secondForMoisture(600, 70, 12, 60);
        assertEquals(125, least, 1e-9);
        assertEquals(least, MENDER.mend(soggy, List.of(leaves, straw)).effort(), 1e-4);
        assertEquals(least, MENDER.mend(soggy, List.of(straw, leaves)).effort(), 1e-4);
        assertEquals(least, MENDER.mend(soggy, List.of(straw)).effort(), 1e-4);
    }

    /** Leaves at 38 % want 600 × 10 / 22 = 273 kg, but these are 237 buckets of 1.15 kg; the straw is 266 of 0.47. */
    @Test
    @DisplayName("counted in buckets the least buckets are found, though they weigh more")
    void byTheBucket() {
        Heap soggy = new Heap(600, 420, 80, 3.3, 1.2);
        Offer leaves = Offer.of(LEAVES, PLENTY).byTheBucket(BUCKET);
        Offer straw = Offer.of(STRAW, PLENTY).byTheBucket(BUCKET);
        for (List<Offer> offers : List.of(List.of(leaves, straw), List.of(straw, leaves))) {
            Plan plan = MENDER.mend(soggy, offers);
            assertEquals(600.0 * 10 / 22 / 1.15, plan.effort(), 1e-3);
            assertEquals("leaves-mixed", plan.additions().get(0).material());
            assertEquals(1, plan.additions().size());
        }
    }

    @Test
    @DisplayName("no other number of buckets is less work")
    void againstAll() {
        Heap poorAndWet = new Heap(200, 136, 34, 0.75, 0.35);
        List<Offer> offers = List.of(
                Offer.of(STRAW, PLENTY).byTheBucket(BUCKET),
                Offer.of(MANURE, PLENTY).byTheBucket(BUCKET));
        Plan plan = MENDER.mendInBuckets(poorAndWet, offers, BUCKET).orElseThrow();
        double least = PLENTY;
        for (int straw = 0; straw <= 100; straw++) {
            for (int manure = 0; manure <= 40; manure++) {
                Heap after = poorAndWet
                        .with(offers.get(0), straw * offers.get(0).bucketKg(BUCKET))
                        .with(offers.get(1), manure * offers.get(1).bucketKg(BUCKET));
                least = GOALS.met(after) ? Math.min(least, straw + manure) : least;
            }
        }
        assertTrue(plan.meetsAll());
        assertTrue(plan.additions().size() == 2, "the example must want both: " + plan);
        assertEquals(least, plan.effort(), 1e-9);
        assertEquals(
                least,
                plan.additions().stream()
                        .mapToDouble(one -> one.litres() / BUCKET)
                        .sum(),
                1e-9);
    }

    @Test
    @DisplayName("the last bucket there is may be taken, and no more")
    void theLast() {
        Heap soggy = new Heap(600, 420, 80, 3.3, 1.2);
        Offer straw = Offer.of(STRAW, PLENTY);
        int needed = (int) Math.ceil(125 / straw.bucketKg(BUCKET));
        Offer justEnough = Offer.of(STRAW, needed * straw.bucketKg(BUCKET));
        Plan plan = MENDER.mendInBuckets(soggy, List.of(justEnough), BUCKET).orElseThrow();
        assertEquals(needed, plan.additions().get(0).litres() / BUCKET, 1e-6);
        Offer halfABucketLess = Offer.of(STRAW, (needed - 0.1) * straw.bucketKg(BUCKET));
        assertEquals(Optional.empty(), MENDER.mendInBuckets(soggy, List.of(halfABucketLess), BUCKET));
    }

    @Test
    @DisplayName("fertiliser keeps its exact mass, and what is not needed stays out")
    void fertiliser() {
        Heap starved = new Heap(300, 165, 65, 1.6, 0.8);
        List<Offer> offers = List.of(Offer.of(UREA, PLENTY), Offer.of(STRAW, PLENTY));
        Plan exact = MENDER.mend(starved, offers);
        Plan buckets = MENDER.mendInBuckets(starved, offers, BUCKET).orElseThrow();
        assertEquals(1, exact.additions().size());
        assertEquals(exact.additions(), buckets.additions());
        assertEquals((65.0 / 35 - 1.6) / 0.46, exact.additions().get(0).kg(), 1e-4);
    }

    @Test
    @DisplayName("what cannot be met exactly cannot be met in buckets")
    void never() {
        Heap soggy = new Heap(600, 420, 80, 3.3, 1.2);
        assertEquals(Optional.empty(), MENDER.mendInBuckets(soggy, List.of(Offer.of(GRASS, PLENTY)), BUCKET));
    }
}
