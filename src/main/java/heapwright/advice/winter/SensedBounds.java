package heapwright.advice.winter;

import heapwright.advice.fact.Reads;
import heapwright.knowledge.Reading;
import heapwright.knowledge.Sign;
import heapwright.process.heat.Bounds;
import heapwright.process.heat.StateMark;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * What nose, hand and eye say of a pile, as bounds within which the model has to keep: they beat it. The figures are
 * judgement, see docs/method/winter.md.
 */
final class SensedBounds {

    /** Without air, matted or in lumps. */
    private static final Set<Sign> AIRLESS = EnumSet.of(
            Sign.SMELLS_ROTTEN_EGG,
            Sign.SMELLS_PUTRID,
            Sign.SMELLS_ALCOHOL,
            Sign.SLIMY,
            Sign.MATTED_LEAVES,
            Sign.MATTED_GRASS,
            Sign.SLUMPED_DENSE);

    /** Of the food of such a pile this much is within reach; just mixed it is 0.65 (docs/method/heat.md). */
    private static final double AIRLESS_REACH = 0.25;

    private static final Set<Sign> NOT_ROTTED_DOWN = EnumSet.of(
            Sign.ORIGINALS_VISIBLE,
            Sign.GREENS_STILL_GREEN,
            Sign.CORE_HOT,
            Sign.CORE_WARM,
            Sign.STEAM,
            Sign.WARM_ONLY_IN_MIDDLE,
            Sign.NOT_SHRINKING);

    /** Dry under a damp skin. */
    private static final double DRY_MIDDLE = 0.33;

    /** What the hand says of today is taken to have been so for so long, looked at weekly, days. */
    private static final int FELT_FOR = 42;

    private static final int WEEK = 7;

    private final Set<Sign> seen;
    private final int age;
    private final int since;

    /**
     * @param seen the signs seen lately
     * @param age the day of advice
     * @param since the first day on which what is wrong today may have been wrong
     */
    SensedBounds(Collection<Sign> seen, int age, int since) {
        this.seen = EnumSet.noneOf(Sign.class);
        this.seen.addAll(seen);
        this.age = age;
        this.since = Math.min(since, age);
    }

    /** What the hand says of the water, from the first day on which it may have been so; of its word the inner half. */
    List<StateMark> water(Collection<Reads> readings) {
        if (seen.contains(Sign.DRY_UNDER_DAMP_SKIN)) {
            // Later rain lies in the skin and leaves the middle dry.
            return List.of(StateMark.noticed(since, Bounds.moisture(0, DRY_MIDDLE)));
        }
        List<StateMark> all = new ArrayList<>();
        readings.stream()
                .filter(r -> r.reading() == Reading.MOISTURE && r.basis() == Reads.Basis.REPORTED)
                .map(r -> Bounds.moisture((r.low() + r.likely()) / 200, (r.high() + r.likely()) / 200))
                .forEach(felt -> {
                    all.add(StateMark.noticed(since, felt));
                    for (int day = age; day > Math.max(since, age - FELT_FOR); day -= WEEK) {
                        all.add(StateMark.noticed(day, felt));
                    }
                });
        return all;
    }

    /** What nose and eye say of air and food. */
    List<StateMark> airAndFood() {
        List<StateMark> all = new ArrayList<>();
        if (!Collections.disjoint(seen, AIRLESS)) {
            all.add(StateMark.noticed(since, Bounds.reach(AIRLESS_REACH)));
            if (age > since) {
                all.add(StateMark.noticed(age, Bounds.reach(AIRLESS_REACH)));
            }
        }
        if (rottedDown()) {
            all.add(StateMark.noticed(age, Bounds.rottedDown()));
        }
        return all;
    }

    private boolean rottedDown() {
        return seen.contains(Sign.DARK_CRUMBLY) && Collections.disjoint(seen, NOT_ROTTED_DOWN);
    }
}
