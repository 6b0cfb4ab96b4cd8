package heapwright.advice.ready;

import static heapwright.advice.ready.RipePiles.LEAVES;
import static heapwright.advice.ready.RipePiles.RIPE;
import static heapwright.advice.ready.RipePiles.added;
import static heapwright.advice.ready.RipePiles.answer;
import static heapwright.advice.ready.RipePiles.built;
import static heapwright.advice.ready.RipePiles.heap;
import static heapwright.advice.ready.RipePiles.notSeen;
import static heapwright.advice.ready.RipePiles.on;
import static heapwright.advice.ready.RipePiles.reasons;
import static heapwright.advice.ready.RipePiles.seen;
import static heapwright.advice.ready.RipePiles.test;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.knowledge.RipeReason;
import heapwright.knowledge.RipeReasonInfo;
import heapwright.knowledge.Ripeness;
import heapwright.pile.HomeTest;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A heap of leaves built on 20 August 2026 and asked about on 2 May 2027, 255 days old, with one more line of its record. */
@DisplayName("The answer whether compost is ready")
class ReadyAnswerTest {

    @ParameterizedTest
    @CsvSource({
        "seen, smells-ammonia, FOUL_SMELL",
        "seen, smells-sour, FOUL_SMELL",
        "seen, smells-rotten-egg, FOUL_SMELL",
        "seen, smells-putrid, FOUL_SMELL",
        "seen, smells-alcohol, FOUL_SMELL",
        "seen, core-hot, HOT_MIDDLE",
        "seen, greens-still-green, GREENS_STILL_GREEN",
        "seen, layers-intact, STILL_LAYERED",
        "seen, matted-leaves, STILL_LAYERED",
        "seen, matted-grass, STILL_LAYERED",
        "seen, core-warm, WARM_MIDDLE",
        "seen, reheats-after-turning, WARMS_WHEN_MIXED",
        "notSeen, no-reheat-after-turning, WARMS_WHEN_MIXED",
        "seen, originals-visible, ORIGINALS_VISIBLE",
        "seen, foreign-bits, BITS_IN_IT",
        "seen, broken-glass, DANGEROUS_STUFF",
        "notSeen, dark-crumbly, NOT_DARK",
        "notSeen, smells-earthy, NO_EARTHY_SMELL"
    })
    @DisplayName("is held back by what nose, hand and eye tell, and by that alone")
    void signs(String list, String sign, RipeReason reason) {
        ReadyAnswer held = heap(on("2027-05-02", list, sign));
        assertTrue(reasons(held).contains(reason), reasons(held).toString());
        assertFalse(reasons(heap()).contains(reason));
        Ripeness most = TestPile.KNOWLEDGE.endUse().reasons().get(reason).allows();
        assertTrue(most.atLeast(held.grade()), held.grade() + " at most " + most);
    }

    @ParameterizedTest
    @CsvSource({
        "dog-faeces, WASTE_OF_PETS_OR_PEOPLE",
        "manure-hen-home, NO_PROOF_OF_HEAT",
        "walnut-black-leaves, WALNUT",
        "grass-herbicide, WEEDKILLER",
        "kitchen-scraps, FRESH_STUFF"
    })
    @DisplayName("is held back by what went in of late")
    void stuff(String material, RipeReason reason) {
        ReadyAnswer held = heap(added("2027-04-20", material), RIPE);
        assertTrue(reasons(held).contains(reason), reasons(held).toString());
        assertFalse(reasons(heap(RIPE)).contains(reason));
    }

    @Test
    @DisplayName("dark stuff is no longer layered, and layers alone are")
    void layered() {
        assertTrue(reasons(heap(seen("layers-intact"))).contains(RipeReason.STILL_LAYERED));
        assertFalse(reasons(heap(seen("layers-intact", "dark-crumbly"))).contains(RipeReason.STILL_LAYERED));
    }

