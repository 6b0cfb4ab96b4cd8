package heapwright.advice.danger;

import heapwright.knowledge.Caution;
import heapwright.knowledge.Remedy;
import heapwright.knowledge.Sign;
import java.util.List;

/**
 * What is said while a danger stands: this and nothing else.
 *
 * @param dangers the dangers that stand, the gravest first; at least one
 * @param steps what to do, in order, each with the danger it is for; at least one
 * @param cautions what to beware of
 * @param asks what to find out from outside, the most telling first; without what was answered
 */
public record Alarm(List<StandingDanger> dangers, List<AlarmStep> steps, List<Caution> cautions, List<Sign> asks) {
    public Alarm {
        dangers = List.copyOf(dangers);
        steps = List.copyOf(steps);
        cautions = List.copyOf(cautions);
        asks = List.copyOf(asks);
    }

    /**
     * A step against a danger.
     *
     * @param remedy what to do
     * @param against the danger it is for
     */
    public record AlarmStep(Remedy remedy, StandingDanger against) {}
}
