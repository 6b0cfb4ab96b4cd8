package heapwright.process.heat;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Bands and outlook. */
class EnsembleTest {
    private static final Weather WINTER = Weather.monthly(Fixtures.NORTHERN, 304, 180);

    private static Ensemble of(Envelope envelope) {
        return Ensemble.run(
                PileState.cube(Fixtures.good(1), 12, envelope),
                WINTER,
                List.of(),
                180,
                Fixtures.STANDARD,
                Spread.usual(),
                64);
    }

    @Test
    void bandsEncloseAndRepeat() {
        Bands one = of(Envelope.slatted()).core();
        Bands two = of(Envelope.slatted()).core();
        assertArrayEquals(one.likely(), two.likely());
        for (int d = 0; d < 180; d++) {
            assertTrue(one.low()[d] <= one.likely()[d] && one.likely()[d] <= one.high()[d], "day " + d);
        }
    }

    @Test
    void unsureInputsGiveAWideBandAndSureOnesANarrowOne() {
        Bands wide = of(Envelope.slatted()).bands(Day::massKg);
        Bands narrow = Ensemble.run(
                        PileState.cube(Fixtures.good(1), 12, Envelope.slatted()),
                        WINTER,
                        List.of(),
                        180,
                        Fixtures.STANDARD,
                        Spread.measured(),
                        64)
                .bands(Day::massKg);
        assertTrue(narrow.high()[100] - narrow.low()[100] < wide.high()[100] - wide.low()[100]);
        assertTrue(narrow.high()[100] > narrow.low()[100]);
    }

    @Test
    void outlookOfAnOpenBinAndAnInsulatedOne() {
        Outlook open = Outlook.of(of(Envelope.slatted()), Readiness.standard());
        Outlook kept = Outlook.of(
                of(Envelope.slatted().topped(Layer.straw(0.25)).wrapped(Layer.straw(0.25))), Readiness.standard());
        assertTrue(open.freezesThrough() > 0.5, "open " + open.freezesThrough());
        assertTrue(kept.freezesThrough() < open.freezesThrough(), "kept " + kept.freezesThrough());
        assertTrue(kept.daysAbove40().likely() > open.daysAbove40().likely());
        assertTrue(kept.massLeft().likely() < open.massLeft().likely());
        assertTrue(
                open.peakC().high() <= 85 && open.peakC().low() < open.peakC().likely());
        assertTrue(open.readyDay().low() <= open.readyDay().high());
        assertTrue(open.readyChance() >= 0 && open.readyChance() <= 1);
    }

    @Test
    void percentilesInterpolate() {
        assertEquals(2.5, Bands.percentile(new double[] {1, 2, 3, 4}, 0.5), 1e-12);
        assertEquals(1, Bands.percentile(new double[] {1}, 0.9), 1e-12);
        assertEquals(new Range(1.4, 3, 4.6), Range.of(new double[] {5, 1, 4, 2, 3}));
    }
}
