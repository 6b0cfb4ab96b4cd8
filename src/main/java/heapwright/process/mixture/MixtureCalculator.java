package heapwright.process.mixture;

import heapwright.knowledge.Material;
import heapwright.knowledge.Trait;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * The mass balance of a mixture. The likely values come from the typical figures of the materials; the ends are the 5th
 * and 95th percentile over draws from their ranges, always with the likely value between. Portions of the same material
 * share one draw, since the doubt lies in the material and not in the bucket; so do a person's own materials that are
 * like the same one of the table, for what is not told of them.
 */
public final class MixtureCalculator {

    /** Stands for the C:N of a mixture with practically no nitrogen, so that every figure stays finite. */
    public static final double NO_NITROGEN = 10_000;

    /** Draws taken unless told otherwise. */
    public static final int USUAL_DRAWS = 256;

    /** Pieces longer than this hold air spaces open: the upper end of 0.5 to 5 cm (SASK08, published). */
    private static final double COARSE_FROM_CM = 5;

    /** Share of the volume left when fine stuff fills the gaps of coarse stuff (judgement). */
    private static final Band LEFT_AFTER_MIXING = new Band(0.75, 0.9, 1.0);

    /** Key of the draws that belong to the mixture and to no material. */
    private static final String WHOLE = "";

    private final Points points;

    public MixtureCalculator() {
        this(USUAL_DRAWS);
    }

    /** @param draws how many draws, a power of two */
    public MixtureCalculator(int draws) {
        this.points = new Points(Part.DIMENSIONS, draws);
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
        boolean mix = isMix(portions);
        List<Portion> alike = MergedPortions.of(portions);
        boolean water = portions.stream().allMatch(portion -> Density.fillsGaps(portion.material()));
        Part typical = typical(alike, mix, water).as(observed);
        Part[] drawn = drawn(alike, mix, water, observed);
        Spread spread = new Spread(typical, drawn, observed);
        return new Mixture(
                spread.masses(),
                spread.of(spread::moisturePct),
                spread.of(part -> ratio(part.carbon(), part.nitrogen())),
                spread.of(part -> ratio(part.reachable(), part.reachableNitrogen())),
                spread.of(spread::density),
                spread.freeAirSpacePct(),
                spread.of(Part::looseM3),
                spread.of(Part::settledM3),
                contributions(portions),
                observed.moisturePct().isPresent() ? Basis.MEASURED : Basis.ESTIMATED,
                observed.densityKgM3().isPresent() ? Basis.MEASURED : Basis.ESTIMATED,
                observed.volumeM3().isPresent() ? Basis.REPORTED : Basis.ESTIMATED);
    }

    private Part[] drawn(List<Portion> portions, boolean mix, boolean water, Observed observed) {
        Map<String, double[][]> byMaterial = new HashMap<>();
        List<double[][]> orders = portions.stream()
                .map(portion -> byMaterial.computeIfAbsent(portion.material().like(), points::of))
                .toList();
        double[][] whole = points.of(WHOLE);
        Part[] drawn = new Part[points.count()];
        for (int i = 0; i < drawn.length; i++) {
            Part sum = Part.NOTHING;
            for (int k = 0; k < orders.size(); k++) {
                sum = sum.plus(part(portions.get(k), Draw.at(orders.get(k)[i]), water));
            }
            drawn[i] = (mix ? sum.filledInto(Draw.at(whole[i]).of(0, LEFT_AFTER_MIXING)) : sum).as(observed);
        }
        return drawn;
    }

    /** @param water whether there is nothing else, so that it has no gaps to run into */
    private static Part part(Portion portion, Draw draw, boolean water) {
        return water ? Part.of(portion, draw, true) : Part.of(portion, draw);
    }

    /** All portions together at the typical figures. */
    private static Part typical(List<Portion> portions, boolean mix, boolean water) {
        Part sum = Part.NOTHING;
        for (Portion portion : portions) {
            sum = sum.plus(part(portion, Draw.typical(), water));
        }
        return mix ? sum.filledInto(LEFT_AFTER_MIXING.likely()) : sum;
    }

    /** Whether there is more than one thing to fit into each other's gaps. */
    private static boolean isMix(List<Portion> portions) {
        return portions.stream()
                        .map(Portion::material)
                        .filter(material -> !Density.fillsGaps(material))
                        .map(Material::id)
                        .distinct()
                        .limit(2)
                        .count()
                > 1;
    }

    static double ratio(double carbon, double nitrogen) {
        if (carbon <= 0) {
            return 0;
        }
        return nitrogen <= 0 ? NO_NITROGEN : Math.min(NO_NITROGEN, carbon / nitrogen);
    }

    /** What each portion brings at the typical figures of its material. */
    public static List<Contribution> contributions(List<Portion> portions) {
        return portions.stream().map(MixtureCalculator::contribution).toList();
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
            double[] values = new double[drawn.length];
            for (int i = 0; i < values.length; i++) {
                values[i] = quantity.applyAsDouble(drawn[i]);
            }
            return Band.ofSample(values, quantity.applyAsDouble(typical));
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
            double[] values = new double[3 * drawn.length];
            for (int i = 0; i < drawn.length; i++) {
                Band forms = freeAirSpace(drawn[i]);
                values[3 * i] = forms.low();
                values[3 * i + 1] = forms.likely();
                values[3 * i + 2] = forms.high();
            }
            return Band.ofSample(values, freeAirSpace(typical).likely()).times(100);
        }

        private Band freeAirSpace(Part part) {
            return FreeAirSpace.band(density(part), part.dryMatter(), part.organicMatter());
        }
    }
}
