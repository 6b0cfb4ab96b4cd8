package heapwright.pile;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Where the pile stands.
 *
 * @param latitude degrees north, if stated
 * @param climate how far the sea tempers the year
 * @param altitudeM height above the sea in metres, if stated
 * @param monthlyMeanC mean outdoor temperature of January to December in degrees Celsius: twelve values or none
 * @param settings what is particular about the place
 */
public record Place(
        OptionalDouble latitude,
        Climate climate,
        OptionalDouble altitudeM,
        List<Double> monthlyMeanC,
        List<Setting> settings) {

    /** How far the sea tempers the year. */
    public enum Climate implements Token {
        /** Mild winters and cool summers: most of western Europe's coast, the Pacific coast of North America. */
        MILD_COAST,
        /** Between the two: central and northern Europe, the lakes and the Atlantic side of North America. */
        INLAND,
        /** Hard winters and hot summers: the plains of North America, eastern Europe and Asia. */
        FAR_INLAND,
        UNKNOWN
    }

    public Place {
        monthlyMeanC = List.copyOf(monthlyMeanC);
        settings = List.copyOf(settings);
    }

    public static Place unknown() {
        return new Place(OptionalDouble.empty(), Climate.UNKNOWN, OptionalDouble.empty(), List.of(), List.of());
    }
}
