package heapwright.process.dose;

import static heapwright.process.mixture.TestMaterials.LEAVES;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.knowledge.Dose;
import heapwright.knowledge.Material;
import heapwright.pile.Container;
import heapwright.pile.Stock;
import heapwright.process.mixture.Composition;
import heapwright.process.mixture.Materials;
import heapwright.process.mixture.Portion;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What each dose is made of. */
class ChoiceTest {

    /** A starved pile wants nitrogen, a rich one carbon; both are found airless, wet and cold by whoever asks. */
    private static PileStock pileFor(Dose dose) {
        return dose == Dose.BIND_NITROGEN || dose == Dose.BULKING || dose == Dose.SOAK_UP
                ? TestDoses.ofSize(1)
                : TestDoses.plain(50);
    }

    /** What does not serve is left where it lies, however much there is of it. */
    @ParameterizedTest
    @CsvSource({
        "SOAK_UP,kitchen-scraps,leaves-old-brown",
        "SOAK_UP,compost-finished,leaves-old-brown",
        "BULKING,leaves-mixed,twigs",
        "BULKING,kitchen-scraps,twigs",
        "UREA,ammonium-sulphate,urea",
        "AMMONIUM_SULPHATE,urea,ammonium-sulphate",
        "MEAL,grass-clippings,blood-meal",
        "MEAL,urea,blood-meal",
        "GREENS,manure-hen-home,grass-clippings",
        "GREENS,leaves-mixed,grass-clippings",
        "MANURE,grass-clippings,manure-hen-home",
        "MANURE,leaves-mixed,manure-hen-home",
        "BIND_NITROGEN,chips-hardwood,straw-general",
        "BIND_NITROGEN,grass-clippings,straw-general",
        "ASH,compost-finished,wood-ash",
        "STARTER,wood-ash,compost-finished",
        "COVER,straw-general,compost-finished",
        "INSULATION,compost-finished,straw-general"
    })
    void whatDoesNotServeIsPassedOver(Dose dose, String atHand, String chosen) {
        DoseAmount amount = TestDoses.dose(dose, pileFor(dose), TestDoses.some(atHand));
        assertEquals(chosen, amount.material().orElseThrow().id());
    }

    /**
     * Horse manure is too lean to bring a heap to 30, yet it goes a good part of the way: 90 kg of carbon at 50 hold 1.8 kg
     * of nitrogen, and what is mixed in brings its own carbon and nitrogen to them.
     */
    @Test
    void leanManureAtHandGoesPartOfTheWay() {
        PileStock stock = TestDoses.plain(50);
        DoseAmount amount = TestDoses.dose(Dose.MANURE, stock, TestDoses.some("manure-horse-straw"));
        Material manure = amount.material().orElseThrow();
        assertEquals("manure-horse-straw", manure.id());
        Composition of = Composition.ofSeason(manure);
        double kg = amount.kg().likely();
        double after = (90 + kg * of.carbon()) / (1.8 + kg * of.nitrogen());
        assertEquals(after, TestDoses.likely(amount, Term.Key.CARBON_TO_NITROGEN_AFTER), 1e-9);
        assertEquals(100 * (50 - after) / (50 - 30), TestDoses.likely(amount, Term.Key.SHARE_OF_NEED), 1e-9);
        assertTrue(after > 30 && after < 45, "it falls by a quarter of the way or more, to " + after);
        assertEquals(
                "manure-hen-home",
                TestDoses.dose(
                                Dose.MANURE,
                                stock,
                                TestDoses.some("manure-horse-straw"),
                                TestDoses.some("manure-hen-home"))
                        .material()
                        .orElseThrow()
                        .id());
        assertEquals(
                "manure-hen-home",
                TestDoses.dose(Dose.MANURE, stock, TestDoses.litres("manure-horse-straw", 10))
                        .material()
                        .orElseThrow()
                        .id());
    }

    /** What serves and lies there goes before what would have to be got. */
    @ParameterizedTest
    @CsvSource({
        "SOAK_UP,straw-general",
        "BULKING,chips-hardwood",
        "GREENS,kitchen-scraps",
        "BIND_NITROGEN,corn-stalks",
        "INSULATION,leaves-mixed"
    })
    void whatIsAtHandGoesFirst(Dose dose, String atHand) {
        DoseAmount amount = TestDoses.dose(dose, pileFor(dose), TestDoses.some(atHand));
        assertEquals(atHand, amount.material().orElseThrow().id());
        assertEquals(
                atHand,
                TestDoses.dose(dose, pileFor(dose), TestDoses.litres(atHand, 300))
                        .material()
                        .orElseThrow()
                        .id());
    }

    /** Wood soaks slowly: where maize stalks lie there too, the chips are kept for holding the pile open. */
    @Test
    void stalksSoakUpBeforeChips() {
        assertEquals(
                "corn-stalks",
                TestDoses.dose(
                                Dose.SOAK_UP,
                                pileFor(Dose.SOAK_UP),
                                TestDoses.some("chips-hardwood"),
                                TestDoses.some("corn-stalks"))
                        .material()
                        .orElseThrow()
                        .id());
    }

