package heapwright.advice.ready;

import heapwright.knowledge.Cause;
import heapwright.knowledge.Condition;
import heapwright.knowledge.KeepOutClass;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Limit;
import heapwright.knowledge.RipeReason;
import heapwright.knowledge.Ripeness;
import heapwright.knowledge.Sign;
import heapwright.knowledge.Trait;
import heapwright.knowledge.Wait;
import heapwright.knowledge.WaitInfo;
import heapwright.pile.Container;
import heapwright.pile.HomeTest;
import heapwright.pile.Pile;
import heapwright.process.sanitation.HeatLedger;
import heapwright.process.sanitation.RawStuff;
import heapwright.process.use.PileDays;
import heapwright.process.use.TestResults;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Which reasons hold the compost of a pile back, and how ripe it is by its good signs. */
final class RipeReasons {

    private static final Set<Trait> OF_PETS_OR_PEOPLE = EnumSet.of(Trait.PET_WASTE, Trait.HUMAN_WASTE);
    private static final KeepOutClass[] DANGEROUS = {
        KeepOutClass.TREATED_WOOD,
        KeepOutClass.COAL_ASH,
        KeepOutClass.OIL_AND_PAINT,
        KeepOutClass.OILY_RAGS,
        KeepOutClass.ASBESTOS,
        KeepOutClass.NEEDLES,
        KeepOutClass.RAT_BAIT
    };
    private static final Set<Trait> WEEDKILLER = EnumSet.of(Trait.HERBICIDE_SUSPECT);

    private final Pile pile;
    private final Knowledge knowledge;
    private final RipeFacts facts;
    private final PileDays days;
    private final TestResults tests;

    RipeReasons(Pile pile, Knowledge knowledge, RipeFacts facts, PileDays days, TestResults tests) {
        this.pile = pile;
        this.knowledge = knowledge;
        this.facts = facts;
        this.days = days;
        this.tests = tests;
    }

    /** All that stand, in the order of the table. */
    List<RipeReason> standing() {
        List<RipeReason> held = Stream.of(RipeReason.values())
                .filter(r -> r != RipeReason.NO_TEST_YET
                        && r != RipeReason.NOT_LOOKED_AT
                        && r != RipeReason.NOT_RIPE_BY_ANY_SIGN)
                .filter(this::stands)
                .toList();
        return Stream.concat(held.stream(), unripe().stream()).toList();
    }

    /** What is lacking of the good signs. */
    private Optional<RipeReason> unripe() {
        return switch (attained()) {
            case POTS -> Optional.empty();
            case BEDS -> Optional.of(RipeReason.NO_TEST_YET);
            case ROUGH -> Optional.of(RipeReason.NOT_LOOKED_AT);
            case NOT_YET -> Optional.of(RipeReason.NOT_RIPE_BY_ANY_SIGN);
        };
    }

    /** How ripe it is by its good signs alone. */
    private Ripeness attained() {
        boolean looks = facts.seen(Sign.DARK_CRUMBLY);
        boolean smells = facts.seen(Sign.SMELLS_EARTHY);
        int rested = pile.builtAssumed() ? 0 : days.since(days.lastFresh());
        boolean finished = facts.likely(Cause.FINISHED);
        boolean tested = tests.good(HomeTest.BAG) || tests.good(HomeTest.SEEDLINGS) || tests.good(HomeTest.REHEAT);
        if (tests.good(HomeTest.BAG) && tests.good(HomeTest.SEEDLINGS)) {
            return Ripeness.POTS;
        }
        boolean rests = rested >= days.wait(Wait.CURE_NEVER_HOT).toDays();
        boolean ages = rested >= days.limit(Limit.AGE_FINISHED);
        if (finished
                || looks && (smells || facts.seen(Sign.NO_REHEAT_AFTER_TURNING) || rests)
                || tested && (looks || smells || ages)
                || rested >= ripeByAge()) {
            return Ripeness.BEDS;
        }
        return looks
                        || ages
                        || facts.likely(Cause.MATURING)
                        || facts.seen(Sign.ORIGINALS_VISIBLE) && facts.seen(Sign.NO_REHEAT_AFTER_TURNING)
                ? Ripeness.ROUGH
                : Ripeness.NOT_YET;
    }

    /** Leaves alone take twice as long. */
    private int ripeByAge() {
        WaitInfo age = days.wait(Wait.RIPE_BY_AGE);
        return pile.container().kind() == Container.Kind.LEAF_CAGE ? age.toDays() : age.days();
    }

