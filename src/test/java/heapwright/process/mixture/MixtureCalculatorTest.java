package heapwright.process.mixture;

import static heapwright.process.mixture.TestMaterials.CHIPS;
import static heapwright.process.mixture.TestMaterials.GRASS;
import static heapwright.process.mixture.TestMaterials.KITCHEN;
import static heapwright.process.mixture.TestMaterials.LEAVES;
import static heapwright.process.mixture.TestMaterials.STRAW;
import static heapwright.process.mixture.TestMaterials.UREA;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.Seed;
import heapwright.knowledge.Material;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

class MixtureCalculatorTest {

    private static final MixtureCalculator CALCULATOR = new MixtureCalculator();

    @Property(tries = 200, seed = Seed.FIXED)
    void waterCarbonAndNitrogenAreNeitherMadeNorLost(@ForAll("portions") List<Portion> portions) {
        Mixture mixture = CALCULATOR.mix(portions);
        Masses masses = mixture.masses();
        double wet = portions.stream().mapToDouble(one -> one.kgWet().likely()).sum();
        double water = likely(portions, one -> Composition.of(one.material()).water());
        double carbon = likely(portions, one -> Composition.of(one.material()).carbon());
        double nitrogen = likely(portions, one -> Composition.of(one.material()).nitrogen());
        assertEquals(wet, masses.wet().likely(), 1e-9 * wet);
        assertEquals(water, masses.water().likely(), 1e-9 * wet);
        assertEquals(carbon, masses.carbon().likely(), 1e-9 * wet);
        assertEquals(nitrogen, masses.nitrogen().likely(), 1e-9 * wet);
        assertEquals(
                masses.wet().likely(), masses.dry().likely() + masses.water().likely(), 1e-9 * wet);
        assertEquals(
                masses.dry().likely(),
                masses.volatileSolids().likely() + masses.ash().likely(),
                1e-9 * wet);
    }

    @Property(tries = 200, seed = Seed.FIXED)
    void whatTheIngredientsBringAddsUpToTheWhole(@ForAll("portions") List<Portion> portions) {
        Mixture mixture = CALCULATOR.mix(portions);
        Masses masses = mixture.masses();
        assertEquals(
                masses.wet().likely(),
                sum(mixture, Contribution::kgWet),
                1e-9 * masses.wet().likely());
        assertEquals(
                masses.water().likely(),
                sum(mixture, Contribution::kgWater),
                1e-9 * masses.wet().likely());
        assertEquals(
                masses.nitrogen().likely(),
                sum(mixture, Contribution::kgNitrogen),
                1e-9 * masses.wet().likely());
        assertTrue(mixture.settledM3().likely() <= sum(mixture, Contribution::settledM3) + 1e-9);
        assertTrue(mixture.settledM3().likely() >= 0.9 * sum(mixture, Contribution::settledM3) - 1e-9);
    }

    @Property(tries = 100, seed = Seed.FIXED)
    void theOrderOfThePortionsChangesNothingButTheRoundingOfSums(@ForAll("portions") List<Portion> portions) {
        List<Portion> turned = new ArrayList<>(portions);
        Collections.reverse(turned);
        assertClose(CALCULATOR.mix(portions), CALCULATOR.mix(turned), 1e-9);
    }

    @Test
    void aGramOfSomethingElseMovesTheBandsByAHair() {
        List<Portion> told = List.of(Portion.ofKilograms(LEAVES, 20), Portion.ofKilograms(KITCHEN, 30));
        List<Portion> more = List.of(
                Portion.ofKilograms(STRAW, 0.001), Portion.ofKilograms(LEAVES, 20), Portion.ofKilograms(KITCHEN, 30));
        assertClose(CALCULATOR.mix(told), CALCULATOR.mix(more), 1e-3);
    }

    private static void assertClose(Mixture one, Mixture other, double within) {
        for (ToDoubleFunction<Band> end : List.<ToDoubleFunction<Band>>of(Band::low, Band::likely, Band::high)) {
            for (Function<Mixture, Band> of : List.<Function<Mixture, Band>>of(
                    Mixture::moisturePct, Mixture::carbonToNitrogen, Mixture::densityKgM3, Mixture::freeAirSpacePct)) {
                double told = end.applyAsDouble(of.apply(one));
                assertEquals(told, end.applyAsDouble(of.apply(other)), within * Math.max(1, told));
            }
        }
    }

