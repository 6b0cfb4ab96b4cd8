package heapwright.advice.winter;

import heapwright.advice.fact.ModelSays;
import heapwright.knowledge.ModelFinding;
import heapwright.process.heat.Bounds;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a story tells the rules. */
public final class ModelFacts {

    private ModelFacts() {}

    /** The facts of a story, each in the degree in which its verdict is so; none for a pile that works or is too young. */
    public static List<ModelSays> of(Story story) {
        VerdictDegrees leaning = story.leaning();
        List<ModelSays> facts = new ArrayList<>();
        add(facts, ModelFinding.COLD_AS_HEALTHY, story, leaning.justWinter());
        // What was seen and smelt speaks for itself, and not once more by the model.
        List<Bounds> noticed =
                story.model().marks().stream().flatMap(m -> m.bounds().stream()).toList();
        if (noticed.stream().noneMatch(Bounds::spent)) {
            add(facts, ModelFinding.SPENT, story, leaning.finished());
        }
        add(facts, ModelFinding.COLDER_THAN_HEALTHY, story, leaning.somethingWrong());
        Optional<Factor> untold = Optional.of(story.ifWrong())
                .filter(f -> f != Factor.AIR || noticed.stream().noneMatch(b -> b.mostReach() < 1));
        untold.flatMap(ModelFacts::factor).ifPresent(says -> add(facts, says, story, leaning.somethingWrong()));
        return facts;
    }

    private static void add(List<ModelSays> facts, ModelFinding says, Story story, double degree) {
        if (degree > 0) {
            facts.add(new ModelSays(says, story.shortfallC(), degree));
        }
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
