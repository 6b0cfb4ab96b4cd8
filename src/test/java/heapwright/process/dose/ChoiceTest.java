package heapwright.process.dose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import heapwright.knowledge.Dose;
import heapwright.pile.Container;
import heapwright.pile.Stock;
import heapwright.process.mixture.Materials;
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
                : TestDoses.plain(80);
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
        "MANURE,manure-horse-straw,manure-hen-home",
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
                TestDoses.dose(dose, pileFor(dose), TestDoses.litres(atHand, 5))
                        .material()
                        .orElseThrow()
                        .id());
    }

    /** Five litres are five litres, and two kilograms two. */
    @ParameterizedTest
    @EnumSource(names = {"SOAK_UP", "BULKING", "BIND_NITROGEN", "COVER", "INSULATION", "STARTER", "MEAL", "UREA"})
    void noMoreIsGivenThanThereIs(Dose dose) {
        PileStock stock = pileFor(dose);
        String id = TestDoses.dose(dose, stock).material().orElseThrow().id();
        DoseAmount spoon = TestDoses.dose(dose, stock, TestDoses.litres(id, 0.1));
        assertEquals(0.1, spoon.litres().high(), 1e-9);
        assertEquals(Optional.of(Cap.AT_HAND), spoon.cap());
        DoseAmount pinch = TestDoses.dose(dose, stock, TestDoses.kilograms(id, 0.02));
        assertEquals(0.02, pinch.kg().high(), 1e-9);
        assertEquals(Optional.of(Cap.AT_HAND), pinch.cap());
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