    @Test
    @DisplayName("a bucket of bokashi is a ferment, whatever it smells of")
    void ferment() {
        ReadyAnswer bucket = answer(", 'built': '2026-08-20', 'container': {'kind': 'bokashi'}", LEAVES, RIPE);
        assertTrue(reasons(bucket).contains(RipeReason.FERMENT));
        assertEquals(Ripeness.NOT_YET, bucket.grade());
    }

    /** 120 days, half a year of rest, a year (docs/knowledge: limits and waits). */
    @Test
    @DisplayName("grows with the good signs: looks, smell, rest, age and tests")
    void attained() {
        assertEquals(Ripeness.BEDS, heap(RIPE).grade());
        assertEquals(Ripeness.ROUGH, heap().grade(), "255 days and nothing looked at");
        assertEquals(List.of(RipeReason.NOT_LOOKED_AT), reasons(heap()));
        assertEquals(List.of(RipeReason.NO_TEST_YET), reasons(heap(RIPE)));
        assertEquals(Ripeness.BEDS, built("2026-05-02").grade(), "a year");
        assertEquals(Ripeness.ROUGH, built("2026-05-03").grade(), "a day less");
        assertEquals(Ripeness.BEDS, built("2026-11-03", seen("dark-crumbly")).grade(), "dark, and 180 days at rest");
        assertEquals(Ripeness.ROUGH, built("2027-02-20", seen("dark-crumbly")).grade(), "71");
        assertEquals(Ripeness.ROUGH, built("2027-01-02").grade(), "120 days");
        assertEquals(Ripeness.NOT_YET, built("2027-01-03").grade(), "119");
        String leafCage = ", 'container': {'kind': 'leaf-cage'}, 'built': ";
        assertEquals(Ripeness.ROUGH, answer(leafCage + "'2026-05-02'", LEAVES).grade(), "leaves take two years");
        assertEquals(Ripeness.BEDS, answer(leafCage + "'2025-05-02'", LEAVES).grade());
    }

    @Test
    @DisplayName("is for pots only after a bag and seedlings that did well")
    void tested() {
        String bag = test("2027-04-25", "bag", "good");
        String seedlings = test("2027-05-01", "seedlings", "good");
        assertEquals(Ripeness.POTS, heap(bag, seedlings).grade());
        assertEquals(Ripeness.BEDS, heap(bag).grade());
        assertEquals(Ripeness.BEDS, heap(seedlings).grade());
        assertEquals(Ripeness.BEDS, heap(test("2027-05-01", "reheat", "good")).grade());
        assertEquals(
                Ripeness.ROUGH, heap(test("2027-05-01", "sieve", "good")).grade(), "bits tell nothing of ripeness");
    }

    @Test
    @DisplayName("says what speaks against each other")
    void odds() {
        String bag = test("2027-05-01", "bag", "good");
        assertEquals(List.of(), heap(bag, RIPE).contradictions());
        assertEquals(
                List.of(ReadyAnswer.AtOdds.GOOD_TEST_FOUL_SMELL),
                heap(bag, seen("smells-sour")).contradictions());
        assertEquals(
                List.of(ReadyAnswer.AtOdds.GOOD_TEST_WARM),
                heap(bag, seen("core-warm")).contradictions());
        assertEquals(List.of(), heap(seen("core-warm")).contradictions());
        assertEquals(
                List.of(ReadyAnswer.AtOdds.TEST_CHANGED),
                heap(test("2027-04-20", "bag", "poor"), bag).contradictions());
        assertEquals(
                List.of(ReadyAnswer.AtOdds.PEAS_WELL_AFTER_FAILING),
                heap(test("2027-03-20", "peas", "poor"), test("2027-04-20", "peas", "good"))
                        .contradictions());
        assertEquals(
                List.of(ReadyAnswer.AtOdds.TEST_CHANGED),
                heap(test("2027-03-20", "peas", "good"), test("2027-04-20", "peas", "poor"))
                        .contradictions());
    }

