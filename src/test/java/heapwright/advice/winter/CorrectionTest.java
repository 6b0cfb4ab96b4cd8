package heapwright.advice.winter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.process.heat.Envelope;
import heapwright.process.heat.Event;
import heapwright.process.heat.Layer;
import heapwright.process.heat.Matter;
import heapwright.process.heat.PileState;
import heapwright.process.heat.Setup;
import heapwright.process.heat.StateMark;
import heapwright.process.heat.Weather;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** On five days, so that nothing dries out or sours on the way unless a test says so. */
@DisplayName("One thing put right")
class CorrectionTest {

    private static final int DAYS = 5;

    /** In nothing to be bettered but by shelter and mild weather: damp, airy, C:N 30, fine, not sour, a cubic metre. */
    private static final Matter GOOD =
            Matter.of(1, 500, 0.58, 0.25, 0.40, 0.25, 30, 4).withAcid(0.1);

    private static Setup told(PileState pile, List<Event> events, List<StateMark> marks, int days) {
        return new Setup(pile, Weather.constant(12, days).withPrecipitation(1), events, marks, days);
    }

    private static PileState pile(Matter matter) {
        return PileState.cube(matter, 12, Envelope.slatted());
    }

    private static Optional<Setup> right(Factor factor, Setup told) {
        return new Correction(told, told.course()).of(factor);
    }

    private static Optional<Setup> right(Factor factor, Matter matter) {
        return right(factor, told(pile(matter), List.of(), List.of(), DAYS));
    }

    private static Matter matter(Factor factor, Matter matter) {
        return right(factor, matter).orElseThrow().start().matter();
    }

    private static double ratio(Matter m) {
        return m.dryKg() * (m.quickShare() + m.slowShare() + m.ligninShare()) / 2 / m.nitrogenKg();
    }

    @ParameterizedTest
    @EnumSource(
            value = Factor.class,
            names = {"WATER", "AIR", "NITROGEN", "ACID", "PIECES", "FOOD", "SIZE", "HANDLING"})
    @DisplayName("is none where it is right")
    void alreadySo(Factor factor) {
        assertEquals(Optional.empty(), right(factor, GOOD));
    }

    @Test
    @DisplayName("is water to 57 % where it is drier than 50 %, with all else as it was")
    void water() {
        Matter dry = Matter.of(1, 300, 0.40, 0.25, 0.40, 0.25, 30, 4);
        Matter damp = matter(Factor.WATER, dry);
        assertEquals(0.57, damp.moisture(), 1e-9);
        assertEquals(dry.dryKg(), damp.dryKg(), 1e-9);
        assertEquals(dry.volumeM3(), damp.volumeM3(), 1e-9);
        assertEquals(Optional.empty(), right(Factor.WATER, Matter.of(1, 400, 0.51, 0.25, 0.40, 0.25, 30, 4)));
    }

    @Test
    @DisplayName("is water again in each week in which it would have dried out")
    void keptDamp() {
        Matter damp = Matter.of(1, 350, 0.51, 0.25, 0.40, 0.25, 30, 4);
        Setup told = new Setup(pile(damp), Weather.constant(20, 60), List.of(), List.of(), 60);
        assertTrue(told.course().days().get(56).moistureMean() < 0.50, "it dries");
        Setup kept = right(Factor.WATER, told).orElseThrow();
        assertEquals(damp, kept.start().matter(), "it was damp at first");
        assertTrue(kept.marks().stream()
                .allMatch(m -> m.day() % 7 == 0 && m.moisture().orElseThrow() == 0.57));
        assertTrue(kept.marks().stream().anyMatch(m -> m.day() == 56));
    }

    @Test
    @DisplayName("is water where it was felt to be dry, and leaves what was felt to be damp")
    void feltDry() {
        StateMark dry = new StateMark(2, OptionalDouble.of(0.30), OptionalDouble.empty());
        StateMark damp = new StateMark(4, OptionalDouble.of(0.55), OptionalDouble.empty());
        Setup kept = right(Factor.WATER, told(pile(GOOD), List.of(), List.of(dry, damp), DAYS))
                .orElseThrow();
        assertEquals(
                List.of(0.57, 0.55),
                kept.marks().stream().map(m -> m.moisture().orElseThrow()).toList());
    }

