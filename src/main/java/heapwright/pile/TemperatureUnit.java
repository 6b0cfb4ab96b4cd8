package heapwright.pile;

import java.util.List;

/** Units of temperature; Fahrenheit is 32 at 0 °C and 212 at 100 °C. */
public enum TemperatureUnit implements Unit {
    CELSIUS(9, "C", "°C", "celsius"),
    FAHRENHEIT(5, "F", "°F", "fahrenheit");

    private static final double FAHRENHEIT_AT_FREEZING = 32;

    private final int ninthsOfAFifth;
    private final List<String> spellings;

    TemperatureUnit(int ninthsOfAFifth, String... spellings) {
        this.ninthsOfAFifth = ninthsOfAFifth;
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

    /** The size of one degree. */
    @Override
    public double size() {
        return ninthsOfAFifth;
    }

    @Override
    public double to(Unit target, double value) {
        if (this == target) {
            return value;
        }
        return this == FAHRENHEIT
                ? (value - FAHRENHEIT_AT_FREEZING) * size() / CELSIUS.size()
                : value * size() / FAHRENHEIT.size() + FAHRENHEIT_AT_FREEZING;
    }
}
