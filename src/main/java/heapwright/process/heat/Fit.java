package heapwright.process.heat;

import java.util.List;

/**
 * How a run is made to meet a measured core temperature: between two measurements the decay rate is multiplied by the
 * bias that brings the core nearest to the later one. Where no rate does, the loss of heat is looked at too
 * ({@link Search}). What still misses is then added to the shells' temperatures, all of it at the core, less further out.
 * One is for one run and one thread.
 */
final class Fit {
    /** Of the shift at the core this part is missing at the skin (judgement). */
    private static final double FADES = 0.8;
    /** A shift smaller than this is left alone, K. */
    private static final double LEAST_K = 0.05;

    /**
     * From one reading to the next that follows within so many days, neither of them above so many °C, neither food nor
     * water runs out and nothing overheats, so that a faster rate never ends in a colder core (judgement).
     */
    private static final int STEADY_DAYS = 2;

    private static final double STEADY_C = 40;

    /** Over fewer days than this, a slow loss and a fast decay look the same (judgement). */
    private static final int TELLING_DAYS = 2;

    private final Run fork;

    Fit(Run run) {
        fork = new Run(run);
    }

    /**
     * The rate and the loss of heat with which a run, lived on to the day of a reading, comes nearest to it.
     *
     * @param between what becomes known of the pile on the way, by day
     */
    Search.Match match(Run from, CoreReading reading, List<StateMark> between) {
        Search search = search(from, reading, between);
        Search.Match rate = search.rate(from.lossTimes, steady(from, reading));
        return reading.day() - from.day < TELLING_DAYS ? rate : search.loss(rate, reading.celsius() < STEADY_C);
    }

    /** Whether a faster rate never ends in a colder core. */
    static boolean steady(Run from, CoreReading reading) {
        return reading.day() - from.day < STEADY_DAYS && Math.max(reading.celsius(), from.s.temperature[0]) < STEADY_C;
    }

    /** Among ways from a run to the day of a reading. */
    Search search(Run from, CoreReading reading, List<StateMark> between) {
        return new Search((rate, loss) -> {
            fork.goOnFrom(from);
            fork.rateTimes = rate;
            fork.lossTimes = loss;
            fork.liveOn(reading.day() + 1, between, day -> {});
            return fork.s.temperature[0] - reading.celsius();
        });
    }

    /** Moves the temperatures of a run so that its core is as measured. */
    static void nudge(Run run, double celsius) {
        Shells s = run.s;
        double shift = celsius - s.temperature[0];
        for (int i = 0; i < s.n; i++) {
            double part = shift * (1 - FADES * i / (s.n - 1));
            if (Math.abs(part) > LEAST_K) {
                double heat = Shells.heatAt(s.temperature[i] + part, s.dry(i), s.water[i]);
                run.tally.heatBrought += heat - s.heat[i];
                s.heat[i] = heat;
            }
        }
        s.derive();
    }
}