    @Test
    @DisplayName("is air: soaked stuff to 57 % and as loose as 500 kg a cubic metre, dense stuff loosened, an open lid")
    void air() {
        Matter wet = Matter.of(1.3, 900, 0.72, 0.25, 0.40, 0.25, 30, 4);
        Matter drier = matter(Factor.AIR, wet);
        assertEquals(0.57, drier.moisture(), 1e-9);
        assertEquals(wet.dryKg(), drier.dryKg(), 1e-9);
        double now = wet.dryKg() / 0.43;
        assertEquals(now / wet.volumeM3() > 600 ? now / 500 : wet.volumeM3(), drier.volumeM3(), 1e-9);
        Matter dense = Matter.of(1.3, 700, 0.60, 0.25, 0.40, 0.25, 30, 4);
        Matter loose = matter(Factor.AIR, dense);
        assertEquals(0.57, loose.moisture(), 1e-9);
        assertEquals(dense.dryKg() / 0.43 / 500, loose.volumeM3(), 1e-9);
        PileState shut = pile(GOOD).with(Envelope.slatted().topped(Layer.sealedSheet()));
        PileState open = right(Factor.AIR, told(shut, List.of(), List.of(), DAYS))
                .orElseThrow()
                .start();
        assertTrue(open.envelope().topOpen() > shut.envelope().topOpen());
        assertEquals(GOOD, open.matter());
    }

    @Test
    @DisplayName("is nitrogen to C:N 30, fine pieces, no acid, fresh food")
    void stuff() {
        Matter lean = Matter.of(1, 500, 0.58, 0.25, 0.40, 0.25, 60, 4);
        assertEquals(30, ratio(matter(Factor.NITROGEN, lean)), 1e-9);
        assertEquals(0.58, matter(Factor.NITROGEN, lean).moisture(), 1e-9);
        assertEquals(5, matter(Factor.PIECES, GOOD.withPieces(9)).pieceCm());
        assertEquals(0.1, matter(Factor.ACID, GOOD.withAcid(0.8)).acidIndex());
        Matter spent = Matter.of(1, 500, 0.58, 0.05, 0.10, 0.75, 30, 4).withAcid(0.1);
        Matter fresh = matter(Factor.FOOD, spent);
        assertEquals(0.25, fresh.quickShare(), 1e-9);
        assertEquals(0.40, fresh.slowShare(), 1e-9);
        assertEquals(0.35, fresh.ligninShare(), 1e-9);
        assertEquals(spent.dryKg(), fresh.dryKg(), 1e-9);
    }

    @Test
    @DisplayName("is a cubic metre of the same in the same shape, with all that was added to it")
    void size() {
        Matter half = Matter.of(0.5, 250, 0.58, 0.25, 0.40, 0.25, 30, 4);
        Event water = new Event.Water(2, 10, 12);
        Setup larger = right(Factor.SIZE, told(pile(half), List.of(water), List.of(), DAYS))
                .orElseThrow();
        assertEquals(1, larger.start().matter().volumeM3(), 1e-6);
        assertEquals(0.58, larger.start().matter().moisture(), 1e-9);
        assertEquals(30, ratio(larger.start().matter()), 1e-9);
        assertEquals(1, Math.pow(larger.start().lengthM(), 3), 1e-6);
        assertEquals(20, ((Event.Water) larger.events().get(0)).kg(), 1e-4);
    }

    @Test
    @DisplayName("is shelter all round, mild weather, or peace, each with the same stuff")
    void around() {
        Event cover = new Event.Cover(3, Envelope.bare());
        Setup told = told(pile(GOOD), List.of(new Event.Turn(1), cover, new Event.Turn(4)), List.of(), DAYS);
        Setup wrapped = right(Factor.SHELTER, told).orElseThrow();
        assertTrue(wrapped.start().envelope().topResistance()
                > told.start().envelope().topResistance() + 1);
        assertTrue(((Event.Cover) wrapped.events().get(1)).envelope().topResistance()
                > Envelope.bare().topResistance() + 1);
        assertEquals(GOOD, wrapped.start().matter());
        assertEquals(List.of(cover), right(Factor.HANDLING, told).orElseThrow().events());
        Setup mild = right(Factor.COLD, told).orElseThrow();
        assertEquals(15, mild.weather().airC(3), 1e-9);
        assertEquals(told.start(), mild.start());
    }

    /** Forty tonnes on half a bucket come to more on a cubic metre than the heat model once took, and an answer failed. */
    @Test
    @DisplayName("takes any water along when a heap is made larger")
    void sizeWithMuchWater() {
        Matter little = Matter.of(0.005, 500, 0.58, 0.25, 0.40, 0.25, 30, 4);
        Setup larger = right(
                        Factor.SIZE, told(pile(little), List.of(new Event.Water(DAYS - 1, 4e4, 10)), List.of(), DAYS))
                .orElseThrow();
        assertTrue(((Event.Water) larger.events().get(0)).kg() > 1e6);
        assertTrue(larger.course().days().stream().allMatch(day -> Double.isFinite(day.coreC())));
    }
}
