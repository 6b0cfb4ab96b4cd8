package heapwright.process.heat;

/**
 * How a run is made to meet a measured core temperature: between two measurements the decay rate is multiplied by the
 * bias that brings the core nearest to the later one (searched on a grid, with a mild pull towards 1); what still misses
 * is then added to the shells' temperatures, all of it at the core, less further out. One is for one run and one thread.
 */
final class Fit {
    /** In order of their pull, so that the search can end early. */
    private static final double[] BIASES = {1, 0.85, 1.2, 0.7, 1.5, 0.5, 2, 3, 0.3, 0.18, 0.1, 0.05, 0.02};
    /** A pull towards the recipe: a rate wrong by a factor e counts like a miss of this, K (judgement). */
    private static final double PULL_K = 1.5;
    /** Of the shift at the core this part is missing at the skin (judgement). */
    private static final double FADES = 0.8;
    /** A shift smaller than this is left alone, K. */
    private static final double LEAST_K = 0.05;

    private final Run fork;

    Fit(Run run) {
        fork = new Run(run);
    }

    /** The bias with which a run, lived on to the day of a reading, comes nearest to it. */
    double bias(Run from, CoreReading reading) {
        double best = 1;
        double least = Double.MAX_VALUE;
        for (double bias : BIASES) {
            double pull = PULL_K * Math.log(bias);
            if (pull * pull >= least) {
                break;
            }
            double miss = core(from, bias, reading.day()) - reading.celsius();
            double cost = miss * miss + pull * pull;
            if (cost < least) {
                least = cost;
                best = bias;
            }
        }
        return best;
    }

    private double core(Run from, double bias, int day) {
        fork.goOnFrom(from);
        fork.rateTimes = bias;
        while (fork.day <= day) {
            fork.live();
        }
        return fork.s.temperature[0];
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
