package heapwright.advice.audit;

import heapwright.advice.audit.BuildPlan.Layer;
import heapwright.advice.audit.BuildPlan.Role;
import heapwright.knowledge.Caution;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Limit;
import heapwright.knowledge.Material;
import heapwright.knowledge.Trait;
import heapwright.pile.Container;
import heapwright.process.dose.Limits;
import heapwright.process.dose.Shape;
import heapwright.process.mend.Addition;
import heapwright.process.mend.Offer;
import heapwright.process.mend.Plan;
import heapwright.process.mixture.Band;
import heapwright.process.mixture.Density;
import heapwright.process.mixture.Materials;
import heapwright.process.mixture.Portion;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Turns a recipe with its mend into layers a person can build. */
final class BuildPlanner {

    /** One round of layers, settled: about a forearm; judgement. */
    private static final double ROUND_M = 0.25;

    private static final int FEWEST_ROUNDS = 2;
    private static final int MOST_ROUNDS = 8;

    /** A base of coarse stuff, settled: a hand or two; common practice. */
    private static final double BASE_M = 0.10;

    /** Drier than this, stalks and leaves shed water and are soaked first, percent; judgement. */
    private static final double SOAK_BELOW = 25;

    private static final double CM = 100;

    private final Knowledge knowledge;
    private final Limits limits;
    private final Materials materials;

    BuildPlanner(Knowledge knowledge, Limits limits, Materials materials) {
        this.knowledge = knowledge;
        this.limits = limits;
        this.materials = materials;
    }

    BuildPlan plan(Container container, List<Portion> portions, Plan mend, double settledM3) {
        Map<Material, Double> litres = litres(portions, mend);
        double addedM3 = mend.after().volumeM3();
        double volume = mend.additions().isEmpty() ? settledM3 : Math.max(settledM3, addedM3);
        Shape shape = Shape.of(container, volume);
        double area = shape.topM2();
        Map<Material, Double> rest = new LinkedHashMap<>(litres);
        List<Layer> base = base(rest, area);
        double baseM = base.stream().mapToDouble(Layer::thicknessCm).sum() / CM;
        int rounds =
                (int) Math.max(FEWEST_ROUNDS, Math.min(MOST_ROUNDS, Math.round((shape.heightM() - baseM) / ROUND_M)));
        List<Layer> layers = rest.entrySet().stream()
                .filter(e -> e.getValue() > 0)
                .map(e -> layer(e.getKey(), e.getValue() / rounds, area))
                .sorted(Comparator.comparing(Layer::role).thenComparing(Layer::material))
                .toList();
        double water = mend.additions().stream()
                .filter(a -> a.material().equals(Offer.WATER))
                .mapToDouble(Addition::litres)
                .sum();
        return new BuildPlan(
                shape.lengthM(),
                shape.widthM(),
                shape.heightM(),
                base,
                rounds,
                layers,
                Band.exact(water / rounds),
                water > 0
                        ? ids(
                                rest.keySet(),
                                m -> role(m) == Role.BROWN && m.moisturePct().typical() < SOAK_BELOW)
                        : List.of(),
                cut(portions),
                cautions(litres.keySet(), !cut(portions).isEmpty()));
    }

    private Map<Material, Double> litres(List<Portion> portions, Plan mend) {
        Map<Material, Double> litres = new LinkedHashMap<>();
        portions.forEach(p -> litres.merge(p.material(), p.litres().likely(), Double::sum));
        mend.additions().stream()
                .filter(a -> !a.material().equals(Offer.WATER))
                .forEach(a -> litres.merge(materials.get(a.material()), a.litres(), Double::sum));
        return litres;
    }

    /** Takes the coarsest stuff for the base out of the rest. */
    private static List<Layer> base(Map<Material, Double> rest, double area) {
        List<Layer> base = new ArrayList<>();
        double wantedM3 = area * BASE_M;
        for (Material m : List.copyOf(rest.keySet())) {
            if (!m.traits().contains(Trait.COARSE) || wantedM3 <= 0) {
                continue;
            }
            double settledPerLitre = settledM3(m, 1);
            double take = Math.min(rest.get(m), wantedM3 / settledPerLitre);
            base.add(layer(m, take, area));
            rest.put(m, rest.get(m) - take);
            wantedM3 -= take * settledPerLitre;
        }
        return base;
    }

    private static Layer layer(Material m, double litres, double area) {
        double kg = litres * Density.byHand(m).likely() / Density.LITRES_PER_M3;
        return new Layer(m.id(), role(m), litres, kg, settledM3(m, litres) / area * CM);
    }

    private static double settledM3(Material m, double litres) {
        return litres
                / Density.LITRES_PER_M3
                * Density.byHand(m).likely()
                / Density.settled(m).likely();
    }

    private static Role role(Material m) {
        return switch (m.group()) {
            case CARBON_RICH, WOODY -> Role.BROWN;
            case NITROGEN_RICH, MANURE -> Role.GREEN;
            case MEAL, STARTER, MINERAL, AMENDMENT, PROBLEM -> Role.SPRINKLE;
        };
    }

    private List<String> cut(List<Portion> portions) {
        double good = limits.of(Limit.PIECE_GOOD);
        return portions.stream()
                .filter(p -> p.pieceCm().isPresent() && p.pieceCm().getAsDouble() > good && !p.chopped())
                .map(p -> p.material().id())
                .distinct()
                .toList();
    }

    private static List<String> ids(Set<Material> all, java.util.function.Predicate<Material> which) {
        return all.stream().filter(which).map(Material::id).toList();
    }

    private List<Caution> cautions(Set<Material> used, boolean cutting) {
        Set<Caution> all =
                EnumSet.of(Caution.DUST_AND_SPORES, Caution.PEOPLE_AT_RISK, Caution.GLOVES_AND_WASH, Caution.LIFTING);
        used.forEach(m -> all.addAll(m.cautions()));
        if (cutting) {
            all.addAll(Set.of(Caution.SHREDDER, Caution.AXE_AND_SAW));
        }
        return knowledge.cautions().values().stream()
                .filter(c -> all.contains(c.id()))
                .sorted(Comparator.comparing(c -> c.severity()))
                .map(c -> c.id())
                .toList();
    }
}