    private boolean stands(RipeReason reason) {
        return switch (reason) {
            case DANGEROUS_STUFF ->
                facts.likely(Cause.HAZARDOUS_WASTE) || facts.alreadyIn(DANGEROUS) || facts.seen(Sign.BROKEN_GLASS);
            case WEEDKILLER -> weedkiller();
            case WASTE_OF_PETS_OR_PEOPLE ->
                facts.wentIn(OF_PETS_OR_PEOPLE)
                        || facts.alreadyIn(KeepOutClass.PET_WASTE, KeepOutClass.SEWAGE, KeepOutClass.DRY_TOILET);
            case NO_PROOF_OF_HEAT ->
                (facts.wentIn(RawStuff.LIKE_RAW_MANURE)
                                || facts.alreadyIn(KeepOutClass.ANIMAL_FOOD, KeepOutClass.DEAD_ANIMALS))
                        && !HeatLedger.of(pile, knowledge).hotEnoughInCore();
            case SALT ->
                facts.likely(Cause.SALT_LOAD)
                        || facts.holds(Condition.SALTED_STUFF_NOT_FOOD)
                        || facts.alreadyIn(KeepOutClass.ROAD_SALT);
            case SICK_PLANTS -> facts.likely(Cause.DISEASE_CARRIED) || facts.alreadyIn(KeepOutClass.REPORTABLE_DISEASE);
            case WEED_SEED ->
                facts.likely(Cause.WEED_SEEDS_ALIVE)
                        || facts.alreadyIn(KeepOutClass.WEED_SEED, KeepOutClass.CREEPING_ROOTS)
                                && !HeatLedger.of(pile, knowledge).hotEnoughInCore();
            case WALNUT ->
                days.ends(Wait.WALNUT_WOOD).isPresent()
                        || days.ends(Wait.WALNUT_LEAVES).isPresent();
            case FERMENT -> pile.container().kind() == Container.Kind.BOKASHI;
            case FOUL_SMELL ->
                facts.seen(
                        Sign.SMELLS_AMMONIA,
                        Sign.SMELLS_SOUR,
                        Sign.SMELLS_ROTTEN_EGG,
                        Sign.SMELLS_PUTRID,
                        Sign.SMELLS_ALCOHOL);
            case HOT_MIDDLE -> facts.holds(Condition.HOT_CORE) || facts.seen(Sign.CORE_HOT);
            case GREENS_STILL_GREEN -> facts.seen(Sign.GREENS_STILL_GREEN);
            case STILL_LAYERED ->
                facts.seen(Sign.LAYERS_INTACT, Sign.MATTED_LEAVES, Sign.MATTED_GRASS) && !facts.seen(Sign.DARK_CRUMBLY);
            case FRESH_STUFF, TOO_YOUNG, STILL_CURING, NEVER_HOT, FAILED_TEST ->
                days.against(tests).contains(reason);
            case WARM_MIDDLE -> facts.holds(Condition.WARM_CORE) || facts.seen(Sign.CORE_WARM);
            case WARMS_WHEN_MIXED ->
                facts.seen(Sign.REHEATS_AFTER_TURNING) || facts.denied(Sign.NO_REHEAT_AFTER_TURNING);
            case ORIGINALS_VISIBLE -> facts.seen(Sign.ORIGINALS_VISIBLE);
            case NOT_DARK -> facts.denied(Sign.DARK_CRUMBLY);
            case NO_EARTHY_SMELL -> facts.denied(Sign.SMELLS_EARTHY);
            case BITS_IN_IT -> facts.seen(Sign.FOREIGN_BITS);
            case DRY_NOT_RIPE -> facts.holds(Condition.DRY) && !facts.seen(Sign.DARK_CRUMBLY);
            case NOT_LOOKED_AT, NO_TEST_YET, NOT_RIPE_BY_ANY_SIGN -> false;
        };
    }

    /** Where it may have gone in only peas that grew well since clear it; where peas failed it is in. */
    private boolean weedkiller() {
        if (tests.poor(HomeTest.PEAS)) {
            return true;
        }
        boolean suspect = facts.wentIn(WEEDKILLER)
                || facts.likely(Cause.HERBICIDE_RESIDUE)
                || facts.alreadyIn(KeepOutClass.WEEDKILLER);
        boolean grewSince = tests.of(HomeTest.PEAS)
                .filter(TestResults.OnDay::good)
                .filter(t ->
                        days.last(WEEDKILLER).filter(d -> d.isAfter(t.day())).isEmpty())
                .isPresent();
        return suspect && !grewSince;
    }
}
