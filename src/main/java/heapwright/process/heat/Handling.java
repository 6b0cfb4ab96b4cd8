package heapwright.process.heat;

/** What events and the sky do to the shells, in one go. Shares marked judgement are stated in docs/method/heat.md. */
final class Handling {
    /** Share of the excess of temperature lost while a pile is turned, and while its outside is loosened (judgement). */
    static final double TURN_LOSS = 0.45;

    private static final double LOOSEN_LOSS = 0.15;
    /** Part of the heat lost so that leaves as vapour: that of saturated air at 40 °C over air of 10 °C (derived). */
    private static final double STEAM_SHARE = 0.8;
    /** Volume gained by turning, of which all settles again (judgement). */
    private static final double FLUFF = 0.12;

    private static final double LOOSEN_FLUFF = 0.05;
    /** Loosening brings this much of what a turn would within reach (judgement). */
    private static final double LOOSEN_OPENS = 0.3;

    private static final double MOST_LOOSE = 0.15;
    /** Fresh water soaks in up to this much per kg of dry matter; more runs off (judgement, 77 % moisture). */
    private static final double SOAK = 3.3;
    /** Melt of lying snow, mm a day per kelvin above freezing: of the air, and of the skin below (judgement). */
    private static final double MELT_MM = 3;

    private static final double MELT_BELOW_MM = 0.7;

    private Handling() {}

    /** Whether a deed changes the warmth of the core at once. */
    static boolean reachesCore(Event event) {
        return event instanceof Event.Turn
                || event instanceof Event.Water
                || event instanceof Event.Feed
                || event instanceof Event.SnowIn
                || event instanceof Event.Add add && add.mixed();
    }

    /** Whether a deed makes a pile larger or looser. */
    static boolean changesSize(Event event) {
        return event instanceof Event.Add || event instanceof Event.Turn || event instanceof Event.Loosen;
    }

    static void apply(Event event, Shells s, Tally tally, Outdoors out, Constants c) {
        if (event instanceof Event.Turn) {
            mix(s, tally, 0, TURN_LOSS, FLUFF, c.reach().turned(), out);
        } else if (event instanceof Event.Loosen) {
            mix(
                    s,
                    tally,
                    s.n / 2,
                    LOOSEN_LOSS,
                    LOOSEN_FLUFF,
                    LOOSEN_OPENS * c.reach().turned(),
                    out);
        } else if (event instanceof Event.Water water) {
            pour(s, tally, 0, water.kg(), Shells.WATER_J_K * water.temperatureC());
        } else if (event instanceof Event.Feed feed) {
            pour(s, tally, 0, feed.waterKg(), Shells.WATER_J_K * feed.temperatureC());
            spread(s.ammonium, s.volume, 0, feed.nitrogenKg());
            tally.nitrogenBrought += feed.nitrogenKg();
        } else if (event instanceof Event.SnowIn snow) {
            pour(s, tally, 0, snow.kg(), Shells.heatAt(snow.temperatureC(), 0, 1));
        } else if (event instanceof Event.Cover cover) {
            s.envelope = cover.envelope();
        } else if (event instanceof Event.Add add) {
            lay(add, s, tally, out, c);
        }
        s.derive();
    }

    /** Mixes the shells from one outward: everything per volume becomes the same, air comes in, heat is lost. */
    private static void mix(Shells s, Tally tally, int from, double loss, double fluff, double opens, Outdoors out) {
        double loose = Math.max(s.loose, Math.min(MOST_LOOSE, s.loose + fluff));
        double whole = 0;
        for (int i = from; i < s.n; i++) {
            whole += s.volume[i];
        }
        for (double[] q : s.quantities()) {
            if (q != s.volume) {
                double sum = 0;
                for (int i = from; i < s.n; i++) {
                    sum += perVolume(q, s) ? q[i] * s.volume[i] : q[i];
                }
                for (int i = from; i < s.n; i++) {
                    q[i] = perVolume(q, s) ? sum / whole : sum * s.volume[i] / whole;
                }
            }
        }
        s.derive();
        for (int i = from; i < s.n; i++) {
            double lost = loss * (s.temperature[i] - out.airC()) * Shells.liquidCapacity(s.dry(i), s.water[i]);
            if (lost > 0 && s.temperature[i] > 0) {
                double steam = Math.min(0.5 * s.water[i], STEAM_SHARE * lost / Curves.VAPOUR_J);
                s.water[i] -= steam;
                tally.waterVapour += steam;
                s.heat[i] -= lost;
                tally.heatBrought -= lost;
            }
            s.volume[i] *= (1 + loose) / (1 + s.loose);
            s.oxygen[i] = Air.OUTSIDE_OXYGEN;
            s.reach[i] += opens * (1 - s.reach[i]);
        }
        s.loose = from == 0 ? loose : (s.loose + loose) / 2;
    }

