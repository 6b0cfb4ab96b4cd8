package heapwright.process.sanitation;

import heapwright.knowledge.HeatEquation;
import java.util.OptionalDouble;

/** What an equation of time and temperature asks. */
public final class TimeAtHeat {

    private static final double MINUTES_A_DAY = 24 * 60;
    private static final double HOURS_A_DAY = 24;

    private TimeAtHeat() {}

    /** The days asked at a temperature, with the floor; empty below the range of the equation. */
    public static OptionalDouble days(HeatEquation equation, double celsius) {
        if (celsius < equation.lowestCelsius()) {
            return OptionalDouble.empty();
        }
        double days = equation.coefficient() / Math.pow(10, equation.exponent() * celsius);
        return OptionalDouble.of(Math.max(days, equation.leastMinutes() / MINUTES_A_DAY));
    }

    /**
     * How many times over the core had what an equation asks, by the lower of each two readings; empty where no time
     * was within its range. Of the core alone: the equation is for every particle.
     */
    public static OptionalDouble share(HeatEquation equation, HeatRecord record) {
        double share = 0;
        boolean any = false;
        for (HeatRecord.Span span : record.spans()) {
            OptionalDouble days = days(equation, span.lowestC());
            if (days.isPresent()) {
                any = true;
                share += span.hours() / HOURS_A_DAY / days.getAsDouble();
            }
        }
        return any ? OptionalDouble.of(share) : OptionalDouble.empty();
    }
}
