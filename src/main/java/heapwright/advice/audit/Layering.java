package heapwright.advice.audit;

import heapwright.advice.audit.BuildPlan.Layer;
import heapwright.advice.audit.BuildPlan.Role;
import heapwright.knowledge.Material;
import heapwright.knowledge.Trait;
import heapwright.process.mixture.Degradability;
import heapwright.process.mixture.Density;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Lays litres of materials into a base and rounds of layers. What is too little for a layer in every round goes into
 * fewer rounds.
 *
 * @param base coarse stuff underneath
 * @param rounds how often the layers repeat
 * @param layers the layers of one round, from below
 */
record Layering(List<Layer> base, int rounds, List<Layer> layers) {

    /** One round of layers as it is laid, metres: about a forearm; judgement. */
    private static final double ROUND_M = 0.35;

    private static final int MOST_ROUNDS = 8;

    /** Grass that lies thicker than a hand's breadth as it is laid goes to slime before it is forked in, metres; common practice. */
    private static final double GRASS_M = 0.1;

    /** A base of coarse stuff as it is laid, metres: a hand or two; common practice. */
    private static final double BASE_M = 0.15;

    /** Of what is not long no more than this part goes into the base, since the rest of the mix needs it; judgement. */
    private static final double MOST_IN_BASE = 0.5;

    /** No layer of bulky stuff is less than half a bucket, of soil or compost two handfuls, of powder a spoon; judgement. */
    private static final double LEAST_BULK_L = 5;

    private static final double LEAST_SPRINKLE_L = 0.5;
    private static final double LEAST_POWDER_L = 0.015;

    private static final double CM = 100;

    /**
     * Lays them.
     *
     * @param litres all that is laid, by material
     * @param own what of it the recipe brings: the base takes no more, since what the mend adds is to hold the mix open, and
     *     of chips and straw only a part
     * @param longestCm the longest pieces, by material, where they were measured
     * @param area footprint, m²
     */
    static Layering of(
            Map<Material, Double> litres, Map<Material, Double> own, Map<Material, Double> longestCm, double area) {
        Map<Material, Double> rest = new LinkedHashMap<>(litres);
        List<Layer> base = base(rest, own, longestCm, area);
        double left = rest.values().stream().mapToDouble(l -> l).sum() / Density.LITRES_PER_M3 / area;
        double grass = rest.entrySet().stream()
                        .filter(e -> e.getKey().traits().contains(Trait.GRASS))
                        .mapToDouble(Map.Entry::getValue)
                        .sum()
                / Density.LITRES_PER_M3
                / area;
        double wanted = Math.max(Math.round(left / ROUND_M), Math.ceil(grass / GRASS_M));
        int rounds = (int) Math.max(1, Math.min(MOST_ROUNDS, wanted));
        List<Layer> layers = rest.entrySet().stream()
                .filter(e -> e.getValue() > 0)
                .map(e -> {
                    int times = (int) Math.max(1, Math.min(rounds, Math.floor(e.getValue() / least(e.getKey()))));
                    return layer(e.getKey(), e.getValue() / times, area, times);
                })
                .sorted(Comparator.comparing(Layer::role)
                        .thenComparing(l -> -l.litres() * l.times())
                        .thenComparing(Layer::material))
                .toList();
        return new Layering(base, rounds, layers);
    }

    /** Takes the coarsest stuff for the base out of the rest: wood first, then the longest pieces. */
    private static List<Layer> base(
            Map<Material, Double> rest, Map<Material, Double> own, Map<Material, Double> longestCm, double area) {
        List<Layer> base = new ArrayList<>();
        double wanted = area * BASE_M * Density.LITRES_PER_M3;
        List<Material> coarse = rest.keySet().stream()
                .filter(m -> m.traits().contains(Trait.COARSE) && own.getOrDefault(m, 0.0) > 0)
                .sorted(Comparator.comparing((Material m) -> !Degradability.isWoody(m))
                        .thenComparing(m -> -longestCm.getOrDefault(m, 0.0))
                        .thenComparing(Material::id))
                .toList();
        for (Material m : coarse) {
            if (wanted < LEAST_BULK_L) {
                break;
            }
            double may = own.get(m) * (m.traits().contains(Trait.LONG) ? 1 : MOST_IN_BASE);
            if (may < LEAST_BULK_L) {
                continue;
            }
            double take = may - wanted < LEAST_BULK_L ? may : wanted;
            base.add(layer(m, take, area, 1));
            rest.put(m, rest.get(m) - take);
            wanted -= take;
        }
        return base;
    }

    private static Layer layer(Material m, double litres, double area, int times) {
        double kg = litres * Density.byHand(m).likely() / Density.LITRES_PER_M3;
        return new Layer(m.id(), role(m), litres, kg, litres / Density.LITRES_PER_M3 / area * CM, times);
    }

    private static double least(Material m) {
        return switch (m.group()) {
            case CARBON_RICH, WOODY, NITROGEN_RICH, MANURE, PROBLEM -> LEAST_BULK_L;
            case STARTER -> LEAST_SPRINKLE_L;
            case MINERAL -> m.traits().contains(Trait.SOIL) ? LEAST_SPRINKLE_L : LEAST_POWDER_L;
            case MEAL, AMENDMENT -> LEAST_POWDER_L;
        };
    }

    static Role role(Material m) {
        return switch (m.group()) {
            case CARBON_RICH, WOODY -> Role.BROWN;
            case NITROGEN_RICH, MANURE -> Role.GREEN;
            case MEAL, STARTER, MINERAL, AMENDMENT -> Role.SPRINKLE;
            case PROBLEM ->
                m.traits().contains(Trait.BROWN) || m.traits().contains(Trait.WOODY) ? Role.BROWN : Role.GREEN;
        };
    }
}
