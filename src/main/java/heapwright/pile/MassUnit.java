package heapwright.pile;

import java.util.List;

/**
 * Units of mass, each an exact whole number of nanograms, so that metric conversions stay round. The international
 * avoirdupois pound is 0.45359237 kg by definition (1959 agreement), the ounce a sixteenth of it.
 */
public enum MassUnit implements Unit {
    KILOGRAM(1_000_000_000_000L, "kg", "kilo", "kilos", "kilogram", "kilograms"),
    GRAM(1_000_000_000L, "g", "gram", "grams"),
    TONNE(1_000_000_000_000_000L, "t", "tonne", "tonnes"),
    POUND(453_592_370_000L, "lb", "lbs", "pound", "pounds"),
    OUNCE(28_349_523_125L, "oz", "ounce", "ounces");

    private final long nanograms;
    private final List<String> spellings;

    MassUnit(long nanograms, String... spellings) {
        this.nanograms = nanograms;
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
        return nanograms;
    }
}
