package heapwright.process.sanitation;

import heapwright.knowledge.Knowledge;
import heapwright.pile.Action;
import heapwright.pile.Entry;
import heapwright.pile.Pile;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.NavigableMap;
import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * The readings of the core and the turns of a whole record, however long ago. Only what was measured counts, and only
 * for the core: nobody measured the edges.
 *
 * @param cores the reading of each day that has one, the highest
 * @param lows the reading by which each of those days counts: the lowest of a day that was read through, else the same
 * @param turns the days of full turns
 * @param disturbed the days on which something was done or added that may have cooled it
 */
public record HeatRecord(
        NavigableMap<LocalDate, Double> cores,
        NavigableMap<LocalDate, Double> lows,
        NavigableSet<LocalDate> turns,
        Set<LocalDate> disturbed) {
    public HeatRecord {
        cores = Collections.unmodifiableNavigableMap(new TreeMap<>(cores));
        lows = Collections.unmodifiableNavigableMap(new TreeMap<>(lows));
        turns = Collections.unmodifiableNavigableSet(new TreeSet<>(turns));
        disturbed = Set.copyOf(disturbed);
    }

    /**
     * Two readings further apart than this say nothing of the days between; the rules ask for one a day. Judgement: a
     * core seldom falls below its heat and rises again within two days unless it was disturbed.
     */
    public static final int MOST_DAYS_BETWEEN = 3;

    /** Readings that differ by less are equal: 131 °F is 55 °C. */
    private static final double EQUAL_WITHIN = 1e-6;

    private static final int HOURS_A_DAY = 24;

    private static final Set<Action> COOLING =
            Set.of(Action.TURNED_FULLY, Action.MOVED, Action.SPLIT, Action.SIEVED, Action.OPENED, Action.WATERED);

    /** The record of a pile up to its day of advice, whatever went in meanwhile. */
    static HeatRecord of(Pile pile) {
        return of(pile.log(), pile.asOf());
    }

    /** The record of a pile since the last day on which something went in that is safe only after heat. */
    public static HeatRecord sinceRawStuff(Pile pile, Knowledge knowledge) {
        HeatRecord all = of(pile);
        return RawStuff.lastIn(pile, knowledge).map(all::since).orElse(all);
    }

    /** What of it lies on a day or after it. */
    HeatRecord since(LocalDate day) {
        return new HeatRecord(
                cores.tailMap(day, true),
                lows.tailMap(day, true),
                turns.tailSet(day, true),
                disturbed.stream().filter(d -> !d.isBefore(day)).collect(Collectors.toSet()));
    }

    /**
     * The record of some entries up to a day. Of two readings on a day the higher counts, as everywhere; where a logger
     * tells the lowest of the day, that is what the core kept to all day.
     */
    static HeatRecord of(List<Entry> log, LocalDate asOf) {
        TreeMap<LocalDate, Double> cores = new TreeMap<>();
        TreeMap<LocalDate, Double> lowest = new TreeMap<>();
        TreeSet<LocalDate> turns = new TreeSet<>();
        Set<LocalDate> disturbed = new TreeSet<>();
        for (Entry entry : log) {
            if (entry.date().isAfter(asOf)) {
                continue;
            }
            entry.measured().coreC().ifPresent(c -> cores.merge(entry.date(), c, Math::max));
            entry.measured().coreLowestC().ifPresent(c -> lowest.merge(entry.date(), c, Math::min));
            if (entry.done().contains(Action.TURNED_FULLY)) {
                turns.add(entry.date());
            }
            if (!entry.added().isEmpty() || entry.done().stream().anyMatch(COOLING::contains)) {
                disturbed.add(entry.date());
            }
        }
        TreeMap<LocalDate, Double> lows = new TreeMap<>(cores);
        lows.putAll(lowest);
        return new HeatRecord(cores, lows, turns, disturbed);
    }

    /** Whether the core was ever measured. */
    public boolean measured() {
        return !cores.isEmpty();
    }

    /** The stretches in which the core was at a temperature or above, without a break. */
    public HotDays at(double celsius) {
        List<Stretch> all = new ArrayList<>();
        List<LocalDate> run = new ArrayList<>();
        lows.forEach((day, core) -> {
            boolean hot = core >= celsius - EQUAL_WITHIN;
            if (!hot && disturbed.contains(day) && cores.get(day) >= celsius - EQUAL_WITHIN) {
                // A turn cools the core for hours. Such a day is none, and ends nothing.
                return;
            }
            boolean far = !run.isEmpty() && between(run.get(run.size() - 1), day) > MOST_DAYS_BETWEEN;
            if (!run.isEmpty() && (!hot || far)) {
                all.add(stretch(run));
                run.clear();
            }
            if (hot) {
                run.add(day);
            }
        });
        if (!run.isEmpty()) {
            all.add(stretch(run));
        }
        return new HotDays(celsius, all);
    }

    /**
     * One stretch. A day without a reading counts when both readings around it are hot and nothing was done on it that
     * cools; hours count only between two readings with no such work from the first to the second.
     */
    private Stretch stretch(List<LocalDate> read) {
        TreeSet<LocalDate> days = new TreeSet<>(read);
        double hours = 0;
        double lowest = lows.get(read.get(0));
        for (int i = 1; i < read.size(); i++) {
            LocalDate from = read.get(i - 1);
            LocalDate to = read.get(i);
            lowest = Math.min(lowest, lows.get(to));
            from.plusDays(1).datesUntil(to).filter(d -> !disturbed.contains(d)).forEach(days::add);
            if (from.datesUntil(to).noneMatch(disturbed::contains)) {
                hours += (double) between(from, to) * HOURS_A_DAY;
            }
        }
        LocalDate last = read.get(read.size() - 1);
        return new Stretch(days, turns.subSet(read.get(0), true, last, true), hours, lowest);
    }

    /**
     * Time between two readings with nothing done that cools.
     *
     * @param hours how long
     * @param lowestC the lower of the two readings
     */
    record Span(double hours, double lowestC) {}

    /** The times between readings near enough to vouch for them. */
    List<Span> spans() {
        List<Span> all = new ArrayList<>();
        LocalDate before = null;
        for (LocalDate day : cores.keySet()) {
            if (before != null
                    && between(before, day) <= MOST_DAYS_BETWEEN
                    && before.datesUntil(day).noneMatch(disturbed::contains)) {
                all.add(new Span(
                        (double) between(before, day) * HOURS_A_DAY, Math.min(lows.get(before), lows.get(day))));
            }
            before = day;
        }
        return all;
    }

    private static int between(LocalDate from, LocalDate to) {
        return (int) ChronoUnit.DAYS.between(from, to);
    }
}
