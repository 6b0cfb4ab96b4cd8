package heapwright.process.heat;

/**
 * The search for the decay rate and the loss of heat with which a run comes nearest to one reading. Both are tried on a grid,
 * with a mild pull towards what they were before.
 */
final class Search {
    /** The rates tried besides that of the recipe, from it outwards, so that the search can end early. */
    private static final double[] SLOWER = {0.85, 0.7, 0.5, 0.3, 0.18, 0.1, 0.05, 0.02};

    private static final double[] FASTER = {1.2, 1.5, 2, 3};
    /**
     * A pull towards the recipe: a rate wrong by a factor e counts like a miss of this, K (judgement: a reading of one spot
     * and a model of this kind part by as much with nothing amiss).
     */
    private static final double PULL_K = 4;

    /** Where the rate alone comes as near as this, the loss of heat is left as it was, K (judgement). */
    private static final double GOOD_K = 8;
    /** The losses tried, times that which was learned before, and how far they may go in all (judgement). */
    private static final double[] SNUGGER = {0.8, 0.6, 0.4};

    private static final double[] OPENER = {1.3, 1.7, 2.5};
    private static final double[] NO_OTHER = {};
    private static final double LEAST_LOSS = 0.3;
    private static final double MOST_LOSS = 2.5;
    /** A pull towards what size and covers say, as {@link #PULL_K}, K (judgement). */
    private static final double PULL_LOSS_K = 4;

    private final Trial trial;

    /** A run with a rate and a loss. */
    interface Trial {
        /** Kelvin by which it is warmer than the reading in the end. */
        double missK(double rate, double loss);
    }

    /**
     * What brings a run nearest to a reading.
     *
     * @param rate times the decay rates
     * @param loss times the loss of heat
     * @param missK by which it is still warmer than the reading
     */
    record Match(double rate, double loss, double missK) {

        private double cost() {
            return square(missK) + square(pull(rate));
        }
    }

    Search(Trial trial) {
        this.trial = trial;
    }

    /**
     * The best rate with a loss.
     *
     * @param steady whether a faster rate never ends in a colder core
     */
    Match rate(double loss, boolean steady) {
        Match plain = with(1, loss);
        Match best = plain;
        if (!steady || plain.missK > 0) {
            best = nearest(best, SLOWER, 1, steady);
        }
        if (!steady || plain.missK <= 0) {
            best = nearest(best, FASTER, -1, steady);
        }
        return best;
    }

    /**
     * Tries rates from that of the recipe outwards, as long as one can still be better. Where a faster rate is never
     * colder, none is tried beyond one that misses on the other side, nor where even the outermost, which misses least,
     * would not make good the pull.
     *
     * @param side 1 where they bring down a core that is too warm, -1 where they raise one that is too cold
     */
    private Match nearest(Match found, double[] rates, int side, boolean steady) {
        Match best = found;
        if (square(pull(rates[0])) >= best.cost()) {
            return best;
        }
        Match end = with(rates[rates.length - 1], best.loss);
        double unavoidable = steady ? square(Math.max(0, side * end.missK)) : 0;
        for (double rate : rates) {
            if (unavoidable + square(pull(rate)) >= best.cost()) {
                return best;
            }
            Match one = rate == end.rate ? end : with(rate, best.loss);
            if (one.cost() < best.cost()) {
                best = one;
            }
            if (steady && side * one.missK <= 0) {
                return best;
            }
        }
        return best;
    }

    /**
     * The best loss, where the rate alone comes nowhere near; else what the rate alone comes to.
     *
     * @param rate the best rate with the loss that was learned before
     * @param mayBeDraughty whether it may lose more than that
     */
    Match loss(Match rate, boolean mayBeDraughty) {
        double[] others = rate.missK < -GOOD_K ? SNUGGER : rate.missK > GOOD_K && mayBeDraughty ? OPENER : NO_OTHER;
        Match best = rate;
        double least = rate.cost() + square(PULL_LOSS_K * Math.log(rate.loss));
        for (double times : others) {
            double loss = Math.max(LEAST_LOSS, Math.min(MOST_LOSS, rate.loss * times));
            for (double other : new double[] {rate.rate, 0.6, 1, 1.6}) {
                Match one = with(other, loss);
                double cost = one.cost() + square(PULL_LOSS_K * Math.log(loss));
                if (cost < least) {
                    least = cost;
                    best = one;
                }
            }
        }
        return best;
    }

    private Match with(double rate, double loss) {
        return new Match(rate, loss, trial.missK(rate, loss));
    }

    private static double pull(double rate) {
        return PULL_K * Math.log(rate);
    }

    private static double square(double value) {
        return value * value;
    }
}
