package heapwright.advice.winter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.TestPile;
import heapwright.process.heat.Envelope;
import heapwright.process.heat.Layer;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("What stands round a pile")
class SurroundingsTest {

    private static Envelope of(String container) {
        return Surroundings.of(TestPile.of("'asOf': '2026-11-21', 'container': {" + container + "}"), false);
    }

    @Test
    @DisplayName("is nothing where nothing is told")
    void nothing() {
        assertEquals(Envelope.bare(), of(""));
        assertEquals(Envelope.bare(), of("'kind': 'open-heap', 'cover': 'none', 'base': 'soil', 'insulation': 'none'"));
        assertEquals(Envelope.slatted(), of("'kind': 'wire-ring'"));
    }

    /** What is laid on keeps warm on top only, and what is put round keeps warm at the sides only. */
    @ParameterizedTest
    @CsvSource({
        "cover, straw-or-leaves, true",
        "cover, finished-compost, true",
        "cover, lid, true",
        "cover, boards-or-roof, true",
        "cover, breathing-fleece, true",
        "cover, loose-tarp, true",
        "cover, snow, true",
        "insulation, straw, false",
        "insulation, leaves, false",
        "insulation, foam, false",
        "insulation, wood, false",
        "insulation, snow-bank, false",
        "insulation, earth, false"
    })
    @DisplayName("keeps warm where it lies")
    void warmth(String field, String what, boolean top) {
        Envelope bare = Envelope.bare();
        Envelope kept = of("'" + field + "': '" + what + "'");
        assertEquals(top, kept.topResistance() > bare.topResistance());
        assertEquals(!top, kept.sideResistance() > bare.sideResistance());
        assertTrue(kept.topOpen() <= bare.topOpen() && kept.sideOpen() <= bare.sideOpen());
        assertTrue(kept.rainShare() <= bare.rainShare());
    }

    @Test
    @DisplayName("keeps rain off where it is a roof, and lets it through where it is snow")
    void rain() {
        assertTrue(of("'cover': 'boards-or-roof'").rainShare() <= 0.2);
        assertTrue(of("'cover': 'loose-tarp'").rainShare()
                < of("'cover': 'breathing-fleece'").rainShare());
        assertEquals(1, of("'cover': 'snow'").rainShare());
    }

    @Test
    @DisplayName("lets air in from brush or a pallet and none from paving")
    void ground() {
        assertEquals(Layer.brush().open(), of("'base': 'pallet'").groundOpen());
        assertEquals(of("'base': 'pallet'"), of("'base': 'coarse-brush'"));
        Envelope paved = of("'kind': 'slatted-bin', 'base': 'paving'");
        assertEquals(0, paved.groundOpen());
        assertEquals(Envelope.slatted().sideOpen(), paved.sideOpen());
        assertEquals(Envelope.slatted().shelter(), paved.shelter());
    }

    @Test
    @DisplayName("shuts the sides too where a sheet is sealed, however it was told, and opens when it is lifted")
    void sealed() {
        Envelope told = of("'cover': 'sealed-plastic'");
        Envelope seen = Surroundings.of(TestPile.of("'asOf': '2026-11-21', 'container': {'cover': 'lid'}"), true);
        assertEquals(told, seen);
        assertTrue(told.topOpen() < 0.05 && told.sideOpen() <= 0.1);
        assertEquals(0, told.rainShare());
        Envelope lifted = Surroundings.unsealed(told);
        assertEquals(0.6, lifted.topOpen());
        assertEquals(0.5, lifted.sideOpen());
        assertEquals(told.topResistance(), lifted.topResistance());
        assertEquals(
                Envelope.bare().topOpen(),
                Surroundings.unsealed(Envelope.bare()).topOpen(),
                "no less open than before");
    }

    @Test
    @DisplayName("of a better bin is warmer and drier")
    void kinds() {
        Envelope open = of("'kind': 'slatted-bin'");
        Envelope closed = of("'kind': 'closed-bin'");
        Envelope insulated = of("'kind': 'insulated-bin'");
        assertTrue(insulated.sideResistance() > closed.sideResistance());
        assertTrue(closed.rainShare() < open.rainShare());
        assertTrue(closed.topOpen() < open.topOpen() && closed.sideOpen() < open.sideOpen());
        assertTrue(of("'kind': 'pit'").sideOpen() < open.sideOpen());
        assertTrue(of("'kind': 'tumbler'").groundOpen() > open.groundOpen());
    }

    @Test
    @DisplayName("can be bettered with straw and a screen")
    void bettered() {
        Envelope straw = Surroundings.insulated(Envelope.slatted());
        assertEquals(Layer.straw(Plan.INSULATION_CM / 100).resistance(), straw.topResistance(), 1e-12);
        assertEquals(0.1 + straw.topResistance(), straw.sideResistance(), 1e-12);
        assertEquals(0.8, Surroundings.sheltered(Envelope.bare()).shelter());
        assertEquals(0.9, Surroundings.sheltered(of("'kind': 'pit'")).shelter(), "no worse than before");
        assertEquals(4, Surroundings.wind(TestPile.of("'asOf': '2026-11-21', 'place': {'settings': ['windy']}")));
        assertEquals(2, Surroundings.wind(TestPile.of("'asOf': '2026-11-21'")));
    }
}
