package heapwright.advice.audit;

import heapwright.advice.audit.Mend.Unlock;
import heapwright.process.mend.Addition;
import heapwright.process.mend.Heap;
import heapwright.process.mend.Mender;
import heapwright.process.mend.Offer;
import heapwright.process.mend.Plan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Plans of few things in whole buckets: nobody fetches a bucket each of six things where two do. */
final class FewThings {

    /** Whole numbers round the exact answer are tried for no more offers than this; each one trebles the work. */
    private static final int MOST_IN_BUCKETS = 8;

    /** A plan with fewer things may take this much more work; judgement. */
    private static final double SPARED_FOR = 1.15;

    private final Mender mender;
    private final double bucketLitres;

    FewThings(Mender mender, double bucketLitres) {
        this.mender = mender;
        this.bucketLitres = bucketLitres;
    }

    /** What has to be got, with the plan that it makes possible. */
    Unlock unlock(Heap start, List<Offer> left, List<Offer> extra, Optional<Addition> opening) {
        List<String> ids = extra.stream().map(Offer::id).toList();
        List<Offer> all =
                new ArrayList<>(left.stream().filter(o -> !ids.contains(o.id())).toList());
        all.addAll(extra);
        List<Offer> few = of(start, all);
        return new Unlock(ids, with(opening, inBuckets(start, few, all).orElseGet(() -> mender.mend(start, few))));
    }

    /** Whole buckets of the few, or where those do not go even, of all, unless they are too many to try. */
    Optional<Plan> inBuckets(Heap start, List<Offer> few, List<Offer> all) {
        Optional<Plan> plan = mender.mendInBuckets(start, few, bucketLitres);
        return plan.isPresent() || all.size() > MOST_IN_BUCKETS ? plan : mender.mendInBuckets(start, all, bucketLitres);
    }

    /**
     * The offers that a plan needs: those that the least work uses, less what little can be spared for a little more
     * work.
     */
    List<Offer> of(Heap start, List<Offer> offers) {
        Plan plan = mender.mend(start, offers);
        if (!plan.meetsAll()) {
            return offers;
        }
        double most = plan.effort() * SPARED_FOR;
        List<Offer> few = used(offers, plan);
        for (Addition one : plan.additions().stream()
                .sorted(Comparator.comparingDouble(Addition::kg))
                .toList()) {
            List<Offer> fewer =
                    few.stream().filter(o -> !o.id().equals(one.material())).toList();
            Plan without = mender.mend(start, fewer);
            if (without.meetsAll() && without.effort() <= most) {
                few = fewer;
            }
        }
        return few;
    }

    private static List<Offer> used(List<Offer> offers, Plan plan) {
        return offers.stream()
                .filter(o -> o.id().equals(Offer.WATER)
                        || plan.additions().stream().anyMatch(a -> a.material().equals(o.id())))
                .toList();
    }

    /** The plan with the opening in front; more of the same material is told as one amount. */
    static Plan with(Optional<Addition> opening, Plan plan) {
        if (opening.isEmpty()) {
            return plan;
        }
        Addition first = opening.get();
        List<Addition> all = new ArrayList<>();
        double kg = first.kg();
        double litres = first.litres();
        for (Addition one : plan.additions()) {
            if (one.material().equals(first.material())) {
                kg += one.kg();
                litres += one.litres();
            } else {
                all.add(one);
            }
        }
        all.add(0, new Addition(first.material(), kg, litres, 1));
        return new Plan(all, plan.after(), plan.effort() + first.kg(), plan.misses());
    }
}
