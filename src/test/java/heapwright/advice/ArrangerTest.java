package heapwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.engine.Firing;
import heapwright.advice.engine.Outcome;
import heapwright.advice.engine.Pass;
import heapwright.advice.engine.RuleInfo;
import heapwright.advice.engine.Weighed;
import heapwright.advice.fact.Precedes;
import heapwright.advice.fact.Proposes;
import heapwright.advice.fact.Replaces;
import heapwright.advice.fact.Warns;
import heapwright.advice.fact.Withholds;
import heapwright.advice.winter.Effects;
import heapwright.advice.winter.Gain;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Caution;
import heapwright.knowledge.Known;
import heapwright.knowledge.Remedy;
import heapwright.knowledge.RemedyInfo.Urgency;
import heapwright.knowledge.Strength;
import heapwright.pile.Pile;
import heapwright.process.heat.Range;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The order of the steps")
class ArrangerTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 21);
    private static final Pile PILE = TestPile.of("'asOf': '2026-11-21'");

    private final List<Firing> firings = new ArrayList<>();
    private final Map<Cause, Double> likelihoods = new EnumMap<>(Cause.class);

    @Test
    @DisplayName("puts danger first, however little it is thought to win")
    void dangerFirst() {
        propose(Remedy.ENLARGE_PILE, Strength.DECISIVE);
        propose(Remedy.LEAVE_AND_AIR_SHED, Strength.SLIGHT);
        assertEquals(List.of(Remedy.LEAVE_AND_AIR_SHED, Remedy.ENLARGE_PILE), steps());
    }

    @Test
    @DisplayName("takes what must come before a step against danger for as pressing, and nothing else")
    void beforeDanger() {
        propose(Remedy.COVER_AGAINST_RAIN, Strength.DECISIVE);
        propose(Remedy.SPREAD_AND_WET, Strength.SLIGHT);
        propose(Remedy.MEASURE_CORE, Strength.SLIGHT);
        fire("ARRANGE-1", Strength.STRONG, new Precedes(Remedy.MEASURE_CORE, Remedy.SPREAD_AND_WET));
        assertEquals(List.of(Remedy.MEASURE_CORE, Remedy.SPREAD_AND_WET, Remedy.COVER_AGAINST_RAIN), steps());
        assertEquals(
                List.of(Urgency.NOW, Urgency.NOW),
                arranged().steps().stream().limit(2).map(Step::urgency).toList());
        assertNotEquals(Urgency.NOW, arranged().steps().get(2).urgency());
    }

    @Test
    @DisplayName("puts the step that wins more before the one that wins less")
    void worth() {
        propose(Remedy.PULL_SPROUTS, Strength.STRONG);
        propose(Remedy.COVER_AGAINST_RAIN, Strength.STRONG);
        assertEquals(List.of(Remedy.COVER_AGAINST_RAIN, Remedy.PULL_SPROUTS), steps());
    }

    @Test
    @DisplayName("reckons the worth by hand: chance times days, less labour and risk")
    void worthByHand() {
        // Insulate: 14 days, 45 minutes of heavy work, low risk. Strong at a likelihood of 0.5: 0.5 x 0.8 x 14 = 5.6
        // days, less 45 x 0.5/60 = 0.375, 0.5 for heavy work and 0.5 for the risk: 4.225.
        propose(Remedy.INSULATE, Strength.STRONG);
        assertEquals(4.225, arranged().steps().get(0).main().worth(), 1e-9);
    }

    @Test
    @DisplayName("raises the worth of a step that serves two causes, but not beyond their joint chance")
    void twoCauses() {
        // Missed by both: (1 - 0.5 x 0.8)^2 = 0.36; 0.64 x 14 = 8.96, less 1.375.
        propose(Remedy.INSULATE, Cause.FROZEN_IN, Strength.STRONG);
        propose(Remedy.INSULATE, Cause.TOO_SMALL_FOR_COLD, Strength.STRONG);
        assertEquals(7.585, arranged().steps().get(0).main().worth(), 1e-9);
    }

    @Test
    @DisplayName("keeps the better of two steps that undo each other and holds the other back for it")
    void undoing() {
        propose(Remedy.DUST_WITH_ASH, Strength.FAIR);
        propose(Remedy.ADD_UREA, Strength.STRONG);
        assertEquals(List.of(Remedy.ADD_UREA), steps());
        WithheldStep held = arranged().withheld().get(0);
        assertEquals(Remedy.DUST_WITH_ASH, held.remedy());
        assertEquals(Optional.of(Remedy.ADD_UREA), held.undoes());
    }

    @Test
    @DisplayName("leaves out what a guard withholds and keeps every reason once")
    void withheld() {
        propose(Remedy.ADD_UREA, Strength.DECISIVE);
        fire("GUARD-1", Strength.DECISIVE, new Withholds(Remedy.ADD_UREA));
        fire("GUARD-2", Strength.DECISIVE, new Withholds(Remedy.ADD_UREA));
        fire("GUARD-2", Strength.DECISIVE, new Withholds(Remedy.ADD_UREA));
        assertEquals(List.of(), steps());
        assertEquals(
                List.of("GUARD-1", "GUARD-2"),
                arranged().withheld().get(0).rules().stream().map(RuleInfo::id).toList());
    }

    @Test
    @DisplayName("ranks by the days the model gives, in the coin of the table")
    void modelDays() {
        propose(Remedy.INSULATE, Strength.DECISIVE);
        // 5 to 45 days in the table, half the time won: 25; (0.5 x 1) x 25, less 1.375.
        Effects half = (remedy, doses) -> Optional.of(gain(40, 50, 60));
        assertEquals(11.125, arranged(half).steps().get(0).main().worth(), 1e-9);
    }

    @Test
    @DisplayName("never withholds what the findings ask for because the model sees nothing won, and says no loss")
    void modelNeverWithholds() {
        propose(Remedy.INSULATE, Strength.DECISIVE);
        Arranger.Arranged arranged = arranged((remedy, doses) -> Optional.of(gain(-9, -4, 0)));
        assertEquals(
                List.of(Remedy.INSULATE),
                arranged.steps().stream().map(s -> s.main().remedy()).toList());
        assertEquals(Optional.empty(), arranged.steps().get(0).main().gain());
        assertEquals(List.of(), arranged.withheld());
    }

    @Test
    @DisplayName("puts the step of the likeliest finding first, though another would win more days")
    void likeliestFirst() {
        likelihoods.put(Cause.WEED_SEEDS_ALIVE, 0.9);
        propose(Remedy.INSULATE, Strength.DECISIVE);
        propose(Remedy.PULL_SPROUTS, Cause.WEED_SEEDS_ALIVE, Strength.FAIR);
        assertEquals(List.of(Remedy.PULL_SPROUTS, Remedy.INSULATE), steps());
    }

    @Test
    @DisplayName(
            "lets no step of a possible finding come before the cure of a likely one, but does where it is likely itself")
    void possibleFirstStep() {
        fire("ARRANGE-1", Strength.STRONG, new Precedes(Remedy.CHOP_COARSE, Remedy.INSULATE));
        likelihoods.put(Cause.FROZEN_IN, 0.9);
        likelihoods.put(Cause.COARSE_WOOD, 0.4);
        propose(Remedy.INSULATE, Cause.FROZEN_IN, Strength.DECISIVE);
        propose(Remedy.CHOP_COARSE, Cause.COARSE_WOOD, Strength.DECISIVE);
        assertEquals(List.of(Remedy.INSULATE, Remedy.CHOP_COARSE), steps());
        likelihoods.put(Cause.COARSE_WOOD, 0.7);
        assertEquals(List.of(Remedy.CHOP_COARSE, Remedy.INSULATE), steps());
    }

    @Test
    @DisplayName("never keeps out the cure of a stronger finding for a weak one")
    void weakNeverBlocks() {
        likelihoods.put(Cause.LACKS_NITROGEN, 0.9);
        likelihoods.put(Cause.ACID_START, 0.35);
        propose(Remedy.DUST_WITH_ASH, Cause.ACID_START, Strength.DECISIVE);
        propose(Remedy.ADD_UREA, Cause.LACKS_NITROGEN, Strength.SLIGHT);
        assertEquals(List.of(Remedy.ADD_UREA), steps());
        assertEquals(Optional.of(Remedy.ADD_UREA), arranged().withheld().get(0).undoes());
    }

    private static Gain gain(double low, double likely, double high) {
        Range none = new Range(0, 0, 0);
        Gain.Back never = new Gain.Back(false, 0, none);
        return new Gain(
                100,
                new Range(low, likely, high),
                none,
                none,
                never,
                never,
                new Gain.Frost(0, 0),
                new Range(0.2, 0.3, 0.4));
    }

    @Test
    @DisplayName("does not speak of a withheld step that nobody proposed")
    void withheldUnasked() {
        propose(Remedy.INSULATE, Strength.FAIR);
        fire("GUARD-1", Strength.DECISIVE, new Withholds(Remedy.ADD_UREA));
        assertEquals(List.of(), arranged().withheld());
    }

    @Test
    @DisplayName("lets the withheld step's rival stand")
    void withheldUndoesNothing() {
        propose(Remedy.ADD_UREA, Strength.DECISIVE);
        propose(Remedy.BIND_WITH_CARBON, Strength.FAIR);
        fire("GUARD-1", Strength.DECISIVE, new Withholds(Remedy.ADD_UREA));
        assertEquals(List.of(Remedy.BIND_WITH_CARBON), steps());
    }

    @Test
    @DisplayName("shows other ways that do the same as alternatives of the best")
    void alternatives() {
        propose(Remedy.LOOSEN_SIDES_AND_TOP, Strength.FAIR);
        propose(Remedy.MAKE_AIR_HOLES, Strength.SLIGHT);
        propose(Remedy.COVER_AGAINST_RAIN, Strength.DECISIVE);
        assertEquals(List.of(Remedy.COVER_AGAINST_RAIN, Remedy.LOOSEN_SIDES_AND_TOP), steps());
        assertEquals(
                List.of(Remedy.MAKE_AIR_HOLES),
                arranged().steps().get(1).alternatives().stream()
                        .map(Option::remedy)
                        .toList());
    }

    @Test
    @DisplayName("holds back the worse of two steps where a rule replaces it")
    void replaced() {
        propose(Remedy.LOOSEN_SIDES_AND_TOP, Strength.SLIGHT);
        propose(Remedy.TURN_FULLY, Strength.DECISIVE);
        fire("ARRANGE-1", Strength.STRONG, new Replaces(Remedy.LOOSEN_SIDES_AND_TOP, Remedy.TURN_FULLY));
        assertEquals(List.of(Remedy.LOOSEN_SIDES_AND_TOP), steps());
        assertEquals(Remedy.TURN_FULLY, arranged().withheld().get(0).remedy());
    }

    @Test
    @DisplayName("puts a step right before the one that needs it")
    void precedes() {
        propose(Remedy.ENLARGE_PILE, Strength.DECISIVE);
        propose(Remedy.COVER_AGAINST_RAIN, Strength.STRONG);
        propose(Remedy.PULL_SPROUTS, Strength.SLIGHT);
        fire("ARRANGE-1", Strength.STRONG, new Precedes(Remedy.PULL_SPROUTS, Remedy.ENLARGE_PILE));
        assertEquals(List.of(Remedy.PULL_SPROUTS, Remedy.ENLARGE_PILE, Remedy.COVER_AGAINST_RAIN), steps());
    }

    @Test
    @DisplayName("cuts a circle of steps that each want to come first, and loses none")
    void circle() {
        propose(Remedy.ENLARGE_PILE, Strength.STRONG);
        propose(Remedy.COVER_AGAINST_RAIN, Strength.STRONG);
        fire("ARRANGE-1", Strength.STRONG, new Precedes(Remedy.COVER_AGAINST_RAIN, Remedy.ENLARGE_PILE));
        fire("ARRANGE-2", Strength.STRONG, new Precedes(Remedy.ENLARGE_PILE, Remedy.COVER_AGAINST_RAIN));
        assertEquals(2, steps().size());
    }

    @Test
    @DisplayName("numbers the steps from one and says from when to when to look")
    void ranksAndDays() {
        propose(Remedy.INSULATE, Strength.STRONG);
        propose(Remedy.PULL_SPROUTS, Strength.STRONG);
        List<Step> steps = arranged().steps();
        assertEquals(List.of(1, 2), steps.stream().map(Step::rank).toList());
        assertEquals(DAY.plusDays(3), steps.get(0).lookFrom());
        assertEquals(DAY.plusDays(14), steps.get(0).lookTo());
    }

    @Test
    @DisplayName("gives a step its own cautions and those of this pile, the gravest first")
    void cautions() {
        propose(Remedy.TURN_FULLY, Strength.STRONG);
        fire("GUARD-1", Strength.STRONG, new Warns(Remedy.TURN_FULLY, Caution.CLOSED_SPACE_GAS));
        fire("GUARD-2", Strength.STRONG, new Warns(Remedy.INSULATE, Caution.HOT_WATER));
        List<Caution> told = arranged().steps().get(0).main().cautions();
        assertTrue(told.contains(Caution.CLOSED_SPACE_GAS));
        assertTrue(told.containsAll(
                TestPile.KNOWLEDGE.remedies().get(Remedy.TURN_FULLY).cautions()));
        assertTrue(!told.contains(Caution.HOT_WATER));
        List<Integer> gravity = told.stream()
                .map(c -> TestPile.KNOWLEDGE.cautions().get(c).severity().ordinal())
                .toList();
        assertEquals(gravity.stream().sorted().toList(), gravity);
    }

    private void propose(Remedy remedy, Strength strength) {
        propose(remedy, Cause.TOO_WET, strength);
    }

    private void propose(Remedy remedy, Cause cause, Strength strength) {
        fire("REMEDY-" + remedy + cause, strength, new Proposes(remedy, cause));
    }

    private void fire(String id, Strength strength, Object result) {
        RuleInfo rule = new RuleInfo(id, id, Pass.REMEDY, strength, Known.JUDGEMENT, "JUDGEMENT", "So it is.");
        firings.add(new Firing(rule, List.of(), result));
    }

    private List<Remedy> steps() {
        return arranged().steps().stream().map(s -> s.main().remedy()).toList();
    }

    private Arranger.Arranged arranged() {
        return arranged(Effects.unknown());
    }

    private Arranger.Arranged arranged(Effects effects) {
        Map<Cause, Weighed> weighed = new EnumMap<>(Cause.class);
        for (Cause cause : Cause.values()) {
            double likelihood = likelihoods.getOrDefault(cause, 0.5);
            weighed.put(cause, new Weighed(cause, likelihood, likelihood, List.of(), List.of()));
        }
        return new Arranger(TestPile.KNOWLEDGE, new Outcome(List.of(), firings, weighed), PILE, r -> List.of(), effects)
                .arrange();
    }
}
