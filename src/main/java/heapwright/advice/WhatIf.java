package heapwright.advice;

import heapwright.advice.winter.StepTrials;
import heapwright.advice.winter.Story;
import heapwright.advice.winter.Trial;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Remedy;
import heapwright.process.dose.DoseAmount;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What steps of a piece of advice would do, by the model that also says what each wins.
 *
 * @param choices the steps that can be chosen, in the order of the advice
 * @param together the chosen steps that are reckoned, together
 * @param left the chosen steps that are not, with the reason
 * @param trial the course ahead with and without them
 */
public record WhatIf(List<Choice> choices, List<Remedy> together, List<Left> left, Trial trial) {

    public WhatIf {
        choices = List.copyOf(choices);
        together = List.copyOf(together);
        left = List.copyOf(left);
    }

    /**
     * A step to choose.
     *
     * @param option the step with its amounts
     * @param alternativeTo the leading way of the same step, where this is another
     * @param canTry whether the model can try it
     */
    public record Choice(Option option, Optional<Remedy> alternativeTo, boolean canTry) {}

    /** Why a chosen step is not reckoned. */
    public enum Reason {
        /** The model is not one of this pile. */
        MISFIT,
        /** The model knows nothing of what it does. */
        UNKNOWN_TO_MODEL,
        /** Another way of the same step is reckoned already, and one is enough. */
        ONE_IS_ENOUGH,
        /** It would undo one that is reckoned. */
        UNDOES
    }

    /** A chosen step that is not reckoned, why, and the other step that the reason names. */
    public record Left(Remedy remedy, Reason reason, Optional<Remedy> other) {}

    /**
     * Tries steps.
     *
     * @param advice the advice on the pile
     * @param chosen the steps; what the advice does not propose is passed over
     * @param knowledge the tables, which say what undoes what
     * @return empty where the model cannot say: without a recipe or a measured core
     */
    public static Optional<WhatIf> of(Advice advice, Collection<Remedy> chosen, Knowledge knowledge) {
        return advice.story().map(story -> of(advice, chosen, knowledge, story));
    }

    private static WhatIf of(Advice advice, Collection<Remedy> chosen, Knowledge knowledge, Story story) {
        StepTrials trials = new StepTrials(story.now());
        List<Choice> choices = new ArrayList<>();
        Map<Remedy, List<DoseAmount>> steps = new LinkedHashMap<>();
        List<Left> left = new ArrayList<>();
        for (Step step : advice.steps()) {
            Optional<Remedy> taken = Optional.empty();
            for (Option option : ways(step)) {
                Remedy remedy = option.remedy();
                boolean canTry = trials.canTry(remedy, option.doses());
                boolean leading = option == step.main();
                choices.add(new Choice(
                        option,
                        leading ? Optional.empty() : Optional.of(step.main().remedy()),
                        canTry));
                if (!chosen.contains(remedy)) {
                    continue;
                }
                Optional<Remedy> undone = steps.keySet().stream()
                        .filter(s -> knowledge.remedies().get(s).undoes().contains(remedy))
                        .findFirst();
                if (!trials.fits()) {
                    left.add(new Left(remedy, Reason.MISFIT, Optional.empty()));
                } else if (!canTry) {
                    left.add(new Left(remedy, Reason.UNKNOWN_TO_MODEL, Optional.empty()));
                } else if (taken.isPresent()) {
                    left.add(new Left(remedy, Reason.ONE_IS_ENOUGH, taken));
                } else if (undone.isPresent()) {
                    left.add(new Left(remedy, Reason.UNDOES, undone));
                } else {
                    steps.put(remedy, option.doses());
                    taken = Optional.of(remedy);
                }
            }
        }
        return new WhatIf(choices, List.copyOf(steps.keySet()), left, trials.together(steps));
    }

    private static List<Option> ways(Step step) {
        List<Option> ways = new ArrayList<>();
        ways.add(step.main());
        ways.addAll(step.alternatives());
        return ways;
    }

    /** Whether a step is chosen, reckoned or not. */
    public boolean chosen(Remedy remedy) {
        return together.contains(remedy) || left.stream().anyMatch(l -> l.remedy() == remedy);
    }
}