    /** What is at hand is given as far as it goes, by volume and by mass. */
    @ParameterizedTest
    @EnumSource(names = {"SOAK_UP", "BULKING", "BIND_NITROGEN", "COVER", "INSULATION", "STARTER", "MEAL", "UREA"})
    void noMoreIsGivenThanThereIs(Dose dose) {
        PileStock stock = pileFor(dose);
        DoseAmount whole = TestDoses.dose(dose, stock);
        String id = whole.material().orElseThrow().id();
        double litres = 0.9 * whole.litres().likely();
        DoseAmount most = TestDoses.dose(dose, stock, TestDoses.litres(id, litres));
        assertEquals(litres, most.litres().high(), 1e-9);
        assertEquals(Optional.of(Cap.AT_HAND), most.cap());
        double kg = 0.9 * whole.kg().likely();
        DoseAmount weighed = TestDoses.dose(dose, stock, TestDoses.kilograms(id, kg));
        assertEquals(kg, weighed.kg().high(), 1e-9);
        assertEquals(Optional.of(Cap.AT_HAND), weighed.cap());
    }

    /** A bag of leaves is no cure for a cubic metre of slurry: what to get is told, and how far the bag would go. */
    @ParameterizedTest
    @EnumSource(names = {"SOAK_UP", "BULKING", "BIND_NITROGEN", "COVER", "INSULATION", "STARTER", "MEAL", "UREA"})
    void lessThanAFifthAtHandIsNotTheDose(Dose dose) {
        PileStock stock = pileFor(dose);
        DoseAmount whole = TestDoses.dose(dose, stock);
        String id = whole.material().orElseThrow().id();
        double kg = 0.1 * whole.kg().likely();
        DoseAmount told = TestDoses.dose(dose, stock, TestDoses.kilograms(id, kg));
        assertEquals(whole.kg(), told.kg());
        assertEquals(whole.cap(), told.cap());
        double need = whole.working().stream()
                .filter(term -> term.key() == Term.Key.FULL_NEED)
                .mapToDouble(term -> term.value().likely())
                .findFirst()
                .orElse(whole.kg().likely());
        assertEquals(100 * kg / need, TestDoses.likely(told, Term.Key.SHARE_AT_HAND), 1e-9);
    }

    /** Of two heaps at hand the little one is passed over for the one that does. */
    @Test
    void aLittleAtHandYieldsToEnoughOfAnotherAtHand() {
        PileStock stock = TestDoses.ofSize(1);
        DoseAmount amount = TestDoses.dose(
                Dose.SOAK_UP, stock, TestDoses.litres("leaves-old-brown", 1), TestDoses.litres("straw-general", 280));
        assertEquals("straw-general", amount.material().orElseThrow().id());
        assertEquals(Optional.of(Cap.AT_HAND), amount.cap());
    }

    /** Nobody has barrows of coffee grounds: where no amount is told, a kitchen gives four buckets of ten litres. */
    @Test
    void kitchenStuffOfNoToldAmountIsFourBuckets() {
        DoseAmount lean = TestDoses.dose(
                Dose.GREENS, TestDoses.mixed(Portion.ofKilograms(LEAVES, 40)), TestDoses.some("kitchen-scraps"));
        assertEquals("kitchen-scraps", lean.material().orElseThrow().id());
        assertEquals(40, lean.litres().likely(), 1e-6);
        assertEquals(Optional.of(Cap.AT_HAND), lean.cap());
        DoseAmount told = TestDoses.dose(
                Dose.GREENS,
                TestDoses.mixed(Portion.ofKilograms(LEAVES, 40)),
                TestDoses.litres("kitchen-scraps", 2000));
        assertTrue(told.litres().likely() > 40, told.toString());
        DoseAmount leaves = TestDoses.dose(Dose.SOAK_UP, TestDoses.ofSize(1), TestDoses.some("leaves-old-brown"));
        assertTrue(leaves.litres().likely() > 40, leaves.toString());
    }

    @Test
    void anEmptyHeapOfItIsNone() {
        DoseAmount amount = TestDoses.dose(Dose.SOAK_UP, TestDoses.ofSize(1), TestDoses.kilograms("straw-general", 0));
        assertEquals("leaves-old-brown", amount.material().orElseThrow().id());
    }

    @ParameterizedTest
    @EnumSource(
            mode = EnumSource.Mode.EXCLUDE,
            names = {"WATER_TO_TARGET", "WATER_THE_CORE", "SOAK_WOODY", "ENLARGE"})
    void whereNothingServesTheDoseSaysSo(Dose dose) {
        PileStock stock = pileFor(dose);
        DoseContext context = new DoseContext(
                stock,
                Shape.of(Container.unknown(), 1),
                TestLimits.LIMITS,
                Materials.of(Map.of()),
                List.<Stock>of(),
                TestDoses.OCTOBER,
                false);
        DoseAmount amount = DoseCalculator.calculate(dose, context);
        assertFalse(amount.isNeeded());
        assertEquals(Optional.of(Cap.NO_MATERIAL), amount.cap());
        assertEquals(Optional.empty(), amount.material());
    }
}
