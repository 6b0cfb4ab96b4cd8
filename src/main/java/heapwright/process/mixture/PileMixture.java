package heapwright.process.mixture;

import heapwright.pile.Entry;
import heapwright.pile.Ingredient;
import heapwright.pile.Measured;
import heapwright.pile.Pile;
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
     * The latest moisture and density, and the volume as it lies: footprint times the latest height. The size when
     * built is not a volume of today, since a pile sinks; a volume that cannot belong to what went in is left out, see
     * {@link SizeDoubt}.
     */
    public static Observed observed(Pile pile, Materials materials) {
        OptionalDouble height = latest(pile, Measured::heightM);
        OptionalDouble length = pile.container().lengthM();
        OptionalDouble width = pile.container().widthM();
        OptionalDouble volume = height.isPresent()
                        && length.isPresent()
                        && width.isPresent()
                        && SizeDoubt.of(pile, materials).isEmpty()
                ? OptionalDouble.of(height.getAsDouble() * length.getAsDouble() * width.getAsDouble())
                : OptionalDouble.empty();
        OptionalDouble moisture = latest(pile, Measured::moisturePct);
        return new Observed(
                moisture.isPresent() ? OptionalDouble.of(Math.min(MOST_MOISTURE, moisture.getAsDouble())) : moisture,
                latest(pile, Measured::bulkDensityKgM3),
                volume);
    }

    /** The mixture of a pile, empty when its file names no ingredients with any dry matter. */
    public static Optional<Mixture> of(Pile pile, Materials materials, MixtureCalculator calculator) {
        List<Portion> portions = portions(pile, materials);
        return portions.stream().mapToDouble(PileMixture::dryKg).sum() < LEAST_DRY_KG
                ? Optional.empty()
                : Optional.of(calculator.mix(portions, observed(pile, materials)));
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
