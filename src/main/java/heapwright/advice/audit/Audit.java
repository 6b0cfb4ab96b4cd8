package heapwright.advice.audit;

import heapwright.advice.danger.Alarm;
import heapwright.advice.fact.Mark;
import heapwright.advice.fact.Reads;
import heapwright.advice.winter.ReadyAhead;
import heapwright.knowledge.Material;
import heapwright.pile.Ingredient;
import heapwright.pile.Pile;
import heapwright.process.mixture.Averaging;
import heapwright.process.mixture.Contribution;
import heapwright.process.mixture.Mixture;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What Heapwright says of a recipe before it is built.
 *
 * @param pile the pile document it stands in, as told
 * @param alarm the danger that stands at the pile, if it is built already; then there is no proposal
 * @param mixture its numbers, with everything in it
 * @param readings the quantities the rules read
 * @param mark the worst judgement: what the recipe as a whole is
 * @param judgements every judgement, the worst first
 * @param barred materials that the tables bar, each once, the firmest bar first
 * @param ownPairs the person's own figures that can hardly be right
 * @param proposal how to mend and build it without what must stay out; empty when nothing is left to build with
 * @param ready when it will be ready by the model, where it can be built as it is told
 * @param ownFigure the shortcut behind a C:N that the person worked out, where one is recognised
 */
public record Audit(
        Pile pile,
        Optional<Alarm> alarm,
        Mixture mixture,
        List<Reads> readings,
        Mark mark,
        List<Judgement> judgements,
        List<Material> barred,
        List<OwnFigureDoubt> ownPairs,
        Optional<Proposal> proposal,
        Optional<ReadyAhead> ready,
        Optional<Averaging> ownFigure) {
    public Audit {
        readings = List.copyOf(readings);
        judgements = List.copyOf(judgements);
        barred = List.copyOf(barred);
        ownPairs = List.copyOf(ownPairs);
    }

    /** Whether the plan is the recipe as told, with nothing left out, cut back or added. */
    public boolean asTold() {
        return proposal.filter(Proposal::asTold).isPresent();
    }

    /** The same with what the model says of the day on which it will be ready. */
    public Audit ready(Optional<ReadyAhead> day) {
        return new Audit(pile, alarm, mixture, readings, mark, judgements, barred, ownPairs, proposal, day, ownFigure);
    }

    /** What each ingredient brings, in the order in which the person told them. */
    public List<Contribution> contributions() {
        List<String> told = Stream.concat(
                        pile.recipe().stream(), pile.log().stream().flatMap(entry -> entry.added().stream()))
                .map(Ingredient::material)
                .distinct()
                .toList();
        return mixture.contributions().stream()
                .sorted(Comparator.comparingInt(
                        one -> told.indexOf(one.material().id())))
                .toList();
    }
}
