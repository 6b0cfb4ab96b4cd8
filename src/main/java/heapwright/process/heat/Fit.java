package heapwright.process.heat;

import java.util.List;

/**
 * How a run is made to meet a measured core temperature: between two measurements the decay rate is multiplied by the
 * bias that brings the core nearest to the later one (searched on a grid, with a mild pull towards 1). Where no rate does,
 * the loss of heat is looked at too. What still misses is then added to the shells' temperatures, all of it at the core,
 * less further out. One is for one run and one thread.
 */
final class Fit {
    /** The rates tried besides that of the recipe, from it outwards, so that the search can end early. */
    private static final double[] SLOWER = {0.85, 0.7, 0.5, 0.3, 0.18, 0.1, 0.05, 0.02};

    private static final double[] FASTER = {1.2, 1.5, 2, 3};
    /**
     * A pull towards the recipe: a rate wrong by a factor e counts like a miss of this, K (judgement: a reading of one spot
     * and a model of this kind part by as much with nothing amiss).
     */
    private static final double PULL_K = 4;
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

    /** Where the rate alone comes as near as this, the loss of heat is left as it was, K (judgement). */
    private static final double GOOD_K = 8;
    /** Over fewer days than this, a slow loss and a fast decay look the same (judgement). */
    private static final int TELLING_DAYS = 2;
    /** The losses tried, times that which was learned before, and how far they may go in all (judgement). */
    private static final double[] SNUGGER = {0.8, 0.6, 0.4};

    private static final double[] OPENER = {1.3, 1.7, 2.5};
    private static final double LEAST_LOSS = 0.3;
    private static final double MOST_LOSS = 2.5;
    /** A pull towards what size and covers say, as {@link #PULL_K}, K (judgement). */
    private static final double PULL_LOSS_K = 4;

    private final Run fork;
    private List<StateMark> marks = List.of();
    private double loss;
    private double best;
    private double least;
    private double left;

    /**
     * What brings a run nearest to a reading.
     *
     * @param rate times the decay rates
     * @param loss times the loss of heat
     */
    record Match(double rate, double loss) {}

    Fit(Run run) {
        fork = new Run(run);
    }

    /**
     * The rate and the loss of heat with which a run, lived on to the day of a reading, comes nearest to it.
     *
     * @param between what becomes known of the pile on the way, by day
     */
    Match match(Run from, CoreReading reading, List<StateMark> between) {
        marks = between;
        double rate = bias(from, reading);
        Match match = new Match(rate, from.lossTimes);
        boolean enough = Math.abs(left) <= GOOD_K || left > 0 && reading.celsius() >= STEADY_C;
        if (enough || reading.day() - from.day < TELLING_DAYS) {
            return match;
        }
        double most = square(left) + square(pull(rate)) + square(PULL_LOSS_K * Math.log(from.lossTimes));
        for (double times : left < 0 ? SNUGGER : OPENER) {
            loss = Math.max(LEAST_LOSS, Math.min(MOST_LOSS, from.lossTimes * times));
            for (double other : new double[] {rate, 0.6, 1, 1.6}) {
                double cost =
                        square(miss(from, other, reading)) + square(pull(other)) + square(PULL_LOSS_K * Math.log(loss));
                if (cost < most) {
                    most = cost;
                    match = new Match(other, loss);
                }
            }
        }
        return match;
    }

    /** The bias with which a run, lived on to the day of a reading, comes nearest to it, its loss being what it is. */
    double bias(Run from, CoreReading reading) {
        loss = from.lossTimes;
        boolean steady =
                reading.day() - from.day < STEADY_DAYS && Math.max(reading.celsius(), from.s.temperature[0]) < STEADY_C;
        double plain = miss(from, 1, reading);
        best = 1;
        left = plain;
        least = square(plain);
        if (plain > 0 || !steady) {
            search(from, reading, SLOWER, steady);
        }
        if (plain < 0 || !steady) {
            search(from, reading, FASTER, steady);
        }
        return best;
    }

    /**
     * Tries rates from that of the recipe outwards, as long as one can still be better. Where a faster rate is never
     * colder, none is tried beyond one that misses on the other side, nor where even the outermost, which misses least,
     * would not make good the pull.
     */
    private void search(Run from, CoreReading reading, double[] biases, boolean steady) {
        if (square(pull(biases[0])) >= least) {
            return;
        }
        double outermost = biases[biases.length - 1];
        boolean slower = outermost < 1;
        double end = miss(from, outermost, reading);
        double unavoidable = steady && end > 0 == slower ? square(end) : 0;
        for (double bias : biases) {
            if (unavoidable + square(pull(bias)) >= least) {
                return;
            }
            double miss = bias == outermost ? end : miss(from, bias, reading);
            double cost = square(miss) + square(pull(bias));
            if (cost < least) {
                least = cost;
                best = bias;
                left = miss;
            }
            if (steady && miss > 0 != slower) {
                return;
            }
        }
    }

    private static double pull(double bias) {
        return PULL_K * Math.log(bias);
    }

    private static double square(double value) {
        return value * value;
    }

    private double miss(Run from, double bias, CoreReading reading) {
        fork.goOnFrom(from);
        fork.rateTimes = bias;
        fork.lossTimes = loss;
        fork.liveOn(reading.day() + 1, marks, day -> {});
        return fork.s.temperature[0] - reading.celsius();
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
