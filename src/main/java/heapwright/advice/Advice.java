package heapwright.advice;

import heapwright.advice.engine.Outcome;
import heapwright.advice.fact.Contradicts;
import heapwright.advice.fact.Reads;
import heapwright.advice.winter.Story;
import heapwright.knowledge.Caution;
import heapwright.pile.Pile;
import heapwright.knowledge.Remedy;
import heapwright.knowledge.RemedyInfo.Urgency;
import java.util.List;
import java.util.Optional;

/**
 * What Heapwright says of a pile on a day.
 *
 * @param pile the pile as it was read
 * @param findings what stands, danger first, then the likeliest
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
        List<Finding> findings,
        List<Finding> setAside,
        List<Step> steps,
        List<Held> withheld,
        List<Caution> cautions,
        List<Question> questions,
        List<Reads> readings,
        List<Contradicts> contradictions,
        List<HomeRemedy> homeRemedies,
        Outcome outcome,
        Optional<Story> story) {
    public Advice {
        findings = List.copyOf(findings);
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
                findings,
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

    /** Why the pile is as it is; empty where neither rules nor model can say. */
    public Optional<WhyAnswer> why() {
        return WhyAnswer.of(findings, story);
    }

    /** What to do first for somebody who is hurt or ill; it comes before the pile. */
    public Optional<Remedy> firstAid() {
        return steps.stream()
                .filter(s -> s.urgency() == Urgency.FIRST_AID)
                .map(s -> s.main().remedy())
                .findFirst();
    }
}
