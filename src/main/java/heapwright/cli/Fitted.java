package heapwright.cli;

import heapwright.advice.Advisor;
import heapwright.casebook.Scored;
import heapwright.casebook.WeightFit;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Weights;
import java.util.List;
import java.util.Map;

/**
 * What a fit to cases gives.
 *
 * @param weights the weights that fit all of them
 * @param leftOut each case as it scores with weights fitted to the cases of all other sources
 */
record Fitted(Weights weights, List<Scored> leftOut) {

    static Fitted to(List<Scored> scored, Services workshop) {
        WeightFit fit = new WeightFit();
        Map<String, Weights> others = fit.leavingOut(scored);
        Knowledge knowledge = workshop.knowledge();
        List<Scored> leftOut = scored.stream()
                .map(s -> Scored.of(
                        s.tested(),
                        new Advisor(
                                knowledge.weighing(others.get(s.tested().source())),
                                workshop.advisor().rulebook())))
                .toList();
        return new Fitted(fit.fit(scored), leftOut);
    }
}
