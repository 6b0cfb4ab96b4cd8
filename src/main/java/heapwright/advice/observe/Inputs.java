package heapwright.advice.observe;

import heapwright.advice.fact.WentIn;
import heapwright.knowledge.Trait;
import heapwright.pile.Ingredient;
import heapwright.pile.Pile;
import heapwright.process.dose.Stocktaking;
import heapwright.process.mixture.Materials;
import heapwright.process.mixture.MixtureCalculator;
import heapwright.process.mixture.Portion;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Turns what went into a pile into facts: for every trait and day its share of all dry matter put in, or of the dry
 * matter of the whole pile where no more is known than what was added.
 */
public final class Inputs {

    private final Pile pile;
    private final Materials materials;

    public Inputs(Pile pile, Materials materials) {
        this.pile = pile;
        this.materials = materials;
    }

    public List<WentIn> facts() {
        List<Ingredient> all = Stream.concat(
                        pile.recipe().stream(), pile.log().stream().flatMap(e -> e.added().stream()))
                .filter(i -> !i.date().isAfter(pile.asOf()))
                .toList();
        double known = all.stream().mapToDouble(this::dryKg).sum();
        double dry = pile.recipe().isEmpty() && known > 0
                ? Math.max(
                        known,
                        Stocktaking.of(pile, materials, new MixtureCalculator())
                                .dryKg()
                                .likely())
                : known;
        Map<Trait, Map<Integer, Double>> shares = new EnumMap<>(Trait.class);
        for (Ingredient one : all) {
            int days = (int) ChronoUnit.DAYS.between(one.date(), pile.asOf());
            double share = dry > 0 ? dryKg(one) / dry : Double.NaN;
            for (Trait trait : materials.get(one.material()).traits()) {
                shares.computeIfAbsent(trait, t -> new TreeMap<>()).merge(days, share, Double::sum);
            }
        }
        List<WentIn> facts = new ArrayList<>();
        shares.forEach((trait, byDay) -> byDay.forEach((days, share) -> facts.add(new WentIn(trait, days, share))));
        return facts;
    }

    private double dryKg(Ingredient one) {
        Portion portion = new Portion(materials.get(one.material()), one.amount(), one.pieceCm(), one.chopped());
        return portion.kgWet().likely() * (1 - portion.material().moisturePct().typical() / 100);
    }
}
