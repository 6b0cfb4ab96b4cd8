package heapwright.process.dose;

import static heapwright.process.mixture.TestMaterials.CHIPS;
import static heapwright.process.mixture.TestMaterials.LEAVES;
import static heapwright.process.mixture.TestMaterials.TWIGS;
import static org.junit.jupiter.api.Assertions.assertEquals;

import heapwright.process.mixture.Band;
import heapwright.process.mixture.Basis;
import heapwright.process.mixture.Observed;
import heapwright.process.mixture.Portion;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Balances of mass, by hand. */
class PileStockTest {

    private static final OptionalDouble NONE = OptionalDouble.empty();

    private static void close(Band expected, Band band) {
        assertEquals(expected.low(), band.low(), 1e-9, "low");
        assertEquals(expected.likely(), band.likely(), 1e-9, "likely");
        assertEquals(expected.high(), band.high(), 1e-9, "high");
    }

    /** Two cubic metres of 400 to 700 kg, at 40 to 65 % moisture, with 38 to 50 % carbon: the usual home pile. */
    @Test
    void aSizeAloneGivesTheUsualPileOfThatSize() {
        PileStock stock = PileStock.ofSize(Band.exact(2), Basis.REPORTED, Observed.nothing());
        close(new Band(800, 1100, 1400), stock.wetKg());
        close(new Band(800 * 0.35, 1100 * 0.45, 1400 * 0.60), stock.dryKg());
        close(new Band(800 * 0.35 * 0.38, 1100 * 0.45 * 0.45, 1400 * 0.60 * 0.50), stock.carbonKg());
        assertEquals(0.2 * 495, stock.woodyDryKg(), 1e-9);
        assertEquals(550, stock.densityKgM3(), 1e-9);
        assertEquals(Basis.ASSUMED, stock.recipeBasis());
        assertEquals(Basis.ASSUMED, stock.moistureBasis());
        assertEquals(Basis.ASSUMED, stock.densityBasis());
        assertEquals(Basis.REPORTED, stock.volumeBasis());
    }

    @Test
    void whatWasMeasuredGoesBeforeTheUsual() {
        Observed observed = new Observed(OptionalDouble.of(70), OptionalDouble.of(300), NONE);
        PileStock stock = PileStock.ofSize(Band.exact(2), Basis.REPORTED, observed);
        close(Band.exact(600), stock.wetKg());
        close(Band.exact(180), stock.dryKg());
        close(Band.exact(70), stock.moisturePct());
        assertEquals(Basis.MEASURED, stock.moistureBasis());
        assertEquals(Basis.MEASURED, stock.densityBasis());
    }

    /** 100 kg of chips at 35 % and 40 kg of twigs at 45 %: 65 + 22 kg dry, and 35 + 18 kg of water. */
    @Test
    void woodIsCountedByItselfAsItWentIn() {
        PileStock stock = TestDoses.mixed(
                Portion.ofKilograms(CHIPS, 100), Portion.ofKilograms(TWIGS, 40), Portion.ofKilograms(LEAVES, 200));
        assertEquals(87, stock.woodyDryKg(), 1e-9);
        assertEquals(100 * 53 / 140.0, stock.woodyMoisturePct(), 1e-9);
        PileStock leaves = TestDoses.mixed(Portion.ofKilograms(LEAVES, 200));
        assertEquals(0, leaves.woodyDryKg());
        assertEquals(38, leaves.woodyMoisturePct(), 1e-9);
    }

    /** Water comes and goes; what was put in dry stays. */
    @Test
    void withARecipeTheDryMassStaysAtAnotherMoisture() {
        PileStock stock = TestDoses.plain(30).atMoisture(new Band(50, 75, 80), Basis.ASSUMED);
        close(Band.exact(200), stock.dryKg());
        close(new Band(200 / 0.50, 200 / 0.25, 200 / 0.20), stock.wetKg());
        close(Band.exact(90), stock.carbonKg());
        assertEquals(Basis.ASSUMED, stock.moistureBasis());
    }

    /** Without one the whole was estimated from the volume; a wetter pile of it holds less that is dry. */
    @Test
    void withoutARecipeTheWetMassStaysAtAnotherMoisture() {
        PileStock stock = TestDoses.ofSize(1).atMoisture(new Band(60, 70, 80), Basis.ASSUMED);
        close(new Band(400, 550, 700), stock.wetKg());
        close(new Band(400 * 0.20, 550 * 0.30, 700 * 0.40), stock.dryKg());
    }

    @Test
    void atAnotherDensityAllMassesFollowAndTheRestStays() {
        PileStock mixed = TestDoses.mixed(Portion.ofKilograms(CHIPS, 100), Portion.ofKilograms(LEAVES, 100));
        double before = mixed.densityKgM3();
        PileStock stock = mixed.atDensity(before * 1.5, Basis.ASSUMED);
        assertEquals(before * 1.5, stock.densityKgM3(), 1e-9);
        close(mixed.wetKg().times(1.5), stock.wetKg());
        close(mixed.dryKg().times(1.5), stock.dryKg());
        close(mixed.carbonKg().times(1.5), stock.carbonKg());
        assertEquals(65 * 1.5, stock.woodyDryKg(), 1e-9);
        close(mixed.volumeM3(), stock.volumeM3());
        close(mixed.carbonToNitrogen(), stock.carbonToNitrogen());
    }

    /** A bin told as a cubic metre is that, whatever its stuff would settle to; what is in it weighs what it weighs. */
    @Test
    void aToldSizeLeavesMassAndDensityAsTheyAre() {
        PileStock mixed = TestDoses.mixed(Portion.ofKilograms(LEAVES, 100));
        PileStock sized = mixed.sized(1);
        assertEquals(Band.exact(1), sized.volumeM3());
        assertEquals(Basis.REPORTED, sized.volumeBasis());
        assertEquals(mixed.wetKg(), sized.wetKg());
        assertEquals(mixed.densityKgM3(), sized.densityKgM3());
    }

    /** 100 kg of leaves with 25 litres on them: the dry mass stays and the water is 25 kg more. */
    @Test
    void whatFertiliserWasDissolvedInIsWaterInThePile() {
        PileStock mixed = TestDoses.mixed(Portion.ofKilograms(LEAVES, 100));
        PileStock watered = mixed.watered(25);
        double water = 100 - mixed.dryKg().likely() + 25;
        assertEquals(100 * water / 125, watered.moisturePct().likely(), 1e-9);
        assertEquals(mixed.dryKg(), watered.dryKg());
        assertEquals(125, watered.wetKg().likely(), 1e-9);
        PileStock felt = mixed.atMoisture(Band.exact(55), Basis.REPORTED);
        assertEquals(felt, felt.watered(25), "a hand that felt it felt that water as well");
    }
}
