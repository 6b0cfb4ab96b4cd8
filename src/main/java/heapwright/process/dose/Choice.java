package heapwright.process.dose;

import heapwright.knowledge.Material;
import heapwright.knowledge.Trait;
import heapwright.pile.Amount;
import heapwright.process.mixture.Density;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * A material chosen for a dose.
 *
 * @param material what it is
 * @param availableKg how much of it there is, kg; infinite where as much as needed can be had
 */
record Choice(Material material, double availableKg) {

    /** What a kitchen saves up in some weeks: four buckets; judgement. Where more is at hand, the file says how much. */
    private static final double HOUSEHOLD_LITRES = 40;

    /** What serves: of what is at hand the most usual, else whatever is at hand, else the first of the usual ones that the month gives. */
    static Optional<Choice> first(DoseContext context, Predicate<Material> serves, String... usual) {
        List<String> order = order(context, usual);
        Stream<Choice> others = order.stream()
                .flatMap(id -> context.materials().find(id).stream())
                .filter(context.supply()::gives)
                .map(material -> new Choice(material, kilograms(material, Optional.empty())));
        return Stream.concat(lyingThere(context, order), others)
                .filter(choice -> choice.serves(serves))
                .findFirst();
    }

    /** What serves of what is at hand: the most usual, else whatever it is. */
    static Optional<Choice> atHand(DoseContext context, Predicate<Material> serves, String... usual) {
        return lyingThere(context, order(context, usual))
                .filter(choice -> choice.serves(serves))
                .findFirst();
    }

    /** What fits the kind of pile stands before what is usual. */
    private static List<String> order(DoseContext context, String... usual) {
        return Stream.concat(context.fitting().stream(), Arrays.stream(usual))
                .distinct()
                .toList();
    }

    private static Stream<Choice> lyingThere(DoseContext context, List<String> order) {
        return context.atHand().stream()
                .flatMap(stock -> context.materials().find(stock.material()).stream()
                        .map(material -> new Choice(material, kilograms(material, stock.available()))))
                .sorted(Comparator.comparingInt((Choice one) -> place(order, one.material()))
                        // Wood soaks slowly and holds a pile open: of what is as unusual the rest goes first.
                        .thenComparing(one -> one.material().traits().contains(Trait.WOODY))
                        .thenComparing(one -> one.material().id())
                        .thenComparing(
                                Comparator.comparingDouble(Choice::availableKg).reversed()));
    }

    private boolean serves(Predicate<Material> may) {
        return may.test(material) && mayGoIn(material) && availableKg > 0;
    }

    private static int place(List<String> order, Material material) {
        int place = order.indexOf(material.like());
        return place < 0 ? order.size() : place;
    }

    private static boolean mayGoIn(Material material) {
        return material.keepOut()
                .map(keepOut -> keepOut.bar() == Material.Bar.WITH_CARE)
                .orElse(true);
    }

    private static double kilograms(Material material, Optional<Amount> told) {
        if (told.isEmpty() && !material.traits().contains(Trait.KITCHEN)) {
            return Double.POSITIVE_INFINITY;
        }
        return told.filter(Amount::isMass)
                .map(Amount::kilograms)
                .orElseGet(() -> told.map(Amount::litres).orElse(HOUSEHOLD_LITRES)
                        * Density.byHand(material).likely()
                        / Density.LITRES_PER_M3);
    }
}
