package heapwright.process.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Ledgers in round figures, worked out by hand. */
class LedgerTest {

    /** Heat 100 + 60 + 40 − 30 − 20, water 50 + 8 + 12 − 9 − 11, dry 30 + 10 − 5, nitrogen 6 + 4 − 1 − 2. */
    private static Ledger ledger(double heatOff, double waterOff, double dryOff, double nitrogenOff) {
        return new Ledger(
                100,
                150 + heatOff,
                60,
                40,
                30,
                20,
                50,
                50 + waterOff,
                8,
                12,
                9,
                11,
                30,
                35 + dryOff,
                10,
                5,
                6,
                7 + nitrogenOff,
                4,
                1,
                2);
    }

    @Test
    void nothingIsMissingWhereEveryItemIsEntered() {
        Ledger sound = ledger(0, 0, 0, 0);
        assertEquals(0, sound.heatGap(), 1e-12);
        assertEquals(0, sound.waterGap(), 1e-12);
        assertEquals(0, sound.dryGap(), 1e-12);
        assertEquals(0, sound.nitrogenGap(), 1e-12);
    }

    @Test
    void whatIsMissingIsAShareOfAllThatWasThereOrCame() {
        Ledger off = ledger(20, 7, -4, -5);
        assertEquals(20.0 / (100 + 60 + 40), off.heatGap(), 1e-12);
        assertEquals(7.0 / (50 + 8 + 12), off.waterGap(), 1e-12);
        assertEquals(-4.0 / (30 + 10), off.dryGap(), 1e-12);
        assertEquals(-5.0 / (6 + 4), off.nitrogenGap(), 1e-12);
    }

    /** Below the freezing point heat is negative; it moved all the same. */
    @Test
    void heatOfIceCountsByItsAmount() {
        Ledger frozen = new Ledger(-100, -85, 60, -40, 5, 10, 1, 1, 0, 0, 0, 0, 1, 1, 0, 0, 1, 1, 0, 0, 0);
        assertEquals((-85 + 100 - 60 + 40 + 5 + 10) / 200.0, frozen.heatGap(), 1e-12);
    }

    @Test
    void aPileWithoutWaterOrNitrogenLacksNone() {
        Ledger bare = new Ledger(0, 0.5, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1, 1, 0, 0, 0, 0, 0, 0, 0);
        assertEquals(0.5, bare.heatGap(), 1e-12, "less than a joule is measured against one");
        assertEquals(0, bare.waterGap());
        assertEquals(0, bare.nitrogenGap());
    }
}
