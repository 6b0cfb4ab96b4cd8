package heapwright.advice.winter;

import heapwright.advice.fact.ModelSays;
import heapwright.knowledge.ModelFinding;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a story tells the rules. */
public final class ModelFacts {

    private ModelFacts() {}

    /** The facts of a story; none for a pile that works or is too young. */
    public static List<ModelSays> of(Story story) {
        List<ModelSays> facts = new ArrayList<>();
        switch (story.verdict()) {
            case JUST_WINTER -> facts.add(new ModelSays(ModelFinding.COLD_AS_HEALTHY, story.shortfallC()));
            case FINISHED -> facts.add(new ModelSays(ModelFinding.SPENT, story.shortfallC()));
            case SOMETHING_WRONG -> {
                facts.add(new ModelSays(ModelFinding.COLDER_THAN_HEALTHY, story.shortfallC()));
                factor(story.factor()).ifPresent(s -> facts.add(new ModelSays(s, story.shortfallC())));
            }
            case WORKING, TOO_EARLY -> {}
        }
        return facts;
    }

    private static Optional<ModelFinding> factor(Factor factor) {
        return Optional.ofNullable(
                switch (factor) {
                    case WATER -> ModelFinding.SHORT_OF_WATER;
                    case AIR -> ModelFinding.SHORT_OF_AIR;
                    case NITROGEN -> ModelFinding.SHORT_OF_NITROGEN;
                    case ACID -> ModelFinding.TOO_SOUR;
                    case PIECES -> ModelFinding.TOO_COARSE;
                    case HANDLING -> ModelFinding.OPENED_TOO_OFTEN;
                    default -> null;
                });
    }
}
