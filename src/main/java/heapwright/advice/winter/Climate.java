package heapwright.advice.winter;

import heapwright.pile.Entry;
import heapwright.pile.Pile;
import heapwright.process.climate.LocalYear;
import heapwright.process.heat.Weather;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.TreeMap;

/**
 * The outdoor temperatures of a pile's place. All figures without a source are judgement.
 *
 * @param known where they come from
 * @param january mean of January, °C
 * @param weather daily weather from the day the pile was built
 */
public record Climate(LocalYear.Known known, double january, Weather weather) {

    /** Rain or snow, mm a day: about 370 mm a year. */
    private static final double USUAL_RAIN = 1.0;
    /** A measured day bends the curve for this many days each way. */
    private static final int HOLDS_DAYS = 12;
    /** A thermometer is read at one hour of a day; this much of its deviation is taken for the day's mean. */
    private static final double DAY_SHARE = 0.7;

    private static final double COLDEST = -60;
    private static final double WARMEST = 55;

    /**
     * The weather of a pile: a smooth year through the monthly means, bent to the outdoor temperatures that were read.
     *
     * @param days length from the day it was built
     */
    public static Climate of(Pile pile, int days) {
        LocalYear year = LocalYear.of(pile.place());
        return new Climate(year.known(), year.meanC().get(0), weather(months(year), pile.built(), days, pile));
    }

    /** The year and the wind at another start, for a pile built earlier; readings do not count there. */
    static Weather smooth(Pile pile, LocalDate from, int days) {
        return Weather.monthly(months(LocalYear.of(pile.place())), from.getDayOfYear(), days)
                .withPrecipitation(USUAL_RAIN)
                .withWind(Surroundings.wind(pile));
    }

    private static double[] months(LocalYear year) {
        return year.meanC().stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static Weather weather(double[] months, LocalDate from, int days, Pile pile) {
        Weather smooth = Weather.monthly(months, from.getDayOfYear(), days);
        double[] air = new double[days];
        Arrays.setAll(air, smooth::airC);
        TreeMap<Integer, Double> off = new TreeMap<>();
        for (Entry entry : pile.log()) {
            long day = ChronoUnit.DAYS.between(from, entry.date());
            if (day >= 0 && day < days && entry.measured().outdoorC().isPresent()) {
                double read = entry.measured().outdoorC().getAsDouble();
                off.put((int) day, DAY_SHARE * (read - smooth.airC((int) day)));
            }
        }
        for (int d = 0; d < days && !off.isEmpty(); d++) {
            air[d] += bend(off, d);
        }
        for (int d = 0; d < days; d++) {
            air[d] = Math.max(COLDEST, Math.min(WARMEST, air[d]));
        }
        return Weather.daily(air).withPrecipitation(USUAL_RAIN);
    }

    private static double bend(TreeMap<Integer, Double> off, int day) {
        double sum = 0;
        double weight = 0;
        double near = 0;
        var before = off.floorEntry(day);
        var after = off.ceilingEntry(day);
        for (var one : Arrays.asList(before, after)) {
            if (one != null) {
                double closeness = Math.max(0, 1 - Math.abs(day - one.getKey()) / (double) HOLDS_DAYS);
                sum += closeness * one.getValue();
                weight += closeness;
                near = Math.max(near, closeness);
            }
        }
        return weight > 0 ? near * sum / weight : 0;
    }
}
