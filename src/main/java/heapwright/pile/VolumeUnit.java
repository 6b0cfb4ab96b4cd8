package heapwright.pile;

import java.util.List;

/**
 * Units of volume with a fixed size, each an exact whole number of hundredths of a nanolitre. By definition the inch
 * is 2.54 cm, the US gallon 231 cubic inches (3.785411784 L), the US bushel 2150.42 cubic inches. Household measures
 * such as buckets are not here: they stand in the vocabulary and can be redefined.
 */
public enum VolumeUnit implements Unit {
    LITRE(100_000_000_000L, "L", "l", "litre", "litres", "liter", "liters"),
    MILLILITRE(100_000_000L, "mL", "ml", "millilitre", "millilitres", "milliliter", "milliliters"),
    CUBIC_METRE(100_000_000_000_000L, "m3", "m³", "m^3", "cubic-metre", "cubic-metres", "cubic-meter", "cubic-meters"),
    US_GALLON(378_541_178_400L, "gal", "gallon", "gallons", "us-gal", "us-gallon", "us-gallons"),
    CUBIC_FOOT(2_831_684_659_200L, "ft3", "ft³", "ft^3", "cubic-foot", "cubic-feet"),
    CUBIC_YARD(76_455_485_798_400L, "yd3", "yd³", "yd^3", "cubic-yard", "cubic-yards"),
    US_BUSHEL(3_523_907_016_688L, "bushel", "bushels", "bu");

    private final long steps;
    private final List<String> spellings;

    VolumeUnit(long steps, String... spellings) {
        this.steps = steps;
        this.spellings = List.of(spellings);
    }

    @Override
    public String symbol() {
        return spellings.get(0);
    }

    @Override
    public List<String> spellings() {
        return spellings;
    }

    @Override
    public double size() {
        return steps;
    }
}
