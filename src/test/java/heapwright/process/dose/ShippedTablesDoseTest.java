package heapwright.process.dose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.knowledge.Dose;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.KnowledgeReader;
import heapwright.knowledge.Limit;
import heapwright.knowledge.UsualDose;
import heapwright.pile.Container;
import heapwright.process.dose.Household.Rounding;
import heapwright.process.mixture.Basis;
import heapwright.process.mixture.Materials;
import heapwright.process.mixture.Mixture;
import heapwright.process.mixture.MixtureCalculator;
import heapwright.process.mixture.Observed;
import heapwright.process.mixture.PileSize;
import heapwright.process.mixture.Portion;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The doses with the tables as shipped: every usual material is there and every limit has the unit that is meant. */
class ShippedTablesDoseTest {

    private static final Knowledge KNOWLEDGE = KnowledgeReader.packed();
    private static final Materials MATERIALS = Materials.of(KNOWLEDGE.materials());
    private static final MixtureCalculator CALCULATOR = new MixtureCalculator();

    @ParameterizedTest
    @EnumSource(Dose.class)
    void everyDoseFindsItsMaterial(Dose dose) {
        for (PileStock stock : List.of(
                leafy(),
                PileStock.ofSize(PileSize.usualM3(Container.Kind.UNKNOWN), Basis.ASSUMED, Observed.nothing()))) {
            DoseAmount amount = DoseCalculator.calculate(dose, context(stock));
            assertNotEquals(Optional.of(Cap.NO_MATERIAL), amount.cap());
        }
    }

    @Test
    void ureaIsDissolvedInCansNotBarrels() {
        DoseAmount amount = DoseCalculator.calculate(Dose.UREA, context(leafy()));
        assertTrue(amount.isNeeded());
        assertEquals(
                amount.kgEach().likely() * 1000 / 10, amount.carrierLitres().likely(), 1e-9, "1 % is 10 g in a litre");
        assertTrue(amount.carrierLitres().likely() <= 60 * leafy().volumeM3().likely() + 1e-9);
        assertTrue(amount.kgEach().likely() >= 0.05, "a dose worth the walk: " + amount.kgEach());
    }

    @Test
    void theUsualDosesCanBeWorkedOut() {
        for (UsualDose dose : UsualDose.values()) {
            assertTrue(!UsualDoses.of(dose, context(leafy()), measure("matchbox"), measure("us-tablespoon"))
                    .isEmpty());
        }
    }

    @Test
    void twoMatchboxesOfUreaAreThirtyGrams() {
        List<Term> terms = UsualDoses.of(
                UsualDose.UREA_BY_THE_MATCHBOX, context(leafy()), measure("matchbox"), measure("us-tablespoon"));
        assertEquals(30, terms.get(0).value().likely(), 0.5);
    }

    @Test
    void everyMeasureOfTheTableCanTellAnAmount() {
        Map<String, Double> litres = KNOWLEDGE.measures().values().stream()
                .collect(Collectors.toMap(measure -> measure.id(), measure -> measure.litres()));
        Household household = new Household(litres);
        for (double amount = 0.004; amount < 3000; amount *= 1.7) {
            assertEquals(amount, household.ofLitres(amount, Rounding.NEAREST).litres(), 0.25 * amount);
        }
    }

    @TestFactory
    Stream<DynamicTest> everyMaterialGivesABalancedMixture() {
        Function<String, Mixture> alone = id -> CALCULATOR.mix(List.of(Portion.ofLitres(MATERIALS.get(id), 100)));
        return KNOWLEDGE.materials().keySet().stream()
                .map(id -> DynamicTest.dynamicTest(id, () -> {
                    Mixture mixture = alone.apply(id);
                    double wet = mixture.masses().wet().likely();
                    assertTrue(wet > 0);
                    assertEquals(
                            wet,
                            mixture.masses().dry().likely()
                                    + mixture.masses().water().likely(),
                            1e-9 * wet);
                    assertTrue(mixture.masses().volatileSolids().low() >= 0);
                    assertTrue(mixture.masses().degradableCarbon().high()
                            <= mixture.masses().carbon().high() + 1e-9);
                }));
    }

    private static double measure(String id) {
        return KNOWLEDGE.measures().get(id).litres();
    }

    private static PileStock leafy() {
        return PileStock.of(CALCULATOR.mix(List.of(
                Portion.ofLitres(MATERIALS.get("leaves-mixed"), 900),
                Portion.ofLitres(MATERIALS.get("kitchen-scraps"), 60))));
    }

    private static DoseContext context(PileStock stock) {
        Map<Limit, Double> limits = new EnumMap<>(Limit.class);
        KNOWLEDGE.limits().forEach((limit, info) -> limits.put(limit, info.value()));
        return new DoseContext(
                stock,
                Shape.of(Container.unknown(), stock.volumeM3().likely()),
                new Limits(limits),
                MATERIALS,
                List.of(),
                TestDoses.OCTOBER,
                true);
    }
}
