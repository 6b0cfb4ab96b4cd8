package heapwright.advice.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.fact.Grade;
import heapwright.advice.fact.ModelSays;
import heapwright.advice.fact.Seen;
import heapwright.advice.fact.Speaks;
import heapwright.knowledge.Cause;
import heapwright.knowledge.CauseInfo;
import heapwright.knowledge.Evidence;
import heapwright.knowledge.Known;
import heapwright.knowledge.ModelFinding;
import heapwright.knowledge.Sign;
import heapwright.knowledge.Strength;
import heapwright.knowledge.Weights;
import heapwright.knowledge.When;
import heapwright.knowledge.Witness;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The scales")
class EvidenceSumTest {

    private static final double TINY = 1e-12;

    /** Round figures for sums by hand; the weights in force are another matter. */
    private static final Weights WEIGHTS = new Weights(
            Map.of(Strength.SLIGHT, 2.0, Strength.FAIR, 5.0, Strength.STRONG, 10.0, Strength.DECISIVE, 20.0), 0.25);

    @Test
    @DisplayName("leave a cause of which no row speaks at its base rate")
    void baseRate() {
        assertEquals(0.05, weigh(0.05, List.of()).likelihood(), TINY);
    }

    @Test
    @DisplayName("multiply the odds by ten for ten decibans: one in eleven becomes ten in eleven after twenty")
    void tenDecibans() {
        assertEquals(
                0.5,
                weigh(1.0 / 11, List.of(pro("A", Strength.STRONG, Witness.SMELL)))
                        .likelihood(),
                TINY);
        assertEquals(
                10.0 / 11,
                weigh(1.0 / 11, List.of(pro("A", Strength.DECISIVE, Witness.SMELL)))
                        .likelihood(),
                TINY);
    }

    @Test
    @DisplayName("add up by hand: 20 in 100, fairly for and slightly for, is 0.556")
    void byHand() {
        // Odds 0.25; 5 + 2 = 7 decibans multiply by 10^0.7 = 5.0119; odds 1.25297; likelihood 0.55614.
        Weighed weighed =
                weigh(0.2, List.of(pro("A", Strength.FAIR, Witness.SMELL), pro("B", Strength.SLIGHT, Witness.WATER)));
        assertEquals(0.55614, weighed.likelihood(), 1e-5);
    }

    @Test
    @DisplayName("take away for evidence against as much as they add for evidence for")
    void against() {
        Weighed weighed = weigh(
                0.3, List.of(pro("A", Strength.STRONG, Witness.SMELL), con("B", Strength.STRONG, Witness.WARMTH)));
        assertEquals(0.3, weighed.likelihood(), TINY);
        assertEquals(List.of("A"), ids(weighed.supports()));
        assertEquals(List.of("B"), ids(weighed.opposes()));
    }

    @Test
    @DisplayName("hear one witness once: the strongest in full, a quarter of the second, a sixteenth of the third")
    void oneWitnessOnce() {
        Weighed weighed = weigh(
                0.5,
                List.of(
                        pro("B", Strength.FAIR, Witness.SMELL),
                        pro("A", Strength.STRONG, Witness.SMELL),
                        pro("C", Strength.SLIGHT, Witness.SMELL)));
        // 10 + 5/4 + 2/16 = 11.375 decibans, odds 13.725.
        assertEquals(13.725 / 14.725, weighed.likelihood(), 1e-4);
        assertEquals(List.of("A", "B", "C"), ids(weighed.supports()));
        assertEquals(
                List.of(1.0, 0.25, 0.0625),
                weighed.supports().stream().map(EvidencePiece::share).toList());
    }

    @Test
    @DisplayName("count of one witness the strongest for and the strongest against in full")
    void bothWays() {
        Weighed weighed = weigh(
                0.5,
                List.of(
                        pro("A", Strength.STRONG, Witness.SMELL),
                        con("B", Strength.FAIR, Witness.SMELL),
                        con("C", Strength.SLIGHT, Witness.SMELL)));
        // 10 - 5 - 2/4 = 4.5 decibans, odds 10^0.45 = 2.81838.
        assertEquals(2.81838 / 3.81838, weighed.likelihood(), 1e-6);
    }

