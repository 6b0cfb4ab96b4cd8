package heapwright.process.dose;

import heapwright.knowledge.Material;
import heapwright.knowledge.Trait;
import heapwright.pile.Entry;
import heapwright.pile.Ingredient;
import heapwright.pile.Pile;
import heapwright.process.mixture.Composition;
import heapwright.process.mixture.Materials;
import heapwright.process.mixture.Portion;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * What went into a pile within a season: it counts against the limits of the next dose.
 *
 * @param lots what went in, and when
 * @param takenOn the day from which on what was given belongs to the step that is reckoned; empty where nobody took it on
 */
public record Given(List<Lot> lots, Optional<LocalDate> takenOn) {

    /** Longer ago than this it belongs to another season, days; judgement: a pile of autumn is used up in a year. */
    private static final int SEASON = 365;

    private static final double GRAMS = 1000;

    /** Something that went in on a day. */
    public record Lot(LocalDate date, Portion portion) {}

    public Given {
        lots = List.copyOf(lots);
    }

    /** Nothing at all. */
    public static Given nothing() {
        return new Given(List.of(), Optional.empty());
    }

    /** What a pile's recipe and record tell of its last year. */
    public static Given of(Pile pile, Materials materials) {
        LocalDate from = pile.asOf().minusDays(SEASON);
        return new Given(
                Stream.concat(pile.recipe().stream(), pile.log().stream().flatMap((Entry e) -> e.added().stream()))
                        .filter(one -> !one.date().isBefore(from) && !one.date().isAfter(pile.asOf()))
                        .flatMap(one -> materials.find(one.material()).stream().map(m -> lot(one, m)))
                        .toList(),
                Optional.empty());
    }

    private static Lot lot(Ingredient one, Material material) {
        return new Lot(one.date(), new Portion(material, one.amount(), one.pieceCm(), one.chopped()));
    }

    /** The same for a step that was taken on on a day, or not at all. */
    public Given since(Optional<LocalDate> day) {
        return new Given(lots, day);
    }

    /** Nitrogen of fertilisers and meals, g. */
    double fertiliserNitrogenG() {
        return sum(
                Given::isFertiliser,
                p -> p.kgWet().likely() * Composition.of(p.material()).nitrogen() * GRAMS);
    }

    /** The water that fertiliser was dissolved in, litres. */
    public double fertiliserWaterLitres(Limits limits) {
        return sum(
                lot -> lot.portion().material().traits().contains(Trait.FAST_NITROGEN),
                p -> limits.dissolvingLitres(p.material(), p.kgWet().likely()));
    }

    private static boolean isFertiliser(Lot lot) {
        Material material = lot.portion().material();
        return material.traits().contains(Trait.FAST_NITROGEN) || material.group() == Material.Group.MEAL;
    }

    /** Ash and lime, litres. */
    double alkaliLitres() {
        return sum(Given::isAlkali, p -> p.litres().likely());
    }

    /** Ash and lime, kg. */
    double alkaliKg() {
        return sum(Given::isAlkali, p -> p.kgWet().likely());
    }

    private static boolean isAlkali(Lot lot) {
        return lot.portion().material().traits().contains(Trait.ALKALI);
    }

    /** What was given of stuff of a kind since the step was taken on, kg. */
    double kgLike(Material material) {
        return takenOn.map(day -> sum(
                        lot -> !lot.date().isBefore(day)
                                && lot.portion().material().group() == material.group(),
                        p -> p.kgWet().likely()))
                .orElse(0.0);
    }

    private double sum(Predicate<Lot> which, ToDoubleFunction<Portion> what) {
        return lots.stream()
                .filter(which)
                .map(Lot::portion)
                .mapToDouble(what)
                .sorted()
                .sum();
    }
}
