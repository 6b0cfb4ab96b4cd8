package heapwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.engine.Firing;
import heapwright.advice.engine.Outcome;
import heapwright.advice.engine.Pass;
import heapwright.advice.engine.RuleInfo;
import heapwright.advice.engine.Weighed;
import heapwright.advice.fact.Holds;
import heapwright.advice.fact.Precedes;
import heapwright.advice.fact.Proposes;
import heapwright.advice.fact.Withholds;
import heapwright.advice.winter.Effects;
import heapwright.advice.winter.Gain;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Caution;
import heapwright.knowledge.Condition;
import heapwright.knowledge.Dose;
import heapwright.knowledge.Known;
import heapwright.knowledge.Remedy;
import heapwright.knowledge.RemedyInfo.Urgency;
import heapwright.knowledge.Strength;
import heapwright.process.dose.Cap;
import heapwright.process.dose.DoseAmount;
import heapwright.process.dose.Term;
import heapwright.process.heat.Range;
import heapwright.process.mixture.Band;
import heapwright.process.mixture.Basis;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Insulating takes 45 minutes of heavy work at low risk and wins 14 days by the table; all amounts are invented. */
@DisplayName("Of the steps")
class StepAmountsTest {

    /** Strong at a likelihood of 0.5: 0.5 × 0.8 × 14 = 5.6, less 0.375 for the time, 0.5 for its weight and 0.5 for the risk. */
    private static final double INSULATED = 4.225;

    private final List<Firing> firings = new ArrayList<>();
    private final Map<Cause, Double> likelihoods = new EnumMap<>(Cause.class);
    private final Map<Remedy, List<DoseAmount>> amounts = new EnumMap<>(Remedy.class);
    private Effects effects = Effects.unknown();

    private static DoseAmount of(String material, double kg, Optional<Cap> cap, List<Term> working) {
        return new DoseAmount(
                Dose.INSULATION,
                Optional.of(TestPile.KNOWLEDGE.materials().get(material)),
                Band.exact(kg),
                Band.exact(kg),
                1,
                0,
                Band.ZERO,
                cap,
                working);
    }

    private static DoseAmount some(String material) {
        return of(material, 10, Optional.empty(), List.of());
    }

    private static DoseAmount none(String material) {
        return of(material, 0, Optional.of(Cap.NO_NEED), List.of());
    }

    private static DoseAmount share(double pct) {
        return of(
                "straw-wheat",
                10,
                Optional.of(Cap.AT_HAND),
                List.of(new Term(Term.Key.SHARE_OF_NEED, Band.exact(pct), Basis.ESTIMATED)));
    }

    private static RuleInfo rule(String id, Strength strength) {
        return new RuleInfo(id, id, Pass.REMEDY, strength, Known.JUDGEMENT, "JUDGEMENT", "So it is.");
    }

    private void fire(String id, Strength strength, Object result) {
        firings.add(new Firing(rule(id, strength), List.of(), result));
    }

    private void propose(Remedy remedy, Cause cause, Strength strength) {
        fire("REMEDY-" + remedy + cause, strength, new Proposes(remedy, cause));
    }

    private List<Step> steps() {
        Map<Cause, Weighed> weighed = new EnumMap<>(Cause.class);
        for (Cause cause : Cause.values()) {
            double likelihood = likelihoods.getOrDefault(cause, 0.5);
            weighed.put(cause, new Weighed(cause, likelihood, likelihood, List.of(), List.of()));
        }
        return new Arranger(
                        TestPile.KNOWLEDGE,
                        new Outcome(List.of(), firings, weighed),
                        TestPile.of("'asOf': '2026-11-21'"),
                        r -> amounts.getOrDefault(r, List.of()),
                        effects)
                .arrange()
                .steps();
    }

    private List<Remedy> remedies() {
        return steps().stream().map(s -> s.main().remedy()).toList();
    }

    private double insulating(Strength strength, DoseAmount... of) {
        firings.clear();
        propose(Remedy.INSULATE, Cause.FROZEN_IN, strength);
        amounts.put(Remedy.INSULATE, List.of(of));
        return steps().get(0).main().worth();
    }

