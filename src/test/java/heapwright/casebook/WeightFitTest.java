package heapwright.casebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.engine.EvidencePiece;
import heapwright.advice.engine.Pass;
import heapwright.advice.engine.RuleInfo;
import heapwright.advice.engine.Weighed;
import heapwright.casebook.Scored.Stated;
import heapwright.knowledge.Cause;
import heapwright.knowledge.KnowledgeReader;
import heapwright.knowledge.Known;
import heapwright.knowledge.Strength;
import heapwright.knowledge.Weights;
import heapwright.knowledge.Witness;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@DisplayName("The fit of the weights")
@Tag("thorough")
class WeightFitTest {

    private static final Weights TRUE = new Weights(
            Map.of(Strength.SLIGHT, 3.0, Strength.FAIR, 4.0, Strength.STRONG, 14.0, Strength.DECISIVE, 18.0), 0.25);

    @Test
    @DisplayName("stays where it began when there is nothing to learn from")
    void nothing() {
        Weights weights = new WeightFit().fit(List.of());
        for (Strength strength : Strength.values()) {
            assertEquals(WeightFit.BEFORE.of(strength), weights.of(strength), 0.01);
        }
        assertEquals(WeightFit.BEFORE.again(), weights.again(), 0.01);
    }

    /** Invented: what is so is drawn by the likelihood that the true weights give. */
    @Test
    @DisplayName("finds the weights by which many observations were drawn, and the same ones each time")
    void recovers() {
        List<Scored> drawn = drawn(4_000);
        Weights weights = new WeightFit(1).fit(drawn);
        for (Strength strength : Strength.values()) {
            assertEquals(TRUE.of(strength), weights.of(strength), 1.5, strength.id());
        }
        assertEquals(weights, new WeightFit(1).fit(drawn));
    }

    @Test
    @DisplayName("moves the less the more it costs to leave what was chosen before")
    void penalty() {
        List<Scored> drawn = drawn(200);
        double free = new WeightFit(0.1).fit(drawn).of(Strength.STRONG);
        double bound = new WeightFit(1_000).fit(drawn).of(Strength.STRONG);
        double before = WeightFit.BEFORE.of(Strength.STRONG);
        assertTrue(Math.abs(bound - before) < Math.abs(free - before), free + " and " + bound);
    }

    @Test
    @DisplayName("leaves each source out in turn")
    void leavesOut() {
        List<Scored> drawn = drawn(100);
        Map<String, Weights> others = new WeightFit(1).leavingOut(drawn);
        assertEquals(List.of("A", "B"), List.copyOf(others.keySet()));
        assertNotEquals(others.get("A"), others.get("B"));
        assertEquals(
                others.get("A"),
                new WeightFit(1)
                        .fit(drawn.stream()
                                .filter(s -> s.tested().source().equals("B"))
                                .toList()));
    }

    /** So that the weights in force are what the fit gives, and not what somebody typed. */
    @Test
    @DisplayName("gives the weights in force, from the cases that may be learned from and the published tables")
    void inForce() {
        List<Scored> scored = Stream.concat(
                        JudgedCases.below("fresh").stream(), JudgedCases.below("published").stream())
                .map(j -> Scored.of(j.tested(), j.advice(), Verdict.of(j.tested(), j.advice(), j.audit())))
                .toList();
        Weights fitted = new WeightFit().fit(scored);
        Weights inForce = KnowledgeReader.packed().weights();
        for (Strength strength : Strength.values()) {
            assertEquals(inForce.of(strength), fitted.of(strength), 0.05 * inForce.of(strength), strength.id());
        }
        assertEquals(inForce.again(), fitted.again(), 0.03);
    }

    private static List<Scored> drawn(int cases) {
        Random random = new Random(7);
        List<Scored> drawn = new ArrayList<>();
        for (int i = 0; i < cases; i++) {
            List<EvidencePiece> supports = new ArrayList<>();
            List<EvidencePiece> opposes = new ArrayList<>();
            for (Witness witness : List.of(Witness.SMELL, Witness.WATER)) {
                Strength strength = Strength.values()[random.nextInt(Strength.values().length)];
                boolean supporting = random.nextBoolean();
                (supporting ? supports : opposes).add(piece(strength, witness, supporting ? 1 : -1));
            }
            Weighed weighed = new Weighed(Cause.TOO_WET, 0.3, 0.3, supports, opposes).under(TRUE);
            drawn.add(scored(i % 2 == 0 ? "A" : "B", weighed, random.nextDouble() < weighed.likelihood()));
        }
        return drawn;
    }

    private static EvidencePiece piece(Strength strength, Witness witness, int sign) {
        RuleInfo row = new RuleInfo(
                "WEIGH-" + witness, "a row", Pass.WEIGH, strength, Known.JUDGEMENT, "JUDGEMENT", "So it is.");
        return new EvidencePiece(row, Cause.TOO_WET, witness, sign * TRUE.of(strength), 1, 1, List.of());
    }

    private static Scored scored(String source, Weighed weighed, boolean so) {
        Case demo = JudgedCases.below("demo").get(0).tested();
        Case tested = new Case(demo.file(), demo.says(), source, demo.row(), demo.known(), demo.pile(), demo.expect());
        return new Scored(
                tested,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false,
                true,
                List.of(new Stated(weighed, so)));
    }
}
