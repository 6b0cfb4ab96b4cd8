package heapwright.process.heat;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Shares are those that docs/method/heat.md states; heat of water 4190 J/kg·K and of melting 333.7 kJ/kg are physics. */
@DisplayName("What events and the sky do to the shells")
class HandlingTest {

    private static final int N = 8;
    private static final int HALF = N / 2;
    private static final double SEED = 0.02;
    private static final Outdoors MILD = Outdoors.of(5, 8);

    private Shells s;
    private Tally tally;

    @BeforeEach
    void hotInsideColdOutside() {
        Matter m = Matter.of(1.3, 400, 0.55, 0.25, 0.40, 0.25, 30, 4).withAcid(0.2);
        s = new Shells(new PileState(1.5, 0.8, m, 60, 10, Envelope.bare()), N, Fixtures.seeded(SEED));
        for (int i = 0; i < N; i++) {
            s.mesophiles[i] = 0.9 - 0.1 * i;
            s.thermophiles[i] = 0.2 + 0.1 * i;
            s.acid[i] = 0.1 + 0.05 * i;
            s.reach[i] = 0.3 + 0.05 * i;
            s.oxygen[i] = 3 + i;
        }
        tally = new Tally(s);
    }

    private void apply(Event event) {
        Handling.apply(event, s, tally, MILD, Fixtures.seeded(SEED));
    }

    private static double sum(double[] all) {
        return IntStream.range(0, all.length).mapToDouble(i -> all[i]).sum();
    }

    private void balanced(double water, double heat, double nitrogen) {
        Ledger l = tally.close(s);
        assertEquals(
                l.waterStart() + l.waterBrought() - l.waterVapour() - l.waterDrained(), l.waterEnd(), 1e-9 * water);
        assertEquals(l.heatStart() + l.heatBrought(), l.heatEnd(), 1e-9 * heat);
        assertEquals(l.dryStart() + l.dryBrought(), l.dryEnd(), 1e-9 * l.dryStart());
        assertEquals(l.nitrogenStart() + l.nitrogenBrought() - l.nitrogenDrained(), l.nitrogenEnd(), 1e-9 * nitrogen);
    }

    private void balanced() {
        balanced(sum(s.water), 1e8, 10);
    }

    /** Temperatures are those of the heat held. */
    private void derived() {
        double[] told = s.temperature.clone();
        double[] ice = s.ice.clone();
        s.derive();
        assertArrayEquals(s.temperature, told, 1e-12);
        assertArrayEquals(s.ice, ice, 1e-12);
    }

    @Test
    @DisplayName("turning makes everything the same throughout")
    void turned() {
        double acid = 0;
        for (int i = 0; i < N; i++) {
            acid += s.acid[i] * s.volume[i] / sum(s.volume);
        }
        double quick = sum(s.quick);
        double ammonium = sum(s.ammonium);
        apply(new Event.Turn(0));
        for (int i = 1; i < N; i++) {
            assertEquals(s.temperature[0], s.temperature[i], 1e-9);
            assertEquals(s.quick[0] / s.volume[0], s.quick[i] / s.volume[i], 1e-9);
            assertEquals(s.mesophiles[0], s.mesophiles[i], 1e-12);
            assertEquals(s.thermophiles[0], s.thermophiles[i], 1e-12);
            assertEquals(Air.OUTSIDE_OXYGEN, s.oxygen[i]);
        }
        assertEquals(acid, s.acid[0], 1e-12, "by volume");
        assertEquals(quick, sum(s.quick), 1e-9);
        assertEquals(ammonium, sum(s.ammonium), 1e-12);
        assertEquals(Air.OUTSIDE_OXYGEN, s.oxygen[0]);
        balanced();
        derived();
    }

