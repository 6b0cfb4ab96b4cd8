package heapwright.process.heat;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The sums of a run, and a run that is forked. */
class TallyTest {

    private static Shells shells(double dryKg) {
        Matter matter = new Matter(dryKg, 2 * dryKg, 0.3, 0.2, 0.4, 0.1 * dryKg, 0.05 * dryKg, 1, 4, 0);
        return new Shells(PileState.cube(matter, 10, Envelope.bare()), 4, Fixtures.seeded(0.3));
    }

    private static Tally filled() {
        Tally tally = new Tally(shells(100));
        tally.heatReleased = 1;
        tally.heatBrought = 2;
        tally.heatConducted = 3;
        tally.heatAired = 4;
        tally.waterFormed = 5;
        tally.waterBrought = 6;
        tally.waterVapour = 7;
        tally.waterDrained = 8;
        tally.dryBrought = 9;
        tally.dryLost = 10;
        tally.nitrogenBrought = 11;
        tally.nitrogenGas = 12;
        tally.nitrogenDrained = 13;
        tally.foodBrought = 14;
        return tally;
    }

    private static void tells(double[] expected, Ledger ledger) {
        double[] told = {
            ledger.heatStart(),
            ledger.heatEnd(),
            ledger.heatReleased(),
            ledger.heatBrought(),
            ledger.heatConducted(),
            ledger.heatAired(),
            ledger.waterStart(),
            ledger.waterEnd(),
            ledger.waterFormed(),
            ledger.waterBrought(),
            ledger.waterVapour(),
            ledger.waterDrained(),
            ledger.dryStart(),
            ledger.dryEnd(),
            ledger.dryBrought(),
            ledger.dryLost(),
            ledger.nitrogenStart(),
            ledger.nitrogenEnd(),
            ledger.nitrogenBrought(),
            ledger.nitrogenGas(),
            ledger.nitrogenDrained()
        };
        assertArrayEquals(expected, told, 1e-3);
    }

    /** 100 kg of dry matter and 200 of water at 10 °C: 10 × (100 × 1,050 + 200 × 4,190) J; half as much in the end. */
    @Test
    void theLedgerIsStartEndAndWhatCameAndWent() {
        double[] expected = {9_430_000, 4_715_000, 1, 2, 3, 4, 200, 100, 5, 6, 7, 8, 100, 50, 9, 10, 10, 5, 11, 12, 13};
        tells(expected, filled().close(shells(50)));
        tells(expected, new Tally(filled()).close(shells(50)));
    }

    @Test
    void foodIsWhatDecaysQuicklyAndSlowly() {
        assertEquals(50, Tally.food(shells(100)), 1e-9);
        assertEquals(50, filled().foodStart, 1e-9);
        Tally copy = new Tally(filled());
        assertEquals(50, copy.foodStart, 1e-9);
        assertEquals(14, copy.foodBrought);
    }

    @Test
    void aForkGoesTheSameWayOnItsOwn() {
        Weather weather = Weather.monthly(Fixtures.NORTHERN, 290, 60).withPrecipitation(2);
        List<Event> events = List.of(new Event.Turn(3), new Event.Water(6, 20, 10));
        Run run = new Run(
                PileState.cube(Fixtures.good(1), 12, Envelope.slatted()), weather, events, Fixtures.STANDARD, 8);
        run.rateTimes = 1.5;
        for (int d = 0; d < 5; d++) {
            run.live();
        }
        Run fork = new Run(run);
        Run follower =
                new Run(PileState.cube(Fixtures.good(1), 3, Envelope.slatted()), weather, events, Fixtures.STANDARD, 8);
        follower.goOnFrom(run);
        assertEquals(run.read().coreC(), fork.read().coreC());
        assertEquals(run.read().heatW(), fork.read().heatW());
        for (int d = 0; d < 4; d++) {
            run.live();
            fork.live();
            follower.live();
        }
        assertEquals(run.read(), fork.read());
        assertEquals(run.tally.close(run.s), fork.tally.close(fork.s));
        assertEquals(run.s.temperature[0], follower.s.temperature[0]);
        assertEquals(run.s.loose, follower.s.loose);
        assertEquals(9, fork.day);
    }
}
