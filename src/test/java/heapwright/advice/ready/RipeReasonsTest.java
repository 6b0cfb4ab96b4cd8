package heapwright.advice.ready;

import static heapwright.advice.ready.RipePiles.LEAVES;
import static heapwright.advice.ready.RipePiles.RIPE;
import static heapwright.advice.ready.RipePiles.added;
import static heapwright.advice.ready.RipePiles.answer;
import static heapwright.advice.ready.RipePiles.built;
import static heapwright.advice.ready.RipePiles.heap;
import static heapwright.advice.ready.RipePiles.hot;
import static heapwright.advice.ready.RipePiles.notSeen;
import static heapwright.advice.ready.RipePiles.on;
import static heapwright.advice.ready.RipePiles.reasons;
import static heapwright.advice.ready.RipePiles.seen;
import static heapwright.advice.ready.RipePiles.test;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.knowledge.RipeReason;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("What holds compost back")
class RipeReasonsTest {

    private static final String BAG = test("2027-04-25", "bag", "good");
    private static final String PEAS = test("2027-04-20", "peas", "good");

    private static void held(RipeReason reason, ReadyAnswer answer) {
        assertTrue(reasons(answer).contains(reason), reason + " is not in " + reasons(answer));
    }

    private static void clear(RipeReason reason, ReadyAnswer answer) {
        assertFalse(reasons(answer).contains(reason), reason + " is in " + reasons(answer));
    }

    @ParameterizedTest
    @CsvSource({
        "oil-or-paint, DANGEROUS_STUFF",
        "treated-wood, DANGEROUS_STUFF",
        "coal-ash, DANGEROUS_STUFF",
        "pet-waste, WASTE_OF_PETS_OR_PEOPLE",
        "sewage, WASTE_OF_PETS_OR_PEOPLE",
        "dead-animal, NO_PROOF_OF_HEAT",
        "meat-or-dairy, NO_PROOF_OF_HEAT",
        "road-salted-leaves, SALT",
        "reportable-disease, SICK_PLANTS",
        "diseased-tops, SICK_PLANTS",
        "weeds-with-seed, WEED_SEED",
        "creeping-roots, WEED_SEED",
        "herbicide-suspect, WEEDKILLER"
    })
    @DisplayName("is what went in half a year ago by a yes, however good it looks now")
    void longIn(String sign, RipeReason reason) {
        held(reason, heap(on("2026-11-02", "seen", sign), RIPE));
        clear(reason, heap(RIPE));
    }

    /** Germs and seed are told apart from salt and poison by heat alone. */
    @ParameterizedTest
    @CsvSource({"manure-hen-home, NO_PROOF_OF_HEAT", "weeds-in-seed, WEED_SEED"})
    @DisplayName("is no longer what heat has ended since it went in")
    void heated(String material, RipeReason reason) {
        held(reason, heap(added("2026-09-20", material), RIPE));
        clear(reason, heap(added("2026-09-20", material), hot("2026-10"), RIPE));
    }

    @Test
    @DisplayName("is raw stuff that went in after the heat")
    void afterTheHeat() {
        held(RipeReason.NO_PROOF_OF_HEAT, heap(hot("2026-10"), added("2026-11-20", "manure-hen-home"), RIPE));
    }

    @Test
    @DisplayName("is weedkiller until peas have grown well since it went in, on that day at the earliest")
    void peas() {
        held(RipeReason.WEEDKILLER, heap(added("2026-10-01", "grass-herbicide"), RIPE));
        clear(RipeReason.WEEDKILLER, heap(added("2026-10-01", "grass-herbicide"), PEAS, RIPE));
        clear(RipeReason.WEEDKILLER, heap(added("2027-04-20", "grass-herbicide"), PEAS, RIPE));
        held(RipeReason.WEEDKILLER, heap(PEAS, added("2027-04-21", "grass-herbicide"), RIPE));
        clear(RipeReason.WEEDKILLER, heap(PEAS, added("2027-04-21", "grass-clippings"), RIPE));
        clear(RipeReason.WEEDKILLER, heap(on("2026-11-02", "seen", "herbicide-suspect"), PEAS, RIPE));
        held(
                RipeReason.WEEDKILLER,
                heap(added("2026-10-01", "grass-herbicide"), test("2027-04-20", "peas", "unclear"), RIPE));
    }

    @Test
    @DisplayName("is weedkiller where peas failed, whatever went in")
    void peasFailed() {
        held(RipeReason.WEEDKILLER, heap(test("2027-04-20", "peas", "poor"), RIPE));
    }

    @Test
    @DisplayName("is walnut for its wait: four weeks for leaves, half a year for wood")
    void walnut() {
        held(RipeReason.WALNUT, heap(added("2026-11-20", "walnut-black-wood"), RIPE));
        clear(RipeReason.WALNUT, heap(added("2026-10-20", "walnut-black-wood"), RIPE));
        held(RipeReason.WALNUT, heap(added("2027-04-10", "walnut-black-leaves"), RIPE));
        clear(RipeReason.WALNUT, heap(added("2027-03-20", "walnut-black-leaves"), RIPE));
    }

    private static String measured(String what, double value, String unit) {
        return "{'date': '2027-05-02', 'measured': {'" + what + "': {'value': " + value + ", 'unit': '" + unit + "'}}}";
    }

    @Test
    @DisplayName("is a hot or warm middle by the thermometer as by the hand")
    void thermometer() {
        ReadyAnswer hot = heap(measured("core", 45, "C"));
        held(RipeReason.HOT_MIDDLE, hot);
        held(RipeReason.WARM_MIDDLE, hot);
        ReadyAnswer cold = heap(measured("core", 12, "C"));
        clear(RipeReason.HOT_MIDDLE, cold);
        clear(RipeReason.WARM_MIDDLE, cold);
    }