    /** A look is a point, a test two, a known day of building one; four are good and two fair. */
    @Test
    @DisplayName("is the surer the more was looked at, and sure where it is plain")
    void sure() {
        assertEquals(Sureness.GUESS, heap().sure(), "only its day");
        assertEquals(Sureness.FAIR, heap(seen("dark-crumbly")).sure());
        assertEquals(Sureness.FAIR, heap(RIPE).sure(), "three points");
        assertEquals(
                Sureness.GOOD,
                heap(seen("dark-crumbly", "smells-earthy", "core-cold")).sure());
        assertEquals(
                Sureness.GOOD,
                heap(notSeen("dark-crumbly", "smells-earthy", "no-reheat-after-turning"))
                        .sure(),
                "what was looked for and not found");
        assertEquals(
                Sureness.FAIR, heap(test("2027-05-01", "seedlings", "good")).sure());
        assertEquals(
                Sureness.FAIR,
                heap(seen("dark-crumbly", "smells-earthy", "core-cold", "frost-crust"))
                        .sure(),
                "frozen");
        assertEquals(
                Sureness.FAIR,
                heap(test("2027-05-01", "bag", "good"), seen("core-warm", "smells-earthy"))
                        .sure(),
                "5 - 2");
        assertEquals(Sureness.GOOD, heap(seen("smells-putrid")).sure(), "plain");
        assertEquals(Sureness.GOOD, heap(test("2027-04-20", "peas", "poor")).sure());
    }

    private static List<HomeTest> plans(ReadyAnswer answer) {
        return answer.tests().stream().map(t -> t.test().id()).toList();
    }

    @Test
    @DisplayName("plans the tests that would tell more, and none while there is no point")
    void tests() {
        assertEquals(List.of(HomeTest.BAG, HomeTest.SEEDLINGS), plans(heap(RIPE)));
        assertEquals(List.of(), plans(heap(seen("smells-putrid"))));
        assertEquals(List.of(HomeTest.SEEDLINGS), plans(heap(test("2027-05-01", "bag", "good"))));
        assertTrue(plans(heap(seen("reheats-after-turning"))).contains(HomeTest.REHEAT));
        assertTrue(plans(heap(seen("originals-visible"))).contains(HomeTest.SIEVE));
        assertTrue(plans(heap(added("2026-10-01", "grass-herbicide"), RIPE)).contains(HomeTest.PEAS));
    }

    /** The bag is shut for a week, the seedlings take one to two; a poor bag is tried again after a week. */
    @Test
    @DisplayName("gives each test its days, a day later where the sample must thaw")
    void testDays() {
        TestPlan bag = heap(RIPE).tests().get(0);
        assertEquals(LocalDate.of(2027, 5, 2), bag.start());
        assertEquals(LocalDate.of(2027, 5, 9), bag.from());
        assertEquals(LocalDate.of(2027, 5, 9), bag.to());
        assertFalse(bag.again());
        assertEquals(LocalDate.of(2027, 5, 16), heap(RIPE).tests().get(1).to());
        assertEquals(
                LocalDate.of(2027, 5, 3),
                heap(seen("frozen-through")).tests().get(0).start());
        TestPlan again = heap(test("2027-05-01", "bag", "poor")).tests().stream()
                .filter(TestPlan::again)
                .findFirst()
                .orElseThrow();
        assertEquals(LocalDate.of(2027, 5, 8), again.start());
        assertEquals(
                LocalDate.of(2027, 5, 2),
                heap(test("2027-04-01", "bag", "poor")).tests().get(0).start(),
                "overdue");
    }

    /** 120 and 90 days from digging in to the harvest for what counts as raw (CFR205). */
    @Test
    @DisplayName("counts the days to the harvest from the digging in, of what counts as raw alone")
    void harvest() {
        assertEquals(Optional.empty(), heap(RIPE).dates().harvestTouchingSoil());
        ReadyDates raw = heap(added("2026-09-01", "manure-hen-home"), on("2027-04-01", "done", "spread"))
                .dates();
        assertEquals(Optional.of(LocalDate.of(2027, 4, 1)), raw.spreadOn());
        assertEquals(Optional.of(LocalDate.of(2027, 7, 30)), raw.harvestTouchingSoil());
        assertEquals(Optional.of(LocalDate.of(2027, 6, 30)), raw.harvestOthers());
        ReadyDates later = heap(added("2026-09-01", "manure-hen-home")).dates();
        assertEquals(Optional.of(later.spreadFrom().plusDays(120)), later.harvestTouchingSoil());
    }

