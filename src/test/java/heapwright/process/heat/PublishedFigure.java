package heapwright.process.heat;

import com.fasterxml.jackson.databind.EnumNamingStrategies;
import com.fasterxml.jackson.databind.annotation.EnumNaming;
import java.util.OptionalDouble;

/**
 * A published figure.
 *
 * @param what what of
 * @param celsius for {@link What#DAY_AT} and {@link What#DAYS_OVER}: which temperature
 * @param day days after building, where it is of a day; the first of a stretch
 * @param to last day of a stretch
 * @param low lowest that fits the source; null where it says "at most"
 * @param high highest that fits the source; null where it says "at least"
 * @param unit "°C", "days" or "share"
 * @param note a word on how it was read, or null
 */
record PublishedFigure(
        What what, Double celsius, Integer day, Integer to, Double low, Double high, String unit, String note) {
    double least() {
        return low == null ? Double.NEGATIVE_INFINITY : low;
    }

    double most() {
        return high == null ? Double.POSITIVE_INFINITY : high;
    }

    /** The middle of the span; none where one end is open. */
    OptionalDouble middle() {
        return low == null || high == null ? OptionalDouble.empty() : OptionalDouble.of((low + high) / 2);
    }

    /** What it is of, in words. */
    String words() {
        String text = what.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
        if (celsius != null) {
            text += " " + Math.round(celsius) + " °C";
        }
        if (to != null) {
            return text + ", days " + day + "–" + to;
        }
        return day == null ? text : text.replace(" on day", "") + ", day " + day;
    }

    /** What a figure is of. */
    @EnumNaming(EnumNamingStrategies.KebabCaseStrategy.class)
    enum What {
        /** Highest core temperature, °C. */
        PEAK,
        /** Day of it. */
        PEAK_DAY,
        /** Core after so many days, °C. */
        CORE_ON_DAY,
        /** Skin after so many days, °C. */
        SKIN_ON_DAY,
        /** Lowest core from a day to another, °C. */
        LOWEST_CORE,
        /** Highest core from a day to another, °C. */
        HIGHEST_CORE,
        /** First day on which the core has reached a temperature. */
        DAY_AT,
        /** Days with the core at or above a temperature. */
        DAYS_OVER,
        /** First day after the peak with the core within 5 K of the air. */
        NEAR_OUTDOORS_DAY,
        /** Volume left, as a share of all that went in. */
        VOLUME_LEFT,
        /** Height left, as a share of the height as built. */
        HEIGHT_LEFT,
        /** Wet mass left, as a share of all that went in. */
        MASS_LEFT,
        /** Dry matter left, as a share of all that went in. */
        DRY_LEFT,
        /** Carbon lost, as a share of all that went in. */
        CARBON_LOST,
        /** Nitrogen lost, as a share of all that went in. */
        NITROGEN_LOST;

        /** Whether it is a temperature, so that a miss is told in kelvin. */
        boolean isTemperature() {
            return this == PEAK
                    || this == CORE_ON_DAY
                    || this == SKIN_ON_DAY
                    || this == LOWEST_CORE
                    || this == HIGHEST_CORE;
        }
    }
}