    @Test
    @DisplayName("one is worth a quarter where its own figures show no need, or that little of the need is met")
    void quarter() {
        assertEquals(INSULATED, insulating(Strength.STRONG), 1e-9);
        assertEquals(INSULATED, insulating(Strength.STRONG, some("straw-wheat")), 1e-9);
        assertEquals(INSULATED / 4, insulating(Strength.STRONG, none("straw-wheat")), 1e-9);
        assertEquals(
                INSULATED,
                insulating(Strength.STRONG, none("straw-wheat"), some("leaves-mixed")),
                1e-9,
                "one is needed");
        assertEquals(INSULATED, insulating(Strength.STRONG, share(21)), 1e-9);
        assertEquals(INSULATED / 4, insulating(Strength.STRONG, share(19)), 1e-9);
        assertEquals(
                INSULATED / 4, insulating(Strength.STRONG, some("straw-wheat"), share(19)), 1e-9, "both must go far");
        likelihoods.put(Cause.FROZEN_IN, 0.1);
        assertEquals(
                0.1 * 0.25 * 14 - 1.375, insulating(Strength.SLIGHT, none("straw-wheat")), 1e-9, "a loss is no less");
    }

    /** Pulling sprouts: 3 days in a quarter of an hour, and it can wait; half of (0.5 × 1 × 3), less 0.125. */
    @Test
    @DisplayName("one that can wait is worth half of what it wins")
    void later() {
        propose(Remedy.PULL_SPROUTS, Cause.WEED_SEEDS_ALIVE, Strength.DECISIVE);
        assertEquals(0.5 * 3 / 2 - 0.125, steps().get(0).main().worth(), 1e-9);
    }

    private static Gain half() {
        Gain.Back back = new Gain.Back(true, 1, new Range(0, 0, 0));
        Range none = new Range(0, 0, 0);
        return new Gain(
                100, new Range(40, 50, 60), none, none, back, back, new Gain.Frost(0, 0), new Range(0.5, 0.5, 0.5));
    }

    /** Half the time won stands for the middle of 5 to 45 days. */
    @Test
    @DisplayName("days won in the model count only for what is proposed for the pile's pace")
    void pace() {
        effects = (remedy, doses) -> Optional.of(half());
        assertEquals(0.5 * 25 - 1.375, insulating(Strength.DECISIVE), 1e-9);
        firings.clear();
        propose(Remedy.INSULATE, Cause.WASPS_NEST, Strength.DECISIVE);
        assertEquals(0.5 * 14 - 1.375, steps().get(0).main().worth(), 1e-9);
        propose(Remedy.INSULATE, Cause.FROZEN_IN, Strength.DECISIVE);
        assertEquals(0.75 * 14 - 1.375, steps().get(0).main().worth(), 1e-9, "also where it serves both");
    }

    @Test
    @DisplayName("the grounds are told by how likely and how firm they are, then by the rule")
    void grounds() {
        likelihoods.put(Cause.FROZEN_IN, 0.9);
        fire("REMEDY-2", Strength.SLIGHT, new Proposes(Remedy.INSULATE, Cause.FROZEN_IN));
        fire("REMEDY-3", Strength.STRONG, new Proposes(Remedy.INSULATE, Cause.TOO_SMALL_FOR_COLD));
        fire("REMEDY-5", Strength.FAIR, new Proposes(Remedy.INSULATE, Cause.SLOWED_BY_WINTER));
        fire("REMEDY-4", Strength.FAIR, new Proposes(Remedy.INSULATE, Cause.TOO_AIRY));
        assertEquals(
                List.of("REMEDY-3", "REMEDY-4", "REMEDY-5", "REMEDY-2"),
                steps().get(0).main().grounds().stream().map(g -> g.rule().id()).toList());
    }