    @Test
    @DisplayName(
            "turning loses 45 % of the warmth over outdoors, four fifths of it as steam, and fluffs up by an eighth")
    void turnedCold() {
        double capacity = Shells.liquidCapacity(sum(s.quick) + sum(s.slow) + sum(s.lignin) + sum(s.ash), sum(s.water));
        double mean = sum(s.heat) / capacity;
        double volume = sum(s.volume);
        double lost = 0.45 * (mean - MILD.airC()) * capacity;
        s.loose = 0.02;
        apply(new Event.Turn(0));
        assertEquals(-lost, tally.heatBrought, 1e-6 * lost);
        assertEquals(0.8 * lost / 2.501e6, tally.waterVapour, 1e-9 * tally.waterVapour);
        assertEquals(volume * 1.14 / 1.02, sum(s.volume), 1e-9);
        assertEquals(0.14, s.loose, 1e-12);
        apply(new Event.Turn(0));
        assertEquals(0.15, s.loose, 1e-12, "no looser than this");
    }

    @Test
    @DisplayName("turning evens out what lies within reach, and brings half of the rest there")
    void turnedIntoReach() {
        double mean = 0;
        for (int i = 0; i < N; i++) {
            mean += s.reach[i] * s.volume[i] / sum(s.volume);
        }
        apply(new Event.Turn(0));
        for (int i = 0; i < N; i++) {
            assertEquals(mean + 0.5 * (1 - mean), s.reach[i], 1e-12);
        }
    }

    @Test
    @DisplayName("a pile colder than outdoors, or frozen, gains and loses nothing by being turned")
    void turnedFrozen() {
        s = new Shells(
                PileState.cube(Matter.of(1, 400, 0.55, 0.25, 0.40, 0.25, 30, 4), -5, Envelope.bare()),
                N,
                Fixtures.seeded(SEED));
        tally = new Tally(s);
        Handling.apply(new Event.Turn(0), s, tally, Outdoors.of(-20, 0), Fixtures.seeded(SEED));
        assertEquals(0, tally.heatBrought, 1e-9);
        assertEquals(0, tally.waterVapour);
        Handling.apply(new Event.Turn(0), s, tally, Outdoors.of(10, 8), Fixtures.seeded(SEED));
        assertEquals(0, tally.heatBrought, 1e-9);
    }

    @Test
    @DisplayName("loosening leaves the core as it is and loses 15 % of the warmth of the outer half")
    void loosened() {
        Shells before = new Shells(s);
        s.loose = 0.04;
        apply(new Event.Loosen(0));
        for (int i = 0; i < HALF; i++) {
            assertEquals(before.heat[i], s.heat[i]);
            assertEquals(before.oxygen[i], s.oxygen[i]);
            assertEquals(before.volume[i], s.volume[i]);
            assertEquals(before.reach[i], s.reach[i]);
        }
        double reached = 0;
        double whole = 0;
        for (int i = HALF; i < N; i++) {
            reached += before.reach[i] * before.volume[i];
            whole += before.volume[i];
        }
        assertEquals(1 - 0.85 * (1 - reached / whole), s.reach[N - 1], 1e-12, "0.3 of what a turn would open");
        double outer = 0;
        double excess = 0;
        for (int i = HALF; i < N; i++) {
            outer += before.heat[i];
            double capacity = Shells.liquidCapacity(before.dry(i), before.water[i]);
            excess += (before.temperature[i] - MILD.airC()) * capacity;
            assertEquals(s.temperature[N - 1], s.temperature[i], 1e-9);
        }
        assertEquals(-0.15 * excess, tally.heatBrought, 1e-6 * excess);
        assertEquals(0.065, s.loose, 1e-12, "half of what the outer half gained");
        assertTrue(outer > 0);
        balanced();
        derived();
    }

    @Test
    @DisplayName("water poured on is all there, with its warmth, by volume")
    void watered() {
        Shells before = new Shells(s);
        apply(new Event.Water(0, 40, 25));
        assertEquals(40, tally.waterBrought);
        assertEquals(40 * 4190 * 25.0, tally.heatBrought, 1e-6);
        for (int i = 0; i < N; i++) {
            assertEquals(40 * before.volume[i] / sum(before.volume), s.water[i] - before.water[i], 1e-9);
        }
        balanced();
        derived();
    }

