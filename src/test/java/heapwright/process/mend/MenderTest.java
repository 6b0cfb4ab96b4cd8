package heapwright.process.mend;

import static heapwright.process.mixture.TestMaterials.CHIPS;
import static heapwright.process.mixture.TestMaterials.GRASS;
import static heapwright.process.mixture.TestMaterials.KITCHEN;
import static heapwright.process.mixture.TestMaterials.LEAVES;
import static heapwright.process.mixture.TestMaterials.MANURE;
import static heapwright.process.mixture.TestMaterials.STRAW;
import static heapwright.process.mixture.TestMaterials.UREA;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.Seed;
import heapwright.knowledge.Limit;
import heapwright.knowledge.Material;
import heapwright.process.dose.PileStock;
import heapwright.process.dose.TestLimits;
import heapwright.process.mixture.Composition;
import heapwright.process.mixture.Equations;
import heapwright.process.mixture.MixtureCalculator;
import heapwright.process.mixture.Portion;
import heapwright.process.mixture.TestMaterials;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

class MenderTest {

    private static final double PLENTY = Double.POSITIVE_INFINITY;
    private static final Goals GOALS = Goals.good(TestLimits.LIMITS);
    private static final Mender MENDER = new Mender(TestLimits.LIMITS);
    private static final int GRID = 24;

    @Property(tries = 150, seed = Seed.FIXED)
    void noPointOfAGridIsBetter(@ForAll("heaps") Heap heap, @ForAll("offers") List<Offer> offers) {
        Plan plan = MENDER.mend(heap, offers);
        Best grid = grid(heap, offers);
        if (plan.meetsAll()) {
            assertTrue(GOALS.met(plan.after()));
            assertTrue(plan.effort() <= grid.effort() + 1e-4, plan + " against " + grid);
        } else {
            assertEquals(PLENTY, grid.effort(), "the grid meets all goals where the programme does not: " + plan);
        }
    }

    @Property(tries = 150, seed = Seed.FIXED)
    void nothingIsNegativeFiniteAndNoMoreThanThereIs(@ForAll("heaps") Heap heap, @ForAll("offers") List<Offer> offers) {
        Plan plan = MENDER.mend(heap, offers);
        for (Addition addition : plan.additions()) {
            assertTrue(addition.kg() > 0 && Double.isFinite(addition.litres()));
            Offer offer = offers.stream()
                    .filter(one -> one.id().equals(addition.material()))
                    .findFirst()
                    .orElseThrow();
            assertTrue(addition.kg() <= offer.mostKg() + 1e-9);
        }
    }

    /** The edges of a miss are a little wider than the goals, so what was in range may come to lie on an edge. */
    @Property(tries = 150, seed = Seed.FIXED)
    void whatIsInRangeStaysInRange(@ForAll("heaps") Heap heap, @ForAll("offers") List<Offer> offers) {
        Set<MissedGoal> before = Set.copyOf(Plan.misses(heap, GOALS));
        assertTrue(before.containsAll(MENDER.mend(heap, offers).misses()));
    }

    @Property(tries = 100, seed = Seed.FIXED)
    void wholeBucketsMeetTheGoalsAndAreWhole(@ForAll("heaps") Heap heap, @ForAll("offers") List<Offer> offers) {
        Optional<Plan> plan = MENDER.mendInBuckets(heap, offers, 10);
        plan.ifPresent(found -> {
            assertTrue(found.meetsAll());
            found.additions().forEach(one -> assertEquals(Math.rint(one.litres() / 10), one.litres() / 10, 1e-6));
            assertTrue(found.effort() >= MENDER.mend(heap, offers).effort() - 1e-4);
        });
    }

    @Test
    void wholeBucketsAreTheExactAnswerRoundedUp() {
        Heap soggy = new Heap(60, 40, 9, 0.36, 0.12);
        List<Offer> offers = List.of(offer(STRAW), offer(LEAVES));
        Plan exact = MENDER.mend(soggy, offers);
        Plan buckets = MENDER.mendInBuckets(soggy, offers, 10).orElseThrow();
        assertTrue(exact.meetsAll());
        assertEquals(1, exact.additions().size());
        assertEquals(1, buckets.additions().size());
        assertEquals(
                10 * Math.ceil(exact.additions().get(0).litres() / 10),
                buckets.additions().get(0).litres(),
                1e-6);
    }

