package heapwright.advice.winter;

import static heapwright.advice.winter.Courses.DAYS;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.process.heat.Bounds;
import heapwright.process.heat.Course;
import heapwright.process.heat.Envelope;
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
import org.junit.jupiter.params.provider.CsvSource;

/**
 * On both sides of the limits of docs/method/winter.md, on courses written by hand: water below 50 % and above 62 %, 600
 * kg/m³, C:N 30, pH 6.5, pieces of 5 cm.
 */
@DisplayName("One thing put right, at the limits of what is right")
class CorrectionLimitsTest {

    private static final Courses.Sample SOUND = new Courses.Sample();
    /** Waste that is right in everything, 500 kg of a cubic metre. */
    private static final Matter GOOD = stuff(0.57, 500).withAcid(0.1);

    private static Matter stuff(double moisture, double densityKgM3) {
        return Matter.of(1, densityKgM3, moisture, 0.25, 0.40, 0.25, 30, 5);
    }

    private static Setup told(Matter matter, StateMark... marks) {
        return told(matter, Envelope.slatted(), marks);
    }

    private static Setup told(Matter matter, Envelope envelope, StateMark... marks) {
        return new Setup(
                PileState.cube(matter, 12, envelope),
                Weather.constant(12, DAYS).withPrecipitation(1),
                List.of(),
                List.of(marks),
                DAYS);
    }

    private static Course always(Courses.Sample sample) {
        return Courses.of(day -> sample.on(day, 20, 12));
    }

    private static boolean there(Factor factor, Courses.Sample sample) {
        return new Correction(told(GOOD), always(sample)).there(factor, 3);
    }

    private static Optional<Setup> right(Factor factor, Setup told, Courses.Sample sample) {
        return new Correction(told, always(sample)).of(factor);
    }

    private static Optional<Setup> right(Factor factor, Matter matter) {
        return right(factor, told(matter), SOUND);
    }

    @ParameterizedTest
    @CsvSource({
        "0.50, 0.57, false",
        "0.49, 0.57, true",
        "0.57, 0.49, true",
        "0.49, 0.49, true",
    })
    @DisplayName("is water where the middle or the whole is drier than 50 %")
    void water(double core, double mean, boolean there) {
        assertEquals(there, there(Factor.WATER, SOUND.damp(core, mean)));
    }

    @ParameterizedTest
    @CsvSource({"0.62, 600, false", "0.63, 600, true", "0.62, 601, true"})
    @DisplayName("is air where it is wetter than 62 % or heavier than 600 kg a cubic metre")
    void air(double moisture, double densityKgM3, boolean there) {
        assertEquals(there, there(Factor.AIR, SOUND.damp(moisture, moisture).dense(2 * densityKgM3, 2)));
    }

    @ParameterizedTest
    @CsvSource({"0.1, 0.05, false", "0.09, 0.05, true", "0.1, 0.04, true"})
    @DisplayName("is air where a tenth of the top is not open, or a twentieth of the sides")
    void shut(double top, double side, boolean there) {
        Setup told = told(GOOD, new Envelope(0.1, 0.1, 0.1, top, side, 0.2, 0.1, 0.5));
        Correction right = new Correction(told, always(SOUND));
        assertEquals(there, right.there(Factor.AIR, 3));
        assertEquals(there, right.of(Factor.AIR).isPresent());
    }

    @Test
    @DisplayName("is nitrogen above C:N 30, an end to acid below pH 6.5, chopping above 5 cm; of size and food never")
    void others() {
        assertEquals(false, there(Factor.NITROGEN, SOUND.lean(30)));
        assertEquals(true, there(Factor.NITROGEN, SOUND.lean(30.1)));
        assertEquals(false, there(Factor.ACID, SOUND.acid(6.5)));
        assertEquals(true, there(Factor.ACID, SOUND.acid(6.4)));
        assertEquals(false, there(Factor.PIECES, SOUND));
        assertTrue(new Correction(told(GOOD.withPieces(5.1)), always(SOUND)).there(Factor.PIECES, 3));
        assertEquals(false, there(Factor.SIZE, SOUND.dense(50, 0.1)));
        assertEquals(false, there(Factor.FOOD, SOUND.breathing(1)));
    }