    private static boolean perVolume(double[] q, Shells s) {
        return q == s.acid || q == s.mesophiles || q == s.thermophiles || q == s.reach;
    }

    private static void lay(Event.Add add, Shells s, Tally tally, Outdoors out, Constants c) {
        Matter m = add.matter();
        Vigour fresh = Vigour.fresh(c);
        int from = add.mixed() ? 0 : s.n / 2;
        double whole = 0;
        double dry = 0;
        for (int i = from; i < s.n; i++) {
            whole += s.volume[i];
        }
        for (int i = 0; i < s.n; i++) {
            dry += s.dry(i);
        }
        s.pieceCm = (s.pieceCm * dry + m.pieceCm() * m.dryKg()) / (dry + m.dryKg());
        double heat = Shells.heatAt(add.temperatureC(), m.dryKg(), m.waterKg());
        for (int i = from; i < s.n; i++) {
            double share = s.volume[i] / whole;
            double own = s.dry(i);
            s.add(i, m, share);
            s.acid[i] = (s.acid[i] * own + m.acidIndex() * m.dryKg() * share) / (own + m.dryKg() * share);
            double all = own + m.dryKg() * share;
            double more = m.dryKg() * share;
            s.mesophiles[i] = (s.mesophiles[i] * own + fresh.mesophiles() * more) / all;
            s.thermophiles[i] = (s.thermophiles[i] * own + fresh.thermophiles() * more) / all;
            s.reach[i] = (s.reach[i] * own + fresh.reach() * more) / all;
            s.heat[i] += heat * share;
        }
        tally.heatBrought += heat;
        tally.waterBrought += m.waterKg();
        tally.dryBrought += m.dryKg();
        tally.nitrogenBrought += m.nitrogenKg();
        tally.foodBrought += m.dryKg() * (m.quickShare() + m.slowShare());
        s.derive();
        if (add.mixed()) {
            mix(s, tally, 0, TURN_LOSS, 0, c.reach().turned(), out);
        }
    }

    private static void pour(Shells s, Tally tally, int from, double kg, double heatPerKg) {
        spread(s.water, s.volume, from, kg);
        spread(s.heat, s.volume, from, kg * heatPerKg);
        tally.waterBrought += kg;
        tally.heatBrought += kg * heatPerKg;
    }

    private static void spread(double[] to, double[] by, int from, double amount) {
        double whole = 0;
        for (int i = from; i < by.length; i++) {
            whole += by[i];
        }
        for (int i = from; i < by.length; i++) {
            to[i] += amount * by[i] / whole;
        }
    }

    /** Rain soaks into the outer half; snow lies on top and melts. */
    static void sky(Shells s, Tally tally, Outdoors out, double mm) {
        double area = s.length * s.width;
        double fallen = mm * s.envelope.rainShare();
        double rain = 0;
        if (out.airC() < 0) {
            s.snow += fallen;
        } else {
            rain = fallen;
        }
        if (s.snow > 0) {
            double skin = s.temperature[s.n - 1];
            double melt = Math.min(s.snow, MELT_MM * Math.max(0, out.airC()) + MELT_BELOW_MM * Math.max(0, skin));
            s.snow -= melt;
            pour(s, tally, s.n / 2, melt * area, 0);
        }
        if (rain > 0) {
            pour(s, tally, s.n / 2, rain * area, Shells.WATER_J_K * out.airC());
        }
        s.derive();
    }

    /** Water beyond what soaks in or finds room runs off, with its ammonium. */
    static void drain(Shells s, Tally tally) {
        boolean any = false;
        for (int i = 0; i < s.n; i++) {
            double dry = s.dry(i);
            double room = 1000 * (0.97 * s.volume[i] - s.organic(i) / 1600 - s.ash[i] / 2500);
            double most = Math.max(0, Math.min(SOAK * dry, room));
            double liquid = s.water[i] * (1 - s.ice[i]);
            double off = Math.min(liquid, s.water[i] - most);
            if (off > 0) {
                double share = off / s.water[i];
                s.water[i] -= off;
                double heat = off * Shells.WATER_J_K * s.temperature[i];
                s.heat[i] -= heat;
                double nitrogen = s.ammonium[i] * share;
                s.ammonium[i] -= nitrogen;
                tally.heatBrought -= heat;
                tally.waterDrained += off;
                tally.nitrogenDrained += nitrogen;
                any = true;
            }
        }
        if (any) {
            s.derive();
        }
    }
}