    @Test
    @DisplayName("one that may wait leads where it is very likely and nothing else is likely, and only there")
    void mayWait() {
        likelihoods.put(Cause.WEED_SEEDS_ALIVE, 0.95);
        likelihoods.put(Cause.RAIN_GETS_IN, 0.4);
        propose(Remedy.PULL_SPROUTS, Cause.WEED_SEEDS_ALIVE, Strength.DECISIVE);
        propose(Remedy.COVER_AGAINST_RAIN, Cause.RAIN_GETS_IN, Strength.DECISIVE);
        assertEquals(Remedy.PULL_SPROUTS, remedies().get(0));
        likelihoods.put(Cause.RAIN_GETS_IN, 0.6);
        assertEquals(Remedy.COVER_AGAINST_RAIN, remedies().get(0), "something else is likely");
        likelihoods.put(Cause.RAIN_GETS_IN, 0.4);
        likelihoods.put(Cause.WEED_SEEDS_ALIVE, 0.84);
        assertEquals(Remedy.COVER_AGAINST_RAIN, remedies().get(0), "it is not beyond doubt");
        likelihoods.put(Cause.WEED_SEEDS_ALIVE, 0.85);
        assertEquals(Remedy.PULL_SPROUTS, remedies().get(0));
    }

    @Test
    @DisplayName("first aid comes before all, though what presses is likelier")
    void firstAid() {
        likelihoods.put(Cause.FIRE_RISK, 0.99);
        likelihoods.put(Cause.SOMEBODY_HURT, 0.3);
        propose(Remedy.CALL_FIRE_SERVICE, Cause.FIRE_RISK, Strength.DECISIVE);
        propose(Remedy.AID_WOUND, Cause.SOMEBODY_HURT, Strength.SLIGHT);
        assertEquals(List.of(Remedy.AID_WOUND, Remedy.CALL_FIRE_SERVICE), remedies());
        fire("GUARD-1", Strength.DECISIVE, new Withholds(Remedy.AID_WOUND));
        assertEquals(List.of(Remedy.AID_WOUND, Remedy.CALL_FIRE_SERVICE), remedies(), "nothing holds it back");
    }

    /** Calling for help and turning undo each other; so do spreading and insulating. */
    @Test
    @DisplayName("what presses is not undone by what does not, though that is for a likelier finding")
    void pressing() {
        likelihoods.put(Cause.FROZEN_IN, 0.95);
        likelihoods.put(Cause.FIRE_RISK, 0.3);
        propose(Remedy.INSULATE, Cause.FROZEN_IN, Strength.DECISIVE);
        propose(Remedy.SPREAD_AND_WET, Cause.FIRE_RISK, Strength.SLIGHT);
        assertEquals(List.of(Remedy.SPREAD_AND_WET), remedies());
    }

    @Test
    @DisplayName("of two that undo each other the one for the likelier finding stands, though the other wins more")
    void undoing() {
        likelihoods.put(Cause.ACID_START, 0.9);
        likelihoods.put(Cause.LACKS_NITROGEN, 0.5);
        propose(Remedy.DUST_WITH_ASH, Cause.ACID_START, Strength.DECISIVE);
        propose(Remedy.ADD_UREA, Cause.LACKS_NITROGEN, Strength.DECISIVE);
        assertEquals(List.of(Remedy.DUST_WITH_ASH), remedies());
        likelihoods.put(Cause.ACID_START, 0.51);
        assertEquals(List.of(Remedy.ADD_UREA), remedies(), "as likely: the better one");
    }

    @Test
    @DisplayName("what would come before one that is held back does not press")
    void heldBack() {
        propose(Remedy.MEASURE_CORE, Cause.FIRE_RISK, Strength.SLIGHT);
        propose(Remedy.SPREAD_AND_WET, Cause.FIRE_RISK, Strength.STRONG);
        fire("ARRANGE-1", Strength.STRONG, new Precedes(Remedy.MEASURE_CORE, Remedy.SPREAD_AND_WET));
        assertEquals(Urgency.NOW, steps().get(0).urgency());
        fire("GUARD-1", Strength.DECISIVE, new Withholds(Remedy.SPREAD_AND_WET));
        assertEquals(List.of(Remedy.MEASURE_CORE), remedies());
        assertFalse(steps().get(0).urgency() == Urgency.NOW);
    }

    private static Option way(Remedy remedy, double chance, DoseAmount... doses) {
        ProposalReason ground = new ProposalReason(Cause.LACKS_NITROGEN, chance, rule("REMEDY-1", Strength.FAIR));
        return new Option(remedy, List.of(ground), 1, List.of(doses), List.of(), Optional.empty());
    }

    private static Remedy nearest(Set<String> atHand, Option... ways) {
        return new AtHand(atHand, Set.of()).nearest(List.of(ways)).remedy();
    }

