package heapwright.advice.ready;

import heapwright.knowledge.RipeReasonInfo;
import heapwright.knowledge.Ripeness;
import heapwright.pile.HomeTest;
import heapwright.pile.Pile;
import heapwright.process.use.Left;
import heapwright.process.use.TestResults;
import java.util.List;
import java.util.Map;

/**
 * Whether the compost of a pile is ready, for what, and what follows.
 *
 * @param pile the pile
 * @param grade what it is ripe enough for
 * @param sure how sure that is
 * @param reasons what holds it back, the gates first, then what holds it back most
 * @param contradictions what speaks against each other
 * @param results of each home test the latest result
 * @param tests the home tests that would tell more, with their days
 * @param left how much there is
 * @param covers the uses, and how far it goes
 * @param dates the days that matter
 */
public record ReadyAnswer(
        Pile pile,
        Ripeness grade,
        Sureness sure,
        List<RipeReasonInfo> reasons,
        List<AtOdds> contradictions,
        Map<HomeTest, TestResults.OnDay> results,
        List<TestPlan> tests,
        Left left,
        List<Cover> covers,
        ReadyDates dates) {
    public ReadyAnswer {
        reasons = List.copyOf(reasons);
        contradictions = List.copyOf(contradictions);
        results = Map.copyOf(results);
        tests = List.copyOf(tests);
        covers = List.copyOf(covers);
    }

    /** What speaks against each other. */
    public enum AtOdds {
        /** A test came out well, and it smells foul. */
        GOOD_TEST_FOUL_SMELL,
        /** A test came out well, and it is warm. */
        GOOD_TEST_WARM,
        /** A test came out otherwise than the time before. */
        TEST_CHANGED,
        /** A newer test came out well after the peas had failed, though weedkiller stays for years. */
        PEAS_WELL_AFTER_FAILING,
        /** Answers of the record cannot both be so. */
        ANSWERS
    }

    /** The reasons that hold it to its grade, and every gate. */
    public List<RipeReasonInfo> binding() {
        return reasons.stream().filter(r -> r.danger() || r.allows() == grade).toList();
    }

    /** Whether a gate, and not only its ripeness, keeps it from every use. */
    public boolean held() {
        return reasons.stream().anyMatch(r -> r.danger() && r.allows() == Ripeness.NOT_YET);
    }
}