    @Test
    void aPileInOrderNeedsNothing() {
        Heap good = new Heap(500, 275, 90, 3, 1);
        Plan plan = MENDER.mend(good, List.of(offer(LEAVES), offer(GRASS)));
        assertTrue(plan.meetsAll());
        assertTrue(plan.additions().isEmpty());
        assertEquals(0, plan.effort());
    }

    @Test
    void twoSharpGoalsGiveTheSameAsTheTwoEquations() {
        Composition grass = Composition.of(GRASS);
        Heap heap = heapOf(GRASS, 100);
        Goals sharp = new Goals(70, 70, 30, 30, PLENTY);
        Plan plan = new Mender(TestLimits.LIMITS, sharp).mend(heap, List.of(offer(STRAW), Offer.water()));
        double[] equations =
                Equations.twoForBoth(100, grass, Composition.of(STRAW), new Composition(100, 0, 0), 70, 30);
        assertTrue(equations[0] > 0 && equations[1] > 0, "the example must have an answer");
        assertTrue(plan.meetsAll());
        assertEquals(equations[0], kg(plan, "straw-general"), 1e-4);
        assertEquals(equations[1], kg(plan, Offer.WATER), 1e-4);
    }

    @Test
    void oneSharpGoalGivesTheSameAsItsEquation() {
        Heap heap = heapOf(GRASS, 100);
        Goals wet = new Goals(0, 60, 0, 1000, PLENTY);
        Plan plan = new Mender(TestLimits.LIMITS, wet).mend(heap, List.of(offer(LEAVES)));
        assertEquals(Equations.secondForMoisture(100, 82, 38, 60), kg(plan, "leaves-mixed"), 1e-4);
    }

    @Test
    void theLessWorkOfTwoWaysIsTaken() {
        Heap soggy = new Heap(600, 420, 80, 3.3, 1.2);
        Plan plan = MENDER.mend(soggy, List.of(offer(LEAVES), offer(STRAW)));
        assertTrue(plan.meetsAll());
        assertTrue(kg(plan, "straw-general") > 0);
        assertEquals(0, kg(plan, "leaves-mixed"), "straw is drier, so less of it has to be carried");
    }

    @Test
    void byTheBucketLightStuffIsAsMuchWorkAsHeavy() {
        Heap soggy = new Heap(600, 420, 80, 3.3, 1.2);
        Plan plan = MENDER.mend(
                soggy, List.of(offer(LEAVES).byTheBucket(10), offer(STRAW).byTheBucket(10)));
        assertTrue(plan.meetsAll());
        assertTrue(plan.effort() <= kgToBuckets(MENDER.mend(soggy, List.of(offer(STRAW)))) + 1e-6);
    }

    @Test
    void whereItCannotBeMetTheNearestIsToldAndWhatItMisses() {
        Heap starved = new Heap(300, 165, 65, 0.9, 0.8);
        Plan plan = MENDER.mend(starved, List.of(offer(CHIPS, 50), offer(KITCHEN, 5)));
        assertFalse(plan.meetsAll());
        assertEquals(Set.of(MissedGoal.TOO_LITTLE_NITROGEN), plan.misses());
        assertTrue(plan.after().carbonToNitrogen() < starved.carbonToNitrogen());
        assertEquals(0, kg(plan, "chips-hardwood"), "more wood would only make it worse");
    }

    @Test
    void theCommonMaterialThatWouldUnlockItIsNamed() {
        Heap starved = new Heap(300, 165, 65, 0.9, 0.8);
        List<Offer> common = List.of(offer(STRAW), offer(GRASS), offer(MANURE));
        assertEquals(
                "manure-hen-home",
                MENDER.unlock(starved, List.of(offer(CHIPS, 50)), common, Mender.Most.TWO)
                        .get(0)
                        .id());
        Heap good = new Heap(500, 275, 90, 3, 1);
        assertTrue(MENDER.unlock(good, List.of(), common, Mender.Most.TWO).isEmpty());
    }

