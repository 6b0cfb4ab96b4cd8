package heapwright.process.heat;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is known of a whole pile, set against what the model has come to. */
class StateMarkTest {

    private static final OptionalDouble NONE = OptionalDouble.empty();

    private static Shells shells(Matter matter, double coreC, double skinC) {
        double side = Math.cbrt(matter.volumeM3());
        return new Shells(new PileState(side, side, matter, coreC, skinC, Envelope.slatted()), 6, Fixtures.seeded(0.3));
    }

    private static Tally moisture(Shells s, double share) {
        Tally tally = new Tally(s);
        new StateMark(0, OptionalDouble.of(share), NONE).apply(s, tally, Constants.standard());
        return tally;
    }

    /** 200 kg dry at 50 % hold 200 kg of water, where it had 300. */
    @Test
    void theWaterIsAsMeasuredAndEveryShellKeepsItsPartOfIt() {
        Shells s = shells(Matter.of(1, 500, 0.60, 0.25, 0.40, 0.25, 30, 4), 50, 10);
        s.water[0] -= 10;
        s.derive();
        double[] before = s.water.clone();
        double had = Shells.sum(before);
        moisture(s, 0.50);
        assertEquals(200, Shells.sum(s.water), 1e-9);
        for (int i = 0; i < s.n; i++) {
            assertEquals(before[i] * 200 / had, s.water[i], 1e-9, "shell " + i);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.45, 0.64})
    void noShellGetsWarmerOrColderByIt(double share) {
        Shells s = shells(Matter.of(1, 500, 0.60, 0.25, 0.40, 0.25, 30, 4), 50, 10);
        double[] before = s.temperature.clone();
        moisture(s, share);
        s.derive();
        assertArrayEquals(before, s.temperature, 1e-9);
    }

    @Test
    void iceStaysAsColdAndWhatIsHalfFrozenHalfFrozen() {
        Shells s = shells(Matter.of(1, 500, 0.60, 0.25, 0.40, 0.25, 30, 4), -2, -20);
        s.heat[0] = -0.4 * Shells.MELT_J * s.water[0];
        s.derive();
        assertEquals(0.4, s.ice[0], 1e-9);
        double[] cold = s.temperature.clone();
        double[] ice = s.ice.clone();
        moisture(s, 0.45);
        s.derive();
        assertArrayEquals(cold, s.temperature, 1e-9);
        assertArrayEquals(ice, s.ice, 1e-9);
        moisture(s, 0.64);
        s.derive();
        assertArrayEquals(cold, s.temperature, 1e-9);
        assertArrayEquals(ice, s.ice, 1e-9);
    }

    @Test
    void whatIsSetIsEnteredAsBrought() {
        Shells s = shells(Matter.of(1, 500, 0.60, 0.25, 0.40, 0.25, 30, 4), 50, -10);
        double heat = Shells.sum(s.heat);
        double water = Shells.sum(s.water);
        Tally tally = new Tally(s);
        tally.waterBrought = 5;
        tally.heatBrought = 7;
        new StateMark(0, OptionalDouble.of(0.5), NONE).apply(s, tally, Constants.standard());
        assertEquals(Shells.sum(s.water) - water, tally.waterBrought - 5, 1e-9);
        assertEquals(Shells.sum(s.heat) - heat, tally.heatBrought - 7, 1e-3);
    }

    /** A pile without a drop of water gets as much in each shell. */
    @Test
    void whereThereWasNoWaterItComesEvenly() {
        Shells s = shells(new Matter(180, 0, 0.25, 0.40, 0.25, 2, 0, 1, 4, 0), 20, 20);
        moisture(s, 0.4);
        for (int i = 0; i < s.n; i++) {
            assertEquals(120.0 / 6, s.water[i], 1e-9, "shell " + i);
        }
    }

    /** As documented: 664 kg a cubic metre at 66 % of water, 867 at 73 %; between them on a line. */
    @ParameterizedTest
    @CsvSource({"0.66, 664", "0.73, 867", "0.695, 765.5"})
    void softStuffSlumpsWhenItIsSoaked(double share, double density) {
        Shells s = shells(Matter.of(3, 300, 0.60, 0.25, 0.40, 0.25, 30, 4), 20, 20);
        double[] before = s.volume.clone();
        moisture(s, share);
        double wet = 360 / (1 - share);
        assertEquals(wet / density, Shells.sum(s.volume), 1e-6);
        for (int i = 0; i < s.n; i++) {
            assertEquals(before[i] * wet / density / 3, s.volume[i], 1e-9, "shell " + i);
        }
    }

    @Test
    void itKeepsItsVolumeWhereItIsNotSoakedOrCoarseOrDenserAlready() {
        Shells damp = shells(Matter.of(3, 300, 0.60, 0.25, 0.40, 0.25, 30, 4), 20, 20);
        moisture(damp, 0.659);
        assertEquals(3, Shells.sum(damp.volume), 1e-12);
        Shells coarse = shells(Matter.of(3, 300, 0.60, 0.25, 0.40, 0.25, 30, 4.1), 20, 20);
        moisture(coarse, 0.73);
        assertEquals(3, Shells.sum(coarse.volume), 1e-12);
        Shells dense = shells(Matter.of(1, 900, 0.72, 0.25, 0.40, 0.25, 30, 4), 20, 20);
        moisture(dense, 0.73);
        assertEquals(1, Shells.sum(dense.volume), 1e-12, "it does not swell to what soaked stuff weighs");
    }

    @Test
    void acidIsSetThroughoutAndNothingElse() {
        Shells s = shells(Fixtures.good(1), 50, 10);
        double[] water = s.water.clone();
        new StateMark(0, NONE, OptionalDouble.of(0.7)).apply(s, new Tally(s), Constants.standard());
        for (double acid : s.acid) {
            assertEquals(0.7, acid);
        }
        assertArrayEquals(water, s.water);
    }
}
