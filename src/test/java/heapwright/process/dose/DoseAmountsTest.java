package heapwright.process.dose;

import static heapwright.process.mixture.TestMaterials.CHIPS;
import static heapwright.process.mixture.TestMaterials.GRASS;
import static heapwright.process.mixture.TestMaterials.LEAVES;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.knowledge.Dose;
import heapwright.knowledge.Limit;
import heapwright.process.dose.Term.Key;
import heapwright.process.mixture.Band;
import heapwright.process.mixture.Basis;
import heapwright.process.mixture.FreeAirSpace;
import heapwright.process.mixture.Observed;
import heapwright.process.mixture.Portion;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Amounts in round figures, reckoned by hand. */
class DoseAmountsTest {

    private static void close(Band expected, Band band) {
        assertEquals(expected.low(), band.low(), 1e-9, "low");
        assertEquals(expected.likely(), band.likely(), 1e-9, "likely");
        assertEquals(expected.high(), band.high(), 1e-9, "high");
    }

    /** A pile of 800 kg in a cubic metre, measured, with 60 % water and four fifths of the rest organic. */
    private static PileStock dense() {
        PileStock plain = TestDoses.plain(30);
        return plain.atDensity(800, Basis.MEASURED);
    }

    /**
     * Twigs lie at (80 + 180) / 2 = 130 kg in the cubic metre, with 45 % water; carbon of 49 % times 1.8 is 88.2 %
     * organic matter. A balance of the whole then gives what the formulas of air space are asked.
     */
    @Test
    void bulkingReachesTheGoalByTheBalanceOfTheWhole() {
        DoseAmount amount = TestDoses.dose(Dose.BULKING, dense(), TestDoses.with(Limit.CARBON_MAX_SHARE, 300));
        double m3 = amount.litres().likely() / 1000;
        double kg = m3 * 130;
        assertEquals(kg, amount.kg().likely(), 1e-9);
        double dry = 800 * 0.4 + kg * 0.55;
        double organic = 800 * 0.4 * 0.8 + kg * 0.55 * 0.882;
        double air = 100
                * FreeAirSpace.band((800 + kg) / (1 + m3), dry / (800 + kg), organic / dry)
                        .likely();
        assertEquals(35, air, 1e-3, "30 % is the edge of poor, and five points go beyond it");
        assertEquals(air, TestDoses.likely(amount, Key.AIR_AFTER), 1e-9);
        assertEquals(35, TestDoses.likely(amount, Key.TARGET_AIR));
        assertEquals(amount.litres().likely() / 2, amount.litres().low(), 1e-9);
        assertEquals(3000, amount.litres().high(), 1e-9);
        assertTrue(amount.cap().isEmpty());
    }

    /** Where much of it is soil, the organic share decides: two cubic metres of 900 kg each, three tenths organic. */
    @Test
    void bulkingOfAnEarthyPileGoesByItsOrganicShare() {
        PileStock earthy = new PileStock(
                Band.exact(1800),
                Band.exact(1260),
                Band.exact(30),
                Band.exact(200),
                Band.exact(20),
                0.3,
                Band.exact(2),
                900,
                0,
                30,
                Basis.ESTIMATED,
                Basis.MEASURED,
                Basis.REPORTED,
                Basis.MEASURED);
        Limits limits = TestDoses.with(Limit.FAS_POOR, 45, Limit.CARBON_MAX_SHARE, 300);
        DoseAmount amount = TestDoses.dose(Dose.BULKING, earthy, limits);
        double m3 = amount.litres().likely() / 1000;
        double kg = m3 * 130;
        double dry = 1260 + kg * 0.55;
        double organic = 1260 * 0.3 + kg * 0.55 * 0.882;
        double density = (1800 + kg) / (2 + m3);
        double air = 100
                * FreeAirSpace.band(density, dry / (1800 + kg), organic / dry).likely();
        assertEquals(50, air, 1e-3);
        assertEquals(air, TestDoses.likely(amount, Key.AIR_AFTER), 1e-9);
        assertTrue(air > 100 * FreeAirSpace.agnew(density) + 0.1, "the form without organic matter is not the middle");
        assertEquals(6000, amount.litres().high(), 1e-9);
    }

    @Test
    void bulkingStopsAtTheShareOfThePileAndSaysSo() {
        DoseAmount amount = TestDoses.dose(Dose.BULKING, dense(), TestDoses.with(Limit.CARBON_MAX_SHARE, 5));
        assertEquals(50, amount.litres().likely(), 1e-9);
        assertEquals(Optional.of(Cap.SHARE_OF_PILE), amount.cap());
        assertTrue(TestDoses.likely(amount, Key.AIR_AFTER) < 35);
        DoseAmount few = TestDoses.dose(
                Dose.BULKING, dense(), TestDoses.with(Limit.CARBON_MAX_SHARE, 5), TestDoses.litres("twigs", 20));
        assertEquals(20, few.litres().likely(), 1e-9);
        assertEquals(Optional.of(Cap.AT_HAND), few.cap(), "what is at hand is the nearer limit");
    }

