package heapwright.process.mixture;

import heapwright.knowledge.Material;

/**
 * What one portion brings at one draw of its material's figures; also the sum of several. Masses in kg.
 *
 * @param dry dry mass
 * @param water water
 * @param carbon carbon
 * @param reachable carbon that asks for nitrogen within a season, see {@link Degradability#reached}
 * @param degradable carbon that can decay within a season
 * @param nitrogen nitrogen
 * @param reachableNitrogen nitrogen that comes free with that carbon
 * @param volatileSolids organic matter
 * @param looseM3 volume as filled by hand
 * @param settledM3 volume after settling
 */
record Part(
        double dry,
        double water,
        double carbon,
        double reachable,
        double degradable,
        double nitrogen,
        double reachableNitrogen,
        double volatileSolids,
        double looseM3,
        double settledM3) {

    /** Figures that a draw decides for a material. */
    static final int DIMENSIONS = 7;

    /** No organic material has less carbon for its nitrogen (urine has 0.8); keeps a low end of zero finite. */
    private static final double LOWEST_RATIO = 0.5;

    private static final int RATIO = 0;
    private static final int CARBON = 1;
    private static final int NITROGEN = 2;
    private static final int MOISTURE = 3;
    private static final int DENSITY = 4;
    private static final int DEGRADABLE = 5;
    private static final int ASH = 6;

    static final Part NOTHING = new Part(0, 0, 0, 0, 0, 0, 0, 0, 0, 0);

    static Part of(Portion portion, Draw draw) {
        return of(portion, draw, !Density.fillsGaps(portion.material()));
    }

    /** @param takesRoom whether it stands for itself, and not in the gaps of the rest */
    static Part of(Portion portion, Draw draw, boolean takesRoom) {
        Material material = portion.material();
        double byHand = draw.of(DENSITY, Density.byHand(material));
        boolean weighed = portion.amount().isMass();
        double wet =
                weighed ? portion.amount().kilograms() : portion.amount().litres() * byHand / Density.LITRES_PER_M3;
        double looseM3 = weighed ? wet / byHand : portion.amount().litres() / Density.LITRES_PER_M3;
        double dry = wet * (1 - draw.of(MOISTURE, material.moisturePct()) / 100);
        double carbonPct = draw.of(CARBON, material.carbonPct());
        double carbon = dry * carbonPct / 100;
        double degraded = draw.of(DEGRADABLE, Degradability.of(material));
        double reached = draw.of(DEGRADABLE, Degradability.reached(material));
        double nitrogen = dry * Math.min(100, nitrogenPct(material, carbonPct, draw)) / 100;
        double ashPct = material.ashPct()
                .map(figure -> draw.of(ASH, figure))
                .orElseGet(() -> Equations.ashFromCarbonPct(carbonPct));
        return new Part(
                dry,
                wet - dry,
                carbon,
                carbon * reached,
                carbon * degraded,
                nitrogen,
                nitrogen * reached,
                dry * (1 - ashPct / 100),
                takesRoom ? looseM3 : 0,
                takesRoom ? wet / draw.of(DENSITY, Density.settled(material)) : 0);
    }

    private static double nitrogenPct(Material material, double carbonPct, Draw draw) {
        return material.nitrogenOnSameSample() || material.carbonToNitrogen().typical() <= 0
                ? draw.of(NITROGEN, material.nitrogenPct())
                : carbonPct / Math.max(LOWEST_RATIO, draw.of(RATIO, material.carbonToNitrogen()));
    }

    Part plus(Part other) {
        return new Part(
                dry + other.dry,
                water + other.water,
                carbon + other.carbon,
                reachable + other.reachable,
                degradable + other.degradable,
                nitrogen + other.nitrogen,
                reachableNitrogen + other.reachableNitrogen,
                volatileSolids + other.volatileSolids,
                looseM3 + other.looseM3,
                settledM3 + other.settledM3);
    }

    /** The same stuff after mixing, with this share of its settled volume. */
    Part filledInto(double share) {
        return new Part(
                dry,
                water,
                carbon,
                reachable,
                degradable,
                nitrogen,
                reachableNitrogen,
                volatileSolids,
                looseM3,
                settledM3 * share);
    }

    /** The same dry matter as the pile was measured: its moisture, and its volume or density, replace the estimate. */
    Part as(Observed observed) {
        double measuredWater = observed.moisturePct().isPresent()
                ? dry
                        * observed.moisturePct().getAsDouble()
                        / (100 - observed.moisturePct().getAsDouble())
                : water;
        double wet = dry + measuredWater;
        double volume = settledM3;
        if (observed.volumeM3().isPresent()) {
            volume = observed.volumeM3().getAsDouble();
        } else if (observed.densityKgM3().isPresent()) {
            volume = wet / observed.densityKgM3().getAsDouble();
        }
        return new Part(
                dry,
                measuredWater,
                carbon,
                reachable,
                degradable,
                nitrogen,
                reachableNitrogen,
                volatileSolids,
                looseM3,
                volume);
    }

    double wet() {
        return dry + water;
    }

    double ash() {
        return dry - volatileSolids;
    }

    double moisturePct() {
        return wet() > 0 ? 100 * water / wet() : 0;
    }

    double dryMatter() {
        return wet() > 0 ? dry / wet() : 0;
    }

    double organicMatter() {
        return dry > 0 ? volatileSolids / dry : 0;
    }
}
