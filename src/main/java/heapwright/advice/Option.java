package heapwright.advice;

import heapwright.advice.winter.Gain;
import heapwright.knowledge.Caution;
import heapwright.knowledge.Remedy;
import heapwright.process.dose.DoseAmount;
import java.util.List;
import java.util.Optional;

/**
 * One way to take a step.
 *
 * @param remedy what to do
 * @param grounds why, the likeliest cause first
 * @param worth days of progress it is expected to win, less its labour and risk in the same coin; for ranking only
 * @param doses how much of what
 * @param cautions what to beware of, the gravest first
 * @param gain what it would win on this pile, where the model can say and it wins something
 */
public record Option(
        Remedy remedy,
        List<ProposalReason> grounds,
        double worth,
        List<DoseAmount> doses,
        List<Caution> cautions,
        Optional<Gain> gain) {
    public Option {
        grounds = List.copyOf(grounds);
        doses = List.copyOf(doses);
        cautions = List.copyOf(cautions);
    }

    /** The same with another worth. */
    Option valued(double other) {
        return new Option(remedy, grounds, other, doses, cautions, gain);
    }

    /** The likelihood of the likeliest cause that it mends, 0 to 1. */
    double chance() {
        return grounds.stream().mapToDouble(ProposalReason::likelihood).max().orElse(0);
    }
}
