package heapwright.pile;

import java.util.OptionalDouble;

/**
 * What was measured on one day; absent figures were not measured.
 *
 * @param coreC core temperature, degrees Celsius
 * @param coreLowestC lowest core temperature of the day where it was read through the day, degrees Celsius
 * @param coreDepthCm depth at which it was taken, centimetres
 * @param outdoorC outdoor temperature, degrees Celsius
 * @param moisturePct moisture by drying, percent of the wet mass
 * @param bulkDensityKgM3 bulk density by bucket, kg per cubic metre as it lies
 * @param ph pH of a sample
 * @param heightM height of the pile, metres
 */
public record Measured(
        OptionalDouble coreC,
        OptionalDouble coreLowestC,
        OptionalDouble coreDepthCm,
        OptionalDouble outdoorC,
        OptionalDouble moisturePct,
        OptionalDouble bulkDensityKgM3,
        OptionalDouble ph,
        OptionalDouble heightM) {

    public static Measured nothing() {
        OptionalDouble none = OptionalDouble.empty();
        return new Measured(none, none, none, none, none, none, none, none);
    }
}
