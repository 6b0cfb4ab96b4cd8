package heapwright.advice;

import heapwright.advice.danger.Alarm;
import heapwright.advice.engine.Outcome;
import heapwright.advice.fact.Contradicts;
import heapwright.advice.fact.Reads;
import heapwright.advice.winter.Story;
import heapwright.knowledge.Caution;
import heapwright.knowledge.Remedy;
import heapwright.knowledge.RemedyInfo.Urgency;
import heapwright.pile.Pile;
import java.util.List;
import java.util.Optional;

/**
 * What Heapwright says of a pile on a day.
 *
 * @param pile the pile as it was read
 * @param alarm the danger that stands and what to say of it; then the steps, cautions and questions are its own
 * @param findings what stands, the likeliest first; while a danger stands only the dangers
 * @param whenSafe what else was found and waits until the danger is over
 * @param setAside what would be possible but is explained by another finding
 * @param steps what to do, in order; no two undo each other
 * @param withheld what is held back, with the reason
 * @param cautions what to beware of whatever is done
 * @param questions which observations would settle the rest, the most telling first
 * @param readings the quantities the rules read
 * @param contradictions answers that cannot both be so
 * @param homeRemedies what the usual home doses amount to here
 * @param outcome the run of the rules behind it
 * @param story what the model reads from the past; empty without a recipe or a measured core
 */
public record Advice(
        Pile pile,
        Optional<Alarm> alarm,
        List<Finding> findings,
        List<Finding> whenSafe,
        List<Finding> setAside,
        List<Step> steps,
        List<WithheldStep> withheld,
        List<Caution> cautions,
        List<Question> questions,
        List<Reads> readings,
        List<Contradicts> contradictions,
        List<HomeRemedy> homeRemedies,
        Outcome outcome,
        Optional<Story> story) {
    public Advice {
        findings = List.copyOf(findings);
        whenSafe = List.copyOf(whenSafe);
        setAside = List.copyOf(setAside);
        steps = List.copyOf(steps);
        withheld = List.copyOf(withheld);
        cautions = List.copyOf(cautions);
        questions = List.copyOf(questions);
        readings = List.copyOf(readings);
        contradictions = List.copyOf(contradictions);
        homeRemedies = List.copyOf(homeRemedies);
    }

    /** The same advice with these questions. */
    Advice asking(List<Question> asked) {
        return new Advice(
                pile,
                alarm,
                findings,
                whenSafe,
                setAside,
                steps,
                withheld,
                cautions,
                asked,
                readings,
                contradictions,
                homeRemedies,
                outcome,
                story);
    }

    /** Why the pile is as it is; empty where neither rules nor model can say, and while a danger stands. */
    public Optional<WhyAnswer> why() {
        return alarm.isPresent() ? Optional.empty() : WhyAnswer.of(findings, story);
    }

    /** What to do first for somebody who is hurt or ill; it comes before the pile. */
    public Optional<Remedy> firstAid() {
        return steps.stream()
                .filter(s -> s.urgency() == Urgency.FIRST_AID)
                .map(s -> s.main().remedy())
                .findFirst();
    }
}
