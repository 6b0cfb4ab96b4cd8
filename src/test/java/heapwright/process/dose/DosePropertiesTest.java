package heapwright.process.dose;

import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.Seed;
import heapwright.knowledge.Dose;
import heapwright.knowledge.Limit;
import heapwright.knowledge.Material;
import heapwright.pile.Container;
import heapwright.pile.Stock;
import heapwright.process.dose.Term.Key;
import heapwright.process.mixture.Band;
import heapwright.process.mixture.Basis;
import heapwright.process.mixture.Materials;
import heapwright.process.mixture.MixtureCalculator;
import heapwright.process.mixture.Observed;
import heapwright.process.mixture.Portion;
import heapwright.process.mixture.TestMaterials;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What holds of every dose, whatever the pile. */
class DosePropertiesTest {

    private static final MixtureCalculator CALCULATOR = new MixtureCalculator();
    private static final Limits LIMITS = TestLimits.LIMITS;

    @Property(tries = 400, seed = Seed.FIXED)
    void everyDoseIsFiniteNotNegativeAndWithinItsLimit(
            @ForAll("stocks") PileStock stock, @ForAll Dose dose, @ForAll boolean cold) {
        DoseAmount amount = DoseCalculator.calculate(dose, context(stock, List.of(), cold));
        assertTrue(amount.kg().low() >= 0);
        assertTrue(amount.litres().low() >= 0);
        assertTrue(amount.parts() >= 1 && amount.parts() <= 4);
        double volume = stock.volumeM3().likely();
        assertTrue(amount.litres().high() <= LIMITS.share(Limit.CARBON_MAX_SHARE) * volume * 1000 + 1e-6);
        switch (dose) {
            case ASH -> {
                assertTrue(amount.litres().high() <= LIMITS.of(Limit.ASH_MAX) * volume + 1e-9);
                assertTrue(amount.kg().high()
                        <= LIMITS.share(Limit.ASH_MASS_MAX) * stock.wetKg().likely() + 1e-9);
            }
            case UREA -> {
                assertTrue(amount.kgEach().high() * 1000 <= LIMITS.of(Limit.UREA_MAX) * volume + 1e-6);
                assertTrue(amount.kgEach().high() * 460 <= LIMITS.of(Limit.NITROGEN_MAX) * volume + 1e-6);
                assertTrue(amount.carrierLitres().high() <= LIMITS.of(Limit.WATER_MAX_AT_ONCE) * volume + 1e-6);
            }
            case AMMONIUM_SULPHATE ->
                assertTrue(amount.kgEach().high() * 210 <= LIMITS.of(Limit.NITROGEN_MAX) * volume + 1e-6);
            case WATER_TO_TARGET, WATER_THE_CORE, SOAK_WOODY ->
                assertTrue(amount.litres().high() <= LIMITS.of(Limit.WATER_MAX_AT_ONCE) * volume + 1e-6);
            case SOAK_UP, BIND_NITROGEN, MANURE, GREENS, BULKING, MEAL, STARTER, COVER, INSULATION, ENLARGE ->
                assertTrue(Double.isFinite(amount.kg().high()));
        }
    }

    /** Over the season: all doses together, with the water that they come in. */
    @Property(tries = 400, seed = Seed.FIXED)
    void theDosesOfAFertiliserTogetherStayWithinTheLimits(
            @ForAll("stocks") PileStock stock, @ForAll("dissolved") Dose dose) {
        DoseAmount amount = DoseCalculator.calculate(dose, context(stock, List.of(), false));
        double share = amount.material().orElseThrow().nitrogenPct().typical() / 100;
        double grams = amount.kg().high() * 1000;
        assertTrue(grams * share
                <= amount.parts()
                                * LIMITS.of(Limit.NITROGEN_MAX)
                                * stock.volumeM3().likely()
                        + 1e-6);
        double wet = stock.wetKg().likely();
        double before = stock.moisturePct().likely();
        double poured = amount.parts() * amount.carrierLitres().high();
        double after = (wet * before + 100 * poured) / (wet + poured);
        assertTrue(after <= Math.max(LIMITS.of(Limit.MOISTURE_OK_HIGH), before) + 1e-6, amount::toString);
    }

    @Provide
    Arbitrary<Dose> dissolved() {
        return Arbitraries.of(Dose.UREA, Dose.AMMONIUM_SULPHATE);
    }

    /** However little of whatever lies about: given is at least a fifth of the need, or of all the pile can take. */
    @Property(tries = 400, seed = Seed.FIXED)
    void whatIsAtHandIsNeverTheDoseWhereItIsLessThanAFifthOfTheNeed(
            @ForAll("stocks") PileStock stock, @ForAll Dose dose, @ForAll("atHand") List<Stock> atHand) {
        DoseAmount amount = DoseCalculator.calculate(dose, context(stock, atHand, false));
        Optional<Term> need = amount.working().stream()
                .filter(term -> term.key() == Key.FULL_NEED)
                .findFirst();
        if (amount.cap().equals(Optional.of(Cap.AT_HAND)) && need.isPresent()) {
            String id = amount.material().orElseThrow().id();
            DoseAmount plenty =
                    DoseCalculator.calculate(dose, context(stock, List.of(new Stock(id, Optional.empty())), false));
            double fifth = 0.2 * need.get().value().likely();
            double most = plenty.kg().likely();
            double least = most < fifth ? 0.2 * most : fifth;
            assertTrue(amount.kg().likely() >= least - 1e-9, amount::toString);
        }
    }

    @Provide
    Arbitrary<List<Stock>> atHand() {
        return Combinators.combine(
                        Arbitraries.of(
                                TestMaterials.all().keySet().stream().sorted().toList()),
                        Arbitraries.doubles().between(0.01, 50))
                .as(TestDoses::kilograms)
                .list()
                .ofMaxSize(4);
    }

    @Provide
    Arbitrary<PileStock> stocks() {
        Arbitrary<Portion> portion = Combinators.combine(
                        Arbitraries.of(TestMaterials.all().values().stream()
                                .sorted(Comparator.comparing(Material::id))
                                .toList()),
                        Arbitraries.doubles().between(0.1, 500))
                .as(Portion::ofKilograms);
        Arbitrary<PileStock> known = Combinators.combine(
                        portion.list().ofMinSize(1).ofMaxSize(6), observed())
                .as((portions, observed) -> PileStock.of(CALCULATOR.mix(portions, observed)));
        Arbitrary<PileStock> unknown = Combinators.combine(Arbitraries.doubles().between(0.05, 5), observed())
                .as((volume, observed) -> PileStock.ofSize(Band.exact(volume), Basis.REPORTED, observed));
        return Arbitraries.oneOf(known, unknown);
    }

    private static Arbitrary<Observed> observed() {
        return Combinators.combine(
                        Arbitraries.doubles().between(5, 92).optional(),
                        Arbitraries.doubles().between(60, 1000).optional())
                .as((moisture, density) -> new Observed(
                        moisture.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                        density.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                        OptionalDouble.empty()));
    }

    private static DoseContext context(PileStock stock, List<Stock> atHand, boolean cold) {
        Shape shape = Shape.of(Container.unknown(), stock.volumeM3().likely());
        return new DoseContext(
                stock, shape, LIMITS, Materials.of(TestMaterials.all()), atHand, TestDoses.OCTOBER, cold);
    }
}
