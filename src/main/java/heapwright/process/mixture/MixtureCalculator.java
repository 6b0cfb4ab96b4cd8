package heapwright.process.mixture;

import heapwright.knowledge.Material;
import heapwright.knowledge.Trait;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * The mass balance of a mixture. The likely values come from the typical figures of the materials; the ends are the 5th
 * and 95th percentile over draws from their ranges, always with the likely value between. Portions of the same material
 * share one draw, since the doubt lies in the material and not in the bucket.
 */
public final class MixtureCalculator {

    /** Stands for the C:N of a mixture with practically no nitrogen, so that every figure stays finite. */
    public static final double NO_NITROGEN = 10_000;

    /** Draws taken unless told otherwise. */
    public static final int USUAL_DRAWS = 256;

    /** Pieces longer than this hold air spaces open: the upper end of 0.5 to 5 cm (SASK08, published). */
    private static final double COARSE_FROM_CM = 5;

    private final Points points;

    public MixtureCalculator() {
        this(USUAL_DRAWS);
    }

    /** @param draws how many draws, a power of two */
    public MixtureCalculator(int draws) {
        this.points = new Points(draws);
    }

    /** A mixture of which nothing was measured. */
    public Mixture mix(List<Portion> portions) {
        return mix(portions, Observed.nothing());
    }

    /**
     * The mixture of some portions. A measured moisture replaces the water of the recipe (the dry mass stays), a
     * measured volume or density the estimate of how it settles.
     *
     * @throws IllegalArgumentException when there is nothing in it
     */
    public Mixture mix(List<Portion> portions, Observed observed) {
        if (portions.stream().mapToDouble(portion -> portion.kgWet().likely()).sum() <= 0) {
            throw new IllegalArgumentException("A mixture needs at least one portion with an amount above zero.");
        }
        Map<Material, Integer> places = places(portions);
        Part typical = sum(portions.stream().map(portion -> Part.of(portion, Draw.typical())))
                .as(observed);
        Part[] drawn = Arrays.stream(points.inDimensions(places.size() * Part.DIMENSIONS))
                .map(point -> sum(portions.stream()
                                .map(portion -> Part.of(portion, Draw.at(point, places.get(portion.material())))))
                        .as(observed))
                .toArray(Part[]::new);
        Spread spread = new Spread(typical, drawn, observed);
        return new Mixture(
                spread.masses(),
                spread.of(spread::moisturePct),
                spread.of(part -> ratio(part.carbon(), part.nitrogen())),
                spread.of(part -> ratio(part.degradable(), part.nitrogen())),
                spread.of(spread::density),
                spread.freeAirSpacePct(),
                spread.of(Part::looseM3),
                spread.of(Part::settledM3),
                portions.stream().map(MixtureCalculator::contribution).toList(),
                observed.moisturePct().isPresent() ? Basis.MEASURED : Basis.ESTIMATED,
                observed.densityKgM3().isPresent() ? Basis.MEASURED : Basis.ESTIMATED,
                observed.volumeM3().isPresent() ? Basis.REPORTED : Basis.ESTIMATED);
    }

    private static Map<Material, Integer> places(List<Portion> portions) {
        Map<Material, Integer> places = new LinkedHashMap<>();
        for (Portion portion : portions) {
            places.putIfAbsent(portion.material(), places.size() * Part.DIMENSIONS);
        }
        return places;
    }

    private static Part sum(Stream<Part> parts) {
        return parts.reduce(Part.NOTHING, Part::plus);
    }

    static double ratio(double carbon, double nitrogen) {
        if (carbon <= 0) {
            return 0;
        }
        return nitrogen <= 0 ? NO_NITROGEN : Math.min(NO_NITROGEN, carbon / nitrogen);
    }

    private static Contribution contribution(Portion portion) {
        Part part = Part.of(portion, Draw.typical());
        Material material = portion.material();
        boolean coarse = portion.pieceCm().isPresent()
                ? portion.pieceCm().getAsDouble() > COARSE_FROM_CM && !portion.chopped()
                : material.traits().contains(Trait.COARSE);
        return new Contribution(
                material,
                part.wet(),
                part.dry(),
                part.water(),
                part.carbon(),
                part.nitrogen(),
                part.settledM3(),
                coarse);
    }

    /** The likely value and the draws of one mixture. */
    private record Spread(Part typical, Part[] drawn, Observed observed) {

        Band of(ToDoubleFunction<Part> quantity) {
            return Band.ofSample(Arrays.stream(drawn).mapToDouble(quantity).toArray(), quantity.applyAsDouble(typical));
        }

        Masses masses() {
            return new Masses(
                    of(Part::wet),
                    of(Part::dry),
                    of(Part::water),
                    of(Part::carbon),
                    of(Part::reachable),
                    of(Part::degradable),
                    of(Part::nitrogen),
                    of(Part::volatileSolids),
                    of(Part::ash));
        }

        double moisturePct(Part part) {
            return observed.moisturePct().orElseGet(part::moisturePct);
        }

        double density(Part part) {
            return observed.densityKgM3().orElseGet(() -> part.wet() / part.settledM3());
        }

        Band freeAirSpacePct() {
            double[] values = Arrays.stream(drawn)
                    .map(this::freeAirSpace)
                    .flatMapToDouble(band -> DoubleStream.of(band.low(), band.likely(), band.high()))
                    .toArray();
            return Band.ofSample(values, freeAirSpace(typical).likely()).times(100);
        }

        private Band freeAirSpace(Part part) {
            return FreeAirSpace.band(density(part), part.dryMatter(), part.organicMatter());
        }
    }
}
