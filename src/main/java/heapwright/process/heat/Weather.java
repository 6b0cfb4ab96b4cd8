package heapwright.process.heat;

import java.util.Arrays;
import java.util.SplittableRandom;

/** Daily outdoor weather: air temperature, ground temperature, rain or snow, wind. Immutable. */
public final class Weather {
    /** Usual wind in a garden, m/s (judgement). */
    private static final double USUAL_WIND = 2;
    /** Days over which the ground under a pile follows the air (judgement). */
    private static final double GROUND_DAYS = 45;

    /** Daily means outside this span, °C, are refused: no garden has them (judgement). */
    private static final double COLDEST = -70;

    private static final double HOTTEST = 60;

    private static final double DAYS_A_YEAR = 365.25;

    private final double[] airC;
    private final double[] groundC;
    private final double[] precipitationMm;
    private final double[] windMs;

    private Weather(double[] airC, double[] groundC, double[] precipitationMm, double[] windMs) {
        this.airC = airC;
        this.groundC = groundC;
        this.precipitationMm = precipitationMm;
        this.windMs = windMs;
    }

    /**
     * A given series of daily mean air temperatures, °C (−70 to 60).
     *
     * @throws IllegalArgumentException when the series is empty or a value is out of range
     */
    public static Weather daily(double... airC) {
        Checks.above("days of weather", airC.length, 0);
        for (double c : airC) {
            Checks.within("airC", c, COLDEST, HOTTEST);
        }
        double[] own = airC.clone();
        return new Weather(own, ground(own, own[0]), new double[own.length], filled(own.length, USUAL_WIND));
    }

    /** The same temperature, °C, every day. */
    public static Weather constant(double airC, int days) {
        return daily(filled(days, airC));
    }

    /**
     * A smooth year through twelve monthly means: their mean and first two harmonics.
     *
     * @param monthlyMeanC means of January to December, °C
     * @param startDayOfYear day of the year on which the run starts, 1–366
     * @param days length
     */
    public static Weather monthly(double[] monthlyMeanC, int startDayOfYear, int days) {
        if (monthlyMeanC.length != 12) {
            throw new IllegalArgumentException("twelve monthly means are needed, but there are " + monthlyMeanC.length);
        }
        double mean = Arrays.stream(monthlyMeanC).average().orElseThrow();
        double[] air = filled(days, mean);
        for (int h = 1; h <= 2; h++) {
            double a = 0;
            double b = 0;
            for (int m = 0; m < 12; m++) {
                double angle = 2 * Math.PI * h * (m + 0.5) / 12;
                a += monthlyMeanC[m] * Math.cos(angle) / 6;
                b += monthlyMeanC[m] * Math.sin(angle) / 6;
            }
            for (int d = 0; d < days; d++) {
                double angle = 2 * Math.PI * h * (startDayOfYear - 0.5 + d) / DAYS_A_YEAR;
                air[d] += a * Math.cos(angle) + b * Math.sin(angle);
            }
        }
        // The harmonics swing a little beyond the means they go through.
        Arrays.setAll(air, d -> Math.max(COLDEST, Math.min(HOTTEST, air[d])));
        return daily(air).startingOnGround((mean + air[0]) / 2);
    }

    /** This weather with a spell colder (or warmer, negative) by some kelvin; the ground follows. */
    public Weather withSpell(int from, int length, double colderBy) {
        double[] air = airC.clone();
        for (int d = Math.max(0, from); d < Math.min(air.length, from + length); d++) {
            air[d] -= colderBy;
        }
        return new Weather(air, ground(air, groundC[0]), precipitationMm, windMs);
    }

    /** This weather warmer by some kelvin throughout. */
    public Weather warmerBy(double kelvin) {
        double[] air = Arrays.stream(airC).map(c -> c + kelvin).toArray();
        return new Weather(air, ground(air, groundC[0] + kelvin / 2), precipitationMm, windMs);
    }

