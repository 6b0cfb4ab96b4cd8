package heapwright.advice.audit;

import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Material;
import heapwright.knowledge.Material.Bar;
import heapwright.knowledge.Trait;
import heapwright.process.mixture.Portion;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Finds what must stay out of a recipe, by id and by what people call it. */
final class KeepOuts {

    /** Bars under which a material is not built in; what is barred only with care may go in. */
    private static final Set<Bar> NOT_BUILT_IN = Set.of(Bar.NEVER, Bar.ONLY_HOT, Bar.AFTER_TEST);

    private final Knowledge knowledge;

    KeepOuts(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    /** The barred materials of the portions, each once, the firmest bar first. */
    List<Material> of(List<Portion> portions) {
        return portions.stream()
                .map(Portion::material)
                .distinct()
                .flatMap(m -> knowledge.barred(m).stream())
                .distinct()
                .sorted(Comparator.comparing(
                        m -> firmness(m.keepOut().orElseThrow().bar())))
                .toList();
    }

    /** The barred material that it is or is called after. */
    Optional<Material> barred(Material material) {
        return knowledge.barred(material);
    }

    /**
     * Whether a plan leaves it out: because it is barred, because its sodium stays, or because it is ash or lime beside
     * stuff whose nitrogen it would drive off.
     *
     * @param beside all that goes in or may be added
     */
    boolean leftOut(Material material, List<Material> beside) {
        return knowledge
                        .barred(material)
                        .filter(m ->
                                NOT_BUILT_IN.contains(m.keepOut().orElseThrow().bar()))
                        .isPresent()
                || material.traits().contains(Trait.SODIUM)
                || material.traits().contains(Trait.ALKALI) && beside.stream().anyMatch(KeepOuts::hasLooseNitrogen);
    }

    /** Whether ash or lime would drive nitrogen out of it. */
    static boolean hasLooseNitrogen(Material material) {
        Set<Trait> traits = material.traits();
        return traits.contains(Trait.FAST_NITROGEN) || traits.contains(Trait.MANURE);
    }

    private static int firmness(Bar bar) {
        return switch (bar) {
            case NEVER -> 0;
            case AFTER_TEST -> 1;
            case ONLY_HOT -> 2;
            case WITH_CARE -> 3;
        };
    }
}
