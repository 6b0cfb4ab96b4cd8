package heapwright.advice.danger;

import heapwright.advice.engine.Firing;
import heapwright.knowledge.DangerInfo;
import java.util.List;

/**
 * A danger that stands.
 *
 * @param info what the table says of it
 * @param because the rules that say so, at least one
 */
public record StandingDanger(DangerInfo info, List<Firing> because) {
    public StandingDanger {
        because = List.copyOf(because);
    }
}
