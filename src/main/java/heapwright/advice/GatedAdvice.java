package heapwright.advice;

import heapwright.advice.danger.Alarm;
import heapwright.advice.danger.Alarm.AlarmStep;
import heapwright.advice.engine.Outcome;
import heapwright.advice.fact.Reads;
import heapwright.knowledge.Cause;
import heapwright.knowledge.CauseInfo.Kind;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.RemedyInfo;
import heapwright.knowledge.RemedyInfo.Urgency;
import heapwright.pile.Pile;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Makes advice of an alarm: its steps, its cautions, its questions; what else was found waits. */
final class GatedAdvice {

    private final Knowledge knowledge;

    GatedAdvice(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    /**
     * The advice while a danger stands.
     *
     * @param found what else was found, with the dangers among it
     */
    Advice of(Pile pile, Alarm alarm, Outcome outcome, List<Finding> found, List<Reads> readings) {
        Set<Cause> dangers = new LinkedHashSet<>();
        alarm.dangers().forEach(d -> dangers.add(d.info().cause()));
        return new Advice(
                pile,
                Optional.of(alarm),
                dangers.stream()
                        .map(c -> new Finding(outcome.weighed().get(c), Optional.empty()))
                        .toList(),
                found.stream()
                        .filter(f -> !dangers.contains(f.cause()))
                        .filter(f -> knowledge.causes().get(f.cause()).kind() != Kind.WELL)
                        .toList(),
                List.of(),
                steps(alarm, outcome, pile.asOf()),
                List.of(),
                alarm.cautions(),
                List.of(),
                readings,
                List.of(),
                List.of(),
                outcome,
                Optional.empty());
    }

    private List<Step> steps(Alarm alarm, Outcome outcome, LocalDate day) {
        List<Step> steps = new ArrayList<>();
        for (AlarmStep step : alarm.steps()) {
            RemedyInfo info = knowledge.remedies().get(step.remedy());
            Cause cause = step.against().info().cause();
            List<ProposalReason> grounds = step.against().because().stream()
                    .map(f -> new ProposalReason(
                            cause, outcome.weighed().get(cause).likelihood(), f.rule()))
                    .toList();
            steps.add(new Step(
                    steps.size() + 1,
                    new Option(step.remedy(), grounds, 0, List.of(), info.cautions(), Optional.empty()),
                    info.firstAid() ? Urgency.FIRST_AID : Urgency.NOW,
                    day.plusDays(info.expectDays().from()),
                    day.plusDays(info.expectDays().to()),
                    List.of(),
                    false));
        }
        return steps;
    }

    /** The questions of an alarm; each would settle the danger that it is asked for. */
    static List<Question> questions(Alarm alarm) {
        return alarm.asks().stream()
                .map(sign -> new Question(
                        sign,
                        1,
                        0,
                        alarm.dangers().stream()
                                .filter(d -> d.info().asks().contains(sign))
                                .map(d -> d.info().cause())
                                .findFirst(),
                        Optional.empty()))
                .toList();
    }
}
