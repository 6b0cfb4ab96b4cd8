package heapwright.process.climate;

import heapwright.pile.Place;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The mean outdoor temperature of each month at a place.
 *
 * @param known where the figures come from
 * @param meanC means of January to December, °C
 */
public record LocalYear(Known known, List<Double> meanC) {

    /** Where the outdoor temperatures come from. */
    public enum Known {
        /** Monthly means that the file gives. */
        MONTHS,
        /** A usual year for the latitude, and for the distance from the sea and the height where they are told. */
        LATITUDE,
        /** A usual year with a cold winter, since the file says nothing of the place. */
        ASSUMED
    }

    private static final int MONTHS = 12;

    /** Judgement: the middle of the north's countries with a cold winter. */
    private static final double USUAL_LATITUDE = 55;

    /**
     * Mean of the year at the equator, °C. Judgement, with the figures per degree below: they bring a dozen stations within
     * 5 K ({@code LocalYearTest}).
     */
    private static final double EQUATOR = 30;

    /**
     * Means fall by this much for each metre, K. The free air of the standard atmosphere falls by 0.0065 (ISO 2533);
     * the air of valleys and slopes by a little less, 0.005 to 0.006 (from memory). A high plain is milder than this.
     */
    private static final double LAPSE = 0.005;

    /**
     * When the year of the north is coldest, in months from the middle of January: about the 24th. Judgement; by the sea it
     * is February.
     */
    private static final double COLDEST_MONTH = 0.3;

    public LocalYear {
        meanC = List.copyOf(meanC);
        if (meanC.size() != MONTHS) {
            throw new IllegalArgumentException("twelve monthly means are needed, but there are " + meanC.size());
        }
    }

    /** The year of a place: as the file tells it, else a usual one. */
    public static LocalYear of(Place place) {
        if (!place.monthlyMeanC().isEmpty()) {
            return new LocalYear(Known.MONTHS, place.monthlyMeanC());
        }
        Known known = place.latitude().isPresent() ? Known.LATITUDE : Known.ASSUMED;
        return new LocalYear(
                known,
                usual(
                        place.latitude().orElse(USUAL_LATITUDE),
                        place.climate(),
                        place.altitudeM().orElse(0)));
    }

    /** The mean of a day, between those of the months before and after it; empty where nothing is known of the place. */
    public OptionalDouble on(LocalDate date) {
        return known == Known.ASSUMED ? OptionalDouble.empty() : OptionalDouble.of(mean(date));
    }

    /** The mean of a day, between those of the months before and after it, in an assumed year too; °C. */
    public double mean(LocalDate date) {
        double month = date.getMonthValue() - 1 + (date.getDayOfMonth() - 0.5) / date.lengthOfMonth() - 0.5;
        int before = (int) Math.floor(month);
        double after = month - before;
        return mean(before) + after * (mean(before + 1) - mean(before));
    }

    private double mean(int month) {
        return meanC.get(Math.floorMod(month, MONTHS));
    }

    /**
     * A usual year. The range from the coldest to the warmest month is that of the index of continentality K by
     * Gorczyński (1920; from memory): K = 1.7·range/sin(latitude) − 20.4. The mean of the year falls with the latitude.
     */
    private static List<Double> usual(double latitude, Place.Climate climate, double altitudeM) {
        Kind kind = Kind.of(climate);
        double north = Math.abs(latitude);
        double mean = EQUATOR - kind.perDegree * north - LAPSE * altitudeM;
        double range = (kind.continentality + 20.4) * Math.sin(Math.toRadians(north)) / 1.7;
        List<Double> months = new ArrayList<>();
        for (int m = 0; m < MONTHS; m++) {
            double swing = range / 2 * Math.signum(latitude);
            months.add(mean - swing * Math.cos(2 * Math.PI * (m - COLDEST_MONTH) / MONTHS));
        }
        return months;
    }

    private enum Kind {
        MILD_COAST(10, 0.36),
        INLAND(30, 0.42),
        FAR_INLAND(55, 0.50);

        private final double continentality;
        private final double perDegree;

        Kind(double continentality, double perDegree) {
            this.continentality = continentality;
            this.perDegree = perDegree;
        }

        private static Kind of(Place.Climate climate) {
            return switch (climate) {
                case MILD_COAST -> MILD_COAST;
                case INLAND, UNKNOWN -> INLAND;
                case FAR_INLAND -> FAR_INLAND;
            };
        }
    }
}