    @Test
    @DisplayName("is that it is dry, unless it is dark and crumbly")
    void dry() {
        held(RipeReason.DRY_NOT_RIPE, heap(measured("moisture", 20, "%")));
        clear(RipeReason.DRY_NOT_RIPE, heap(measured("moisture", 20, "%"), seen("dark-crumbly")));
        clear(RipeReason.DRY_NOT_RIPE, heap(measured("moisture", 50, "%")));
    }

    @Test
    @DisplayName("is what the days and the tests say")
    void daysAndTests() {
        held(RipeReason.TOO_YOUNG, built("2027-04-20"));
        held(RipeReason.FAILED_TEST, heap(test("2027-04-25", "seedlings", "poor"), RIPE));
        clear(RipeReason.FAILED_TEST, heap(test("2027-04-25", "seedlings", "good"), RIPE));
        held(RipeReason.NEVER_HOT, built("2027-02-20", RIPE));
        clear(RipeReason.NEVER_HOT, heap(RIPE));
        held(
                RipeReason.STILL_CURING,
                heap(on("2027-04-20", "seen", "core-hot"), on("2027-05-01", "notSeen", "core-hot")));
    }

    private static RipeReason lacking(ReadyAnswer answer) {
        return reasons(answer).stream()
                .filter(
                        List.of(RipeReason.NO_TEST_YET, RipeReason.NOT_LOOKED_AT, RipeReason.NOT_RIPE_BY_ANY_SIGN)
                                ::contains)
                .reduce((one, other) -> {
                    throw new AssertionError("two at once");
                })
                .orElse(null);
    }

    /** 119 days is a day too young to be ripe for rough use by its age, and long past the rest of 90 days. */
    private static RipeReason young(String... entries) {
        return lacking(built("2027-01-03", entries));
    }

    @Test
    @DisplayName("is that nothing speaks for it, where it is young and no sign is there")
    void nothing() {
        assertEquals(RipeReason.NOT_RIPE_BY_ANY_SIGN, young());
        assertEquals(RipeReason.NOT_RIPE_BY_ANY_SIGN, young(seen("smells-earthy")), "smell alone");
        assertEquals(RipeReason.NOT_RIPE_BY_ANY_SIGN, young(BAG), "a test alone");
        assertEquals(RipeReason.NOT_RIPE_BY_ANY_SIGN, young(seen("originals-visible")));
    }

    /** With bits of the old stuff in it the rules call nothing finished, so that the other ways are seen by themselves. */
    @ParameterizedTest
    @CsvSource({
        "2027-01-03, dark-crumbly, NOT_LOOKED_AT",
        "2027-01-03, smells-earthy, NOT_RIPE_BY_ANY_SIGN",
        "2027-01-03, dark-crumbly smells-earthy, NO_TEST_YET",
        "2027-01-03, dark-crumbly no-reheat-after-turning, NO_TEST_YET",
        "2026-11-03, dark-crumbly, NO_TEST_YET",
        "2026-11-04, dark-crumbly, NOT_LOOKED_AT"
    })
    @DisplayName("is that it was not tested, where looks go with smell, with staying cool or with half a year of rest")
    void looks(String built, String signs, RipeReason lacking) {
        ReadyAnswer bits = built(built, seen(("originals-visible " + signs).split(" ")));
        assertEquals(lacking, lacking(bits), reasons(bits).toString());
    }

    @Test
    @DisplayName("is that it was not tested, where the rules call it finished by its looks")
    void finished() {
        assertEquals(RipeReason.NO_TEST_YET, young(seen("dark-crumbly")));
    }

    @Test
    @DisplayName("is less where a test came out well and looks, smell or age go with it")
    void tests() {
        assertEquals(RipeReason.NO_TEST_YET, young(BAG, seen("dark-crumbly")));
        assertEquals(RipeReason.NO_TEST_YET, young(BAG, seen("smells-earthy")));
        assertEquals(RipeReason.NO_TEST_YET, lacking(built("2027-01-02", BAG)), "120 days");
        assertEquals(RipeReason.NO_TEST_YET, young(test("2027-04-25", "seedlings", "good"), seen("smells-earthy")));
        assertEquals(RipeReason.NO_TEST_YET, young(test("2027-04-25", "reheat", "good"), seen("smells-earthy")));
        assertEquals(null, young(BAG, test("2027-04-25", "seedlings", "good")), "both tests say it all");
    }

    @Test
    @DisplayName("is that it was not looked at, where what went in can be told and yet nothing warms any more")
    void maturing() {
        assertEquals(RipeReason.NOT_LOOKED_AT, young(seen("originals-visible", "no-reheat-after-turning")));
    }

    @Test
    @DisplayName("is the same as of a young heap where the day of building is not known, for all its record tells")
    void dayUnknown() {
        ReadyAnswer old = answer("", LEAVES);
        assertEquals(RipeReason.NOT_RIPE_BY_ANY_SIGN, lacking(old), reasons(old).toString());
        assertEquals(RipeReason.NOT_LOOKED_AT, lacking(answer("", LEAVES, seen("dark-crumbly"))));
    }

    @Test
    @DisplayName("is no sign that was found missing")
    void denied() {
        held(RipeReason.NOT_DARK, heap(notSeen("dark-crumbly")));
        clear(RipeReason.FOUL_SMELL, heap(notSeen("smells-sour", "smells-ammonia")));
        clear(RipeReason.BITS_IN_IT, heap(notSeen("foreign-bits")));
    }
}