    /** At 49.9 % and at 50.1 %, and so on; the limit itself is no figure that anything comes to. */
    @Test
    @DisplayName("leaves what is right at its limit")
    void left() {
        assertEquals(Optional.empty(), right(Factor.WATER, stuff(0.501, 400)));
        assertTrue(right(Factor.WATER, stuff(0.499, 400)).isPresent());
        assertEquals(Optional.empty(), right(Factor.AIR, stuff(0.619, 599)));
        assertTrue(right(Factor.AIR, stuff(0.621, 599)).isPresent());
        assertTrue(right(Factor.AIR, stuff(0.619, 601)).isPresent());
        Matter two = Matter.of(2, 599, 0.60, 0.25, 0.40, 0.25, 30, 5);
        assertEquals(Optional.empty(), right(Factor.AIR, two), "1,198 kg of two cubic metres");
        assertEquals(Optional.empty(), right(Factor.PIECES, GOOD));
        assertTrue(right(Factor.PIECES, GOOD.withPieces(5.1)).isPresent());
        assertEquals(Optional.empty(), right(Factor.ACID, GOOD));
        assertTrue(right(Factor.ACID, GOOD.withAcid(0.11)).isPresent());
    }

    @ParameterizedTest
    @CsvSource({"WATER, 0.49, 0.57", "WATER, 0.57, 0.49", "AIR, 0.57, 0.63"})
    @DisplayName("keeps water right in each week in which it goes wrong, the middle as much as the whole")
    void kept(Factor factor, double core, double mean) {
        Setup kept = right(factor, told(GOOD), SOUND.damp(core, mean)).orElseThrow();
        assertEquals(
                List.of(7, 14, 21, 28),
                kept.marks().stream().map(StateMark::day).toList());
        assertTrue(kept.marks().stream().allMatch(m -> m.moisture().orElseThrow() == 0.57));
        assertEquals(GOOD, kept.start().matter(), "it was right at first");
    }

    @Test
    @DisplayName("keeps water and acid as they are where they stay right")
    void notKept() {
        assertEquals(Optional.empty(), right(Factor.WATER, told(GOOD), SOUND.damp(0.50, 0.50)));
        assertEquals(Optional.empty(), right(Factor.AIR, told(GOOD), SOUND.damp(0.62, 0.62)));
        assertEquals(Optional.empty(), right(Factor.ACID, told(GOOD), SOUND.acid(6.5)));
        Setup sweet = right(Factor.ACID, told(GOOD), SOUND.acid(6.4)).orElseThrow();
        assertEquals(4, sweet.marks().size());
        assertTrue(sweet.marks().stream().allMatch(m -> m.acidIndex().orElseThrow() == 0.1));
        assertEquals(0.1, sweet.start().matter().acidIndex());
        Course day14 = Courses.of(day -> (day == 14 ? SOUND.acid(6) : SOUND).on(day, 20, 12));
        assertEquals(
                List.of(14),
                new Correction(told(GOOD), day14)
                        .of(Factor.ACID).orElseThrow().marks().stream()
                                .map(StateMark::day)
                                .toList());
    }

    private static StateMark water(int day, double share) {
        return new StateMark(day, OptionalDouble.of(share), OptionalDouble.empty());
    }

    private static StateMark acid(int day, double index) {
        return new StateMark(day, OptionalDouble.empty(), OptionalDouble.of(index));
    }

    @Test
    @DisplayName("puts right what was measured or noticed on a day, and leaves what was right")
    void marks() {
        StateMark dry = water(2, 0.3);
        StateMark wet = water(4, 0.7);
        StateMark sour = acid(6, 0.5);
        StateMark mild = acid(8, 0.1);
        StateMark foul = StateMark.noticed(9, new Bounds(0.4, 0.9, 0.3, false));
        StateMark size = StateMark.size(10, 0.8);
        Setup told = told(GOOD, dry, wet, sour, mild, foul, size);
        assertEquals(
                List.of(water(2, 0.57), wet, sour, mild, foul, size),
                right(Factor.WATER, told, SOUND).orElseThrow().marks());
        StateMark aired = StateMark.noticed(9, new Bounds(0.4, 0.9, 1, false));
        assertEquals(
                List.of(dry, water(4, 0.57), sour, mild, aired, size),
                right(Factor.AIR, told, SOUND).orElseThrow().marks());
        assertEquals(
                List.of(dry, wet, acid(6, 0.1), mild, foul, size),
                right(Factor.ACID, told, SOUND).orElseThrow().marks());
        for (StateMark one : List.of(size, mild, water(3, 0.57))) {
            for (Factor factor : List.of(Factor.WATER, Factor.AIR, Factor.ACID)) {
                assertEquals(Optional.empty(), right(factor, told(GOOD, one), SOUND), factor + " " + one);
            }
        }
        for (StateMark one : List.of(wet, foul)) {
            assertTrue(right(Factor.AIR, told(GOOD, one), SOUND).isPresent());
        }
    }