    @Test
    @DisplayName("let what was reckoned step behind what hand or nose says against it, and behind nothing else")
    void toldBeatsReckoned() {
        Firing model = reckoned("M", Evidence.Speaks.FOR, Strength.STRONG);
        // Alone 10 decibans: odds 10. Against a slight touch 10/4 - 2 = 0.5: odds 10^0.05 = 1.12202.
        assertEquals(10.0 / 11, weigh(0.5, List.of(model)).likelihood(), TINY);
        assertEquals(
                1.12202 / 2.12202,
                weigh(0.5, List.of(model, con("A", Strength.SLIGHT, Witness.WATER)))
                        .likelihood(),
                1e-6);
        // Another witness leaves it whole: 10 - 2 = 8, odds 6.30957.
        assertEquals(
                6.30957 / 7.30957,
                weigh(0.5, List.of(model, con("A", Strength.SLIGHT, Witness.SMELL)))
                        .likelihood(),
                1e-6);
    }

    @Test
    @DisplayName("never sink for one more piece in favour, whatever else was told or reckoned")
    void oneMore() {
        Random random = new Random(3);
        for (int i = 0; i < 2_000; i++) {
            List<Firing> firings = new ArrayList<>();
            for (int n = random.nextInt(6); n >= 0; n--) {
                firings.add(anyFiring("P" + n, random, random.nextBoolean()));
            }
            double before = weigh(0.2, firings).likelihood();
            firings.add(anyFiring("X", random, true));
            assertTrue(weigh(0.2, firings).likelihood() >= before - TINY, firings::toString);
        }
    }

    @Test
    @DisplayName("hear a row that several facts made speak once, with all of them as its ground")
    void rowSpeaksOnce() {
        Firing one = firing(row("A", Evidence.Speaks.FOR, Strength.STRONG, Witness.SMELL), Sign.SOGGY);
        Firing two = firing(row("A", Evidence.Speaks.FOR, Strength.STRONG, Witness.SMELL), Sign.SLIMY);
        Weighed weighed = weigh(0.5, List.of(one, two));
        assertEquals(1, weighed.supports().size());
        assertEquals(2, weighed.supports().get(0).because().size());
        assertEquals(10.0 / 11, weighed.likelihood(), TINY);
    }

    @Test
    @DisplayName("count evidence in the degree in which its ground holds: half of ten decibans is five")
    void degrees() {
        Firing half = firing(row("A", Evidence.Speaks.FOR, Strength.STRONG, Witness.SMELL), Sign.SOGGY, 0.5);
        Weighed weighed = weigh(0.5, List.of(half));
        // 5 decibans, odds 10^0.5 = 3.16228.
        assertEquals(3.16228 / 4.16228, weighed.likelihood(), 1e-6);
        assertEquals(5, weighed.supports().get(0).decibans(), TINY);
        assertEquals(0.5, weighed.supports().get(0).degree(), TINY);
    }

    @Test
    @DisplayName("let a whole weak piece outweigh a faint strong one of the same witness")
    void faint() {
        Firing faint = firing(row("A", Evidence.Speaks.FOR, Strength.DECISIVE, Witness.SMELL), Sign.SOGGY, 0.1);
        Weighed weighed = weigh(0.5, List.of(faint, pro("B", Strength.FAIR, Witness.SMELL)));
        assertEquals(List.of("B", "A"), ids(weighed.supports()));
        // 5 + 2/4 = 5.5 decibans, odds 10^0.55 = 3.54813.
        assertEquals(3.54813 / 4.54813, weighed.likelihood(), 1e-6);
    }

    @Test
    @DisplayName("take a row that spoke twice in the better degree")
    void betterDegree() {
        Firing faint = firing(row("A", Evidence.Speaks.FOR, Strength.STRONG, Witness.SMELL), Sign.SOGGY, 0.2);
        Firing whole = firing(row("A", Evidence.Speaks.FOR, Strength.STRONG, Witness.SMELL), Sign.SLIMY, 1);
        assertEquals(10.0 / 11, weigh(0.5, List.of(faint, whole)).likelihood(), TINY);
        assertEquals(10.0 / 11, weigh(0.5, List.of(whole, faint)).likelihood(), TINY);
    }

    @Test
    @DisplayName("come to the same whatever the order in which rules fired")
    void orderFree() {
        List<Firing> firings = new ArrayList<>(List.of(
                pro("A", Strength.STRONG, Witness.SMELL),
                pro("B", Strength.STRONG, Witness.SMELL),
                con("C", Strength.FAIR, Witness.WARMTH),
                pro("D", Strength.SLIGHT, Witness.AGE),
                con("E", Strength.DECISIVE, Witness.WATER)));
        Weighed first = weigh(0.07, firings);
        Random random = new Random(1);
        for (int i = 0; i < 50; i++) {
            Collections.shuffle(firings, random);
            assertEquals(first, weigh(0.07, firings));
        }
    }

