package heapwright.process.mend;

import java.util.List;
import java.util.Optional;

/** Searches the whole numbers of buckets round an exact answer. Small on purpose: a few buckets either side. */
final class WholeBuckets {

    private static final int BELOW = 1;
    private static final int ABOVE = 2;

    private final Heap heap;
    private final List<Offer> offers;
    private final Goals goals;
    private final double bucketLitres;

    private double[] best;
    private double leastEffort = Double.POSITIVE_INFINITY;

    WholeBuckets(Heap heap, List<Offer> offers, Goals goals, double bucketLitres) {
        this.heap = heap;
        this.offers = offers;
        this.goals = goals;
        this.bucketLitres = bucketLitres;
    }

    /** Kilograms of each offer for the least work that meets all goals, if whole buckets near this answer do. */
    Optional<double[]> near(double[] exact) {
        search(exact, new double[exact.length], 0, heap, 0);
        return Optional.ofNullable(best);
    }

    private void search(double[] exact, double[] chosen, int index, Heap sofar, double effort) {
        if (effort >= leastEffort) {
            return;
        }
        if (index == exact.length) {
            if (goals.met(sofar)) {
                best = chosen.clone();
                leastEffort = effort;
            }
            return;
        }
        Offer offer = offers.get(index);
        double step = offer.fertiliser() ? 0 : offer.bucketKg(bucketLitres);
        long middle = step > 0 ? (long) Math.floor(exact[index] / step) : 0;
        long from = step > 0 ? Math.max(0, middle - BELOW) : 0;
        long to = step > 0 ? middle + (exact[index] > 0 ? ABOVE : 1) : 0;
        for (long buckets = from; buckets <= to; buckets++) {
            double kilograms = step > 0 ? buckets * step : exact[index];
            if (kilograms <= offer.mostKg() + 1e-9) {
                chosen[index] = kilograms;
                search(
                        exact,
                        chosen,
                        index + 1,
                        sofar.with(offer, kilograms),
                        effort + kilograms * offer.effortPerKg());
            }
        }
    }
}