    /** A dusting: at most a litre to a cubic metre, and by mass taken at its heaviest, 500 kg a cubic metre. */
    @Test
    void ashIsHeldByVolumeAndByMass() {
        DoseAmount volume = TestDoses.dose(Dose.ASH, dense());
        close(new Band(0.5, 1, 1), volume.litres());
        close(new Band(0.2, 0.4, 0.4), volume.kg());
        assertTrue(volume.cap().isEmpty());
        assertEquals(100 * 0.5 / 800, TestDoses.likely(volume, Key.SHARE_OF_PILE_MASS), 1e-9);
        DoseAmount mass = TestDoses.dose(Dose.ASH, dense(), TestDoses.with(Limit.ASH_MASS_MAX, 0.05));
        assertEquals(0.8, mass.litres().likely(), 1e-9, "0.05 % of 800 kg are 400 g");
        assertEquals(0.05, TestDoses.likely(mass, Key.SHARE_OF_PILE_MASS), 1e-9);
        assertEquals(Optional.of(Cap.SHARE_OF_PILE), mass.cap());
    }

    /** Finished compost: 5 % of the mass (KARN), and 5 to 7.5 % (SUST20). */
    @Test
    void aStarterIsATwentiethOfTheMass() {
        close(
                new Band(25, 25, 37.5),
                TestDoses.dose(Dose.STARTER, TestDoses.plain(30)).kg());
    }

    /** 20, 25 and 30 cm on the square metre of a cube of a metre. */
    @Test
    void insulationIsTheLooseLayerOnTop() {
        DoseAmount amount = TestDoses.dose(Dose.INSULATION, TestDoses.plain(30));
        close(new Band(200, 250, 300), amount.litres());
        assertEquals(Optional.empty(), amount.cap());
    }

    /** A third of a cubic metre, at most a third of it: 0.48 m² would take 120 L, and 100 L is a third of 300. */
    @Test
    void insulationIsNoMoreThanAThirdOfThePile() {
        DoseAmount amount = TestDoses.dose(Dose.INSULATION, TestDoses.ofSize(0.3));
        assertEquals(
                TestLimits.LIMITS.share(Limit.CARBON_MAX_SHARE) * 300,
                amount.litres().high(),
                1e-9);
        assertEquals(Optional.of(Cap.SHARE_OF_PILE), amount.cap());
    }

    /**
     * Half as much again is wanted, and in the cold it ends at the winter size of 1 m³, else at 0.76 m³; at once no more
     * goes on than three tenths of the 0.6 m³.
     */
    @Test
    void enlargingAddsHalfAsMuchAgain() {
        PileStock small = TestDoses.ofSize(0.6);
        DoseAmount winter = DoseCalculator.calculate(Dose.ENLARGE, TestDoses.context(small, TestLimits.LIMITS, true));
        close(new Band(160, 180, 180), winter.litres());
        close(new Band(0.160 * 550, 0.180 * 550, 0.180 * 550), winter.kg());
        close(new Band(0.160 * 550, 0.300 * 550, 0.400 * 550), TestDoses.band(winter, Key.FULL_NEED));
        close(new Band(0.76, 0.9, 1), TestDoses.band(winter, Key.TARGET_VOLUME));
        DoseAmount summer = DoseCalculator.calculate(Dose.ENLARGE, TestDoses.context(small, TestLimits.LIMITS, false));
        close(new Band(160, 160, 160), summer.litres());
    }

    /** 100 kg of chips at 35 % want 100 × (50 − 35) / (100 − 50) = 30 litres to come to half water. */
    @Test
    void woodIsSoakedToTheLowEndOfGood() {
        PileStock stock = TestDoses.mixed(Portion.ofKilograms(CHIPS, 100), Portion.ofKilograms(LEAVES, 300));
        DoseAmount amount = TestDoses.dose(Dose.SOAK_WOODY, stock, TestDoses.with(Limit.WATER_MAX_AT_ONCE, 1000));
        close(new Band(15, 30, 45), amount.litres());
        close(new Band(15, 30, 45), TestDoses.band(amount, Key.MISSING_WATER));
        assertTrue(amount.cap().isEmpty());
        DoseAmount held = TestDoses.dose(Dose.SOAK_WOODY, stock, TestDoses.with(Limit.WATER_MAX_AT_ONCE, 10));
        assertEquals(10 * stock.volumeM3().likely(), held.litres().likely(), 1e-9);
        assertEquals(Optional.of(Cap.PER_CUBIC_METRE), held.cap());
        DoseAmount none = TestDoses.dose(Dose.SOAK_WOODY, TestDoses.mixed(Portion.ofKilograms(LEAVES, 300)));
        assertFalse(none.isNeeded());
        assertEquals(Optional.of(Cap.NO_NEED), none.cap());
    }

