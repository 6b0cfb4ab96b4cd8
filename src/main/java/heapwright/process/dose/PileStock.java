package heapwright.process.dose;

import heapwright.process.mixture.Band;
import heapwright.process.mixture.Basis;
import heapwright.process.mixture.Contribution;
import heapwright.process.mixture.Mixture;
import heapwright.process.mixture.Observed;

/**
 * What lies in a pile now, as far as it is known.
 *
 * @param wetKg mass as it is, kg
 * @param dryKg dry mass, kg
 * @param moisturePct moisture, percent of wet mass
 * @param carbonKg carbon that a season reaches, kg: of wood only a part
 * @param carbonToNitrogen C:N of what a season reaches
 * @param organicMatter organic matter, share of dry mass
 * @param volumeM3 volume as it lies, cubic metres: as told, else as what is in it settles
 * @param densityKgM3 likely wet density as it lies, kg per cubic metre; of a bin that may not be full it is not mass
 *     over volume
 * @param woodyDryKg dry mass of woody materials, kg
 * @param woodyMoisturePct moisture of the woody materials as they went in, percent
 * @param recipeBasis {@link Basis#ESTIMATED} from a recipe, {@link Basis#ASSUMED} without one
 * @param moistureBasis where the moisture comes from
 * @param volumeBasis where the volume comes from
 * @param densityBasis where the density comes from
 */
public record PileStock(
        Band wetKg,
        Band dryKg,
        Band moisturePct,
        Band carbonKg,
        Band carbonToNitrogen,
        double organicMatter,
        Band volumeM3,
        double densityKgM3,
        double woodyDryKg,
        double woodyMoisturePct,
        Basis recipeBasis,
        Basis moistureBasis,
        Basis volumeBasis,
        Basis densityBasis) {

    /** From recipe and additions, with what was measured already in the mixture. */
    public static PileStock of(Mixture mixture) {
        double woodyDry = mixture.contributions().stream()
                .filter(Contribution::woody)
                .mapToDouble(Contribution::kgDry)
                .sum();
        double woodyWater = mixture.contributions().stream()
                .filter(Contribution::woody)
                .mapToDouble(Contribution::kgWater)
                .sum();
        double dry = mixture.masses().dry().likely();
        return new PileStock(
                mixture.masses().wet(),
                mixture.masses().dry(),
                mixture.moisturePct(),
                mixture.masses().reachableCarbon(),
                mixture.carbonToNitrogen(),
                dry > 0 ? mixture.masses().volatileSolids().likely() / dry : 0,
                mixture.settledM3(),
                mixture.densityKgM3().likely(),
                woodyDry,
                woodyDry > 0
                        ? 100 * woodyWater / (woodyDry + woodyWater)
                        : mixture.moisturePct().likely(),
                Basis.ESTIMATED,
                mixture.moistureBasis(),
                mixture.volumeBasis(),
                mixture.densityBasis());
    }

    /** From a size alone, with the usual range of any pile for the rest. */
    public static PileStock ofSize(Band volumeM3, Basis volumeBasis, Observed observed) {
        Band density = observed.densityKgM3().isPresent()
                ? Band.exact(observed.densityKgM3().getAsDouble())
                : TypicalPile.DENSITY_KG_M3;
        Band moisture = observed.moisturePct().isPresent()
                ? Band.exact(observed.moisturePct().getAsDouble())
                : TypicalPile.MOISTURE_PCT;
        Band wet = product(volumeM3, density);
        Band dry = product(wet, new Band(100 - moisture.high(), 100 - moisture.likely(), 100 - moisture.low()))
                .times(1.0 / 100);
        return new PileStock(
                wet,
                dry,
                moisture,
                product(dry, TypicalPile.CARBON_PCT).times(1.0 / 100),
                TypicalPile.CARBON_TO_NITROGEN,
                TypicalPile.ORGANIC_MATTER,
                volumeM3,
                density.likely(),
                dry.likely() * TypicalPile.WOODY_SHARE,
                moisture.likely(),
                Basis.ASSUMED,
                observed.moisturePct().isPresent() ? Basis.MEASURED : Basis.ASSUMED,
                volumeBasis,
                observed.densityKgM3().isPresent() ? Basis.MEASURED : Basis.ASSUMED);
    }

    /**
     * The same pile at another moisture than the recipe gives. With a recipe the dry mass stays and the water changes;
     * without one the wet mass stays, since it came from the volume.
     */
    public PileStock atMoisture(Band moisture, Basis basis) {
        boolean dryKnown = recipeBasis == Basis.ESTIMATED;
        Band wet = dryKnown
                ? Band.around(
                        wetOf(dryKg.low(), moisture.low()),
                        wetOf(dryKg.likely(), moisture.likely()),
                        wetOf(dryKg.high(), moisture.high()))
                : wetKg;
        Band dry = dryKnown
                ? dryKg
                : Band.around(
                        wetKg.low() * (1 - moisture.high() / 100),
                        wetKg.likely() * (1 - moisture.likely() / 100),
                        wetKg.high() * (1 - moisture.low() / 100));
        return new PileStock(
                wet,
                dry,
                moisture,
                carbonKg,
                carbonToNitrogen,
                organicMatter,
                volumeM3,
                densityKgM3 * wet.likely() / wetKg.likely(),
                woodyDryKg,
                woodyMoisturePct,
                recipeBasis,
                basis,
                volumeBasis,
                densityBasis);
    }

    /** The same pile with so much water poured over it since; a moisture that was measured or felt has it already. */
    public PileStock watered(double litres) {
        return litres <= 0 || recipeBasis != Basis.ESTIMATED || moistureBasis != Basis.ESTIMATED
                ? this
                : atMoisture(
                        Band.around(
                                wetted(wetKg.low(), moisturePct.low(), litres),
                                wetted(wetKg.likely(), moisturePct.likely(), litres),
                                wetted(wetKg.high(), moisturePct.high(), litres)),
                        moistureBasis);
    }

    private static double wetted(double wet, double moisturePct, double litres) {
        return 100 * (wet * moisturePct / 100 + litres) / (wet + litres);
    }

    /** The same pile in the size that was told: what is in it stays. */
    PileStock sized(double toldM3) {
        return new PileStock(
                wetKg,
                dryKg,
                moisturePct,
                carbonKg,
                carbonToNitrogen,
                organicMatter,
                Band.exact(toldM3),
                densityKgM3,
                woodyDryKg,
                woodyMoisturePct,
                recipeBasis,
                moistureBasis,
                Basis.REPORTED,
                densityBasis);
    }

    /** The same pile at another density: the volume stays, the mass follows. */
    PileStock atDensity(double density, Basis basis) {
        double factor = density / densityKgM3;
        return new PileStock(
                wetKg.times(factor),
                dryKg.times(factor),
                moisturePct,
                carbonKg.times(factor),
                carbonToNitrogen,
                organicMatter,
                volumeM3,
                density,
                woodyDryKg * factor,
                woodyMoisturePct,
                recipeBasis,
                moistureBasis,
                volumeBasis,
                basis);
    }

    /** Likely nitrogen, kg. */
    public double nitrogenKg() {
        return carbonToNitrogen.likely() > 0 ? carbonKg.likely() / carbonToNitrogen.likely() : 0;
    }

    private static double wetOf(double dry, double moisturePct) {
        return dry / (1 - moisturePct / 100);
    }

    private static Band product(Band one, Band other) {
        return new Band(one.low() * other.low(), one.likely() * other.likely(), one.high() * other.high());
    }
}
