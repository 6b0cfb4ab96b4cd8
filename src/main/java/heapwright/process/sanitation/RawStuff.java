package heapwright.process.sanitation;

import heapwright.knowledge.Knowledge;
import heapwright.knowledge.Material;
import heapwright.knowledge.Sign;
import heapwright.knowledge.SignInfo;
import heapwright.knowledge.Trait;
import heapwright.pile.Entry;
import heapwright.pile.Ingredient;
import heapwright.pile.Pile;
import heapwright.process.mixture.Materials;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What is safe only after heat, and when the last of it went in: heat of before did nothing for it. That is what carries
 * germs, and the seed, running roots and sick plants that may go in only where it gets hot.
 */
public final class RawStuff {

    /** What counts as raw manure until heat is shown. */
    public static final Set<Trait> LIKE_RAW_MANURE =
            Set.of(Trait.MANURE, Trait.MEAT_OR_DAIRY, Trait.COOKED, Trait.BONES);

    /** That, and what no heat of a home heap is trusted with. */
    private static final Set<Trait> CARRIES_GERMS = EnumSet.of(
            Trait.MANURE,
            Trait.MEAT_OR_DAIRY,
            Trait.COOKED,
            Trait.BONES,
            Trait.CARCASS,
            Trait.PET_WASTE,
            Trait.HUMAN_WASTE);

    private RawStuff() {}

    /** The last day on which any of it went in by the recipe, the log or a yes; empty where none did. */
    public static Optional<LocalDate> lastIn(Pile pile, Knowledge knowledge) {
        Materials materials = Materials.of(knowledge.materials(), pile.materials());
        Stream<LocalDate> germs = CARRIES_GERMS.stream()
                .flatMap(trait ->
                        lastIn(pile, id -> materials.get(id).traits().contains(trait), saying(trait, knowledge))
                                .stream());
        return Stream.concat(germs, lastIn(pile, id -> onlyHot(materials.get(id)), Set.of()).stream())
                .max(Comparator.naturalOrder());
    }

    /**
     * The last day on which such a material went in, or such a sign was answered with yes. What is in the record with
     * its day outranks the answers: a yes after it is taken to mean the same stuff.
     */
    static Optional<LocalDate> lastIn(Pile pile, Predicate<String> material, Set<String> signs) {
        Optional<LocalDate> recorded = Stream.concat(
                        pile.recipe().stream(), pile.log().stream().flatMap(e -> e.added().stream()))
                .filter(i -> material.test(i.material()))
                .map(Ingredient::date)
                .filter(day -> !day.isAfter(pile.asOf()))
                .max(Comparator.naturalOrder());
        return recorded.or(() -> pile.log().stream()
                .filter(e -> e.seen().stream().anyMatch(signs::contains))
                .map(Entry::date)
                .filter(day -> !day.isAfter(pile.asOf()))
                .max(Comparator.naturalOrder()));
    }

    private static boolean onlyHot(Material material) {
        return material.keepOut().filter(k -> k.bar() == Material.Bar.ONLY_HOT).isPresent();
    }

    private static Set<String> saying(Trait trait, Knowledge knowledge) {
        return knowledge.signs().values().stream()
                .filter(s -> s.brings().contains(trait))
                .map(SignInfo::id)
                .map(Sign::id)
                .collect(Collectors.toSet());
    }
}
