package heapwright.advice.observe;

import heapwright.advice.fact.Seen;
import heapwright.knowledge.Figure;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Sign;
import heapwright.pile.Entry;
import heapwright.pile.Pile;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

/**
 * A moisture by drying that cannot belong to what the hand felt in the same days: the sample was another, or one of the
 * two is a slip.
 *
 * @param measuredPct moisture by drying, percent of the wet mass
 * @param felt what the hand said
 * @param lowPct the moisture that stands for, at the least
 * @param highPct and at the most
 */
public record MoistureDoubt(double measuredPct, Sign felt, double lowPct, double highPct) {

    /** Drying is good to 3 points, and what a squeeze gives depends on the stuff: beyond this they clash (judgement). */
    private static final double APART = 8;

    /** A pile hardly gets wetter or drier than that within these days without anybody knowing (judgement). */
    private static final int SAME_DAYS = 3;

    /** The doubt about the moisture of a pile; empty where hand and drying may both be right, or one is missing. */
    public static Optional<MoistureDoubt> of(Pile pile, Knowledge knowledge, int freshDays) {
        Answers answers =
                new Answers(pile, knowledge.signs(), new Tried(pile, knowledge.remedies(), freshDays), freshDays);
        Optional<Entry> dried = pile.log().stream()
                .filter(e -> e.measured().moisturePct().isPresent()
                        && answers.daysAgo(e) >= 0
                        && answers.daysAgo(e) <= freshDays)
                .reduce((earlier, later) -> later);
        return dried.flatMap(entry -> answers.signs(List.of()).stream()
                .filter(Seen.class::isInstance)
                .map(Seen.class::cast)
                .filter(seen ->
                        Math.abs(seen.daysAgo() - ChronoUnit.DAYS.between(entry.date(), pile.asOf())) <= SAME_DAYS)
                .flatMap(seen -> clash(entry.measured().moisturePct().getAsDouble(), seen.sign(), knowledge).stream())
                .findFirst());
    }

    private static Optional<MoistureDoubt> clash(double measured, Sign sign, Knowledge knowledge) {
        Optional<Figure> hand = knowledge.signs().get(sign).moisturePct();
        return hand.filter(h -> measured < h.low() - APART || measured > h.high() + APART)
                .map(h -> new MoistureDoubt(measured, sign, h.low(), h.high()));
    }
}
