package heapwright.advice.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.fact.AlreadyIn;
import heapwright.advice.fact.Denied;
import heapwright.advice.fact.Failed;
import heapwright.advice.fact.Helped;
import heapwright.advice.fact.LimitIs;
import heapwright.advice.fact.ModelSays;
import heapwright.advice.fact.Reads;
import heapwright.advice.fact.Reads.Basis;
import heapwright.advice.fact.Seen;
import heapwright.advice.fact.Speaks;
import heapwright.advice.fact.WentIn;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Condition;
import heapwright.knowledge.Evidence;
import heapwright.knowledge.KeepOutClass;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.KnowledgeReader;
import heapwright.knowledge.Known;
import heapwright.knowledge.Limit;
import heapwright.knowledge.ModelFinding;
import heapwright.knowledge.Reading;
import heapwright.knowledge.Remedy;
import heapwright.knowledge.Side;
import heapwright.knowledge.Sign;
import heapwright.knowledge.Strength;
import heapwright.knowledge.Trait;
import heapwright.knowledge.When;
import heapwright.knowledge.Witness;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Rows invented for the test, joined by the rules of the program. */
@DisplayName("A row of evidence")
class RowsTest {

    private static final double TINY = 1e-9;
    private static final Knowledge KNOWLEDGE = KnowledgeReader.packed();
    private static final Rulebook RULES = Rulebook.packed();
    private static final Object ACID_AT = new LimitIs(Limit.PH_ACID, 6.0);

    static Stream<Arguments> kinds() {
        When acid = new When.Placed(Reading.PH, Side.LIKELY_BELOW, Limit.PH_ACID, false);
        When measuredAcid = new When.Placed(Reading.PH, Side.LIKELY_BELOW, Limit.PH_ACID, true);
        KeepOutClass kept = KeepOutClass.values()[0];
        KeepOutClass other = KeepOutClass.values()[1];
        return Stream.of(
                Arguments.of(
                        "a sign that is seen",
                        new When.Seen(List.of(Sign.SOGGY)),
                        List.of(new Seen(Sign.SOGGY, 1)),
                        List.of(new Denied(Sign.SOGGY, 1), new Seen(Sign.SLIMY, 1))),
                Arguments.of(
                        "any of several signs",
                        new When.Seen(List.of(Sign.SOGGY, Sign.SLIMY)),
                        List.of(new Seen(Sign.SLIMY, 1)),
                        List.of(new Seen(Sign.FLIES, 1))),
                Arguments.of(
                        "a sign that is denied",
                        new When.Denied(List.of(Sign.SOGGY)),
                        List.of(new Denied(Sign.SOGGY, 1)),
                        List.of(new Seen(Sign.SOGGY, 1), new Denied(Sign.SLIMY, 1))),
                Arguments.of(
                        "a condition that holds",
                        new When.Holds(Condition.ACID),
                        List.of(new Seen(Sign.SMELLS_SOUR, 1)),
                        List.of(new Seen(Sign.FLIES, 1))),
                Arguments.of(
                        "a condition that does not hold",
                        new When.HoldsNot(Condition.ACID),
                        List.of(new Seen(Sign.FLIES, 1)),
                        List.of(new Seen(Sign.SMELLS_SOUR, 1))),
                Arguments.of(
                        "a condition of several parts",
                        new When.Holds(Condition.PUTRID_SMELL_AFTER_FAT),
                        List.of(new Seen(Sign.SMELLS_PUTRID, 1), new Seen(Sign.BROTH, 1)),
                        List.of(new Seen(Sign.SMELLS_PUTRID, 1), new Denied(Sign.BROTH, 1))),
                Arguments.of(
                        "a condition of which a part is absent",
                        new When.Holds(Condition.COOLING_IN_MILD_WEATHER),
                        List.of(new Seen(Sign.COOLING_FOR_DAYS, 1)),
                        List.of(new Seen(Sign.COOLING_FOR_DAYS, 1), new Seen(Sign.FROST_AT_NIGHT, 1))),
                Arguments.of(
                        "a danger that stands, by its name",
                        new When.Holds(Condition.FIRE_DANGER),
                        List.of(new Seen(Sign.SMOKE, 0)),
                        List.of(new Seen(Sign.STEAM, 0))),
                Arguments.of(
                        "a reading beyond a limit",
                        acid,
                        List.of(ACID_AT, ph(5.0, Basis.ESTIMATED)),
                        List.of(ACID_AT, ph(7.0, Basis.ESTIMATED))),
                Arguments.of(
                        "a measured reading beyond a limit",
                        measuredAcid,
                        List.of(ACID_AT, ph(5.0, Basis.MEASURED)),
                        List.of(ACID_AT, ph(5.0, Basis.ESTIMATED))),
                Arguments.of(
                        "what the model says",
                        new When.ModelSays(ModelFinding.SPENT),
                        List.of(new ModelSays(ModelFinding.SPENT, 3, 1)),
                        List.of(new ModelSays(ModelFinding.TOO_SOUR, 3, 1))),
                Arguments.of(
                        "what went in",
                        new When.WentIn(List.of(Trait.GRASS, Trait.LEAVES)),
                        List.of(new WentIn(Trait.LEAVES, 3, 0.5)),
                        List.of(new WentIn(Trait.PAPER, 3, 0.5))),
                Arguments.of(
                        "a step that helped",
                        new When.Helped(List.of(Remedy.TURN_FULLY, Remedy.INSULATE)),
                        List.of(new Helped(Remedy.INSULATE, 3)),
                        List.of(new Failed(Remedy.INSULATE, 3), new Helped(Remedy.CURE, 3))),
                Arguments.of(
                        "a step that did not help",
                        new When.Failed(List.of(Remedy.TURN_FULLY)),
                        List.of(new Failed(Remedy.TURN_FULLY, 3)),
                        List.of(new Helped(Remedy.TURN_FULLY, 3), new Failed(Remedy.INSULATE, 3))),
                Arguments.of(
                        "what stays out and went in",
                        new When.KeptOut(kept),
                        List.of(new AlreadyIn(kept, false, true, 3)),
                        List.of(new AlreadyIn(other, false, true, 3))));
    }

