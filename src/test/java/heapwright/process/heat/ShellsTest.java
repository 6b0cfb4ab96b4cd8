package heapwright.process.heat;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A pile cut into shells, and the heat in them. */
class ShellsTest {

    private static final Matter MATTER = new Matter(200, 300, 0.25, 0.40, 0.25, 4, 1, 1.2, 3, 0.3);

    private static Shells shells(double coreC, double skinC, int n) {
        return new Shells(new PileState(1.1, 1.3, MATTER, coreC, skinC, Envelope.slatted()), n, Fixtures.seeded(0.3));
    }

    @Test
    void theShellsHoldWhatThePileHolds() {
        Shells s = shells(20, 20, 6);
        assertEquals(300, Shells.sum(s.water), 1e-9);
        assertEquals(50, Shells.sum(s.quick), 1e-9);
        assertEquals(80, Shells.sum(s.slow), 1e-9);
        assertEquals(50, Shells.sum(s.lignin), 1e-9);
        assertEquals(20, Shells.sum(s.ash), 1e-9);
        assertEquals(1.2, Shells.sum(s.volume), 1e-12);
        assertEquals(1, Shells.sum(s.ammonium), 1e-12);
        assertEquals(3, Shells.sum(s.nitrogenFood) + Shells.sum(s.nitrogenHumus), 1e-12);
        assertEquals(3, s.pieceCm);
        assertEquals(1.1, s.length);
        assertEquals(1.3, s.width);
        for (int i = 0; i < 6; i++) {
            double share = (Math.pow(i + 1, 1.8) - Math.pow(i, 1.8)) / Math.pow(6, 1.8);
            assertEquals(1.2 * share, s.volume[i], 1e-12, "shell " + i);
            assertEquals(180 * share, s.organic(i), 1e-9);
            assertEquals(200 * share, s.dry(i), 1e-9);
            assertEquals(4 * share, s.nitrogen(i), 1e-12);
            assertEquals(0.3, s.acid[i]);
            assertEquals(0.3, s.mesophiles[i]);
            assertEquals(0.3, s.thermophiles[i]);
        }
    }

    /** A kilogram of lignin-rich matter holds three tenths of the nitrogen of a kilogram of food (docs/method/heat.md). */
    @Test
    void nitrogenGoesWithTheFoodMoreThanWithTheWood() {
        Shells s = shells(20, 20, 6);
        double food = Shells.sum(s.nitrogenFood) / 130;
        double wood = Shells.sum(s.nitrogenHumus) / 50;
        assertEquals(0.3, wood / food, 1e-9);
        Shells ash = new Shells(
                PileState.cube(new Matter(100, 50, 0, 0, 0, 1, 0, 1, 3, 0), 10, Envelope.bare()),
                4,
                Fixtures.seeded(0.3));
        assertEquals(0, Shells.sum(ash.nitrogenFood));
        assertEquals(1, Shells.sum(ash.nitrogenHumus), 1e-12);
    }

    @Test
    void whatIsAddedIsAddedByItsShare() {
        Shells s = shells(20, 20, 4);
        double water = s.water[2];
        double ammonium = s.ammonium[2];
        double humus = s.nitrogenHumus[2];
        double food = s.nitrogenFood[2];
        double[] dry = {s.quick[2], s.slow[2], s.lignin[2], s.ash[2], s.volume[2]};
        s.add(2, MATTER, 0.1);
        assertEquals(water + 30, s.water[2], 1e-9);
        assertEquals(ammonium + 0.1, s.ammonium[2], 1e-12);
        assertEquals(food + 0.3 * 130 / 145, s.nitrogenFood[2], 1e-12);
        assertEquals(humus + 0.3 * 15 / 145, s.nitrogenHumus[2], 1e-12);
        assertArrayEquals(
                new double[] {dry[0] + 5, dry[1] + 8, dry[2] + 5, dry[3] + 2, dry[4] + 0.12},
                new double[] {s.quick[2], s.slow[2], s.lignin[2], s.ash[2], s.volume[2]},
                1e-9);
    }

