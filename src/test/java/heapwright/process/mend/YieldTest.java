package heapwright.process.mend;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.process.dose.PileStock;
import heapwright.process.mixture.Band;
import heapwright.process.mixture.Basis;
import heapwright.process.mixture.Observed;
import java.time.LocalDate;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class YieldTest {

    private static final PileStock STOCK = PileStock.ofSize(Band.exact(1), Basis.REPORTED, Observed.nothing());

    @Test
    @DisplayName("SASK08, published: 30 to 50 % of the volume is left; 100 L cover 4 m² at 2.5 cm")
    void aCubicMetreOfMix() {
        Yield yield = Yield.of(Band.exact(1), STOCK, Yield.Kind.MIXED);
        assertEquals(300, yield.litres().low(), 1e-9);
        assertEquals(500, yield.litres().high(), 1e-9);
        assertEquals(yield.litres().likely() / 100 * 4, yield.coversM2().likely(), 1e-9);
        assertEquals(150, yield.kgWet().low(), 1e-9);
        assertEquals(450, yield.kgWet().high(), 1e-9);
    }

    @Test
    void noMoreNitrogenComesOutThanWentIn() {
        Yield yield = Yield.of(Band.exact(1), STOCK, Yield.Kind.MANURE);
        assertTrue(yield.nitrogenKg().high() < STOCK.nitrogenKg());
        assertTrue(yield.nitrogenKg().low() > 0.3 * STOCK.nitrogenKg());
    }

    @Test
    @DisplayName("ILLEXT, published: a home pile takes 6 to 12 months")
    void aUsualPile() {
        ReadyRange range = ReadyRange.of(LocalDate.of(2026, 10, 31), ReadyRange.Care.USUAL);
        assertEquals(LocalDate.of(2027, 5, 1), range.earliest());
        assertEquals(LocalDate.of(2027, 10, 31), range.latest());
    }
}
