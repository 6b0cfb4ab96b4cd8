package heapwright.advice;

import heapwright.advice.engine.Firing;
import heapwright.advice.fact.LimitIs;
import heapwright.advice.fact.WentIn;
import heapwright.knowledge.Knowledge;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Waiting days that a rule counts from what went in, as a date. */
final class WaitingDays {

    private static final String DAYS = "days";

    private WaitingDays() {}

    /**
     * The first day on which the waiting days of a rule are over; empty where it counts none.
     *
     * @param firing what the rule said, and on what ground
     * @param day the day of advice
     * @param knowledge the tables, which say what limits are in days
     */
    static Optional<LocalDate> over(Firing firing, LocalDate day, Knowledge knowledge) {
        OptionalDouble most = firing.because().stream()
                .filter(LimitIs.class::isInstance)
                .map(LimitIs.class::cast)
                .filter(l -> knowledge.limits().get(l.limit()).unit().equals(DAYS))
                .mapToDouble(LimitIs::value)
                .max();
        OptionalInt last = firing.because().stream()
                .filter(WentIn.class::isInstance)
                .mapToInt(w -> ((WentIn) w).daysAgo())
                .min();
        return most.isPresent() && last.isPresent()
                ? Optional.of(day.minusDays(last.getAsInt()).plusDays((long) Math.ceil(most.getAsDouble())))
                : Optional.empty();
    }

    static LocalDate later(LocalDate one, LocalDate other) {
        return one.isAfter(other) ? one : other;
    }
}
