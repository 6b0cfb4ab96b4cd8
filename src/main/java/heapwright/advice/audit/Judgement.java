package heapwright.advice.audit;

import heapwright.advice.engine.Firing;
import heapwright.advice.fact.Judges;
import heapwright.advice.fact.LimitIs;
import heapwright.advice.fact.Mark;
import heapwright.advice.fact.Topic;
import heapwright.knowledge.Limit;
import java.util.Comparator;
import java.util.Optional;
import java.util.Set;

/**
 * What one audit rule says of a recipe.
 *
 * @param topic what it judges
 * @param mark what it says of it
 * @param firing the rule and the facts it spoke on
 */
public record Judgement(Topic topic, Mark mark, Firing firing) {

    /** Where a range has two edges, the one that parts good from less good. */
    private static final Set<Limit> EDGES_OF_GOOD = Set.of(
            Limit.MOISTURE_GOOD_LOW,
            Limit.MOISTURE_GOOD_HIGH,
            Limit.CN_GOOD_LOW,
            Limit.CN_GOOD_HIGH,
            Limit.FAS_POOR,
            Limit.DENSITY_GOOD_HIGH,
            Limit.PIECE_GOOD,
            Limit.VOLUME_WINTER);

    static Judgement of(Firing firing) {
        Judges judges = (Judges) firing.result();
        return new Judgement(judges.topic(), judges.mark(), firing);
    }

    /** The limit that the recipe passed, where the judgement is not that it fits. */
    public Optional<LimitIs> decidedBy() {
        if (mark == Mark.FITS) {
            return Optional.empty();
        }
        return firing.because().stream()
                .filter(LimitIs.class::isInstance)
                .map(LimitIs.class::cast)
                .min(Comparator.comparing(l -> !EDGES_OF_GOOD.contains(l.limit())));
    }
}
