package heapwright.process.heat;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is known of the whole pile at the start of a day, against what the model has come to.
 *
 * @param day day of the run, 0 or more
 * @param moisture water as a share of wet mass, above 0 and below 0.95
 * @param acidIndex acid index of the whole pile, 0–1
 * @param volumeM3 volume as it lies, m³, above 0
 * @param bounds what nose, hand and eye say
 */
public record StateMark(
        int day, OptionalDouble moisture, OptionalDouble acidIndex, OptionalDouble volumeM3, Optional<Bounds> bounds) {
    /** Nothing lies denser, kg/m³: soaked peelings without any gaps. */
    private static final double DENSEST_KG_M3 = 950;

    private static final double SOAKED = 0.66;
    private static final double SOAKED_KG_M3 = 664;
    private static final double SOAKED_SLOPE = 203 / 0.07;
    private static final double COARSE_CM = 4;

    public StateMark {
        Checks.within("day", day, 0, 3650);
        moisture.ifPresent(m -> Checks.within("moisture", m, 0.01, 0.95));
        acidIndex.ifPresent(a -> Checks.within("acidIndex", a, 0, 1));
        volumeM3.ifPresent(v -> Checks.above("volumeM3", v, 0));
    }

    /** Of figures alone. */
    public StateMark(int day, OptionalDouble moisture, OptionalDouble acidIndex, OptionalDouble volumeM3) {
        this(day, moisture, acidIndex, volumeM3, Optional.empty());
    }

    /** Of water and acid. */
    public StateMark(int day, OptionalDouble moisture, OptionalDouble acidIndex) {
        this(day, moisture, acidIndex, OptionalDouble.empty());
    }

    /** Of bounds alone. */
    public static StateMark noticed(int day, Bounds bounds) {
        return new StateMark(
                day, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), Optional.of(bounds));
    }

    /** Of the size alone, m³. */
    public static StateMark size(int day, double volumeM3) {
        return new StateMark(day, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.of(volumeM3));
    }

    /** Sets the pile to what is known; the shells keep their temperatures and their order of damp and dry. */
    void apply(Shells s, Tally tally, Constants c) {
        moisture.ifPresent(m -> dampen(s, tally, m));
        acidIndex.ifPresent(a -> Arrays.fill(s.acid, a));
        volumeM3.ifPresent(v -> settle(s, v));
        bounds.ifPresent(b -> {
            double water = Shells.sum(s.water);
            double now = water / (water + Tally.dry(s));
            if (b.nearest(now) != now) {
                dampen(s, tally, b.nearest(now));
            }
            for (int i = 0; i < s.n; i++) {
                s.reach[i] = Math.min(s.reach[i], b.mostReach());
            }
            if (b.spent()) {
                Bounds.rotDown(s, c);
            }
        });
    }

    private static void dampen(Shells s, Tally tally, double m) {
        slump(s, m);
        double water = Shells.sum(s.water);
        double wanted = Tally.dry(s) * m / (1 - m);
        for (int i = 0; i < s.n; i++) {
            double before = s.water[i];
            s.water[i] = water > 0 ? before * wanted / water : wanted / s.n;
            double heat = s.heat[i] + (s.water[i] - before) * heatPerKg(s, i);
            tally.waterBrought += s.water[i] - before;
            tally.heatBrought += heat - s.heat[i];
            s.heat[i] = heat;
        }
    }

    /** Puts back what has settled below a size. */
    static void keepUp(Shells s, double leastM3) {
        if (Shells.sum(s.volume) < leastM3) {
            settle(s, leastM3);
        }
    }

    /** Sets the size; what had still to settle is the less by what has settled already. */
    private static void settle(Shells s, double wanted) {
        double before = Shells.sum(s.volume);
        double now = Math.max(wanted, (Tally.dry(s) + Shells.sum(s.water)) / DENSEST_KG_M3);
        s.loose = Math.max(0, Math.min(s.loose, (1 + s.loose) * now / before - 1));
        for (int i = 0; i < s.n; i++) {
            s.volume[i] *= now / before;
        }
        s.derive();
    }

    /**
     * Soaked soft stuff slumps: 664 kg/m³ at 66 % water, 867 at 73 %; coarse pieces hold it up.
     */
    private static void slump(Shells s, double m) {
        double volume = Shells.sum(s.volume);
        double wanted = Tally.dry(s) / (1 - m) / (SOAKED_KG_M3 + SOAKED_SLOPE * (m - SOAKED));
        if (m < SOAKED || s.pieceCm > COARSE_CM || wanted >= volume) {
            return;
        }
        for (int i = 0; i < s.n; i++) {
            s.volume[i] *= wanted / volume;
        }
    }

    private static double heatPerKg(Shells s, int i) {
        double liquid = Math.max(0, s.temperature[i]) * Shells.WATER_J_K;
        return s.ice[i] > 0
                ? -s.ice[i] * Shells.MELT_J + Math.min(0, Shells.heatAt(s.temperature[i], 0, 1) + Shells.MELT_J)
                : liquid;
    }
}
