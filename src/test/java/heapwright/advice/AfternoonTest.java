package heapwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import heapwright.advice.danger.DangerGate;
import heapwright.advice.engine.Outcome;
import heapwright.advice.engine.Pass;
import heapwright.advice.engine.RuleInfo;
import heapwright.advice.fact.Contradicts;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Known;
import heapwright.knowledge.Remedy;
import heapwright.knowledge.RemedyInfo.Urgency;
import heapwright.knowledge.Sign;
import heapwright.knowledge.Strength;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Minutes are those of the table of remedies: turning 75, burying food 10, loosening 20, covering against rain 15. */
@DisplayName("One afternoon's work")
class AfternoonTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 21);
    private static final RuleInfo RULE =
            new RuleInfo("REMEDY-1", "a: b", Pass.REMEDY, Strength.FAIR, Known.JUDGEMENT, "JUDGEMENT", "So it is.");

    private final List<Step> steps = new ArrayList<>();
    private List<Contradicts> contradictions = List.of();

    private AfternoonTest step(Remedy remedy, Urgency urgency, double chance) {
        steps.add(new Step(
                steps.size() + 1,
                new Option(
                        remedy,
                        List.of(new ProposalReason(Cause.TOO_WET, chance, RULE)),
                        1,
                        List.of(),
                        List.of(),
                        Optional.empty()),
                urgency,
                DAY,
                DAY,
                List.of(),
                false));
        return this;
    }

    private void jobs(String keeper, Remedy... jobs) {
        Outcome outcome = new HandRun().outcome();
        Advice advice = new Advice(
                TestPile.of("'asOf': '" + DAY + "'" + keeper),
                new DangerGate(TestPile.KNOWLEDGE).alarm(outcome.facts(), outcome.firings()),
                List.of(),
                List.of(),
                List.of(),
                steps,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                contradictions,
                List.of(),
                outcome,
                Optional.empty());
        assertEquals(
                List.of(jobs),
                Afternoon.of(advice, TestPile.KNOWLEDGE).jobs().stream()
                        .map(s -> s.main().remedy())
                        .toList());
    }

    @Test
    @DisplayName("is three jobs at most")
    void three() {
        step(Remedy.BURY_FOOD, Urgency.SOON, 0.9)
                .step(Remedy.LOOSEN_SIDES_AND_TOP, Urgency.SOON, 0.9)
                .step(Remedy.COVER_AGAINST_RAIN, Urgency.SOON, 0.9)
                .step(Remedy.MAKE_AIR_HOLES, Urgency.SOON, 0.9);
        jobs("", Remedy.BURY_FOOD, Remedy.LOOSEN_SIDES_AND_TOP, Remedy.COVER_AGAINST_RAIN);
    }

    @Test
    @DisplayName("fills the minutes that somebody has, to the minute, and is never without its first job")
    void minutes() {
        step(Remedy.TURN_FULLY, Urgency.SOON, 0.9).step(Remedy.COVER_AGAINST_RAIN, Urgency.SOON, 0.9);
        jobs(", 'keeper': {'minutes': 90}", Remedy.TURN_FULLY, Remedy.COVER_AGAINST_RAIN);
        jobs(", 'keeper': {'minutes': 89}", Remedy.TURN_FULLY);
        jobs(", 'keeper': {'minutes': 15}", Remedy.TURN_FULLY);
    }

    @Test
    @DisplayName("is the first job alone where two answers do not fit together")
    void contradiction() {
        contradictions = List.of(new Contradicts(Sign.SQUEEZE_STREAMS, Sign.SQUEEZE_CRUMBLES));
        step(Remedy.LOOK_AGAIN, Urgency.NOW, 0.9).step(Remedy.COVER_AGAINST_RAIN, Urgency.NOW, 0.9);
        jobs("", Remedy.LOOK_AGAIN);
    }

    @Test
    @DisplayName("takes on with a likely job no job for what is only possible, to the hundredth")
    void likely() {
        step(Remedy.BURY_FOOD, Urgency.SOON, 0.6)
                .step(Remedy.LOOSEN_SIDES_AND_TOP, Urgency.SOON, 0.6)
                .step(Remedy.COVER_AGAINST_RAIN, Urgency.SOON, 0.59);
        jobs("", Remedy.BURY_FOOD, Remedy.LOOSEN_SIDES_AND_TOP);
        steps.clear();
        step(Remedy.BURY_FOOD, Urgency.SOON, 0.59).step(Remedy.COVER_AGAINST_RAIN, Urgency.SOON, 0.4);
        jobs("", Remedy.BURY_FOOD, Remedy.COVER_AGAINST_RAIN);
    }

    @Test
    @DisplayName("puts nothing that can wait beside what presses, and rests when rest is the work")
    void presses() {
        step(Remedy.BURY_FOOD, Urgency.SOON, 0.9).step(Remedy.CHOP_COARSE, Urgency.LATER, 0.9);
        jobs("", Remedy.BURY_FOOD);
        steps.clear();
        step(Remedy.CHOP_COARSE, Urgency.LATER, 0.9).step(Remedy.SOAK_WOODY, Urgency.LATER, 0.9);
        jobs("", Remedy.CHOP_COARSE, Remedy.SOAK_WOODY);
        steps.clear();
        step(Remedy.CHOP_COARSE, Urgency.LATER, 0.9).step(Remedy.BURY_FOOD, Urgency.SOON, 0.9);
        jobs("", Remedy.CHOP_COARSE, Remedy.BURY_FOOD);
        steps.clear();
        step(Remedy.BURY_FOOD, Urgency.SOON, 0.9).step(Remedy.CURE, Urgency.REST, 0.9);
        jobs("", Remedy.BURY_FOOD, Remedy.CURE);
        steps.clear();
        step(Remedy.CURE, Urgency.REST, 0.9).step(Remedy.BURY_FOOD, Urgency.SOON, 0.9);
        jobs("", Remedy.CURE);
        steps.clear();
        step(Remedy.CHOP_COARSE, Urgency.LATER, 0.9).step(Remedy.CURE, Urgency.REST, 0.9);
        jobs("", Remedy.CHOP_COARSE, Remedy.CURE);
        steps.clear();
        step(Remedy.WATCH_FOR_FIRE, Urgency.NOW, 0.9).step(Remedy.CURE, Urgency.REST, 0.9);
        jobs("", Remedy.WATCH_FOR_FIRE);
    }
}
