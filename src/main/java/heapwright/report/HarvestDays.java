package heapwright.report;

import heapwright.advice.Advice;
import heapwright.advice.ready.Ready;
import heapwright.advice.ready.ReadyDates;
import java.time.LocalDate;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** The first days of harvest where compost that counts as raw was spread, for lists and calendars of days. */
public final class HarvestDays {

    private final Words words;

    public HarvestDays(Words words) {
        this.words = words;
    }

    /**
     * Those that lie ahead, each with what may be harvested from then on.
     *
     * @param today a harvest of today waits no more
     */
    public SortedMap<LocalDate, String> ahead(Advice advice, LocalDate today) {
        SortedMap<LocalDate, String> days = new TreeMap<>();
        if (advice.alarm().isPresent()) {
            return days;
        }
        ReadyDates dates = Ready.of(advice, words.knowledge()).dates();
        dates.spreadOn().ifPresent(spread -> {
            put(days, "harvest.others", dates.harvestOthers(), spread, today);
            put(days, "harvest.touching-soil", dates.harvestTouchingSoil(), spread, today);
        });
        return days;
    }

    private void put(
            SortedMap<LocalDate, String> days, String key, Optional<LocalDate> day, LocalDate spread, LocalDate today) {
        day.filter(d -> d.isAfter(today)).ifPresent(d -> days.put(d, words.text(key, new Days(words).of(spread))));
    }
}
