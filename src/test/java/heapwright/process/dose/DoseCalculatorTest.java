package heapwright.process.dose;

import static heapwright.process.mixture.TestMaterials.CHIPS;
import static heapwright.process.mixture.TestMaterials.GRASS;
import static heapwright.process.mixture.TestMaterials.KITCHEN;
import static heapwright.process.mixture.TestMaterials.LEAVES;
import static heapwright.process.mixture.TestMaterials.MANURE;
import static heapwright.process.mixture.TestMaterials.STALKS;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.knowledge.Dose;
import heapwright.knowledge.Figure;
import heapwright.knowledge.KeepOutClass;
import heapwright.knowledge.Limit;
import heapwright.knowledge.Material;
import heapwright.pile.Amount;
import heapwright.pile.Container;
import heapwright.pile.Stock;
import heapwright.process.dose.Term.Key;
import heapwright.process.mixture.Band;
import heapwright.process.mixture.Basis;
import heapwright.process.mixture.Composition;
import heapwright.process.mixture.Materials;
import heapwright.process.mixture.MixtureCalculator;
import heapwright.process.mixture.Observed;
import heapwright.process.mixture.Portion;
import heapwright.process.mixture.TestMaterials;
import java.time.Month;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DoseCalculatorTest {

    private static final MixtureCalculator CALCULATOR = new MixtureCalculator();
    private static final Limits LIMITS = TestLimits.LIMITS;

    @Test
    void soakingUpLandsOnTheTopOfTheGoodRange() {
        PileStock stock = measured(65);
        Limits roomy = with(Limit.CARBON_MAX_SHARE, 500);
        DoseAmount amount = DoseCalculator.calculate(Dose.SOAK_UP, context(stock, List.of(), false, roomy));
        assertEquals("leaves-old-brown", amount.material().orElseThrow().id());
        Composition leaves = Composition.of(amount.material().orElseThrow());
        double kg = amount.kg().likely();
        double water = stock.wetKg().likely() * 0.65 + kg * leaves.water();
        assertEquals(60, 100 * water / (stock.wetKg().likely() + kg), 1e-9);
        assertEquals(60, value(amount, Key.MOISTURE_AFTER), 1e-9);
        assertTrue(amount.cap().isEmpty());
    }

    @Test
    void soakingUpTakesWhatIsAtHandFirstAndNoMoreThanThereIs() {
        Stock few = new Stock("corn-stalks", Optional.of(Amount.ofVolume(10, "bucket", 100)));
        DoseAmount amount = DoseCalculator.calculate(Dose.SOAK_UP, context(measured(68), List.of(few), false));
        assertEquals("corn-stalks", amount.material().orElseThrow().id());
        assertEquals(100, amount.litres().likely(), 1e-9);
        assertEquals(Optional.of(Cap.AT_HAND), amount.cap());
        assertTrue(value(amount, Key.FULL_NEED) > amount.kg().likely());
    }

    @Test
    void wetGreensAtHandAreNoSponge() {
        Stock grass = new Stock("grass-clippings", Optional.empty());
        DoseAmount amount = DoseCalculator.calculate(Dose.SOAK_UP, context(measured(68), List.of(grass), false));
        assertEquals("leaves-old-brown", amount.material().orElseThrow().id());
    }

    @Test
    void aMeasuredGoodMoistureNeedsNothing() {
        assertFalse(DoseCalculator.calculate(Dose.SOAK_UP, context(measured(57), List.of(), false))
                .isNeeded());
        assertFalse(DoseCalculator.calculate(Dose.WATER_TO_TARGET, context(measured(57), List.of(), false))
                .isNeeded());
    }

    @Test
    void anEstimatedMoistureYieldsToWhatWasFound() {
        PileStock dryRecipe =
                PileStock.of(CALCULATOR.mix(List.of(Portion.ofLitres(STALKS, 800), Portion.ofLitres(KITCHEN, 50))));
        DoseAmount amount = DoseCalculator.calculate(Dose.SOAK_UP, context(dryRecipe, List.of(), false));
        assertTrue(amount.isNeeded());
        Term moisture = term(amount, Key.PILE_MOISTURE);
        assertEquals(65, moisture.value().likely(), 1e-9);
        assertEquals(Basis.ASSUMED, moisture.basis());
    }

    @Test
    void waterGoesToTheMiddleOfTheGoodRangeButNotAllAtOnce() {
        PileStock stock = measured(45);
        DoseAmount amount = DoseCalculator.calculate(
                Dose.WATER_TO_TARGET, context(stock, List.of(), false, with(Limit.WATER_MAX_AT_ONCE, 1000)));
        double after = (stock.wetKg().likely() * 0.45 + amount.litres().likely())
                / (stock.wetKg().likely() + amount.litres().likely());
        assertEquals(0.55, after, 1e-9);
        DoseAmount held = DoseCalculator.calculate(Dose.WATER_TO_TARGET, context(measured(30), List.of(), false));
        assertEquals(Optional.of(Cap.PER_CUBIC_METRE), held.cap());
        assertEquals(60 * stock.volumeM3().likely(), held.litres().likely(), 1e-6);
    }

    /** Ants alone say dry, and nobody squeezed it: a third of the most is tried first, and the hand asks for all of it. */
    @Test
    void whereNothingShowsHowDryItIsAThirdOfTheMostIsTried() {
        PileStock unknown = PileStock.ofSize(Band.exact(1), Basis.REPORTED, Observed.nothing());
        DoseAmount tried = DoseCalculator.calculate(Dose.WATER_TO_TARGET, context(unknown, List.of(), false));
        assertEquals(20, tried.litres().likely(), 1e-9);
        assertEquals(Optional.of(Cap.PER_CUBIC_METRE), tried.cap());
        PileStock squeezed = unknown.atMoisture(Band.around(25, 30, 35), Basis.REPORTED);
        assertEquals(
                60,
                DoseCalculator.calculate(Dose.WATER_TO_TARGET, context(squeezed, List.of(), false))
                        .litres()
                        .likely(),
                1e-9);
    }

    /** Droppings alone: all that binds them would be a heap of its own, and the nose asks for something today. */
    @Test
    void whereTheWholeIsAHeapOfItsOwnAFirstPortionBinds() {
        PileStock droppings = PileStock.of(CALCULATOR.mix(List.of(Portion.ofKilograms(MANURE, 170))));
        DoseAmount amount = DoseCalculator.calculate(Dose.BIND_NITROGEN, context(droppings, List.of(), false));
        assertTrue(amount.isNeeded());
        assertEquals(Optional.of(Cap.SHARE_OF_PILE), amount.cap());
        assertTrue(amount.litres().likely() <= droppings.volumeM3().likely() * 1000);
    }

    @Test
    void theCoreAloneNeedsLessWaterThanTheWhole() {
        double whole = DoseCalculator.calculate(Dose.WATER_TO_TARGET, context(measured(48), List.of(), false))
                .litres()
                .likely();
        double core = DoseCalculator.calculate(Dose.WATER_THE_CORE, context(measured(48), List.of(), false))
                .litres()
                .likely();
        assertEquals(0.4 * whole, core, 1e-6);
    }

    @Test
    void ureaIsHalfToTwoThirdsOfTheNeedInSeveralSmallDoses() {
        PileStock stock = PileStock.of(CALCULATOR.mix(List.of(Portion.ofKilograms(LEAVES, 300))));
        DoseAmount amount = DoseCalculator.calculate(
                Dose.UREA, context(stock, List.of(), false, with(Limit.UREA_MAX, 2000, Limit.NITROGEN_MAX, 2000)));
        double need = value(amount, Key.NITROGEN_NEED);
        assertEquals(1000 * 300 * 0.62 * 0.486 * (1.0 / 30 - 1.0 / 54), need, 1e-6);
        assertEquals(0.585 * need / 0.46, amount.kg().likely() * 1000, 1e-6);
        assertEquals(58.5, value(amount, Key.SHARE_OF_NEED), 1e-9);
        DoseAmount held = DoseCalculator.calculate(Dose.UREA, context(stock, List.of(), false));
        assertEquals(4, held.parts());
        assertEquals(14, held.intervalDays());
        assertEquals(Optional.of(Cap.PER_CUBIC_METRE), held.cap());
        assertEquals(held.kgEach().likely() * 1000 / 10, held.carrierLitres().likely(), 1e-6);
    }

    @Test
    void aPileWithNitrogenEnoughGetsNone() {
        PileStock rich = PileStock.of(CALCULATOR.mix(List.of(Portion.ofKilograms(GRASS, 300))));
        for (Dose dose : List.of(Dose.UREA, Dose.AMMONIUM_SULPHATE, Dose.MEAL, Dose.MANURE, Dose.GREENS)) {
            DoseAmount amount = DoseCalculator.calculate(dose, context(rich, List.of(), false));
            assertFalse(amount.isNeeded());
            assertEquals(Optional.of(Cap.NO_NEED), amount.cap());
        }
    }

    @Test
    void woodAsksForLessNitrogenThanLeaves() {
        PileStock wood = PileStock.of(CALCULATOR.mix(List.of(Portion.ofKilograms(CHIPS, 300))));
        double whole = 300 * 0.65 * 0.504 * (1.0 / 30 - 1.0 / 560) * 1000;
        DoseAmount amount = DoseCalculator.calculate(Dose.UREA, context(wood, List.of(), false));
        assertTrue(value(amount, Key.NITROGEN_NEED) < 0.35 * whole);
    }

    @Test
    void manureLandsOnTheAimWhereThereIsRoom() {
        PileStock stock = PileStock.of(CALCULATOR.mix(List.of(Portion.ofKilograms(LEAVES, 300))));
        DoseAmount amount = DoseCalculator.calculate(
                Dose.MANURE, context(stock, List.of(), false, with(Limit.CARBON_MAX_SHARE, 500)));
        assertEquals(MANURE.id(), amount.material().orElseThrow().id());
        assertEquals(30, value(amount, Key.CARBON_TO_NITROGEN_AFTER), 1e-6);
    }

    @Test
    void greensStopBeforeThePileGetsTooWet() {
        PileStock stock = PileStock.of(CALCULATOR.mix(
                List.of(Portion.ofKilograms(LEAVES, 300)),
                new Observed(OptionalDouble.of(60), OptionalDouble.empty(), OptionalDouble.empty())));
        DoseAmount amount = DoseCalculator.calculate(
                Dose.GREENS, context(stock, List.of(), false, with(Limit.CARBON_MAX_SHARE, 500)));
        assertEquals(Optional.of(Cap.TOO_WET), amount.cap());
        assertEquals(65, value(amount, Key.MOISTURE_AFTER), 1e-6);
    }

    @Test
    void lessThanAFifthOfTheNeedIsNotGivenButSaid() {
        PileStock stock = PileStock.of(CALCULATOR.mix(
                List.of(Portion.ofKilograms(LEAVES, 300)),
                new Observed(OptionalDouble.of(64), OptionalDouble.empty(), OptionalDouble.empty())));
        DoseAmount amount = DoseCalculator.calculate(
                Dose.GREENS, context(stock, List.of(), false, with(Limit.CARBON_MAX_SHARE, 500)));
        assertFalse(amount.isNeeded());
        assertEquals(Optional.of(Cap.TOO_LITTLE), amount.cap());
    }

    /** Ten grams to a litre: 400 g come in 40 L, and four doses of them are not a pile soaked through. */
    @Test
    void theWaterOfAFertiliserCountsAsWater() {
        for (double moisture : new double[] {50, 60, 64, 70}) {
            PileStock stock = PileStock.of(CALCULATOR.mix(
                    List.of(Portion.ofKilograms(LEAVES, 300)),
                    new Observed(OptionalDouble.of(moisture), OptionalDouble.empty(), OptionalDouble.empty())));
            DoseAmount amount = DoseCalculator.calculate(Dose.UREA, context(stock, List.of(), false));
            double wet = stock.wetKg().likely();
            double water = wet * moisture / 100
                    + amount.parts() * amount.carrierLitres().likely();
            double dry = wet * (1 - moisture / 100);
            assertTrue(100 * water / (water + dry) <= Math.max(65, moisture) + 1e-6, "from " + moisture + " %");
        }
    }

    /** Grass grows at a daily mean of 5 °C (usual base of the growing season; from memory): all winter on a mild coast. */
    @Test
    void grassGrowsInJanuaryOnAMildCoastOnly() {
        assertTrue(grass("2027-01-15", "'latitude': 48, 'climate': 'mild-coast'"));
        assertFalse(grass("2027-01-15", "'latitude': 48, 'climate': 'inland'"));
        assertTrue(grass("2027-07-15", "'latitude': 60"));
        assertFalse(grass("2027-07-15", "'latitude': -48, 'climate': 'inland'"));
        assertFalse(grass("2026-12-15", ""));
        assertTrue(grass("2026-11-15", ""));
    }

    private static boolean grass(String day, String place) {
        return Supply.of(TestPile.of("'asOf': '" + day + "', 'place': {" + place + "}"))
                .grassGrows();
    }

    /** Nobody mows in January where grass rests, nor rakes up leaves in June; what lies at hand is taken whenever. */
    @Test
    void whatTheMonthDoesNotGiveIsNotAskedFor() {
        PileStock stock = PileStock.of(CALCULATOR.mix(List.of(Portion.ofKilograms(LEAVES, 300))));
        assertEquals("kitchen-scraps", chosen(Dose.GREENS, stock, new Supply(Month.JANUARY, false), List.of()));
        assertEquals("grass-clippings", chosen(Dose.GREENS, stock, new Supply(Month.JANUARY, true), List.of()));
        assertEquals("grass-clippings", chosen(Dose.GREENS, stock, new Supply(Month.JUNE, true), List.of()));
        PileStock wet = PileStock.ofSize(Band.exact(1), Basis.REPORTED, Observed.nothing());
        assertEquals("straw-general", chosen(Dose.SOAK_UP, wet, new Supply(Month.JUNE, true), List.of()));
        assertEquals(
                "leaves-old-brown",
                chosen(
                        Dose.SOAK_UP,
                        wet,
                        new Supply(Month.JUNE, true),
                        List.of(new Stock("leaves-old-brown", Optional.empty()))));
    }

    private static String chosen(Dose dose, PileStock stock, Supply supply, List<Stock> atHand) {
        Shape shape = Shape.of(Container.unknown(), stock.volumeM3().likely());
        DoseContext context = new DoseContext(
                stock, shape, TestLimits.LIMITS, Materials.of(TestMaterials.all()), atHand, supply, false);
        return DoseCalculator.calculate(dose, context).material().orElseThrow().id();
    }

    @Test
    void carbonBindsNitrogenUpToTheAim() {
        PileStock rich = PileStock.of(CALCULATOR.mix(List.of(Portion.ofKilograms(GRASS, 100))));
        DoseAmount amount = DoseCalculator.calculate(
                Dose.BIND_NITROGEN, context(rich, List.of(), false, with(Limit.CARBON_MAX_SHARE, 5000)));
        assertEquals(30, value(amount, Key.CARBON_TO_NITROGEN_AFTER), 1e-6);
    }

    @Test
    void bulkingRaisesTheAirSpaceAndSaysToWhat() {
        PileStock dense = PileStock.of(CALCULATOR.mix(
                List.of(Portion.ofKilograms(KITCHEN, 400), Portion.ofKilograms(LEAVES, 100)),
                new Observed(OptionalDouble.empty(), OptionalDouble.of(760), OptionalDouble.empty())));
        DoseAmount amount = DoseCalculator.calculate(Dose.BULKING, context(dense, List.of(), false));
        assertTrue(value(amount, Key.AIR_BEFORE) < 35);
        assertEquals(35, value(amount, Key.AIR_AFTER), 0.1);
        assertEquals("twigs", amount.material().orElseThrow().id());
    }

    @Test
    void aPileFoundAirlessIsBulkedThoughItsRecipeLooksAiry() {
        PileStock airy = PileStock.of(CALCULATOR.mix(List.of(Portion.ofLitres(LEAVES, 800))));
        DoseAmount amount = DoseCalculator.calculate(Dose.BULKING, context(airy, List.of(), false));
        assertEquals(30, value(amount, Key.AIR_BEFORE), 1e-3);
        assertEquals(Basis.ASSUMED, term(amount, Key.AIR_BEFORE).basis());
        assertEquals(35, value(amount, Key.AIR_AFTER), 0.1);
        assertTrue(amount.isNeeded());
    }

    @Test
    void aMeasuredAiryPileNeedsNoBulking() {
        PileStock airy = PileStock.of(CALCULATOR.mix(
                List.of(Portion.ofLitres(LEAVES, 800)),
                new Observed(OptionalDouble.empty(), OptionalDouble.of(300), OptionalDouble.empty())));
        assertEquals(
                Optional.of(Cap.NO_NEED),
                DoseCalculator.calculate(Dose.BULKING, context(airy, List.of(), false))
                        .cap());
    }

    @Test
    void aPileOfUnknownRecipeGetsOneSmallDoseOfUrea() {
        PileStock unknown = PileStock.ofSize(Band.exact(1), Basis.REPORTED, Observed.nothing());
        DoseAmount amount = DoseCalculator.calculate(Dose.UREA, context(unknown, List.of(), false));
        assertEquals(1, amount.parts());
        assertEquals(0.1, amount.kg().high(), 1e-9, "half of the 200 g a cubic metre may have at once");
        assertEquals(Optional.of(Cap.PER_CUBIC_METRE), amount.cap());
    }

    @Test
    void ashIsADustingByVolumeAndFarBelowTwoPercent() {
        DoseAmount amount = DoseCalculator.calculate(Dose.ASH, context(measured(60), List.of(), false));
        double volume = measured(60).volumeM3().likely();
        assertEquals(volume, amount.litres().likely(), 1e-9);
        assertTrue(value(amount, Key.SHARE_OF_PILE_MASS) < 0.5);
    }

    @Test
    void coverFollowsTheTopAndTheSeason() {
        DoseAmount thin = DoseCalculator.calculate(Dose.COVER, context(measured(60), List.of(), false));
        DoseAmount winter = DoseCalculator.calculate(Dose.COVER, context(measured(60), List.of(), true));
        double top =
                Shape.of(Container.unknown(), measured(60).volumeM3().likely()).topM2();
        assertEquals(top * 50, thin.litres().likely(), 1e-9);
        assertEquals(top * 150, winter.litres().likely(), 1e-9);
    }

    @Test
    void enlargingReachesAtLeastTheSizeThatHoldsHeatAndAtMostTheWinterSize() {
        PileStock small = PileStock.ofSize(Band.exact(0.4), Basis.REPORTED, Observed.nothing());
        DoseAmount winter = DoseCalculator.calculate(Dose.ENLARGE, context(small, List.of(), true));
        assertEquals(120, winter.litres().likely(), 1e-9, "at once no more than three tenths of what lies there");
        assertEquals(Optional.of(Cap.SHARE_OF_PILE), winter.cap());
        assertEquals(360 * 0.55, value(winter, Key.FULL_NEED), 1e-9);
        PileStock tiny = PileStock.ofSize(Band.exact(0.1), Basis.REPORTED, Observed.nothing());
        DoseAmount hardly = DoseCalculator.calculate(Dose.ENLARGE, context(tiny, List.of(), true));
        assertFalse(hardly.isNeeded(), "30 L of the 660 L that it lacks");
        assertEquals(Optional.of(Cap.TOO_LITTLE), hardly.cap());
        PileStock big = PileStock.ofSize(Band.exact(1.4), Basis.REPORTED, Observed.nothing());
        assertEquals(
                Optional.of(Cap.NO_NEED),
                DoseCalculator.calculate(Dose.ENLARGE, context(big, List.of(), true))
                        .cap());
    }

    /** One C:N in cause, dose and figures: a lean recipe is not dosed as if it were a rich one. */
    @Test
    void aLeanRecipeHasNoSurplusOfNitrogenToBind() {
        PileStock lean = PileStock.of(CALCULATOR.mix(List.of(Portion.ofKilograms(LEAVES, 100))));
        DoseAmount amount = DoseCalculator.calculate(Dose.BIND_NITROGEN, context(lean, List.of(), false));
        assertEquals(Optional.of(Cap.NO_NEED), amount.cap());
        assertEquals(lean.carbonToNitrogen().likely(), value(amount, Key.PILE_CARBON_TO_NITROGEN));
        PileStock unknown = PileStock.ofSize(Band.exact(1), Basis.REPORTED, Observed.nothing());
        DoseAmount assumed = DoseCalculator.calculate(Dose.BIND_NITROGEN, context(unknown, List.of(), false));
        assertTrue(assumed.isNeeded());
        assertEquals(Basis.ASSUMED, term(assumed, Key.PILE_CARBON_TO_NITROGEN).basis());
    }

    /** Eight barrows of grass: a third of the heap is too little, and the whole is said by the barrow. */
    @Test
    void whereThePileCanTakeTooLittleTheWholeNeedIsKnown() {
        PileStock grass = PileStock.of(CALCULATOR.mix(List.of(Portion.ofKilograms(GRASS, 170))));
        DoseAmount amount = DoseCalculator.calculate(Dose.BIND_NITROGEN, context(grass, List.of(), false));
        assertEquals(Optional.of(Cap.TOO_LITTLE), amount.cap());
        assertFalse(amount.isNeeded());
        DoseAmount all = amount.whole().orElseThrow();
        assertTrue(all.litres().likely()
                > LIMITS.share(Limit.CARBON_MAX_SHARE) * grass.volumeM3().likely() * 1000);
        Composition straw = Composition.ofSeason(all.material().orElseThrow());
        double carbon = grass.carbonKg().likely() + all.kg().likely() * straw.carbon();
        double nitrogen = grass.carbonKg().likely() / grass.carbonToNitrogen().likely()
                + all.kg().likely() * straw.nitrogen();
        assertEquals(LIMITS.aimCarbonToNitrogen(), carbon / nitrogen, 1e-6);
    }

    @Test
    void materialsThatMustStayOutAreNeverChosen() {
        Material barred = new Material(
                "spoilt-straw",
                "x",
                Material.Group.CARBON_RICH,
                List.of(),
                TestMaterials.STRAW.carbonToNitrogen(),
                TestMaterials.STRAW.carbonPct(),
                TestMaterials.STRAW.nitrogenPct(),
                false,
                TestMaterials.STRAW.moisturePct(),
                TestMaterials.STRAW.densityKgM3(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                TestMaterials.STRAW.traits(),
                List.of(),
                Optional.of(new Material.KeepOut(Material.Bar.NEVER, KeepOutClass.NEEDS_CARE, "x", "x")),
                "");
        Materials materials = Materials.of(java.util.Map.of("spoilt-straw", barred, "leaves-mixed", LEAVES));
        DoseContext context = new DoseContext(
                measured(68),
                Shape.of(Container.unknown(), 1),
                LIMITS,
                materials,
                List.of(new Stock("spoilt-straw", Optional.empty())),
                TestDoses.OCTOBER,
                false);
        assertEquals(
                "leaves-mixed",
                DoseCalculator.calculate(Dose.SOAK_UP, context)
                        .material()
                        .orElseThrow()
                        .id());
    }

    /** Own straw of which carbon is typed as nothing, or as hardly anything, binds nothing; common sense, no source. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 1e-9, 1e-300})
    void strawWithoutCarbonIsNotChosenToBindNitrogen(double carbonPct) {
        Material straw = TestMaterials.STRAW;
        Figure none = TestMaterials.f(carbonPct, carbonPct, carbonPct);
        Material hollow = new Material(
                "hollow-straw",
                "x",
                Material.Group.CARBON_RICH,
                List.of(),
                straw.carbonToNitrogen(),
                none,
                TestMaterials.f(0, 0, 0),
                false,
                straw.moisturePct(),
                straw.densityKgM3(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                straw.traits(),
                List.of(),
                Optional.empty(),
                "");
        Materials materials = Materials.of(java.util.Map.of("hollow-straw", hollow, "leaves-mixed", LEAVES));
        PileStock rich = PileStock.of(CALCULATOR.mix(List.of(Portion.ofKilograms(GRASS, 30))));
        DoseAmount amount = DoseCalculator.calculate(
                Dose.BIND_NITROGEN,
                new DoseContext(
                        rich,
                        Shape.of(Container.unknown(), 1),
                        LIMITS,
                        materials,
                        List.of(new Stock("hollow-straw", Optional.empty())),
                        TestDoses.OCTOBER,
                        false));
        assertNotEquals(Optional.of("hollow-straw"), amount.material().map(Material::id));
    }

    private static PileStock measured(double moisturePct) {
        return PileStock.of(CALCULATOR.mix(
                List.of(Portion.ofKilograms(LEAVES, 200), Portion.ofKilograms(KITCHEN, 100)),
                new Observed(OptionalDouble.of(moisturePct), OptionalDouble.empty(), OptionalDouble.empty())));
    }

    private static DoseContext context(PileStock stock, List<Stock> atHand, boolean cold) {
        return context(stock, atHand, cold, LIMITS);
    }

    private static DoseContext context(PileStock stock, List<Stock> atHand, boolean cold, Limits limits) {
        Shape shape = Shape.of(Container.unknown(), stock.volumeM3().likely());
        return new DoseContext(
                stock, shape, limits, Materials.of(TestMaterials.all()), atHand, TestDoses.OCTOBER, cold);
    }

    private static Limits with(Object... changes) {
        java.util.Map<Limit, Double> values = new java.util.EnumMap<>(LIMITS.values());
        for (int i = 0; i < changes.length; i += 2) {
            values.put((Limit) changes[i], ((Number) changes[i + 1]).doubleValue());
        }
        return new Limits(values);
    }

    private static double value(DoseAmount amount, Key key) {
        return term(amount, key).value().likely();
    }

    private static Term term(DoseAmount amount, Key key) {
        return amount.working().stream()
                .filter(term -> term.key() == key)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + key + " in " + amount));
    }
}
