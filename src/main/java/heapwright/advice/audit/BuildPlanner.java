package heapwright.advice.audit;

import heapwright.advice.audit.BuildPlan.Cut;
import heapwright.advice.audit.BuildPlan.Feed;
import heapwright.advice.audit.BuildPlan.Fit;
import heapwright.advice.audit.BuildPlan.Role;
import heapwright.knowledge.Caution;
import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Limit;
import heapwright.knowledge.Material;
import heapwright.pile.Pile;
import heapwright.process.dose.Limits;
import heapwright.process.dose.Shape;
import heapwright.process.mend.Addition;
import heapwright.process.mend.Offer;
import heapwright.process.mend.Plan;
import heapwright.process.mixture.Degradability;
import heapwright.process.mixture.Density;
import heapwright.process.mixture.Materials;
import heapwright.process.mixture.Mixture;
import heapwright.process.mixture.Portion;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/** Turns a recipe with its mend into layers a person can build. */
final class BuildPlanner {

    /** Drier than this, stalks and leaves shed water and are soaked first, percent; judgement. */
    private static final double SOAK_BELOW = 25;

    /** Filled to less than this, a container stands mostly empty; a little over its rim a pile soon sinks; judgement. */
    private static final double PART_BELOW = 0.7;

    private static final double OVER_ABOVE = 1.15;

    /** Soft stalks hold together longer than wood of that length: a hand to a forearm (FAO15, from memory). */
    private static final double SOFT_FROM_CM = 10;

    private static final double SOFT_TO_CM = 20;
    private static final double WOODY_FROM_CM = 2;

    private final Knowledge knowledge;
    private final Limits limits;
    private final Materials materials;

    BuildPlanner(Knowledge knowledge, Limits limits, Materials materials) {
        this.knowledge = knowledge;
        this.limits = limits;
        this.materials = materials;
    }

    /**
     * The plan.
     *
     * @param pile where and when it is built
     * @param portions what goes in
     * @param mended what they make with all bulky additions
     * @param mend what is added
     * @param cold whether a cold month lies ahead
     */
    BuildPlan plan(Pile pile, List<Portion> portions, Mixture mended, Plan mend, boolean cold) {
        Map<Material, Double> bulk = new LinkedHashMap<>();
        Map<Material, Double> fertiliser = new LinkedHashMap<>();
        Map<Material, Double> longest = new LinkedHashMap<>();
        Set<Material> uncut = new HashSet<>();
        double water = 0;
        for (Portion p : portions) {
            if (Density.fillsGaps(p.material())) {
                water += p.kgWet().likely();
                continue;
            }
            if (Feeding.isFertiliser(p.material())) {
                fertiliser.merge(p.material(), p.kgWet().likely(), Double::sum);
            } else {
                bulk.merge(p.material(), p.litres().likely(), Double::sum);
            }
            if (!p.chopped()) {
                uncut.add(p.material());
                p.pieceCm().ifPresent(cm -> longest.merge(p.material(), cm, Math::max));
            }
        }
        Map<Material, Double> own = Map.copyOf(bulk);
        for (Addition a : mend.additions()) {
            if (a.material().equals(Offer.WATER)) {
                water += a.litres();
            } else if (Feeding.isFertiliser(materials.get(a.material()))) {
                fertiliser.merge(materials.get(a.material()), a.kg(), Double::sum);
            } else {
                bulk.merge(materials.get(a.material()), a.litres(), Double::sum);
                uncut.add(materials.get(a.material()));
            }
        }
        double volume = Built.volumeM3(mended).likely();
        Shape shape = Built.shape(pile.container(), volume);
        Layering layering = Layering.of(bulk, own, longest, shape.topM2());
        List<Feed> feeds = Feeding.of(fertiliser, limits, volume, pile.built());
        List<Cut> cuts = cuts(layering, uncut, longest);
        LocalDate built = pile.built();
        return new BuildPlan(
                shape.lengthM(),
                shape.widthM(),
                shape.heightM(),
                shape.heightM() * Math.min(1, mended.settledM3().likely() / volume),
                fit(pile, shape.heightM()),
                layering.base(),
                layering.rounds(),
                layering.layers(),
                water / layering.rounds(),
                feeds,
                water > 0 ? soak(bulk.keySet()) : List.of(),
                cuts,
                List.of(
                        built.plusDays(Math.round(limits.of(Limit.AGE_YOUNG))),
                        built.plusDays(Math.round(limits.of(Limit.AGE_HEATING)))),
                built.plusDays(Math.round(limits.of(Limit.TURN_LONG_AGO))),
                cold,
                cautions(bulk.keySet(), fertiliser.keySet(), cuts.stream().anyMatch(Cut::woody)));
    }

    private static Fit fit(Pile pile, double heightM) {
        if (pile.container().heightM().isEmpty()) {
            return Fit.FILLS;
        }
        double part = heightM / pile.container().heightM().getAsDouble();
        if (part > OVER_ABOVE) {
            return Fit.OVER;
        }
        return part < PART_BELOW ? Fit.PART : Fit.FILLS;
    }

    /** What has long pieces or comes uncut, unless all of it lies in the base, where length does no harm. */
    private List<Cut> cuts(Layering layering, Set<Material> uncut, Map<Material, Double> longest) {
        double good = limits.of(Limit.PIECE_GOOD);
        return layering.layers().stream()
                .map(l -> materials.get(l.material()))
                .filter(uncut::contains)
                .filter(m -> longest.getOrDefault(m, 0.0) > good
                        || !longest.containsKey(m) && m.cautions().contains(Caution.SHREDDER))
                .map(m -> Degradability.isWoody(m)
                        ? new Cut(m.id(), true, WOODY_FROM_CM, good)
                        : new Cut(m.id(), false, SOFT_FROM_CM, SOFT_TO_CM))
                .filter(c -> longest.getOrDefault(materials.get(c.material()), Double.MAX_VALUE) > c.toCm())
                .toList();
    }

    private static List<String> soak(Set<Material> all) {
        Predicate<Material> dry =
                m -> Layering.role(m) == Role.BROWN && m.moisturePct().typical() < SOAK_BELOW;
        return all.stream().filter(dry).map(Material::id).toList();
    }

    private List<Caution> cautions(Set<Material> bulk, Set<Material> fertiliser, boolean cutting) {
        Set<Caution> all =
                EnumSet.of(Caution.DUST_AND_SPORES, Caution.PEOPLE_AT_RISK, Caution.GLOVES_AND_WASH, Caution.LIFTING);
        bulk.forEach(m -> all.addAll(m.cautions()));
        fertiliser.forEach(m -> all.addAll(m.cautions()));
        if (cutting) {
            all.addAll(Set.of(Caution.SHREDDER, Caution.AXE_AND_SAW));
        } else {
            all.removeAll(Set.of(Caution.SHREDDER, Caution.AXE_AND_SAW));
        }
        return knowledge.cautions().values().stream()
                .filter(c -> all.contains(c.id()))
                .sorted(Comparator.comparing(c -> c.severity()))
                .map(c -> c.id())
                .toList();
    }
}
