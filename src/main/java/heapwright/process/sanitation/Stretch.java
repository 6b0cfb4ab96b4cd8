package heapwright.process.sanitation;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;

/**
 * Days on end at some heat, in the core.
 *
 * @param days the days that count, in order
 * @param turns the days of full turns among them, the first and the last day included
 * @param hours the hours between readings that nothing disturbed; none where there is one reading only
 * @param lowestC the lowest reading
 */
public record Stretch(NavigableSet<LocalDate> days, NavigableSet<LocalDate> turns, double hours, double lowestC) {

    public Stretch {
        days = copy(days);
        turns = copy(turns);
    }

    /** No days at all. */
    public static Stretch none() {
        return new Stretch(copy(List.of()), copy(List.of()), 0, 0);
    }

    private static NavigableSet<LocalDate> copy(Collection<LocalDate> days) {
        return Collections.unmodifiableNavigableSet(new TreeSet<>(days));
    }

    public LocalDate first() {
        return days.first();
    }

    public LocalDate last() {
        return days.last();
    }

    /**
     * The turns that count where a rule wants them apart.
     *
     * @param daysApart the fewest days from one to the next
     * @param hotDaysBefore the fewest hot days since the turn before, or since the start
     */
    public int turns(int daysApart, int hotDaysBefore) {
        int counted = 0;
        LocalDate last = null;
        LocalDate before = null;
        for (LocalDate turn : turns) {
            boolean apart = last == null || ChronoUnit.DAYS.between(last, turn) >= daysApart;
            int hot = days.headSet(turn, true).size()
                    - (before == null ? 0 : days.headSet(before, true).size());
            if (apart && hot >= hotDaysBefore) {
                counted++;
                last = turn;
            }
            before = turn;
        }
        return counted;
    }
}
