package heapwright.advice;

import heapwright.advice.fact.Grade;
import heapwright.advice.winter.Factor;
import heapwright.advice.winter.Story;
import heapwright.advice.winter.Verdict;
import heapwright.knowledge.Cause;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Why a pile is as it is, in one answer: the findings of the rules where one is likely, since they know what nose and
 * hand say and weigh the model too; else what the model reads from the temperatures.
 *
 * @param verdict the answer
 * @param factor what held it back most
 * @param cause the finding it rests on; empty where it rests on the model alone
 * @param temperatures what the temperatures alone would say, where that is another answer
 * @param model what held it back most by the model, where that is another thing than the finding tells
 * @param colder whether the core was measured below the band of a healthy pile, so that the temperatures bear it out
 */
public record WhyAnswer(
        Verdict verdict,
        Factor factor,
        Optional<Cause> cause,
        Optional<Verdict> temperatures,
        Optional<Factor> model,
        boolean colder) {

    /** What is wrong with the stuff itself: where such a finding leads, winter alone is no answer. */
    private static final Set<Cause> OF_THE_MIX =
            Set.of(Cause.TOO_MUCH_NITROGEN, Cause.TOO_ALKALINE, Cause.FAT_COATED, Cause.POORLY_MIXED);

    /** The answer of an advice; empty where neither rules nor model can say. */
    static Optional<WhyAnswer> of(List<Finding> findings, Optional<Story> story) {
        Optional<Finding> top = findings.stream()
                .filter(f -> f.grade().atLeast(Grade.LIKELY))
                .filter(f -> Factor.behind(f.cause()) != Factor.UNKNOWN)
                .findFirst();
        if (top.isPresent()) {
            boolean leads = !OF_THE_MIX.contains(findings.get(0).cause());
            return Optional.of(of(top.get().cause(), story, leads));
        }
        return story.map(s -> new WhyAnswer(
                s.verdict(), s.factor(), Optional.empty(), Optional.empty(), Optional.empty(), s.colder()));
    }

    private static WhyAnswer of(Cause cause, Optional<Story> story, boolean leads) {
        Factor factor = Factor.behind(cause);
        Verdict verdict =
                switch (cause) {
                    case FINISHED, MATURING, SPENT -> Verdict.FINISHED;
                    case JUST_BUILT, WORK_TOO_RECENT -> Verdict.TOO_EARLY;
                    case WORKING_WELL -> Verdict.WORKING;
                    case SLOWED_BY_WINTER, FROZEN_IN -> leads ? Verdict.JUST_WINTER : Verdict.SOMETHING_WRONG;
                    case TOO_SMALL_FOR_COLD ->
                        !leads
                                ? Verdict.SOMETHING_WRONG
                                : story.filter(s -> s.verdict() == Verdict.SOMETHING_WRONG)
                                        .map(Story::verdict)
                                        .orElse(Verdict.JUST_WINTER);
                    default -> Verdict.SOMETHING_WRONG;
                };
        return new WhyAnswer(
                verdict,
                factor,
                Optional.of(cause),
                story.map(Story::verdict).filter(said -> said != verdict && said != Verdict.TOO_EARLY),
                story.filter(s -> factor != Factor.NONE && parts(s, cause)).map(Story::factor),
                story.filter(Story::colder).isPresent());
    }

    /** Whether the model blames another thing than the finding tells, and would not have been helped most by that. */
    private static boolean parts(Story story, Cause cause) {
        Factor held = story.factor();
        return held != Factor.NONE
                && held != Factor.UNKNOWN
                && !held.agrees(cause)
                && story.costs().stream()
                        .findFirst()
                        .filter(dearest -> dearest.factor().agrees(cause))
                        .isEmpty();
    }
}
