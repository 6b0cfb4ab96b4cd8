package heapwright.pile;

import java.util.List;

/** Units of bulk density, each a mass over a volume. */
public enum DensityUnit implements Unit {
    KILOGRAM_PER_CUBIC_METRE(MassUnit.KILOGRAM, VolumeUnit.CUBIC_METRE, "kg/m3", "kg/m³", "kg/m^3", "g/L"),
    KILOGRAM_PER_LITRE(MassUnit.KILOGRAM, VolumeUnit.LITRE, "kg/L", "t/m3", "t/m³"),
    POUND_PER_CUBIC_FOOT(MassUnit.POUND, VolumeUnit.CUBIC_FOOT, "lb/ft3", "lb/ft³", "lbs/ft3"),
    POUND_PER_CUBIC_YARD(MassUnit.POUND, VolumeUnit.CUBIC_YARD, "lb/yd3", "lb/yd³", "lbs/yd3");

    private final double size;
    private final List<String> spellings;

    DensityUnit(MassUnit mass, VolumeUnit volume, String... spellings) {
        this.size = mass.to(MassUnit.KILOGRAM, 1) / volume.to(VolumeUnit.CUBIC_METRE, 1);
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

    /** Kilograms per cubic metre. */
    @Override
    public double size() {
        return size;
    }
}
