package heapwright.process.mixture;

import heapwright.pile.Entry;
import heapwright.pile.Ingredient;
import heapwright.pile.Measured;
import heapwright.pile.Pile;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;

/** What a pile file says about the mixture: its recipe and additions as portions, and what was measured of the whole. */
public final class PileMixture {

    /** A file may state up to 100 %, percent of wet mass; even slurry holds some dry matter, or no sum would come out. */
    private static final double MOST_MOISTURE = 99;

    /** Less than a gram of dry matter is no pile; a moisture measured of it would leave nothing at all. */
    private static final double LEAST_DRY_KG = 0.001;

    private PileMixture() {}

    /** Recipe and additions up to the day of advice, in order of the file. */
    public static List<Portion> portions(Pile pile, Materials materials) {
        Stream<Ingredient> added = pile.log().stream()
                .filter(entry -> !entry.date().isAfter(pile.asOf()))
                .flatMap(entry -> entry.added().stream());
        return Stream.concat(pile.recipe().stream(), added)
                .filter(one -> !one.date().isAfter(pile.asOf()))
                .map(one -> new Portion(materials.get(one.material()), one.amount(), one.pieceCm(), one.chopped()))
                .toList();
    }

    /**
     * The latest moisture and density, and the volume of today: the size told with a height measured since. The size
     * when built is not a volume of today, since a pile sinks; a volume that cannot belong to what went in is left out,
     * see {@link SizeDoubt}.
     */
    public static Observed observed(Pile pile, Materials materials) {
        OptionalDouble moisture = latest(pile, Measured::moisturePct);
        Optional<PileSize> today = PileSize.told(pile)
                .filter(PileSize::measured)
                .filter(size -> SizeDoubt.of(pile, materials)
                        .filter(doubt -> doubt.doubts(size))
                        .isEmpty());
        return new Observed(
                moisture.isPresent() ? OptionalDouble.of(Math.min(MOST_MOISTURE, moisture.getAsDouble())) : moisture,
                latest(pile, Measured::bulkDensityKgM3),
                today.map(size -> OptionalDouble.of(size.volumeM3())).orElse(OptionalDouble.empty()));
    }

    /**
     * The mixture of a pile as its recipe and what was added since make it; empty without a recipe, or when there is no
     * dry matter in it. What was added to an unknown pile says nothing of what the pile is made of.
     */
    public static Optional<Mixture> of(Pile pile, Materials materials, MixtureCalculator calculator) {
        List<Portion> portions = portions(pile, materials);
        return hasRecipe(pile)
                        && portions.stream().mapToDouble(PileMixture::dryKg).sum() >= LEAST_DRY_KG
                ? Optional.of(calculator.mix(portions, observed(pile, materials)))
                : Optional.empty();
    }

    /**
     * The mixture of a pile as it lies. Where size and recipe cannot belong together, the size told says how much there
     * is, and the recipe only of what.
     */
    public static Optional<Mixture> asItLies(Pile pile, Materials materials, MixtureCalculator calculator) {
        double times = timesTheRecipe(pile, materials);
        if (times == 1) {
            return of(pile, materials, calculator);
        }
        List<Portion> portions = portions(pile, materials).stream()
                .map(portion -> portion.times(times))
                .toList();
        return portions.stream().mapToDouble(PileMixture::dryKg).sum() < LEAST_DRY_KG
                ? Optional.empty()
                : Optional.of(calculator.mix(portions, observed(pile, materials)));
    }

    /**
     * How many times its recipe a pile is taken to hold. A pile seen to fill more than the recipe does as filled by hand
     * holds more than was told; where size and recipe cannot belong together at all, the recipe only says of what. Else
     * it is 1: stuff lies more or less loosely.
     */
    public static double timesTheRecipe(Pile pile, Materials materials) {
        Optional<PileSize> told = PileSize.told(pile);
        Optional<SizeDoubt> doubt = SizeDoubt.of(pile, materials);
        List<Portion> portions = portions(pile, materials);
        if (told.isPresent() && doubt.map(one -> one.doubts(told.get())).orElse(false)) {
            double settled = settledM3(portions);
            return settled > 0 ? told.get().volumeM3() / settled : 1;
        }
        double loose = looseM3(portions);
        boolean heaped =
                PileSize.built(pile.container()).map(PileSize.Built::filled).orElse(false);
        return heaped && loose > 0 && hasRecipe(pile) && inOneGo(pile)
                ? Math.max(1, pile.container().builtVolumeM3().orElse(0) / loose)
                : 1;
    }

    /** Whether all went in on one day, so that the size told is that of all of it; a pile fed later is another by then. */
    public static boolean inOneGo(Pile pile) {
        LocalDate begun = pile.recipe().stream()
                .map(Ingredient::date)
                .min(Comparator.naturalOrder())
                .filter(day -> day.isAfter(pile.built()))
                .orElse(pile.built());
        return Stream.concat(pile.recipe().stream(), pile.log().stream().flatMap(entry -> entry.added().stream()))
                .noneMatch(one -> one.date().isAfter(begun) && !one.date().isAfter(pile.asOf()));
    }

    /** What portions fill as filled by hand, likely, cubic metres. */
    public static double looseM3(List<Portion> portions) {
        return portions.stream()
                        .filter(one -> !Density.fillsGaps(one.material()))
                        .mapToDouble(one -> one.litres().likely())
                        .sum()
                / Density.LITRES_PER_M3;
    }

    /** What portions fill once they have settled, likely, cubic metres. */
    public static double settledM3(List<Portion> portions) {
        return portions.stream()
                .filter(one -> !Density.fillsGaps(one.material()))
                .mapToDouble(one ->
                        one.kgWet().likely() / Density.settled(one.material()).likely())
                .sum();
    }

    private static boolean hasRecipe(Pile pile) {
        return pile.recipe().stream().anyMatch(one -> !one.date().isAfter(pile.asOf()));
    }

    private static double dryKg(Portion portion) {
        return portion.kgWet().likely() * (1 - portion.material().moisturePct().typical() / 100);
    }

    static OptionalDouble latest(Pile pile, Function<Measured, OptionalDouble> what) {
        OptionalDouble latest = OptionalDouble.empty();
        for (Entry entry : pile.log()) {
            OptionalDouble value = what.apply(entry.measured());
            if (value.isPresent() && !entry.date().isAfter(pile.asOf())) {
                latest = value;
            }
        }
        return latest;
    }
}