    @Test
    @DisplayName("stay between never and always under a mountain of evidence")
    void neverCertain() {
        List<Firing> mountain = new ArrayList<>();
        for (Witness witness : Witness.values()) {
            mountain.add(pro("A-" + witness, Strength.DECISIVE, witness));
        }
        double likelihood = weigh(0.05, mountain).likelihood();
        assertTrue(likelihood > 0.999 && likelihood <= 1, "" + likelihood);
    }

    @Test
    @DisplayName("weigh only the cause that a row speaks of")
    void otherCauseUntouched() {
        EvidenceSum scales = new EvidenceSum(
                Map.of(Cause.TOO_WET, info(Cause.TOO_WET, 0.1), Cause.MATTED, info(Cause.MATTED, 0.2)), WEIGHTS);
        Map<Cause, Weighed> all = scales.weigh(List.of(pro("A", Strength.STRONG, Witness.SMELL)));
        assertEquals(0.2, all.get(Cause.MATTED).likelihood(), TINY);
        assertFalse(all.get(Cause.TOO_WET).supports().isEmpty());
    }

    @Test
    @DisplayName("put likelihoods into words: possible from 30, likely from 60, very likely from 85 in 100")
    void grades() {
        assertEquals(Grade.UNLIKELY, Grade.of(0.2999));
        assertEquals(Grade.POSSIBLE, Grade.of(0.30));
        assertEquals(Grade.POSSIBLE, Grade.of(0.5999));
        assertEquals(Grade.LIKELY, Grade.of(0.60));
        assertEquals(Grade.VERY_LIKELY, Grade.of(0.85));
        assertEquals(Grade.VERY_LIKELY, Grade.of(1));
    }

    private static Weighed weigh(double baseRate, List<Firing> firings) {
        return new EvidenceSum(Map.of(Cause.TOO_WET, info(Cause.TOO_WET, baseRate)), WEIGHTS)
                .weigh(firings)
                .get(Cause.TOO_WET);
    }

    private static Firing pro(String id, Strength strength, Witness witness) {
        return firing(row(id, Evidence.Speaks.FOR, strength, witness), Sign.SOGGY);
    }

    private static Firing con(String id, Strength strength, Witness witness) {
        return firing(row(id, Evidence.Speaks.AGAINST, strength, witness), Sign.SOGGY);
    }

    private static Firing anyFiring(String id, Random random, boolean supports) {
        Strength strength = Strength.values()[random.nextInt(Strength.values().length)];
        Evidence.Speaks speaks = supports ? Evidence.Speaks.FOR : Evidence.Speaks.AGAINST;
        Witness witness = random.nextBoolean() ? Witness.WATER : Witness.SMELL;
        return witness == Witness.WATER && random.nextBoolean()
                ? reckoned(id, speaks, strength)
                : firing(row(id, speaks, strength, witness), Sign.SOGGY, 1 - random.nextDouble());
    }

    /** What the model of heat says of the water. */
    private static Firing reckoned(String id, Evidence.Speaks speaks, Strength strength) {
        Firing told = firing(row(id, speaks, strength, Witness.WATER), Sign.SOGGY);
        return new Firing(told.rule(), List.of(new ModelSays(ModelFinding.SHORT_OF_AIR, 5, 1)), told.result());
    }

    private static Evidence row(String id, Evidence.Speaks speaks, Strength strength, Witness witness) {
        return new Evidence(
                id,
                Cause.TOO_WET,
                speaks,
                strength,
                witness,
                new When.Seen(List.of(Sign.SOGGY, Sign.SLIMY)),
                "So it is.",
                "JUDGEMENT",
                Known.JUDGEMENT);
    }

    private static Firing firing(Evidence row, Sign because) {
        return firing(row, because, 1);
    }

    private static Firing firing(Evidence row, Sign because, double degree) {
        RuleInfo rule =
                new RuleInfo(row.id(), row.id(), Pass.WEIGH, row.strength(), row.known(), row.source(), row.because());
        return new Firing(rule, List.of(new Seen(because, 0)), new Speaks(row), degree);
    }

    private static CauseInfo info(Cause cause, double baseRate) {
        return new CauseInfo(
                cause,
                cause.id(),
                CauseInfo.Kind.TROUBLE,
                "It is so.",
                "It is so.",
                baseRate,
                "Look.",
                List.of("JUDGEMENT"),
                Known.JUDGEMENT);
    }

    private static List<String> ids(List<EvidencePiece> pieces) {
        return pieces.stream().map(p -> p.rule().id()).toList();
    }
}