    /** From core to skin the temperature falls with the square of the way out, which is as the cube root of the volume. */
    @Test
    void betweenCoreAndSkinItFallsWithTheSquareOfTheWayOut() {
        int n = 8;
        Shells s = shells(50, 10, n);
        assertEquals(10, s.temperature[n - 1], 1e-9);
        for (int i = 0; i < n; i++) {
            double out = Math.pow((i + 0.5) / n, 0.6) / Math.pow((n - 0.5) / n, 0.6);
            assertEquals(50 - 40 * out * out, s.temperature[i], 1e-9, "shell " + i);
        }
    }

    /** 200 kg of dry matter at 1,050 and 300 kg of water at 4,190, ice at 2,100 J/kg·K; 333.7 kJ melt a kilogram. */
    @ParameterizedTest
    @CsvSource({"14670000, 10, 0", "0, 0, 0", "-50055000, 0, 0.5", "-100110000, 0, 1", "-108510000, -10, 1"})
    void heatTellsTemperatureAndIce(double heat, double celsius, double ice) {
        Shells s = shells(20, 20, 4);
        for (int i = 0; i < 4; i++) {
            s.heat[i] = heat * s.water[i] / 300;
        }
        s.derive();
        for (int i = 0; i < 4; i++) {
            assertEquals(celsius, s.temperature[i], 1e-9);
            assertEquals(ice, s.ice[i], 1e-9);
        }
        double liquid = 1 / Shells.liquidCapacity(200, 300);
        double frozen = 1 / Shells.frozenCapacity(200, 300);
        assertEquals(celsius, Shells.temperatureOf(heat, liquid, 300 * Shells.MELT_J, frozen), 1e-9);
        double slope = heat >= 0 ? liquid : ice < 1 ? 0 : frozen;
        if (heat != -300 * Shells.MELT_J) {
            assertEquals(slope, Shells.slopeOf(heat, liquid, 300 * Shells.MELT_J, frozen), 1e-18);
        }
    }

    @Test
    void heatOfATemperatureIsThatHeat() {
        assertEquals(14_670_000, Shells.heatAt(10, 200, 300), 1e-3);
        assertEquals(0, Shells.heatAt(0, 200, 300));
        assertEquals(-8_400_000 - 300 * Shells.MELT_J, Shells.heatAt(-10, 200, 300), 1e-3);
    }

    /** A copy with every figure another. */
    private static Shells distinct() {
        Shells s = shells(50, 10, 4);
        double next = 1;
        for (double[] quantity : s.quantities()) {
            for (int i = 0; i < 4; i++) {
                quantity[i] = next++;
            }
        }
        for (int i = 0; i < 4; i++) {
            s.oxygen[i] = next++;
            s.temperature[i] = next++;
            s.ice[i] = next++;
        }
        s.loose = next++;
        s.pieceCm = next++;
        s.snow = next;
        s.envelope = Envelope.bare();
        return s;
    }

    private static void same(Shells one, Shells other) {
        assertEquals(one.n, other.n);
        assertEquals(Arrays.deepToString(one.quantities()), Arrays.deepToString(other.quantities()));
        assertArrayEquals(one.oxygen, other.oxygen);
        assertArrayEquals(one.temperature, other.temperature);
        assertArrayEquals(one.ice, other.ice);
        assertEquals(one.loose, other.loose);
        assertEquals(one.pieceCm, other.pieceCm);
        assertEquals(one.snow, other.snow);
        assertEquals(one.envelope, other.envelope);
        assertEquals(one.length, other.length);
        assertEquals(one.width, other.width);
    }

    @Test
    void aCopyIsTheSameAndItsOwn() {
        Shells s = distinct();
        Shells copy = new Shells(s);
        same(s, copy);
        assertNotSame(s.heat, copy.heat);
        copy.heat[0] += 1;
        copy.copy(s);
        same(s, copy);
    }

    @Test
    void theStateOfAnIntegratorGoesThereAndBack() {
        Shells s = distinct();
        double[] y = new double[Shells.QUANTITIES * 4 + 1];
        s.copyTo(y);
        assertEquals(1, y[0]);
        assertEquals(s.loose, y[y.length - 1]);
        Shells other = shells(20, 20, 4);
        other.copyFrom(y);
        assertEquals(Arrays.deepToString(s.quantities()), Arrays.deepToString(other.quantities()));
        assertEquals(s.loose, other.loose);
        for (int i = 0; i < 4; i++) {
            assertEquals(
                    other.heat[i] / Shells.liquidCapacity(other.dry(i), other.water[i]), other.temperature[i], 1e-12);
        }
    }
}