    @Test
    @DisplayName("of ways as good the one leads whose stuff lies at hand and goes far")
    void atHand() {
        Option urea = way(Remedy.ADD_UREA, 0.8, some("urea"));
        Option greens = way(Remedy.ADD_GREENS, 0.76, some("grass-clippings"));
        Set<String> clippings = Set.of("grass-clippings");
        assertEquals(Remedy.ADD_GREENS, nearest(clippings, urea, greens));
        assertEquals(Remedy.ADD_UREA, nearest(Set.of(), urea, greens));
        assertEquals(Remedy.ADD_UREA, nearest(Set.of("urea", "grass-clippings"), urea, greens), "the first of them");
        assertEquals(
                Remedy.ADD_UREA,
                nearest(clippings, urea, way(Remedy.ADD_GREENS, 0.74, some("grass-clippings"))),
                "not for a finding that is less likely");
        assertEquals(
                Remedy.ADD_UREA,
                nearest(clippings, urea, way(Remedy.ADD_GREENS, 0.8, some("grass-clippings"), some("manure-horse"))),
                "one of two is not at hand");
        assertEquals(
                Remedy.ADD_GREENS,
                nearest(clippings, urea, way(Remedy.ADD_GREENS, 0.8, some("grass-clippings"), none("manure-horse"))),
                "what is not wanted need not be at hand");
        assertEquals(Remedy.ADD_UREA, nearest(clippings, urea, way(Remedy.ADD_GREENS, 0.8)), "it asks for nothing");
        Option little = way(Remedy.ADD_MANURE, 0.8, share(19));
        assertEquals(Remedy.ADD_UREA, nearest(Set.of("straw-wheat"), urea, little), "that goes nowhere");
    }

    @Test
    @DisplayName("those that do the same are one step, led by what is at hand")
    void oneStep() {
        propose(Remedy.ADD_UREA, Cause.LACKS_NITROGEN, Strength.DECISIVE);
        propose(Remedy.ADD_MANURE, Cause.LACKS_NITROGEN, Strength.DECISIVE);
        List<Step> steps = steps();
        assertEquals(1, steps.size());
        assertEquals(1, steps.get(0).alternatives().size());
        assertEquals(
                Set.of(Remedy.ADD_UREA, Remedy.ADD_MANURE),
                Set.copyOf(Stream.concat(Stream.of(steps.get(0).main()), steps.get(0).alternatives().stream())
                        .map(Option::remedy)
                        .toList()));
    }

    private List<Caution> cautions() {
        return steps().get(0).main().cautions();
    }

    @Test
    @DisplayName("one warns of what its stuff brings where there is some to give, and of ice only in frost")
    void warned() {
        propose(Remedy.ADD_WATER, Cause.TOO_DRY, Strength.STRONG);
        assertFalse(cautions().contains(Caution.UREA_HANDLING));
        assertFalse(cautions().contains(Caution.ICE_UNDERFOOT));
        assertFalse(cautions().contains(Caution.COLD_HANDS));
        assertTrue(cautions().contains(Caution.LIFTING));
        amounts.put(Remedy.ADD_WATER, List.of(some("urea")));
        assertTrue(cautions().contains(Caution.UREA_HANDLING));
        amounts.put(Remedy.ADD_WATER, List.of(none("urea")));
        assertFalse(cautions().contains(Caution.UREA_HANDLING));
        fire("DERIVE-1", Strength.STRONG, new Holds(Condition.COLD_SEASON));
        assertTrue(cautions().contains(Caution.COLD_HANDS));
        assertFalse(cautions().contains(Caution.ICE_UNDERFOOT));
        fire("DERIVE-2", Strength.STRONG, new Holds(Condition.FREEZING_OUTSIDE));
        assertTrue(cautions().contains(Caution.ICE_UNDERFOOT));
        firings.clear();
        propose(Remedy.TURN_FULLY, Cause.TOO_WET, Strength.STRONG);
        assertTrue(cautions().contains(Caution.HOT_CORE));
        fire("DERIVE-3", Strength.STRONG, new Holds(Condition.COLD_CORE));
        assertFalse(cautions().contains(Caution.HOT_CORE), "a cold core burns nobody");
    }
}