    @Property(tries = 200, seed = Seed.FIXED)
    void everythingIsFiniteAndWithinItsRange(@ForAll("portions") List<Portion> portions) {
        Mixture mixture = CALCULATOR.mix(portions);
        assertTrue(mixture.moisturePct().low() >= 0 && mixture.moisturePct().high() < 100);
        assertTrue(mixture.freeAirSpacePct().low() >= 0
                && mixture.freeAirSpacePct().high() <= 100);
        assertTrue(mixture.carbonToNitrogen().low() >= 0);
        assertTrue(mixture.carbonToNitrogen().high() <= MixtureCalculator.NO_NITROGEN);
        assertTrue(mixture.allCarbonToNitrogen().high() <= MixtureCalculator.NO_NITROGEN);
        assertTrue(mixture.masses().reachableCarbon().likely()
                <= mixture.masses().carbon().likely() + 1e-9);
        assertTrue(mixture.looseM3().likely() >= mixture.settledM3().likely() - 1e-12);
        assertTrue(mixture.woodySharePct() >= 0 && mixture.woodySharePct() <= 100);
        assertTrue(mixture.coarseSharePct() >= 0 && mixture.coarseSharePct() <= 100);
    }

    @Property(tries = 100, seed = Seed.FIXED)
    void theSizeOfTheHeapDoesNotChangeItsKind(@ForAll("portions") List<Portion> portions) {
        List<Portion> triple = portions.stream()
                .map(one -> one.amount().isMass()
                        ? Portion.ofKilograms(one.material(), 3 * one.amount().kilograms())
                        : Portion.ofLitres(one.material(), 3 * one.amount().litres()))
                .toList();
        Mixture one = CALCULATOR.mix(portions);
        Mixture three = CALCULATOR.mix(triple);
        assertEquals(one.moisturePct().high(), three.moisturePct().high(), 1e-6);
        assertEquals(one.carbonToNitrogen().low(), three.carbonToNitrogen().low(), 1e-6);
        assertEquals(3 * one.masses().wet().low(), three.masses().wet().low(), 1e-6);
    }

    @Test
    void theSamePileGivesTheSameBands() {
        List<Portion> portions = List.of(Portion.ofLitres(LEAVES, 300), Portion.ofLitres(KITCHEN, 80));
        assertEquals(CALCULATOR.mix(portions), new MixtureCalculator().mix(portions));
    }

    @Test
    void theBandsHardlyMoveWithMoreDraws() {
        List<Portion> portions =
                List.of(Portion.ofLitres(LEAVES, 300), Portion.ofLitres(GRASS, 80), Portion.ofLitres(STRAW, 100));
        Mixture usual = CALCULATOR.mix(portions);
        Mixture many = new MixtureCalculator(16_384).mix(portions);
        assertEquals(many.moisturePct().low(), usual.moisturePct().low(), 1.0);
        assertEquals(many.moisturePct().high(), usual.moisturePct().high(), 1.0);
        assertEquals(many.carbonToNitrogen().low(), usual.carbonToNitrogen().low(), 1.5);
        assertEquals(many.carbonToNitrogen().high(), usual.carbonToNitrogen().high(), 1.5);
    }

    @Test
    void aWeighedPortionHasNoDoubtInItsMassAndABucketHas() {
        assertTrue(Portion.ofKilograms(LEAVES, 12).kgWet().isExact());
        Band bucket = Portion.ofLitres(LEAVES, 10).kgWet();
        assertEquals(0.80, bucket.low(), 1e-9);
        assertEquals(1.15, bucket.likely(), 1e-9);
        assertEquals(1.50, bucket.high(), 1e-9);
    }

    @Test
    void aMeasuredMoistureReplacesTheWaterAndKeepsTheDryMass() {
        List<Portion> portions = List.of(Portion.ofLitres(LEAVES, 500), Portion.ofLitres(GRASS, 100));
        Mixture estimated = CALCULATOR.mix(portions);
        Mixture measured = CALCULATOR.mix(
                portions, new Observed(OptionalDouble.of(68), OptionalDouble.empty(), OptionalDouble.empty()));
        assertTrue(measured.moisturePct().isExact());
        assertEquals(68, measured.moisturePct().likely(), 1e-9);
        assertEquals(estimated.masses().dry().likely(), measured.masses().dry().likely(), 1e-9);
        assertEquals(Basis.MEASURED, measured.moistureBasis());
        assertEquals(Basis.ESTIMATED, estimated.moistureBasis());
    }

    @Test
    void aMeasuredDensityDecidesTheAirSpace() {
        List<Portion> portions = List.of(Portion.ofLitres(LEAVES, 500), Portion.ofLitres(GRASS, 100));
        Mixture dense = CALCULATOR.mix(
                portions, new Observed(OptionalDouble.empty(), OptionalDouble.of(850), OptionalDouble.empty()));
        assertEquals(850, dense.densityKgM3().likely(), 1e-9);
        assertTrue(dense.densityKgM3().isExact());
        assertTrue(dense.freeAirSpacePct().high()
                < CALCULATOR.mix(portions).freeAirSpacePct().low());
        assertEquals(dense.masses().wet().likely() / 850, dense.settledM3().likely(), 1e-9);
    }

