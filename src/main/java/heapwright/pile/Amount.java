package heapwright.pile;

/**
 * How much of something, as the person said it and in SI.
 *
 * @param value the number as given, positive and finite
 * @param unit the unit as given, in one spelling: the symbol of a {@link MassUnit} or {@link VolumeUnit}, or the id of a
 *     household measure
 * @param kilograms the mass in kg when the unit is a mass, else NaN
 * @param litres the volume in L when the unit is a volume or a household measure, else NaN
 */
public record Amount(double value, String unit, double kilograms, double litres) {

    public static Amount ofMass(double value, String unit, double kilograms) {
        return new Amount(value, unit, kilograms, Double.NaN);
    }

    public static Amount ofVolume(double value, String unit, double litres) {
        return new Amount(value, unit, Double.NaN, litres);
    }

    /** True when the amount was weighed; otherwise it is a volume and needs a bulk density. */
    public boolean isMass() {
        return !Double.isNaN(kilograms);
    }
}
