package heapwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import heapwright.advice.danger.DangerGate;
import heapwright.advice.engine.Outcome;
import heapwright.advice.fact.Contradicts;
import heapwright.advice.fact.Stands;
import heapwright.knowledge.Cause;
import heapwright.knowledge.Danger;
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

/** Headlines of advice written by hand: what is said first, with likelihoods on both sides of each edge. */
@DisplayName("The headline of")
class HeadlineByHandTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 21);

    private final List<Finding> findings = new ArrayList<>();
    private final List<Contradicts> contradictions = new ArrayList<>();
    private final List<Step> steps = new ArrayList<>();
    private final HandRun run = new HandRun();

    private HeadlineByHandTest found(Cause cause, double likelihood) {
        findings.add(HandRun.finding(cause, likelihood));
        return this;
    }

    private HeadlineByHandTest stepFor(Cause... causes) {
        heapwright.advice.engine.RuleInfo rule = new heapwright.advice.engine.RuleInfo(
                "REMEDY-1",
                "a: b",
                heapwright.advice.engine.Pass.REMEDY,
                Strength.FAIR,
                Known.JUDGEMENT,
                "JUDGEMENT",
                "So it is.");
        List<ProposalReason> grounds = List.of(causes).stream()
                .map(c -> new ProposalReason(c, 0.5, rule))
                .toList();
        steps.add(new Step(
                steps.size() + 1,
                new Option(Remedy.TURN_FULLY, grounds, 1, List.of(), List.of(), Optional.empty()),
                Urgency.values()[0],
                DAY,
                DAY,
                List.of(),
                false));
        return this;
    }

    private Headline headline() {
        Outcome outcome = run.outcome();
        return Headline.of(
                new Advice(
                        TestPile.of("'asOf': '" + DAY + "'"),
                        new DangerGate(TestPile.KNOWLEDGE).alarm(outcome.facts(), outcome.firings()),
                        findings,
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
                        Optional.empty()),
                TestPile.KNOWLEDGE);
    }

    private void says(Headline.Kind kind, Cause... causes) {
        Headline headline = headline();
        assertEquals(kind, headline.kind());
        assertEquals(
                List.of(causes),
                headline.findings().stream().map(Finding::cause).toList());
    }

    @Test
    @DisplayName("nothing found is that it is unclear")
    void unclear() {
        says(Headline.Kind.UNCLEAR);
    }

    @Test
    @DisplayName("a danger is the danger, whatever else there is")
    void danger() {
        run.says(new Stands(Danger.FIRE));
        found(Cause.CONTAMINATED, 0.9).says(Headline.Kind.DANGER);
    }

    @Test
    @DisplayName("stuff that must not be used is that, where it is likely, before a contradiction")
    void mustNotBeUsed() {
        contradictions.add(new Contradicts(Sign.SOGGY, Sign.DUST_DRY));
        found(Cause.TOO_WET, 0.9)
                .found(Cause.CONTAMINATED, 0.60)
                .says(Headline.Kind.MUST_NOT_BE_USED, Cause.CONTAMINATED);
    }

    @Test
    @DisplayName("answers that cannot both be so is that, before any trouble")
    void contradiction() {
        contradictions.add(new Contradicts(Sign.SOGGY, Sign.DUST_DRY));
        found(Cause.TOO_WET, 0.9).found(Cause.CONTAMINATED, 0.59).says(Headline.Kind.CONTRADICTION);
    }

    @Test
    @DisplayName("troubles is three of them at most, the surer first, and of those as sure what the first step mends")
    void troubles() {
        found(Cause.TOO_WET, 0.9)
                .found(Cause.COMPACTED, 0.8)
                .found(Cause.LACKS_NITROGEN, 0.7)
                .found(Cause.COARSE_WOOD, 0.65)
                .stepFor(Cause.LACKS_NITROGEN)
                .stepFor(Cause.COMPACTED)
                .says(Headline.Kind.TROUBLE, Cause.TOO_WET, Cause.LACKS_NITROGEN, Cause.COMPACTED);
    }

    @Test
    @DisplayName(
            "a pile that is likely well, and likelier so than any trouble that is only possible, is that it is well")
    void well() {
        found(Cause.WORKING_WELL, 0.60)
                .found(Cause.MATURING, 0.6)
                .found(Cause.TOO_WET, 0.59)
                .says(Headline.Kind.WELL, Cause.WORKING_WELL);
    }

    @Test
    @DisplayName("a pile that is only perhaps well is the trouble that is possible")
    void perhapsWell() {
        found(Cause.WORKING_WELL, 0.59).found(Cause.TOO_WET, 0.4).says(Headline.Kind.TROUBLE, Cause.TOO_WET);
    }

    @Test
    @DisplayName("a pile that is well and in likely trouble names both, the likelier first, and three at most")
    void both() {
        found(Cause.JUST_BUILT, 0.8)
                .found(Cause.MATURING, 0.75)
                .found(Cause.TOO_WET, 0.7)
                .found(Cause.COMPACTED, 0.65)
                .found(Cause.COARSE_WOOD, 0.62)
                .says(Headline.Kind.TROUBLE, Cause.JUST_BUILT, Cause.TOO_WET, Cause.COMPACTED);
    }

    @Test
    @DisplayName("fungi and visitors that do no harm say nothing of the pile, so the trouble stands alone")
    void guests() {
        found(Cause.HARMLESS_FUNGI, 0.9)
                .found(Cause.FERMENT_SPOILT, 0.86)
                .says(Headline.Kind.TROUBLE, Cause.FERMENT_SPOILT);
    }

    @Test
    @DisplayName("a trouble as likely as that it is well is the trouble alone")
    void asLikely() {
        found(Cause.TOO_WET, 0.7).found(Cause.JUST_BUILT, 0.7).says(Headline.Kind.TROUBLE, Cause.TOO_WET);
    }

    @Test
    @DisplayName("a likely well pile whose first step is its care names that first")
    void care() {
        found(Cause.TOO_WET, 0.8)
                .found(Cause.WORKING_WELL, 0.6)
                .stepFor(Cause.WORKING_WELL)
                .says(Headline.Kind.TROUBLE, Cause.WORKING_WELL, Cause.TOO_WET);
    }

    @Test
    @DisplayName("a pile that is perhaps well, whose first step is its care, is the likely trouble alone")
    void careOfWhatIsPerhapsWell() {
        found(Cause.TOO_WET, 0.8)
                .found(Cause.WORKING_WELL, 0.59)
                .stepFor(Cause.WORKING_WELL)
                .says(Headline.Kind.TROUBLE, Cause.TOO_WET);
    }
}
