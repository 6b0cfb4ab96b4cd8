package heapwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import heapwright.advice.danger.Alarm;
import heapwright.advice.danger.DangerGate;
import heapwright.advice.engine.Outcome;
import heapwright.advice.fact.Proposes;
import heapwright.advice.fact.Reads;
import heapwright.advice.fact.Seen;
import heapwright.advice.fact.Stands;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Danger;
import heapwright.knowledge.Reading;
import heapwright.knowledge.Remedy;
import heapwright.knowledge.RemedyInfo;
import heapwright.knowledge.RemedyInfo.Urgency;
import heapwright.knowledge.Sign;
import heapwright.pile.Pile;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("While a danger stands")
class GatedAdviceTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 21);
    private static final Pile PILE = TestPile.of("'asOf': '" + DAY + "'");
    private static final Finding WET = HandRun.finding(Cause.TOO_WET, 0.7);

    private static Alarm alarm(Outcome outcome) {
        return new DangerGate(TestPile.KNOWLEDGE)
                .alarm(outcome.facts(), outcome.firings())
                .orElseThrow();
    }

    private static Advice advice(HandRun run, Finding... found) {
        Outcome outcome = run.outcome();
        return new GatedAdvice(TestPile.KNOWLEDGE)
                .of(
                        PILE,
                        alarm(outcome),
                        outcome,
                        List.of(found),
                        List.of(new Reads(Reading.MOISTURE, 1, 2, 3, Reads.Basis.ESTIMATED)));
    }

    private static HandRun embers() {
        return new HandRun().likely(Cause.FIRE_RISK, 0.4).says(new Stands(Danger.EMBERS));
    }

    @Test
    @DisplayName("the findings are the dangers, and what else was found waits; that it works well is not said")
    void findings() {
        Advice advice =
                advice(embers(), HandRun.finding(Cause.WORKING_WELL, 0.9), WET, HandRun.finding(Cause.FIRE_RISK, 0.4));
        assertEquals(List.of(HandRun.finding(Cause.FIRE_RISK, 0.4)), advice.findings());
        assertEquals(List.of(WET), advice.whenSafe());
        assertEquals(1, advice.readings().size());
        assertTrue(advice.why().isEmpty());
        assertTrue(advice.alarm().isPresent());
    }

    @Test
    @DisplayName("the steps are its own, now, in order, each with its reason, its cautions and the days to look")
    void steps() {
        Advice advice = advice(embers(), WET);
        List<Remedy> expected = List.of(Remedy.ASK_ABOUT_ASH, Remedy.WATCH_FOR_FIRE);
        assertEquals(
                expected, advice.steps().stream().map(s -> s.main().remedy()).toList());
        assertEquals(List.of(1, 2), advice.steps().stream().map(Step::rank).toList());
        for (Step step : advice.steps()) {
            RemedyInfo info = TestPile.KNOWLEDGE.remedies().get(step.main().remedy());
            assertEquals(Urgency.NOW, step.urgency());
            assertEquals(DAY.plusDays(info.expectDays().from()), step.lookFrom());
            assertEquals(DAY.plusDays(info.expectDays().to()), step.lookTo());
            assertEquals(info.cautions(), step.main().cautions());
            ProposalReason ground = step.main().grounds().get(0);
            assertEquals(Cause.FIRE_RISK, ground.cause());
            assertEquals(0.4, ground.likelihood());
            assertEquals("RULE-1", ground.rule().id());
        }
        assertTrue(advice.firstAid().isEmpty());
    }

    @Test
    @DisplayName("it is not said why the pile is as it is, however likely the fire")
    void noWhy() {
        HandRun fire = new HandRun().likely(Cause.FIRE_RISK, 0.9).says(new Stands(Danger.FIRE));
        assertTrue(advice(fire, HandRun.finding(Cause.FIRE_RISK, 0.9)).why().isEmpty());
    }

    @Test
    @DisplayName("first aid comes before the pile")
    void firstAid() {
        Advice advice =
                advice(embers().says(new Stands(Danger.HURT)).says(new Proposes(Remedy.AID_BURN, Cause.SOMEBODY_HURT)));
        assertEquals(Optional.of(Remedy.AID_BURN), advice.firstAid());
        assertEquals(Urgency.FIRST_AID, advice.steps().get(0).urgency());
        assertEquals(
                List.of(Cause.SOMEBODY_HURT, Cause.FIRE_RISK),
                advice.findings().stream().map(Finding::cause).toList());
    }

    @Test
    @DisplayName("it asks what the dangers ask, each for the first danger that asks it, and not what was answered")
    void questions() {
        Outcome outcome = embers().says(new Stands(Danger.CARBON_MONOXIDE))
                .fact(new Seen(Sign.SMOKE, 0))
                .outcome();
        List<Question> asked = GatedAdvice.questions(alarm(outcome));
        assertEquals(Sign.CO_ALARM, asked.get(0).sign());
        assertEquals(Optional.of(Cause.GAS_IN_CLOSED_SPACE), asked.get(0).raises());
        Question ash = asked.stream()
                .filter(q -> q.sign() == Sign.ASH_WARM)
                .findFirst()
                .orElseThrow();
        assertEquals(new Question(Sign.ASH_WARM, 1, 0, Optional.of(Cause.FIRE_RISK), Optional.empty()), ash);
        assertTrue(asked.stream().noneMatch(q -> q.sign() == Sign.SMOKE));
    }
}