    /** Soaked and lean: straw dries and starves, droppings feed and wet; both goals are reached at their edges. */
    @Test
    void whereNoOneThingUnlocksItTheLightestPairIsNamed() {
        Composition base = new Composition(75, 48, 0.96);
        Heap both = heapOf(base, 200);
        List<Offer> common = List.of(offer(LEAVES), offer(GRASS), offer(MANURE), offer(STRAW));
        common.forEach(one ->
                assertFalse(MENDER.mend(both, List.of(Offer.water(), one)).meetsAll(), one.id() + " alone would do"));
        List<Offer> pair = MENDER.unlock(both, List.of(Offer.water()), common, Mender.Most.TWO);
        assertEquals(
                Set.of("straw-general", "manure-hen-home"),
                pair.stream().map(Offer::id).collect(Collectors.toSet()));
        double[] edges = Equations.twoForBoth(200, base, Composition.of(STRAW), Composition.of(MANURE), 60, 35);
        Plan plan = MENDER.mend(both, pair);
        assertTrue(plan.meetsAll());
        assertEquals(edges[0], kg(plan, "straw-general"), 1e-3);
        assertEquals(edges[1], kg(plan, "manure-hen-home"), 1e-3);
        assertEquals(
                List.of("manure-hen-home"),
                MENDER.unlock(both, List.of(Offer.water(), offer(STRAW)), common, Mender.Most.TWO).stream()
                        .map(Offer::id)
                        .toList(),
                "one does where the other is at hand");
    }

    @Test
    void whereNoTwoUnlockItNothingIsNamed() {
        Heap both = heapOf(new Composition(75, 48, 0.96), 200);
        List<Offer> wetOrLean = List.of(offer(LEAVES), offer(STRAW), offer(CHIPS));
        assertEquals(List.of(), MENDER.unlock(both, List.of(Offer.water()), wetOrLean, Mender.Most.TWO));
        Mender light = new Mender(TestLimits.LIMITS, new Goals(50, 60, 25, 35, 20));
        assertEquals(
                List.of(),
                light.unlock(both, List.of(Offer.water()), List.of(offer(MANURE), offer(STRAW)), Mender.Most.TWO));
    }

    @Test
    void fertiliserIsOnlyAPartOfTheNeedAndSplit() {
        Heap starved = new Heap(300, 165, 65, 0.9, 0.8);
        Plan plan = MENDER.mend(starved, List.of(offer(UREA)));
        double lacking = 65.0 / 30 - 0.9;
        double most = TestLimits.LIMITS.share(Limit.NITROGEN_FRACTION_HIGH) * lacking;
        assertEquals(most / 0.46, kg(plan, "urea"), 1e-6);
        assertEquals(Set.of(MissedGoal.TOO_LITTLE_NITROGEN), plan.misses());
        assertEquals(
                (int) Math.ceil(most * 1000 / (TestLimits.LIMITS.of(Limit.NITROGEN_MAX) * 0.8)),
                plan.additions().get(0).parts());
    }

    @Test
    void coarseStuffMendsADensePile() {
        Heap dense = new Heap(760, 440, 135, 4.5, 1.0);
        Plan plan = MENDER.mend(dense, List.of(offer(LEAVES), offer(CHIPS)));
        assertTrue(plan.meetsAll());
        assertTrue(plan.after().densityKgM3() <= 600 + 1e-3);
    }

    /** A point of moisture weighs as much as ten kg per cubic metre: by the kilogram, 50/900 of a cubic metre against 1/10. */
    @Test
    void waterThatPacksADensePileIsLeftOutAndTakenWhereItPacksLess() {
        Goals loose = new Goals(50, 60, 0, PLENTY, 300);
        Mender mender = new Mender(TestLimits.LIMITS, loose);
        Heap dense = new Heap(90, 36, 20, 0.8, 0.1);
        assertEquals(0, kg(mender.mend(dense, List.of(Offer.water())), Offer.WATER));
        Heap light = new Heap(40, 16, 9, 0.4, 0.1);
        assertEquals(8, kg(mender.mend(light, List.of(Offer.water())), Offer.WATER), 1e-4, "24 of 48 kg are water");
    }

