package heapwright.advice.ready;

import heapwright.advice.Advice;
import heapwright.knowledge.HomeTestInfo;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.RipeReason;
import heapwright.knowledge.RipeReasonInfo;
import heapwright.knowledge.Ripeness;
import heapwright.knowledge.Sign;
import heapwright.knowledge.UseInfo;
import heapwright.pile.HomeTest;
import heapwright.pile.Pile;
import heapwright.process.climate.LocalYear;
import heapwright.process.use.Left;
import heapwright.process.use.PileDays;
import heapwright.process.use.TestResults;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Answers whether compost is ready: the least that any reason allows. A good test lifts no gate. */
public final class Ready {

    /** What says that there is no point in testing yet. */
    private static final Set<RipeReason> NO_TEST_NOW = EnumSet.of(
            RipeReason.DANGEROUS_STUFF,
            RipeReason.FERMENT,
            RipeReason.FOUL_SMELL,
            RipeReason.HOT_MIDDLE,
            RipeReason.GREENS_STILL_GREEN,
            RipeReason.STILL_LAYERED,
            RipeReason.FRESH_STUFF,
            RipeReason.TOO_YOUNG);

    /** What is plain to hand or nose, or stands in the record. */
    private static final Set<RipeReason> PLAIN = EnumSet.of(
            RipeReason.DANGEROUS_STUFF,
            RipeReason.FERMENT,
            RipeReason.FOUL_SMELL,
            RipeReason.HOT_MIDDLE,
            RipeReason.GREENS_STILL_GREEN,
            RipeReason.STILL_LAYERED);

    private static final int GOOD_POINTS = 4;
    private static final int FAIR_POINTS = 2;

    /** A test tells about twice as much as a look (judgement). */
    private static final int TEST_POINTS = 2;

    /** A frozen sample lies indoors for a day. */
    private static final int THAWS_DAYS = 1;

    private final Knowledge knowledge;
    private final Pile pile;
    private final RipeFacts facts;
    private final PileDays days;
    private final TestResults tests;
    private final List<RipeReason> standing;
    private final Ripeness grade;

    private Ready(Advice advice, Knowledge knowledge) {
        this.knowledge = knowledge;
        this.pile = advice.pile();
        this.facts = new RipeFacts(advice);
        this.days = new PileDays(pile, knowledge);
        this.tests = TestResults.of(pile, knowledge, days);
        this.standing = new RipeReasons(pile, knowledge, facts, days, tests).standing();
        this.grade = standing.stream().map(r -> info(r).allows()).reduce(tests.allows(knowledge), Ripeness::and);
    }

    /**
     * The answer for a pile.
     *
     * @param advice the advice on it; no danger may stand
     */
    public static ReadyAnswer of(Advice advice, Knowledge knowledge) {
        return new Ready(advice, knowledge).answer();
    }

    private RipeReasonInfo info(RipeReason reason) {
        return knowledge.endUse().reasons().get(reason);
    }

    private boolean stands(RipeReason reason) {
        return standing.contains(reason);
    }

    private ReadyAnswer answer() {
        List<ReadyAnswer.AtOdds> odds = contradictions();
        LocalYear year = LocalYear.of(pile.place());
        Left left = Left.of(pile, knowledge);
        return new ReadyAnswer(
                pile,
                grade,
                sure(odds),
                standing.stream()
                        .map(this::info)
                        .sorted(Comparator.comparing(RipeReasonInfo::allows)
                                .thenComparing(r -> !r.danger())
                                .thenComparing(RipeReasonInfo::id))
                        .toList(),
                odds,
                tests.latest(),
                plans(),
                left,
                covers(left),
                ReadyDates.of(days, year, stands(RipeReason.NO_PROOF_OF_HEAT)));
    }

