package heapwright.advice.audit;

import heapwright.advice.fact.Mark;
import heapwright.advice.fact.Reads;
import heapwright.knowledge.Material;
import heapwright.pile.Pile;
import heapwright.process.mend.ReadyRange;
import heapwright.process.mend.Yield;
import heapwright.process.mixture.Averaging;
import heapwright.process.mixture.Mixture;
import java.util.List;
import java.util.Optional;

/**
 * What Heapwright says of a recipe before it is built.
 *
 * @param pile the pile document it stands in
 * @param mixture its numbers
 * @param readings the quantities the rules read
 * @param mark the worst judgement: what the recipe as a whole is
 * @param judgements every judgement, the worst first
 * @param barred materials that the tables bar, each once
 * @param mend how it could be mended from what is at hand
 * @param plan how to build it, mended where that is possible
 * @param becomes what it will give
 * @param ready when it is likely ready, coarsely
 * @param ownFigure the shortcut behind a C:N that the person worked out, where one is recognised
 */
public record Audit(
        Pile pile,
        Mixture mixture,
        List<Reads> readings,
        Mark mark,
        List<Judgement> judgements,
        List<Material> barred,
        Mend mend,
        BuildPlan plan,
        Yield becomes,
        ReadyRange ready,
        Optional<Averaging> ownFigure) {
    public Audit {
        readings = List.copyOf(readings);
        judgements = List.copyOf(judgements);
        barred = List.copyOf(barred);
    }
}