    @Test
    void theLessWorkIsFoundAlsoWhereAnotherGoalStaysOutOfReach() {
        Heap dryAndRich = new Heap(300, 90, 60, 6, 1);
        Offer far = new Offer("far", new Composition(100, 0, 0), PLENTY, 1000, PLENTY, 3, false, 0);
        for (List<Offer> order : List.of(List.of(far, Offer.water()), List.of(Offer.water(), far))) {
            Plan plan = MENDER.mend(dryAndRich, order);
            assertEquals(Set.of(MissedGoal.TOO_MUCH_NITROGEN), plan.misses());
            assertEquals(0, kg(plan, "far"), "the tap is nearer");
            assertEquals(120, kg(plan, Offer.WATER), 1e-3, "210 of 420 kg are water");
        }
    }

    @Test
    void noPileIsAnError() {
        assertThrows(IllegalArgumentException.class, () -> MENDER.mend(new Heap(0, 0, 0, 0, 0), List.of()));
    }

    @Test
    void nothingAtHandLeavesThePileAsItIs() {
        Heap soggy = new Heap(600, 420, 80, 2.7, 1.2);
        Plan plan = MENDER.mend(soggy, List.of());
        assertEquals(Set.of(MissedGoal.TOO_WET), plan.misses());
        assertEquals(soggy, plan.after());
    }

    @Provide
    Arbitrary<Heap> heaps() {
        Arbitrary<Portion> portion = Combinators.combine(
                        Arbitraries.of(LEAVES, STRAW, GRASS, KITCHEN, MANURE, CHIPS),
                        Arbitraries.doubles().between(5, 200))
                .as(Portion::ofKilograms);
        MixtureCalculator calculator = new MixtureCalculator(2);
        return portion.list()
                .ofMinSize(1)
                .ofMaxSize(4)
                .map(portions -> Heap.of(PileStock.of(calculator.mix(portions))));
    }

    @Provide
    Arbitrary<List<Offer>> offers() {
        Arbitrary<Offer> offer = Combinators.combine(
                        Arbitraries.of(TestMaterials.all().values().stream()
                                .filter(material -> material.group() != Material.Group.AMENDMENT)
                                .sorted(Comparator.comparing(Material::id))
                                .toList()),
                        Arbitraries.doubles().between(1, 300))
                .as(Offer::of);
        return offer.list().ofMinSize(1).ofMaxSize(3).uniqueElements(Offer::id);
    }

    private record Best(double effort) {}

    /** The least work among the points of a grid over all that is at hand. */
    private static Best grid(Heap heap, List<Offer> offers) {
        List<Heap> heaps = new ArrayList<>(List.of(heap));
        List<Double> efforts = new ArrayList<>(List.of(0.0));
        for (Offer offer : offers) {
            List<Heap> more = new ArrayList<>();
            List<Double> work = new ArrayList<>();
            for (int i = 0; i < heaps.size(); i++) {
                for (int step = 0; step <= GRID; step++) {
                    double kg = offer.mostKg() * step / GRID;
                    more.add(heaps.get(i).with(offer, kg));
                    work.add(efforts.get(i) + kg * offer.effortPerKg());
                }
            }
            heaps = more;
            efforts = work;
        }
        double best = PLENTY;
        for (int i = 0; i < heaps.size(); i++) {
            best = GOALS.met(heaps.get(i)) ? Math.min(best, efforts.get(i)) : best;
        }
        return new Best(best);
    }

    private static Heap heapOf(Material material, double kg) {
        return new Heap(0, 0, 0, 0, 0).with(offer(material), kg);
    }

    private static Heap heapOf(Composition of, double kg) {
        return new Heap(0, 0, 0, 0, 0).with(new Offer("base", of, 400, 300, PLENTY, 1, false, 0), kg);
    }

    private static Offer offer(Material material) {
        return offer(material, PLENTY);
    }

    private static Offer offer(Material material, double mostKg) {
        return Offer.of(material, mostKg);
    }

    private static double kg(Plan plan, String material) {
        return plan.additions().stream()
                .filter(one -> one.material().equals(material))
                .mapToDouble(Addition::kg)
                .sum();
    }

    private static double kgToBuckets(Plan plan) {
        return plan.additions().stream().mapToDouble(one -> one.litres() / 10).sum();
    }
}
