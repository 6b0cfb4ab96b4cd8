package heapwright.process.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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

    private static Limitation held(double celsius, Consumer<Shells> fault) {
        Run run = run(Matter.of(1, 450, 0.58, 0.25, 0.40, 0.25, 26, 4).withAcid(0.1), celsius);
        fault.accept(run.s);
        return run.read().limitation();
    }

    private static void moisten(Shells s, double share) {
        s.water[0] = s.dry(0) * share / (1 - share);
    }

    /** Its lowest factor is that of the pieces, until it is less warm. */
    @Test
    void nothingHoldsAWarmDampAiryPile() {
        Limitation none = held(Factors.BEST_C, s -> s.pieceCm = 6);
        assertEquals(new Limitation(LimitingFactor.NONE, Factors.pieces(6, K.halfSizeCm())), none);
        double celsius = 45;
        double warmth = Curves.rate(celsius - K.shiftC()) / Factors.PEAK;
        assertTrue(warmth > 0.6 && warmth < Factors.pieces(2, K.halfSizeCm()), "warmth " + warmth);
        assertEquals(new Limitation(LimitingFactor.NONE, warmth), held(celsius, s -> s.pieceCm = 2));
    }

    @Test
    void halfOfTheWaterAsIceIsFrozen() {
        assertEquals(new Limitation(LimitingFactor.FROZEN, 0.5), held(0, s -> s.ice[0] = 0.5));
        assertEquals(LimitingFactor.COLD, held(0, s -> s.ice[0] = 0.4).factor());
    }

    /** A quarter quick and four tenths slow is fresh; a tenth of that vigour is spent, a seventh is not. */
    @Test
    void spentFoodComesBeforeAllButIce() {
        double fresh = 0.25 * K.quickPerDay() + 0.40 * K.slowPerDay();
        for (double share : new double[] {0.10, 1.0 / 7}) {
            Limitation held = held(50, s -> {
                double dry = s.dry(0);
                s.lignin[0] = 0;
                s.slow[0] = 0;
                s.quick[0] = dry * share * fresh / K.quickPerDay();
                s.ash[0] = dry - s.quick[0];
                moisten(s, 0.2);
            });
            if (share < 0.12) {
                assertEquals(LimitingFactor.FOOD_SPENT, held.factor());
                assertEquals(share, held.value(), 1e-9);
            } else {
                assertEquals(LimitingFactor.WATER, held.factor());
            }
        }
    }

    @Test
    void whatCouldBeMendedIsNamedByTheFactorThatIsLowest() {
        Limitation dry = held(50, s -> moisten(s, 0.25));
        assertEquals(LimitingFactor.WATER, dry.factor());
        assertEquals(Factors.moistureAround(0.25), dry.value(), 1e-9);
        Limitation air = held(50, s -> s.oxygen[0] = 0.2);
        assertEquals(LimitingFactor.AIR, air.factor());
        Limitation sour = held(50, s -> s.acid[0] = 1);
        assertEquals(LimitingFactor.ACID, sour.factor());
        assertEquals(Factors.acid(Factors.ph(1, 0), 50), sour.value(), 1e-12);
        Limitation coarse = held(50, s -> s.pieceCm = 40);
        assertEquals(new Limitation(LimitingFactor.PIECE_SIZE, Factors.pieces(40, K.halfSizeCm())), coarse);
        Limitation poor = held(50, s -> {
            s.nitrogenFood[0] /= 5;
            s.nitrogenHumus[0] /= 5;
        });
        assertEquals(LimitingFactor.NITROGEN, poor.factor());
        assertEquals(Factors.nitrogen(5 * 26), poor.value(), 1e-9);
    }

    /** Air counts by its room and by its oxygen, against the open air of 20.9 %. */
    @Test
    void littleOxygenInFullRoomIsItsShareOfTheOpenAir() {
        Limitation air = held(50, s -> {
            s.oxygen[0] = 0.5;
            s.volume[0] *= 1.5;
        });
        Run run = run(Matter.of(1, 450, 0.58, 0.25, 0.40, 0.25, 26, 4), 50);
        Shells s = run.s;
        double space = Factors.airFilled(1.5 * s.volume[0], s.water[0], 0, s.organic(0), s.ash[0]);
        double open = Factors.oxygen(20.9, 2);
        assertEquals(Factors.airSpace(space) * Factors.oxygen(0.5, Factors.oxygenHalf(0.58)) / open, air.value(), 1e-9);
    }

    /** Ice takes more room than its water did, and leaves less for air. */
    @Test
    void iceInTheCoreTakesRoomFromTheAir() {
        Limitation air = held(0, s -> {
            s.volume[0] *= 0.40;
            s.ice[0] = 0.4;
        });
        Run run = run(Matter.of(1, 450, 0.58, 0.25, 0.40, 0.25, 26, 4), 0);
        Shells s = run.s;
        double space =
                Factors.airFilled(0.40 * s.volume[0], 0.6 * s.water[0], 0.4 * s.water[0], s.organic(0), s.ash[0]);
        double oxygen = Factors.oxygen(18, Factors.oxygenHalf(0.58)) / Factors.oxygen(20.9, 2);
        assertEquals(LimitingFactor.AIR, air.factor());
        assertEquals(Factors.airSpace(space) * oxygen, air.value(), 1e-9);
    }

    @Test
    void ammoniumMakesASourPileLessSour() {
        Limitation sour = held(50, s -> {
            s.acid[0] = 1;
            s.ammonium[0] = 0.001 * s.dry(0);
        });
        assertEquals(LimitingFactor.ACID, sour.factor());
        assertEquals(Factors.acid(Factors.ph(1, 0.001), 50), sour.value(), 1e-12);
    }

    /** A curve moved up by 3 K holds a pile at 20 °C as the usual one holds it at 17 °C. */
    @Test
    void theColdGoesByTheCurveOfThatRun() {
        Run run = new Run(
                PileState.cube(Matter.of(1, 450, 0.58, 0.25, 0.40, 0.25, 26, 4).withAcid(0.1), 20, Envelope.slatted()),
                Weather.daily(7),
                List.of(),
                Fixtures.STANDARD.with(K.varied(1, 1, 3)),
                Run.SHELLS);
        run.day = 1;
        assertEquals(
                new Limitation(LimitingFactor.COLD, Curves.rate(17) / Factors.PEAK),
                run.read().limitation());
    }

    /** The cold is named only where nothing stands out that somebody could mend. */
    @ParameterizedTest
    @CsvSource({"5, COLD", "15, COLD", "79, HEAT"})
    void coldAndHeatAreNamedWhenNothingElseIs(double celsius, LimitingFactor factor) {
        Limitation held = held(celsius, s -> {});
        assertEquals(factor, held.factor());
        assertEquals(Curves.rate(celsius - K.shiftC()) / Factors.PEAK, held.value(), 1e-9);
        assertEquals(LimitingFactor.WATER, held(celsius, s -> moisten(s, 0.25)).factor());
    }

    @Test
    void aPileWithoutWaterHasNoIce() {
        Run run = run(matter(), -5);
        Arrays.fill(run.s.water, 0);
        assertEquals(0, run.read().iceShare());
    }
}