    /** Who asks for water has found the pile dry, whatever the recipe says: stopped, slow and barely good. */
    @Test
    void aPileFoundDryIsTakenAsDry() {
        PileStock wet = TestDoses.ofSize(1);
        Limits roomy = TestDoses.with(Limit.WATER_MAX_AT_ONCE, 3000, Limit.CARBON_MAX_SHARE, 900);
        DoseAmount amount = TestDoses.dose(Dose.WATER_TO_TARGET, wet, roomy);
        close(new Band(30, 40, 50), TestDoses.band(amount, Key.PILE_MOISTURE));
        close(Band.around(700 * (55 - 30) / 45.0, 550 * (55 - 40) / 45.0, 400 * (55 - 50) / 45.0), amount.litres());
        DoseAmount core = TestDoses.dose(Dose.WATER_THE_CORE, wet, roomy);
        close(
                new Band(
                        amount.litres().low() / 3,
                        amount.litres().likely() * 0.4,
                        amount.litres().high() / 2),
                core.litres());
        DoseAmount held = TestDoses.dose(Dose.WATER_THE_CORE, wet, TestDoses.with(Limit.WATER_MAX_AT_ONCE, 60));
        assertEquals(24, held.litres().likely(), 1e-9, "the core may have its share of what the whole may have");
    }

    /** A hand that felt it beats what is taken for granted, both ways; the core it has not felt. */
    @Test
    void aPileFeltDampIsNeitherWateredNorDried() {
        PileStock damp = TestDoses.ofSize(1).atMoisture(new Band(50, 55, 60), Basis.REPORTED);
        assertEquals(
                Optional.of(Cap.NO_NEED),
                TestDoses.dose(Dose.WATER_TO_TARGET, damp).cap());
        assertEquals(
                Optional.of(Cap.NO_NEED), TestDoses.dose(Dose.SOAK_UP, damp).cap());
        assertTrue(TestDoses.dose(Dose.WATER_THE_CORE, damp).isNeeded());
        PileStock held = TestDoses.ofSize(1).atMoisture(new Band(40, 45, 50), Basis.REPORTED);
        DoseAmount some = TestDoses.dose(Dose.WATER_TO_TARGET, held, TestDoses.with(Limit.WATER_MAX_AT_ONCE, 1000));
        assertEquals(held.wetKg().likely() * 10 / 45, some.litres().likely(), 1e-9);
    }

    /** What the pile may take of a fertiliser by its water can be too little of the need to bother. */
    @Test
    void aFertiliserThatCoversLessThanAFifthIsNotGiven() {
        PileStock starved = TestDoses.plain(80).atMoisture(Band.exact(64.8), Basis.MEASURED);
        DoseAmount urea = TestDoses.dose(Dose.UREA, starved);
        assertFalse(urea.isNeeded());
        assertEquals(Optional.of(Cap.TOO_LITTLE), urea.cap());
    }

    @Test
    void aPileFoundWetIsTakenAsWet() {
        DoseAmount amount =
                TestDoses.dose(Dose.SOAK_UP, TestDoses.ofSize(1), TestDoses.with(Limit.CARBON_MAX_SHARE, 900));
        close(new Band(60, 65, 70), TestDoses.band(amount, Key.PILE_MOISTURE));
        close(new Band(0, 550 * 5 / 40.0, 700 * 10 / 40.0), TestDoses.band(amount, Key.SURPLUS_WATER));
        close(new Band(0, 550 * 5 / 40.0, 700 * 10 / 40.0), amount.kg());
    }

