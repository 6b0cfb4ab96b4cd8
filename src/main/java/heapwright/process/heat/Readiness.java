package heapwright.process.heat;

import java.util.OptionalInt;

/**
 * When compost counts as ready: respiration of a warm, damp sample and C:N below their limits, then a rest.
 *
 * @param respiration mg CO2-C per g organic matter and day; 4 (CCME05, CCQC01, from memory)
 * @param carbonToNitrogen gate; 25 (CCQC01, from memory)
 * @param restDays days of rest after that; 21 (CCME05, published)
 */
public record Readiness(double respiration, double carbonToNitrogen, int restDays) {
    /** The published limits. */
    public static Readiness standard() {
        return new Readiness(4, 25, 21);
    }

    /** First ready day of a course; empty when it does not come within the course. */
    public OptionalInt day(Course course) {
        return course.days().stream()
                .filter(d -> d.respiration() <= respiration && d.carbonToNitrogen() <= carbonToNitrogen)
                .mapToInt(d -> d.day() + restDays)
                .findFirst();
    }

    /** Whether decay has come to its end on a day, rest not counted. */
    public boolean spent(Day day) {
        return day.respiration() <= respiration;
    }
}