    /** This weather with the same rain (or snow, in frost) every day, mm. */
    public Weather withPrecipitation(double mmADay) {
        Checks.within("mmADay", mmADay, 0, 500);
        return new Weather(airC, groundC, filled(airC.length, mmADay), windMs);
    }

    /** This weather with daily rain or snow, mm; a day not given is dry. */
    public Weather withPrecipitation(double[] mm) {
        return new Weather(airC, groundC, Arrays.copyOf(mm, airC.length), windMs);
    }

    /** This weather with a steady wind, m/s (0–30). */
    public Weather withWind(double metresPerSecond) {
        Checks.within("metresPerSecond", metresPerSecond, 0, 30);
        return new Weather(airC, groundC, precipitationMm, filled(airC.length, metresPerSecond));
    }

    /**
     * This weather with day-to-day unrest: a first-order random course of the given spread, K, one day carrying 0.7 over
     * to the next (judgement). The same seed gives the same weather.
     */
    public Weather restless(long seed, double spreadK) {
        SplittableRandom random = new SplittableRandom(seed);
        double carry = 0.7;
        double fresh = spreadK * Math.sqrt(1 - carry * carry) * Math.sqrt(12.0 / 4);
        double[] air = airC.clone();
        double deviation = 0;
        for (int d = 0; d < air.length; d++) {
            double bell = random.nextDouble() + random.nextDouble() + random.nextDouble() + random.nextDouble() - 2;
            deviation = carry * deviation + fresh * bell;
            air[d] += deviation;
        }
        return new Weather(air, ground(air, groundC[0]), precipitationMm, windMs);
    }

    /** This weather, begun by all the days of another. */
    public Weather startingAs(Weather other) {
        double[] air = airC.clone();
        double[] rain = precipitationMm.clone();
        double[] wind = windMs.clone();
        int n = Math.min(air.length, other.airC.length);
        System.arraycopy(other.airC, 0, air, 0, n);
        System.arraycopy(other.precipitationMm, 0, rain, 0, n);
        System.arraycopy(other.windMs, 0, wind, 0, n);
        return new Weather(air, ground(air, other.groundC[0]), rain, wind);
    }

    /** This weather without its first days; its last day always stays. */
    public Weather from(int day) {
        int first = Math.max(0, Math.min(day, airC.length - 1));
        return new Weather(
                Arrays.copyOfRange(airC, first, airC.length),
                Arrays.copyOfRange(groundC, first, airC.length),
                Arrays.copyOfRange(precipitationMm, first, airC.length),
                Arrays.copyOfRange(windMs, first, airC.length));
    }

    /** Days covered. */
    public int days() {
        return airC.length;
    }

    /** Air temperature, °C; past the end the last day stands. */
    public double airC(int day) {
        return airC[Math.min(day, airC.length - 1)];
    }

    /** Ground temperature under the pile's footprint, °C. */
    public double groundC(int day) {
        return groundC[Math.min(day, groundC.length - 1)];
    }

    /** Rain, or snow in frost, mm. */
    public double precipitationMm(int day) {
        return precipitationMm[Math.min(day, precipitationMm.length - 1)];
    }

    /** Wind, m/s. */
    public double windMs(int day) {
        return windMs[Math.min(day, windMs.length - 1)];
    }

    private Weather startingOnGround(double firstC) {
        return new Weather(airC, ground(airC, firstC), precipitationMm, windMs);
    }

    private static double[] ground(double[] air, double first) {
        double[] ground = new double[air.length];
        double now = first;
        for (int d = 0; d < air.length; d++) {
            now += (air[d] - now) / GROUND_DAYS;
            ground[d] = now;
        }
        return ground;
    }

    private static double[] filled(int days, double value) {
        Checks.above("days of weather", days, 0);
        double[] all = new double[days];
        Arrays.fill(all, value);
        return all;
    }
}
