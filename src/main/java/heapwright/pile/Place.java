package heapwright.pile;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Where the pile stands.
 *
 * @param latitude degrees north, if stated
 * @param monthlyMeanC mean outdoor temperature of January to December in degrees Celsius: twelve values or none
 * @param settings what is particular about the place
 */
public record Place(OptionalDouble latitude, List<Double> monthlyMeanC, List<Setting> settings) {
    public Place {
        monthlyMeanC = List.copyOf(monthlyMeanC);
        settings = List.copyOf(settings);
    }

    public static Place unknown() {
        return new Place(OptionalDouble.empty(), List.of(), List.of());
    }
}
