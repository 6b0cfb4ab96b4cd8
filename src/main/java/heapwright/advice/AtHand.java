package heapwright.advice;

import heapwright.knowledge.Material;
import heapwright.pile.Pile;
import heapwright.pile.Stock;
import heapwright.process.dose.DoseAmount;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What the person told as lying at hand.
 *
 * @param materials ids of materials
 */
record AtHand(Set<String> materials) {

    static AtHand of(Pile pile) {
        return new AtHand(pile.atHand().stream().map(Stock::material).collect(Collectors.toSet()));
    }

    /** Of the ways to take a step the first; before it the first one as good whose stuff lies at hand and goes far. */
    Option nearest(List<Option> ways) {
        Option first = ways.get(0);
        return ways.stream()
                .filter(w -> w.chance() >= first.chance() - Arranger.AS_LIKELY)
                .filter(w -> Worth.goesFar(w.doses()) && holds(w))
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