    @Test
    @DisplayName("a feed brings nitrogen as ammonium in its water")
    void fed() {
        double ammonium = sum(s.ammonium);
        double water = sum(s.water);
        apply(new Event.Feed(0, 0.5, 20, 10));
        assertEquals(0.5, sum(s.ammonium) - ammonium, 1e-12);
        assertEquals(20, sum(s.water) - water, 1e-9);
        assertEquals(0.5, tally.nitrogenBrought);
        assertEquals(20 * 4190 * 10.0, tally.heatBrought, 1e-6);
        balanced();
        derived();
    }

    @Test
    @DisplayName("snow mixed in takes the heat of its melting")
    void snowIn() {
        apply(new Event.SnowIn(0, 10, -4));
        assertEquals(10, tally.waterBrought);
        assertEquals(-10 * (333_700 + 4 * 2100.0), tally.heatBrought, 1);
        balanced();
        derived();
    }

    @Test
    @DisplayName("a cover is the cover from then on and changes nothing else")
    void covered() {
        Envelope straw = Envelope.bare().topped(Layer.straw(0.2));
        apply(new Event.Cover(0, straw));
        assertEquals(straw, s.envelope);
        balanced();
        assertEquals(0, tally.heatBrought);
    }

    @Test
    @DisplayName("what is laid on lies in the outer half, with its own acid, pieces and few microbes")
    void laidOn() {
        Shells before = new Shells(s);
        Matter m = Matter.of(0.3, 500, 0.70, 0.4, 0.3, 0.1, 15, 1).withAcid(0.8);
        apply(new Event.Add(0, m, 15, false));
        double outer = 0;
        double dry = 0;
        for (int i = 0; i < N; i++) {
            outer += i < HALF ? 0 : before.volume[i];
            dry += before.dry(i);
        }
        for (int i = 0; i < HALF; i++) {
            assertEquals(before.heat[i], s.heat[i]);
            assertEquals(before.quick[i], s.quick[i]);
            assertEquals(before.acid[i], s.acid[i]);
        }
        for (int i = HALF; i < N; i++) {
            double part = before.volume[i] / outer;
            double own = before.dry(i);
            double more = m.dryKg() * part;
            assertEquals(before.water[i] + m.waterKg() * part, s.water[i], 1e-9);
            assertEquals(before.volume[i] + 0.3 * part, s.volume[i], 1e-9);
            assertEquals((before.acid[i] * own + 0.8 * more) / (own + more), s.acid[i], 1e-12);
            assertEquals((before.mesophiles[i] * own + SEED * more) / (own + more), s.mesophiles[i], 1e-12);
            assertEquals((before.thermophiles[i] * own + SEED * more) / (own + more), s.thermophiles[i], 1e-12);
            double fresh = Fixtures.STANDARD.reach().fresh();
            assertEquals((before.reach[i] * own + fresh * more) / (own + more), s.reach[i], 1e-12);
        }
        assertEquals((4 * dry + m.dryKg()) / (dry + m.dryKg()), s.pieceCm, 1e-9, "by dry mass");
        assertEquals(15 * (1050 * m.dryKg() + 4190 * m.waterKg()), tally.heatBrought, 1e-6);
        assertEquals(m.dryKg(), tally.dryBrought);
        assertEquals(m.waterKg(), tally.waterBrought);
        assertEquals(m.nitrogenKg(), tally.nitrogenBrought);
        assertEquals(0.7 * m.dryKg(), tally.foodBrought, 1e-9);
        balanced();
        derived();
    }

    @Test
    @DisplayName("what is mixed in is everywhere")
    void mixedIn() {
        double volume = sum(s.volume);
        double loose = s.loose;
        Matter m = Matter.of(0.3, 500, 0.70, 0.4, 0.3, 0.1, 15, 1);
        apply(new Event.Add(0, m, 15, true));
        assertEquals(s.temperature[0], s.temperature[N - 1], 1e-9);
        assertEquals(s.water[0] / s.volume[0], s.water[N - 1] / s.volume[N - 1], 1e-9);
        assertEquals(volume + 0.3, sum(s.volume), 1e-9, "no fluff is added");
        assertEquals(loose, s.loose);
        balanced();
    }