    private List<ReadyAnswer.AtOdds> contradictions() {
        boolean good = tests.latest().values().stream().anyMatch(TestResults.OnDay::good);
        boolean warm =
                stands(RipeReason.HOT_MIDDLE) || stands(RipeReason.WARM_MIDDLE) || stands(RipeReason.WARMS_WHEN_MIXED);
        List<ReadyAnswer.AtOdds> all = new ArrayList<>();
        if (good && stands(RipeReason.FOUL_SMELL)) {
            all.add(ReadyAnswer.AtOdds.GOOD_TEST_FOUL_SMELL);
        }
        if (good && warm) {
            all.add(ReadyAnswer.AtOdds.GOOD_TEST_WARM);
        }
        if (tests.changed().contains(HomeTest.PEAS) && tests.good(HomeTest.PEAS)) {
            all.add(ReadyAnswer.AtOdds.PEAS_WELL_AFTER_FAILING);
        } else if (!tests.changed().isEmpty()) {
            all.add(ReadyAnswer.AtOdds.TEST_CHANGED);
        }
        if (facts.contradicts()) {
            all.add(ReadyAnswer.AtOdds.ANSWERS);
        }
        return all;
    }

    private Sureness sure(List<ReadyAnswer.AtOdds> odds) {
        if (standing.stream().anyMatch(PLAIN::contains) || tests.poor(HomeTest.PEAS)) {
            return Sureness.GOOD;
        }
        int points = TEST_POINTS * tests.counting();
        points += facts.lookedFor(Sign.DARK_CRUMBLY, Sign.ORIGINALS_VISIBLE) ? 1 : 0;
        points += facts.lookedFor(Sign.SMELLS_EARTHY, Sign.SMELLS_SOUR, Sign.SMELLS_AMMONIA) ? 1 : 0;
        points += facts.lookedFor(
                        Sign.NO_REHEAT_AFTER_TURNING, Sign.REHEATS_AFTER_TURNING, Sign.CORE_COLD, Sign.CORE_WARM)
                ? 1
                : 0;
        points += pile.builtAssumed() ? 0 : 1;
        points -= odds.isEmpty() ? 0 : FAIR_POINTS;
        points -= frozen() ? 1 : 0;
        return points >= GOOD_POINTS ? Sureness.GOOD : points >= FAIR_POINTS ? Sureness.FAIR : Sureness.GUESS;
    }

    private boolean frozen() {
        return facts.seen(Sign.FROZEN_THROUGH, Sign.FROST_CRUST);
    }

    /** The tests worth doing, in the order of the table. */
    private List<TestPlan> plans() {
        if (standing.stream().anyMatch(NO_TEST_NOW::contains)) {
            return List.of();
        }
        return knowledge.endUse().tests().values().stream()
                .flatMap(t -> plan(t).stream())
                .toList();
    }

    private Optional<TestPlan> plan(HomeTestInfo test) {
        LocalDate today = days.today().plusDays(frozen() ? THAWS_DAYS : 0);
        Optional<TestResults.OnDay> result = tests.of(test.id()).filter(TestResults.OnDay::counts);
        if (result.filter(TestResults.OnDay::poor).isPresent()) {
            LocalDate again = result.get().day().plusDays(test.againDays());
            return Optional.of(TestPlan.of(test, again.isBefore(today) ? today : again, true));
        }
        return result.isEmpty() && wanted(test) ? Optional.of(TestPlan.of(test, today, false)) : Optional.empty();
    }

    private boolean wanted(HomeTestInfo test) {
        boolean stuff = test.forStuff().isEmpty() || facts.wentIn(Set.copyOf(test.forStuff()));
        return switch (test.id()) {
            case BAG, SEEDLINGS -> true;
            case PEAS -> stands(RipeReason.WEEDKILLER);
            case REHEAT -> stands(RipeReason.WARMS_WHEN_MIXED) || stands(RipeReason.STILL_CURING);
            case SIEVE -> stuff || facts.seen(Sign.WOODY_RESIDUE, Sign.ORIGINALS_VISIBLE, Sign.FOREIGN_BITS);
            case PH_STRIP -> stuff;
        };
    }

    /** Every use; that which the person wants first. */
    private List<Cover> covers(Left left) {
        return knowledge.endUse().uses().values().stream()
                .map(u -> Cover.of(u, allowed(u), left))
                .sorted(Comparator.comparing(
                        (Cover c) -> !c.use().aims().contains(pile.aim().use())))
                .toList();
    }

    private boolean allowed(UseInfo use) {
        boolean neverFood = stands(RipeReason.WASTE_OF_PETS_OR_PEOPLE);
        return grade.atLeast(use.needs()) && !(use.food() && neverFood);
    }
}
