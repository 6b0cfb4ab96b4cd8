package heapwright.advice.observe;

import heapwright.pile.Action;
import heapwright.pile.Entry;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;

/**
 * How long the record shows a core at sanitising heat, and how often the pile was turned in that time. Only what was
 * measured counts.
 *
 * @param days days from the first to the last hot reading, both counted
 * @param turns full turns in those days
 */
record HotPhase(int days, int turns) {

    /** Readings further apart than this leave a gap in the proof; the rules ask for a reading a day. Judgement. */
    private static final int MOST_DAYS_BETWEEN = 3;

    /** The longest hot phase of a record that ends on a day. */
    static HotPhase longest(List<Entry> log, LocalDate asOf, double edgeC) {
        HotPhase longest = new HotPhase(0, 0);
        LocalDate first = null;
        LocalDate last = null;
        for (Entry entry : log) {
            if (entry.date().isAfter(asOf) || entry.measured().coreC().isEmpty()) {
                continue;
            }
            if (entry.measured().coreC().getAsDouble() < edgeC) {
                first = null;
                continue;
            }
            if (first == null || ChronoUnit.DAYS.between(last, entry.date()) > MOST_DAYS_BETWEEN) {
                first = entry.date();
            }
            last = entry.date();
            HotPhase phase = new HotPhase(1 + (int) ChronoUnit.DAYS.between(first, last), turns(log, first, last));
            longest = phase.days > longest.days ? phase : longest;
        }
        return longest;
    }

    private static int turns(List<Entry> log, LocalDate from, LocalDate to) {
        return (int) log.stream()
                .filter(e -> !e.date().isBefore(from) && !e.date().isAfter(to))
                .filter(e -> e.done().contains(Action.TURNED_FULLY))
                .count();
    }
}