    @Test
    @DisplayName("rain soaks into the outer half, as warm as the air")
    void rain() {
        Shells before = new Shells(s);
        s.envelope = Envelope.bare().topped(Layer.looseTarp());
        assertTrue(s.envelope.rainShare() < 0.9, "a tarp keeps rain off");
        Handling.sky(s, tally, MILD, 10);
        double litres = 10 * 1.2 * s.envelope.rainShare();
        assertEquals(litres, tally.waterBrought, 1e-9);
        assertEquals(litres * 4190 * 5, tally.heatBrought, 1e-6);
        assertEquals(before.water[HALF - 1], s.water[HALF - 1]);
        assertTrue(s.water[HALF] > before.water[HALF]);
        assertEquals(0, s.snow);
        balanced();
        derived();
    }

    @Test
    @DisplayName(
            "in frost it lies as snow and melts at 3 mm a day per kelvin above freezing, and from the warm skin below")
    void snow() {
        double skin = s.temperature[N - 1];
        assertTrue(skin > 5);
        Handling.sky(s, tally, Outdoors.of(-1, 2), 100);
        assertEquals(100 - 0.7 * skin, s.snow, 1e-9);
        double lying = s.snow;
        double warm = s.temperature[N - 1];
        Handling.sky(s, tally, Outdoors.of(4, 2), 0);
        assertEquals(3 * 4 + 0.7 * warm, lying - s.snow, 1e-9);
        assertEquals(1.2 * (100 - s.snow), tally.waterBrought, 1e-6, "melt water runs in");
        assertEquals(0, tally.heatBrought, 1e-9, "at 0 °C");
        balanced();
        derived();
        Handling.sky(s, tally, Outdoors.of(40, 2), 0);
        assertEquals(0, s.snow, 1e-12, "no more than lies there");
    }

    @ParameterizedTest
    @CsvSource({"-0.1, true", "0, false", "0.1, false"})
    @DisplayName("at 0 °C it rains")
    void edge(double air, boolean lies) {
        Handling.sky(s, tally, Outdoors.of(air, 2), 100);
        assertEquals(lies, s.snow > 0);
    }

    @Test
    @DisplayName("water beyond 3.3 kg per kg of dry matter runs off, with its heat and ammonium")
    void drained() {
        for (int i = 0; i < N; i++) {
            s.volume[i] *= 3;
        }
        double more = 3.3 * s.dry(2) + 5 - s.water[2];
        s.water[2] += more;
        s.heat[2] = 30 * Shells.liquidCapacity(s.dry(2), s.water[2]);
        s.ammonium[2] = 0.1;
        s.derive();
        tally = new Tally(s);
        double water = s.water[2];
        double other = s.water[3];
        Handling.drain(s, tally);
        assertEquals(5, tally.waterDrained, 1e-9);
        assertEquals(3.3 * s.dry(2), s.water[2], 1e-9);
        assertEquals(0.1 * 5 / water, tally.nitrogenDrained, 1e-12);
        assertEquals(-5 * 4190 * 30.0, tally.heatBrought, 1e-6);
        assertEquals(30, s.temperature[2], 1e-9, "what runs off is as warm as the rest");
        assertEquals(other, s.water[3], "nothing runs from where there is room");
        balanced();
        derived();
    }

    @Test
    @DisplayName("water that finds no room between the solids runs off too, but no ice")
    void noRoom() {
        double solids = s.organic(1) / 1600 + s.ash[1] / 2500;
        s.volume[1] = (s.water[1] / 1000 + solids) / 0.97 * 0.9;
        double room = 1000 * (0.97 * s.volume[1] - solids);
        tally = new Tally(s);
        double off = s.water[1] - room;
        assertTrue(off > 0);
        Handling.drain(s, tally);
        assertEquals(off, tally.waterDrained, 1e-9);
        double held = s.water[1];
        s.volume[1] *= 0.8;
        s.heat[1] = Shells.heatAt(-3, s.dry(1), s.water[1]);
        s.derive();
        Handling.drain(s, tally);
        assertEquals(held, s.water[1], "ice stays");
    }
}
