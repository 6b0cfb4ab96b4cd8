package heapwright.pile;

import java.util.List;

/** Units of length in whole micrometres; the international inch is 2.54 cm by definition, the foot twelve inches. */
public enum LengthUnit implements Unit {
    METRE(1_000_000, "m", "metre", "metres", "meter", "meters"),
    CENTIMETRE(10_000, "cm", "centimetre", "centimetres", "centimeter", "centimeters"),
    MILLIMETRE(1_000, "mm", "millimetre", "millimetres", "millimeter", "millimeters"),
    INCH(25_400, "in", "inch", "inches"),
    FOOT(304_800, "ft", "foot", "feet");

    private final int micrometres;
    private final List<String> spellings;

    LengthUnit(int micrometres, String... spellings) {
        this.micrometres = micrometres;
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
        return micrometres;
    }
}