    @Test
    @DisplayName(
            "takes away with the want of air what soured for it, not what the recipe brought or what soured in air")
    void soured() {
        StateMark sour = acid(6, 0.5);
        StateMark gone = new StateMark(6, OptionalDouble.empty(), OptionalDouble.empty());
        StateMark asMixed = acid(7, 0.1);
        Setup told = told(GOOD, StateMark.noticed(6, Bounds.reach(0.3)), sour, asMixed);
        List<StateMark> aired = right(Factor.AIR, told, SOUND).orElseThrow().marks();
        assertEquals(List.of(gone, asMixed), aired.subList(1, 3));
        Setup later = told(GOOD, sour, StateMark.noticed(7, Bounds.reach(0.3)));
        assertEquals(sour, right(Factor.AIR, later, SOUND).orElseThrow().marks().get(0));
        Correction own = new Correction(told, always(SOUND));
        Setup elsewhere = told(GOOD, sour, StateMark.noticed(9, Bounds.reach(0.3)));
        assertEquals(
                gone,
                own.on(elsewhere, always(SOUND))
                        .of(Factor.AIR)
                        .orElseThrow()
                        .marks()
                        .get(0),
                "it soured where it stands");
    }

    @Test
    @DisplayName("is there from the first of the days that count")
    void since() {
        Course wet = Courses.of(day -> (day < 3 || day == 5 ? SOUND : SOUND.damp(0.7, 0.7)).on(day, 20, 12));
        Correction right = new Correction(told(GOOD), wet);
        assertEquals(3, right.since(Factor.AIR, 0, DAYS - 1));
        assertEquals(6, right.since(Factor.AIR, 5, DAYS - 1));
        assertEquals(2, right.since(Factor.AIR, 1, 2), "the last at the latest");
    }

    @Test
    @DisplayName("lets a soaked or dense pile rise from the size that was measured")
    void risen() {
        StateMark size = StateMark.size(10, 0.8);
        for (Matter amiss : List.of(stuff(0.70, 500), stuff(0.60, 700))) {
            assertEquals(
                    List.of(),
                    right(Factor.AIR, told(amiss, size), SOUND).orElseThrow().marks());
        }
        Matter soaked = stuff(0.70, 550);
        assertEquals(
                soaked.volumeM3(),
                right(Factor.AIR, soaked).orElseThrow().start().matter().volumeM3(),
                "385 kg are not dense once drier");
    }

    @Test
    @DisplayName("is food up to 25 % that goes quickly and 40 % that goes slowly, never less than there was")
    void food() {
        Matter quick = Matter.of(1, 500, 0.57, 0.50, 0.10, 0.30, 30, 5);
        Matter richer = right(Factor.FOOD, quick).orElseThrow().start().matter();
        assertEquals(List.of(0.50, 0.40), List.of(richer.quickShare(), richer.slowShare()));
        Matter slow = Matter.of(1, 500, 0.57, 0.10, 0.60, 0.20, 30, 5);
        richer = right(Factor.FOOD, slow).orElseThrow().start().matter();
        assertEquals(List.of(0.25, 0.60), List.of(richer.quickShare(), richer.slowShare()));
        Matter much = Matter.of(1, 500, 0.57, 0.70, 0.10, 0.10, 30, 5);
        richer = right(Factor.FOOD, much).orElseThrow().start().matter();
        assertEquals(0.70, richer.quickShare());
        assertEquals(0.30, richer.slowShare(), 1e-9);
        assertEquals(Optional.empty(), right(Factor.FOOD, Matter.of(1, 500, 0.57, 0.25, 0.40, 0.25, 30, 5)));
    }

    @Test
    @DisplayName("is a cubic metre, counted from the most that there ever was of it, as measured sizes grow with it")
    void size() {
        Matter half = Matter.of(0.5, 500, 0.57, 0.25, 0.40, 0.25, 30, 5);
        Course grown = Courses.of(day -> SOUND.dense(400, day < 5 ? 0.5 : 0.8).on(day, 20, 12));
        Setup larger = new Correction(told(half, StateMark.size(3, 0.4), water(4, 0.5)), grown)
                .of(Factor.SIZE)
                .orElseThrow();
        assertEquals(0.625, larger.start().matter().volumeM3(), 1e-9);
        assertEquals(0.5, larger.marks().get(0).volumeM3().orElseThrow(), 1e-9);
        assertEquals(water(4, 0.5), larger.marks().get(1));
        assertEquals(Optional.empty(), new Correction(told(half), always(SOUND)).of(Factor.SIZE), "it grew to one");
    }
}