    /** 28 days for leaves of walnut (OSUEXT); horse manure 30 in summer and 90 in winter (WSUWHAT). */
    @Test
    @DisplayName("tells the end of each wait that lies ahead")
    void waits() {
        assertEquals(
                Optional.of(LocalDate.of(2027, 5, 18)),
                heap(added("2027-04-20", "walnut-black-leaves")).dates().walnutEnds());
        assertEquals(
                Optional.of(LocalDate.of(2027, 10, 17)),
                heap(added("2027-04-20", "walnut-black-leaves"), added("2027-04-20", "walnut-black-wood"))
                        .dates()
                        .walnutEnds());
        String warm = ", 'built': '2026-08-20', 'place': {'monthlyMeanC': [5,5,5,5,5,5,5,5,5,5,5,5]}";
        String cool = warm.replace(",5,5,5,5,5,5,5,5,5,5,5]", ",4,4,4,4,4,4,4,4,4,4,4]")
                .replace("[5", "[4");
        String horse = added("2027-04-20", "manure-horse-straw");
        assertEquals(
                Optional.of(LocalDate.of(2027, 5, 20)),
                answer(warm, LEAVES, horse).dates().manureEnds());
        assertEquals(
                Optional.of(LocalDate.of(2027, 7, 19)),
                answer(cool, LEAVES, horse).dates().manureEnds());
    }

    private static List<String> allowed(ReadyAnswer answer) {
        return answer.covers().stream()
                .filter(Cover::allowed)
                .map(c -> c.use().id())
                .sorted()
                .toList();
    }

    @Test
    @DisplayName("allows each use from its own grade on, and food never after waste of pets")
    void uses() {
        assertEquals(List.of("autumn-digging", "mulch"), allowed(heap()));
        assertTrue(allowed(heap(RIPE)).containsAll(List.of("vegetable-bed", "lawn", "mulch")));
        assertFalse(allowed(heap(RIPE)).contains("potting-mix"));
        assertEquals(
                List.of("mulch"), allowed(heap(added("2026-08-21", "dog-faeces"), RIPE)), "autumn digging is for food");
        ReadyAnswer wanted = answer(", 'built': '2026-08-20', 'aim': {'use': 'lawn'}", LEAVES, RIPE);
        assertEquals("lawn", wanted.covers().get(0).use().id(), "what is wanted first");
        Cover lawn = wanted.covers().get(0);
        assertEquals(
                wanted.left().litres().likely() / 6,
                lawn.areaM2().orElseThrow().likely(),
                1e-6,
                "6 mm are 6 L a square metre");
        assertEquals(Optional.empty(), lawn.mixLitres());
        Cover pots = wanted.covers().stream()
                .filter(c -> c.use().id().equals("potting-mix"))
                .findFirst()
                .orElseThrow();
        assertEquals(
                wanted.left().litres().likely() * 4,
                pots.mixLitres().orElseThrow().likely(),
                1e-6,
                "a quarter of the mix");
        assertEquals(Optional.empty(), pots.areaM2());
    }

    @Test
    @DisplayName("tells the gates first, then what holds it back most")
    void order() {
        ReadyAnswer held = heap(seen("smells-sour", "core-warm", "greens-still-green"));
        assertEquals(
                List.of(RipeReason.FOUL_SMELL, RipeReason.GREENS_STILL_GREEN),
                reasons(held).subList(0, 2));
        assertTrue(held.held());
        assertEquals(
                List.of(RipeReason.FOUL_SMELL, RipeReason.GREENS_STILL_GREEN),
                held.binding().stream().map(RipeReasonInfo::id).toList().subList(0, 2));
        assertFalse(held.binding().stream().anyMatch(r -> r.id() == RipeReason.WARM_MIDDLE));
        assertFalse(heap(seen("greens-still-green")).held(), "unripe, and no gate");
    }
}
