package heapwright.process.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The same pile, made healthy: only what is amiss is put right. */
class HealthyPileTest {

    private static Matter healthy(Matter told) {
        return Retrace.healthy(PileState.cube(told, 12, Envelope.slatted())).matter();
    }

    private static double ratio(Matter m) {
        return m.dryKg() * (m.quickShare() + m.slowShare() + m.ligninShare()) / 2 / m.nitrogenKg();
    }

    @Test
    void aHealthyPileStaysAsItIs() {
        Matter good = Matter.of(1, 500, 0.58, 0.25, 0.40, 0.25, 25, 4).withAcid(0.05);
        Matter kept = healthy(good);
        assertEquals(good.dryKg(), kept.dryKg(), 1e-9);
        assertEquals(good.waterKg(), kept.waterKg(), 1e-9);
        assertEquals(good.nitrogenKg(), kept.nitrogenKg(), 1e-9);
        assertEquals(good.mineralNitrogenKg(), kept.mineralNitrogenKg(), 1e-12);
        assertEquals(good.volumeM3(), kept.volumeM3());
        assertEquals(0.25, kept.quickShare());
        assertEquals(0.40, kept.slowShare());
        assertEquals(0.25, kept.ligninShare());
        assertEquals(4, kept.pieceCm());
        assertEquals(0.05, kept.acidIndex());
    }

    /** Damp is 50 to 62 %; what is not comes to 57 %. */
    @ParameterizedTest
    @CsvSource({"0.30, 0.57", "0.499, 0.57", "0.501, 0.501", "0.619, 0.619", "0.621, 0.57", "0.80, 0.57"})
    void itIsDamp(double told, double moisture) {
        Matter made = healthy(Matter.of(1, 300, told, 0.25, 0.40, 0.25, 25, 4));
        assertEquals(moisture, made.moisture(), 1e-9);
        assertEquals(300 * (1 - told), made.dryKg(), 1e-9, "water came or went, nothing else");
    }

    /** In a cubic metre of 600 kg at 57 % there are 258 kg of dry matter; C:N stays as it was. */
    @Test
    void itIsAiry() {
        Matter dense = Matter.of(1, 1000, 0.70, 0.25, 0.40, 0.25, 25, 4);
        Matter made = healthy(dense);
        assertEquals(258, made.dryKg(), 1e-9);
        assertEquals(342, made.waterKg(), 1e-9);
        assertEquals(25, ratio(made), 1e-9);
        assertEquals(
                2 * 258,
                healthy(Matter.of(2, 1000, 0.70, 0.25, 0.40, 0.25, 25, 4)).dryKg(),
                1e-9);
    }

    @ParameterizedTest
    @CsvSource({"20, 20", "30, 30", "31, 30", "90, 30"})
    void itHasNitrogenEnough(double told, double made) {
        assertEquals(made, ratio(healthy(Matter.of(1, 500, 0.58, 0.25, 0.40, 0.25, told, 4))), 1e-9);
    }

    @Test
    void aPileWithoutNitrogenGetsIt() {
        Matter none = new Matter(200, 250, 0.25, 0.40, 0.25, 0, 0, 1, 4, 0);
        assertEquals(30, ratio(healthy(none)), 1e-9);
        assertEquals(0, healthy(none).mineralNitrogenKg());
    }

    /** 500 kg of dry matter are cut to 300; of its nitrogen no more can be mineral than there is. */
    @Test
    void mineralNitrogenIsNoMoreThanAll() {
        Matter fed = new Matter(500, 500, 0.2, 0.2, 0.2, 12, 11, 1, 4, 0);
        Matter made = healthy(fed);
        assertEquals(made.nitrogenKg(), made.mineralNitrogenKg(), 1e-9);
        assertEquals(12 * made.dryKg() / 500, made.nitrogenKg(), 1e-9);
    }

    @Test
    void itIsNeitherCoarseNorSour() {
        Matter bad = Matter.of(1, 500, 0.58, 0.25, 0.40, 0.25, 30, 12).withAcid(0.8);
        assertEquals(5, healthy(bad).pieceCm());
        assertEquals(0.1, healthy(bad).acidIndex());
    }

    @Test
    void whatIsLaidOnOrRoundItIsDoneToItTooButNoMishap() {
        Event cover = new Event.Cover(3, Envelope.bare());
        Event add = new Event.Add(4, Fixtures.good(0.1), 10, true);
        List<Event> all = List.of(
                new Event.Turn(1),
                cover,
                new Event.Loosen(2),
                new Event.Water(2, 10, 10),
                add,
                new Event.SnowIn(5, 3, -2),
                new Event.Feed(6, 0.1, 5, 20));
        assertEquals(List.of(cover, add), Retrace.harmless(all));
    }
}
