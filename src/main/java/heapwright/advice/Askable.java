package heapwright.advice;

import heapwright.advice.engine.Outcome;
import heapwright.advice.fact.Did;
import heapwright.advice.fact.Fixture;
import heapwright.advice.fact.Grade;
import heapwright.advice.fact.Has;
import heapwright.advice.fact.Holds;
import heapwright.advice.fact.Reads;
import heapwright.advice.fact.Seen;
import heapwright.advice.fact.SetAside;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Condition;
import heapwright.knowledge.Reading;
import heapwright.knowledge.Sign;
import heapwright.knowledge.SignInfo;
import heapwright.pile.Action;
import heapwright.pile.Pile;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which signs may be asked for: none that was measured or told already in another way, none of frost and snow in the
 * warm months, and none that would mean opening a frozen pile.
 */
final class Askable {

    private static final Map<Fixture, Set<Sign>> TOLD_BY_PLACE = Map.of(
            Fixture.CLOSED_SHED, EnumSet.of(Sign.CLOSED_SHED),
            Fixture.NEAR_WATER, EnumSet.of(Sign.NEAR_WATER),
            Fixture.LOW_WET_GROUND, EnumSet.of(Sign.LOW_WET_GROUND),
            Fixture.WINDY, EnumSet.of(Sign.WINDY_PLACE),
            Fixture.PETS_ABOUT, EnumSet.of(Sign.PETS_LOOSE),
            Fixture.NO_COVER, EnumSet.of(Sign.RAIN_GETS_IN, Sign.SEALED_UNDER_PLASTIC),
            Fixture.SEALED_COVER, EnumSet.of(Sign.RAIN_GETS_IN, Sign.SEALED_UNDER_PLASTIC));

    private static final Map<Reading, Set<Sign>> TOLD_BY_MEASURE = Map.of(
            Reading.CORE_TEMPERATURE, EnumSet.of(Sign.CORE_COLD, Sign.CORE_WARM, Sign.CORE_HOT),
            Reading.OUTDOOR_TEMPERATURE, EnumSet.of(Sign.FROST_AT_NIGHT),
            Reading.MOISTURE,
                    EnumSet.of(
                            Sign.SQUEEZE_STREAMS,
                            Sign.SQUEEZE_DROPS,
                            Sign.SQUEEZE_HOLDS,
                            Sign.SQUEEZE_CRUMBLES,
                            Sign.DUST_DRY,
                            Sign.SOGGY));

    private static final Set<Sign> OF_THE_COLD = EnumSet.of(
            Sign.FROST_AT_NIGHT, Sign.FROST_CRUST, Sign.FROZEN_THROUGH, Sign.SNOW_MELTS_ON_TOP, Sign.SNOW_MIXED_IN);

    private static final Set<Sign> TOLD_BY_RECIPE =
            EnumSet.of(Sign.MUCH_GRASS, Sign.MUCH_MANURE, Sign.MUCH_SAWDUST, Sign.ONLY_BROWNS);

    private Askable() {}

    /**
     * The signs that may be asked for.
     *
     * @param passed signs that the person could not tell
     */
    static List<Sign> of(Pile pile, Outcome now, Map<Sign, SignInfo> signs, Collection<Sign> passed) {
        Set<Sign> askable = EnumSet.allOf(Sign.class);
        askable.removeAll(passed);
        if (!pile.recipe().isEmpty()) {
            askable.removeAll(TOLD_BY_RECIPE);
        }
        for (Object fact : now.facts()) {
            if (fact instanceof Has has) {
                askable.removeAll(TOLD_BY_PLACE.getOrDefault(has.fixture(), Set.of()));
            } else if (fact instanceof Reads reads && reads.measured()) {
                askable.removeAll(TOLD_BY_MEASURE.getOrDefault(reads.reading(), Set.of()));
            } else if (fact instanceof Did did && did.action() == Action.TURNED_FULLY) {
                askable.remove(Sign.NEVER_TURNED);
            }
        }
        if (warm(now)) {
            askable.removeAll(OF_THE_COLD);
        }
        if (frozen(now)) {
            askable.removeIf(s -> signs.get(s).where() == SignInfo.Where.INSIDE);
        }
        return List.copyOf(askable);
    }

    /** Whether date and place bring no cold for two months, and nothing else was seen. */
    private static boolean warm(Outcome now) {
        Set<Condition> holding = EnumSet.noneOf(Condition.class);
        now.of(Holds.class).forEach(f -> holding.add(((Holds) f.result()).condition()));
        return holding.contains(Condition.WARM_MONTHS_AHEAD) && !holding.contains(Condition.COLD_SEASON);
    }

    private static boolean frozen(Outcome now) {
        boolean aside =
                now.of(SetAside.class).stream().anyMatch(f -> ((SetAside) f.result()).cause() == Cause.FROZEN_IN);
        return now.facts().stream().anyMatch(f -> f instanceof Seen s && s.sign() == Sign.FROZEN_THROUGH)
                || !aside && now.weighed().get(Cause.FROZEN_IN).grade().atLeast(Grade.LIKELY);
    }
}