    /** Half to two thirds (67 %) of the need, in doses of at most so much nitrogen and so much water at once. */
    @Test
    void aMealIsHeldByItsNitrogenAloneAndUreaByItsWaterToo() {
        PileStock starved = TestDoses.plain(80);
        double need = 90 * (1.0 / 30 - 1.0 / 80);
        DoseAmount meal = TestDoses.dose(Dose.MEAL, starved, TestDoses.with(Limit.NITROGEN_MAX, 1e6));
        double share = 42.9 / 3.3 * 0.9 / 100;
        close(new Band(0.5 * need / share, 0.585 * need / share, 0.67 * need / share), meal.kg());
        assertEquals(1, meal.parts());
        assertEquals(0, meal.intervalDays(), "a single dose has no next one");
        assertEquals(Band.ZERO, meal.carrierLitres());
        assertEquals(58.5, TestDoses.likely(meal, Key.SHARE_OF_NEED), 1e-9);
        DoseAmount urea = TestDoses.dose(
                Dose.UREA,
                starved.atMoisture(Band.exact(40), Basis.MEASURED),
                TestDoses.with(Limit.UREA_MAX, 1e6, Limit.NITROGEN_MAX, 1e6));
        assertEquals(0.6, urea.kgEach().likely(), 0.3, "60 litres at 10 g hold 600 g");
        assertTrue(urea.kgEach().high() <= 0.6 + 1e-9);
        assertEquals(urea.kgEach().likely() * 100, urea.carrierLitres().likely(), 1e-9);
        assertEquals(urea.litres().likely(), urea.litresEach().likely() * urea.parts(), 1e-9);
        assertEquals(urea.kg().likely() / 0.750, urea.litres().likely(), 1e-9);
    }

    /** Without a recipe a pile is rich where it smells so: between the edge of ammonia (20) and of good (25). */
    @Test
    void nitrogenIsBoundInAPileOfUnknownRecipe() {
        DoseAmount amount =
                TestDoses.dose(Dose.BIND_NITROGEN, TestDoses.ofSize(1), TestDoses.with(Limit.CARBON_MAX_SHARE, 900));
        close(new Band(20, 22.5, 25), TestDoses.band(amount, Key.PILE_CARBON_TO_NITROGEN));
        double carbon = 550 * 0.45 * 0.45;
        double surplus = carbon * (1 / 22.5 - 1 / 30.0);
        assertEquals(1000 * surplus, TestDoses.likely(amount, Key.NITROGEN_SURPLUS), 1e-9);
        double straw = 0.88 * (0.50 - 30 * 0.50 / 80);
        assertEquals(30 * surplus / straw, amount.kg().likely(), 1e-9);
        assertEquals(100, TestDoses.likely(amount, Key.SHARE_OF_NEED), 1e-9);
    }

    /** A recipe in balance may be richer than it looks; one that is lean at both ends is not. */
    @Test
    void aRecipeIsRichOnlyWithinItsDoubt() {
        PileStock doubtful = TestDoses.mixed(Portion.ofKilograms(LEAVES, 100), Portion.ofKilograms(GRASS, 90));
        Band ratio = doubtful.carbonToNitrogen();
        assertTrue(ratio.low() < 30 && ratio.likely() > 30, ratio.toString());
        DoseAmount some = TestDoses.dose(Dose.BIND_NITROGEN, doubtful);
        assertTrue(some.isNeeded());
        assertEquals(ratio.low(), TestDoses.likely(some, Key.PILE_CARBON_TO_NITROGEN), 1e-9);
        DoseAmount none = TestDoses.dose(Dose.BIND_NITROGEN, TestDoses.plain(30));
        assertEquals(Optional.of(Cap.NO_NEED), none.cap());
    }

    /** Greens go in until the pile is as wet as it may be; one that is too wet already gets none. */
    @Test
    void greensAreNotPutOnAWetPile() {
        DoseAmount amount = TestDoses.dose(Dose.GREENS, TestDoses.mixedAt(66, Portion.ofKilograms(LEAVES, 300)));
        assertFalse(amount.isNeeded());
        assertEquals(Optional.of(Cap.TOO_WET), amount.cap());
        assertEquals("grass-clippings", amount.material().orElseThrow().id());
        DoseAmount held = TestDoses.dose(
                Dose.GREENS,
                TestDoses.mixedAt(60, Portion.ofKilograms(LEAVES, 300)),
                TestDoses.with(Limit.CARBON_MAX_SHARE, 900));
        assertEquals(65, TestDoses.likely(held, Key.MOISTURE_AFTER), 1e-9);
        assertEquals(
                100 * held.kg().likely() / TestDoses.likely(held, Key.FULL_NEED),
                TestDoses.likely(held, Key.SHARE_OF_NEED),
                1e-9);
        assertTrue(TestDoses.likely(held, Key.SHARE_OF_NEED) < 100);
    }

    /** A pile of 300 kg in the cubic metre that holds as much air as it can has no need, one of 900 kg has. */
    @Test
    void bulkingGoesByTheMeasuredDensity() {
        for (double density : new double[] {300, 900}) {
            PileStock stock = PileStock.ofSize(
                    Band.exact(1),
                    Basis.REPORTED,
                    new Observed(OptionalDouble.of(60), OptionalDouble.of(density), OptionalDouble.empty()));
            assertEquals(density > 500, TestDoses.dose(Dose.BULKING, stock).isNeeded(), density + " kg/m³");
        }
    }
}