    @ParameterizedTest(name = "on {0} speaks, and in the near twin is silent")
    @MethodSource("kinds")
    @DisplayName("speaks when what it waits for is so")
    void kind(String told, When when, List<Object> there, List<Object> twin) {
        for (Evidence.Speaks direction : Evidence.Speaks.values()) {
            Evidence row = row(direction, when);
            List<Firing> spoken = spoken(row, there);
            assertEquals(1, spoken.size(), told);
            assertEquals(new Speaks(row), spoken.get(0).result());
            assertEquals(List.of(), spoken(row, twin), told);
        }
    }

    @Test
    @DisplayName("carries its own id, strength, source and reason")
    void carried() {
        Firing spoken = spoken(
                        row(Evidence.Speaks.FOR, new When.Seen(List.of(Sign.SOGGY))), List.of(new Seen(Sign.SOGGY, 1)))
                .get(0);
        assertEquals("WEIGH-4999", spoken.rule().id());
        assertEquals(Pass.WEIGH, spoken.rule().pass());
        assertEquals(Strength.STRONG, spoken.rule().strength());
        assertEquals(Known.COMMON_PRACTICE, spoken.rule().evidence());
        assertEquals("COMMON", spoken.rule().source());
        assertEquals("So it is.", spoken.rule().rationale());
        assertEquals(List.of(new Seen(Sign.SOGGY, 1)), spoken.because());
        assertTrue(
                spoken.rule()
                        .name()
                        .startsWith(KNOWLEDGE.causes().get(Cause.MATTED).name() + ": "),
                spoken.rule().name());
    }

    @Test
    @DisplayName("counts in the degree in which a reading is beyond its limit: a tenth of a unit of pH is a quarter")
    void degree() {
        // The edge is 0.4 wide: half of the weight at the limit, a tenth beyond adds 0.1 / 0.4.
        When acid = new When.Placed(Reading.PH, Side.LIKELY_BELOW, Limit.PH_ACID, false);
        Firing spoken = spoken(row(Evidence.Speaks.FOR, acid), List.of(ACID_AT, ph(5.9, Basis.MEASURED)))
                .get(0);
        assertEquals(0.75, spoken.degree(), TINY);
        Weighed weighed = inference(row(Evidence.Speaks.FOR, acid))
                .upToConclusions(List.of(ACID_AT, ph(5.9, Basis.MEASURED)))
                .weighed()
                .get(Cause.MATTED);
        assertEquals(
                0.75 * KNOWLEDGE.weights().of(Strength.STRONG),
                weighed.supports().get(0).decibans(),
                TINY);
    }

    @Test
    @DisplayName("on a condition of several parts counts in the least of their degrees, and tells the parts")
    void leastDegree() {
        When high = new When.Holds(Condition.PH_HIGH_WITHOUT_ALKALI);
        Object limit = new LimitIs(Limit.PH_AMMONIA, 8.0);
        Firing spoken = spoken(row(Evidence.Speaks.FOR, high), List.of(limit, ph(8.1, Basis.MEASURED)))
                .get(0);
        assertEquals(0.75, spoken.degree(), TINY);
        assertEquals(List.of(limit, ph(8.1, Basis.MEASURED)), spoken.because());
        assertEquals(
                List.of(),
                spoken(
                        row(Evidence.Speaks.FOR, high),
                        List.of(limit, ph(8.1, Basis.MEASURED), new Seen(Sign.ASH_OR_LIME, 1))));
    }

    private static Reads ph(double value, Basis basis) {
        return new Reads(Reading.PH, value, value, value, basis);
    }

    private static List<Firing> spoken(Evidence row, List<Object> facts) {
        return inference(row).run(facts).of(Speaks.class);
    }

    /** The whole rulebook with this row as its only evidence. */
    private static Inference inference(Evidence row) {
        Knowledge k = KNOWLEDGE;
        return new Inference(
                RULES,
                new Knowledge(
                        k.signs(),
                        k.causes(),
                        k.dangers(),
                        k.remedies(),
                        k.cautions(),
                        k.limits(),
                        k.materials(),
                        k.measures(),
                        k.sources(),
                        k.usualDoses(),
                        k.keepOuts(),
                        k.sanitation(),
                        k.endUse(),
                        k.season(),
                        List.of(row),
                        k.weights()));
    }

    private static Evidence row(Evidence.Speaks speaks, When when) {
        return new Evidence(
                "WEIGH-4999",
                Cause.MATTED,
                speaks,
                Strength.STRONG,
                Witness.LOOK,
                when,
                "So it is.",
                "COMMON",
                Known.COMMON_PRACTICE);
    }
}
