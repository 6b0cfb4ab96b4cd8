package heapwright.advice;

import heapwright.advice.fact.Grade;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Material;
import heapwright.knowledge.Remedy;
import heapwright.knowledge.RemedyInfo;
import heapwright.pile.Pile;
import heapwright.pile.Stock;
import heapwright.process.dose.DoseAmount;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What the person told as lying at hand, and whether they can lift it.
 *
 * @param materials ids of materials
 * @param tooHeavy what is too heavy for whoever does the work
 */
record AtHand(Set<String> materials, Set<Remedy> tooHeavy) {

    static AtHand of(Pile pile, Knowledge knowledge) {
        return new AtHand(
                pile.atHand().stream().map(Stock::material).collect(Collectors.toSet()),
                People.of(pile).cannotLift()
                        ? knowledge.remedies().values().stream()
                                .filter(r -> r.effort().heavy())
                                .map(RemedyInfo::id)
                                .collect(Collectors.toSet())
                        : Set.of());
    }

    /**
     * Of the ways to take a step the first; before it the first one as good whose stuff lies at hand and goes far; before
     * these, for somebody who cannot lift, the first that is no heavy work.
     */
    Option nearest(List<Option> ways) {
        List<Option> eased = ways.stream()
                .filter(w -> !tooHeavy.contains(w.remedy()))
                .filter(w -> tooHeavy.isEmpty() || w.chance() >= Grade.POSSIBLE.from() && StepValue.gives(w.doses()))
                .toList();
        return asNear(eased.isEmpty() ? ways : eased);
    }

    private Option asNear(List<Option> ways) {
        Option first = ways.get(0);
        return ways.stream()
                .filter(w -> w.chance() >= first.chance() - Arranger.AS_LIKELY)
                .filter(w -> StepValue.goesFar(w.doses()) && holds(w))
                .findFirst()
                .orElse(first);
    }

    private boolean holds(Option way) {
        Set<String> asked = way.doses().stream()
                .filter(DoseAmount::isNeeded)
                .flatMap(d -> d.material().stream())
                .map(Material::id)
                .collect(Collectors.toSet());
        return !asked.isEmpty() && materials.containsAll(asked);
    }
}
