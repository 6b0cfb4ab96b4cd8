package heapwright.pile;

import java.util.Optional;

/**
 * The quantities a document states as {@code {"value": …, "unit": …}}: their units, the unit they are kept in, and the
 * span outside which a figure must be a slip (judgement; wide enough for any home pile).
 */
enum Quantity {
    CONTAINER_LENGTH(LengthUnit.values(), LengthUnit.METRE, 0.05, 50, "{\"value\": 1.2, \"unit\": \"m\"}"),
    PILE_HEIGHT(LengthUnit.values(), LengthUnit.METRE, 0.05, 10, "{\"value\": 0.9, \"unit\": \"m\"}"),
    /** Up to the highest villages (from memory); land below the sea counts as level with it. */
    ALTITUDE(LengthUnit.values(), LengthUnit.METRE, 0, 5500, "{\"value\": 350, \"unit\": \"m\"}"),
    PIECE_LENGTH(LengthUnit.values(), LengthUnit.CENTIMETRE, 0.01, 500, "{\"value\": 20, \"unit\": \"cm\"}"),
    DEPTH(LengthUnit.values(), LengthUnit.CENTIMETRE, 0, 500, "{\"value\": 40, \"unit\": \"cm\"}"),
    PILE_VOLUME(VolumeUnit.values(), VolumeUnit.CUBIC_METRE, 0.001, 1000, "{\"value\": 1, \"unit\": \"m3\"}"),
    MEASURE_VOLUME(VolumeUnit.values(), VolumeUnit.LITRE, 0.0001, 2000, "{\"value\": 12, \"unit\": \"L\"}"),
    TEMPERATURE(TemperatureUnit.values(), TemperatureUnit.CELSIUS, -60, 120, "{\"value\": 45, \"unit\": \"C\"}"),
    /** The air has been measured from −89 to 57 °C (WMO archive of extremes, from memory); where people live from −60. */
    OUTDOOR_TEMPERATURE(TemperatureUnit.values(), TemperatureUnit.CELSIUS, -60, 58, "{\"value\": 4, \"unit\": \"C\"}"),
    MOISTURE(new Unit[] {PlainUnit.PERCENT}, PlainUnit.PERCENT, 0, 100, "{\"value\": 55, \"unit\": \"%\"}"),
    /** What goes in: even slurry and broth hold some dry matter, or it would be water. */
    MATERIAL_MOISTURE(new Unit[] {PlainUnit.PERCENT}, PlainUnit.PERCENT, 0, 99, "{\"value\": 55, \"unit\": \"%\"}"),
    CARBON(new Unit[] {PlainUnit.PERCENT}, PlainUnit.PERCENT, 0, 100, "{\"value\": 48, \"unit\": \"%\"}"),
    NITROGEN(new Unit[] {PlainUnit.PERCENT}, PlainUnit.PERCENT, 0, 100, "{\"value\": 0.9, \"unit\": \"%\"}"),
    ACIDITY(new Unit[] {PlainUnit.PH}, PlainUnit.PH, 0, 14, "{\"value\": 6.8, \"unit\": \"pH\"}"),
    DENSITY(
            DensityUnit.values(),
            DensityUnit.KILOGRAM_PER_CUBIC_METRE,
            1,
            3000,
            "{\"value\": 450, \"unit\": \"kg/m3\"}");

    private final UnitWords words;
    private final Unit target;
    private final double low;
    private final double high;
    private final String example;
    private final String span;
    private final String unitsAllowed;

    Quantity(Unit[] units, Unit target, double low, double high, String example) {
        this.words = UnitWords.of(units);
        this.target = target;
        this.low = low;
        this.high = high;
        this.example = example;
        this.span = "a figure from " + Shown.number(low) + " to " + Shown.number(high) + " " + target.symbol();
        this.unitsAllowed = units.length == 1 ? "the unit " + target.symbol() : "one of the units " + words.listed();
    }

    UnitWords words() {
        return words;
    }

    String example() {
        return example;
    }

    /** The figure in the unit it is kept in, rounded so that it is the same whatever unit it was told in. */
    double keep(double value, Unit unit) {
        return Rounding.converted(value, unit, target);
    }

    double low() {
        return low;
    }

    double high() {
        return high;
    }

    boolean possible(double kept) {
        return kept >= low && kept <= high;
    }

    /** The unit in which too high a figure would be possible, where its scale is often mistaken: degrees. */
    Optional<Unit> meant(double value, Unit unit) {
        return unit == TemperatureUnit.CELSIUS && value > high && possible(keep(value, TemperatureUnit.FAHRENHEIT))
                ? Optional.of(TemperatureUnit.FAHRENHEIT)
                : Optional.empty();
    }

    /** What units are allowed, for messages. */
    String unitsAllowed() {
        return unitsAllowed;
    }

    /** What figures are allowed, for messages. */
    String span() {
        return span;
    }

    /** The kept figure as a message shows it. */
    String shown(double kept) {
        return Shown.number(Math.round(kept * 1000) / 1000.0) + " " + target.symbol();
    }
}
