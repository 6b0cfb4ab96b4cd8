package heapwright.process.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is read off a pile whose shells are set by hand. */
class DayReaderTest {

    private static final Constants.Kinetics K = Fixtures.STANDARD.kinetics();

    /** The first of three days at 7, 8 and 9 °C is over; nothing else is done to the pile than is said. */
    private static Run run(Matter matter, double celsius) {
        Run run = new Run(
                PileState.cube(matter, celsius, Envelope.slatted()),
                Weather.daily(7, 8, 9),
                List.of(),
                Fixtures.STANDARD,
                Run.SHELLS);
        run.day = 1;
        return run;
    }

    private static Matter matter() {
        return Matter.of(1.2, 500, 0.55, 0.25, 0.40, 0.25, 26, 4);
    }

    @Test
    void theWholePileIsTheSumOfItsShells() {
        Run run = run(matter(), 30);
        Shells s = run.s;
        s.water[0] -= 5;
        s.temperature[0] = 61;
        s.temperature[7] = 9;
        s.ammonium[0] = 0.002 * s.dry(0);
        s.nitrogenFood[0] -= 0.002 * s.dry(0);
        Day day = run.read();
        assertEquals(0, day.day());
        assertEquals(7, day.outdoorC());
        assertEquals(61, day.coreC());
        assertEquals(9, day.skinC());
        double mid = 30 + (31 * s.volume[0] - 21 * s.volume[7]) / 1.2;
        assertEquals(mid, day.midC(), 1e-9);
        assertEquals(270, day.dryKg(), 1e-9);
        assertEquals(595, day.massKg(), 1e-9);
        assertEquals(325.0 / 595, day.moistureMean(), 1e-9);
        assertEquals(s.water[0] / (s.water[0] + s.dry(0)), day.moistureCore(), 1e-12);
        assertEquals(1.2, day.volumeM3(), 1e-12);
        assertEquals(Math.cbrt(1.2), day.heightM(), 1e-9);
        assertEquals(26, day.carbonToNitrogen(), 1e-9);
        assertEquals(18, day.oxygenCore());
        assertEquals(Factors.ph(0.2, 0.002), day.phCore(), 1e-12);
        assertEquals(0, day.heatW());
        assertEquals(0, day.iceShare());
    }

    /** Ice fills the room of a twelfth more water, organic matter and ash that of their own density. */
    @Test
    void iceTakesRoomInTheCoreAndCountsByItsMass() {
        Run run = run(matter(), 5);
        Shells s = run.s;
        s.ice[0] = 0.4;
        s.ice[7] = 1;
        Day day = run.read();
        assertEquals((0.4 * s.water[0] + s.water[7]) / 330, day.iceShare(), 1e-9);
        assertEquals(0.4, day.coreIceShare());
        double filled = 0.6 * s.water[0] / 1000 + 0.4 * s.water[0] / 917 + s.organic(0) / 1600 + s.ash[0] / 2500;
        assertEquals(1 - filled / s.volume[0], day.airSpaceCore(), 1e-9);
    }

    @Test
    void foodAndNitrogenAreSharesOfAllThatWentIn() {
        Run run = run(matter(), 20);
        double food = 270 * 0.65;
        double nitrogen = 270 * 0.9 / 2 / 26;
        run.tally.foodBrought = food;
        run.tally.nitrogenBrought = nitrogen / 2;
        run.tally.nitrogenGas = nitrogen / 4;
        run.tally.nitrogenDrained = nitrogen / 8;
        Day day = run.read();
        assertEquals(0.5, day.foodLeftShare(), 1e-9);
        assertEquals((0.25 + 0.125) / 1.5, day.nitrogenLostShare(), 1e-9);
    }

    /** Per kg of organic matter: what its three parts breathe at 37 °C, 12 of 32 parts of the oxygen as carbon. */
    @Test
    void theSampleBreathesWhatItsPartsBreathe() {
        double quick = 0.25 * K.quickPerDay() / 0.9;
        double slow = (0.40 * K.slowPerDay() + 0.25 * K.ligninPerDay()) / 0.9;
        double perDay =
                Factors.mesophiles(37) * (quick + slow) + Factors.thermophiles(37) * (quick + K.hotOnSlow() * slow);
        double oxygen = perDay * (1 - K.humusYield()) * K.oxygenPerKg();
        assertEquals(1000 * oxygen * 12 / 32, run(matter(), 5).read().respiration(), 1e-9);
    }

    @Test
    void aPileWithoutWaterHasNoIce() {
        Run run = run(matter(), -5);
        Arrays.fill(run.s.water, 0);
        assertEquals(0, run.read().iceShare());
    }
}