    @Test
    void aStatedVolumeGivesTheDensity() {
        Mixture mixture = CALCULATOR.mix(
                List.of(Portion.ofKilograms(LEAVES, 300)),
                new Observed(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.of(0.6)));
        assertEquals(500, mixture.densityKgM3().likely(), 1e-9);
        assertEquals(Basis.REPORTED, mixture.volumeBasis());
    }

    /** 50 kg of chips with 32.5 kg dry, 50.4 % carbon and C:N 560, of which three tenths are reached; grass in full. */
    @Test
    void woodCountsFullyInTheWholeAndInPartInTheSeason() {
        Mixture mixture = CALCULATOR.mix(List.of(Portion.ofKilograms(CHIPS, 50), Portion.ofKilograms(GRASS, 50)));
        double chips = 32.5 * 0.504;
        double grass = mixture.masses().carbon().likely() - chips;
        double nitrogen = grass / 17;
        assertEquals(
                (chips + grass) / (chips / 560 + nitrogen),
                mixture.allCarbonToNitrogen().likely(),
                1e-6);
        assertEquals(
                (0.3 * chips + grass) / (0.3 * chips / 560 + nitrogen),
                mixture.carbonToNitrogen().likely(),
                1e-6);
        assertTrue(mixture.masses().reachableCarbon().likely()
                < mixture.masses().carbon().likely());
        assertEquals(100 * 32.5 / (32.5 + 9), mixture.woodySharePct(), 1e-6);
    }

    @Test
    void stuffWithoutNitrogenStaysFinite() {
        Material oil = TestMaterials.material(
                "x",
                Material.Group.PROBLEM,
                TestMaterials.f(0, 0, 0),
                TestMaterials.f(70, 70, 70),
                TestMaterials.f(5, 5, 5),
                TestMaterials.f(900, 900, 900));
        Material bare = new Material(
                "x",
                "x",
                oil.group(),
                List.of(),
                oil.carbonToNitrogen(),
                oil.carbonPct(),
                TestMaterials.f(0, 0, 0),
                true,
                oil.moisturePct(),
                oil.densityKgM3(),
                oil.ashPct(),
                oil.ligninPctVs(),
                oil.saltPct(),
                oil.traits(),
                List.of(),
                oil.keepOut(),
                "");
        assertEquals(
                MixtureCalculator.NO_NITROGEN,
                CALCULATOR
                        .mix(List.of(Portion.ofKilograms(bare, 1)))
                        .carbonToNitrogen()
                        .likely());
        assertEquals(
                0,
                CALCULATOR
                        .mix(List.of(Portion.ofKilograms(UREA, 1)))
                        .carbonToNitrogen()
                        .likely());
    }

    @Test
    void nothingIsNoMixture() {
        assertThrows(IllegalArgumentException.class, () -> CALCULATOR.mix(List.of()));
        assertThrows(IllegalArgumentException.class, () -> CALCULATOR.mix(List.of(Portion.ofKilograms(LEAVES, 0))));
        assertThrows(IllegalArgumentException.class, () -> Portion.ofKilograms(LEAVES, -1));
        assertThrows(IllegalArgumentException.class, () -> Portion.ofLitres(LEAVES, Double.POSITIVE_INFINITY));
    }

    @Provide
    Arbitrary<List<Portion>> portions() {
        Arbitrary<Material> material = Arbitraries.of(TestMaterials.all().values().stream()
                .sorted(java.util.Comparator.comparing(Material::id))
                .toList());
        Arbitrary<Double> amount = Arbitraries.doubles().between(0.05, 2000);
        Arbitrary<Portion> portion = Combinators.combine(material, amount, Arbitraries.of(true, false))
                .as((what, much, weighed) -> weighed ? Portion.ofKilograms(what, much) : Portion.ofLitres(what, much));
        return portion.list().ofMinSize(1).ofMaxSize(14);
    }

    private static double likely(List<Portion> portions, ToDoubleFunction<Portion> perKg) {
        return portions.stream()
                .mapToDouble(one -> one.kgWet().likely() * perKg.applyAsDouble(one))
                .sum();
    }

    private static double sum(Mixture mixture, ToDoubleFunction<Contribution> what) {
        return mixture.contributions().stream().mapToDouble(what).sum();
    }
}
