package heapwright.report;

import heapwright.advice.Memory;
import heapwright.knowledge.RemedyInfo.Urgency;
import heapwright.pile.Advised;
import heapwright.pile.Advised.Outcome;
import heapwright.pile.Pile;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Tells what was taken on earlier: of what is due it asks whether it helped, of the rest when to look. */
public final class MemoryText {

    private final Words words;
    private final Days days;

    public MemoryText(Words words) {
        this.words = words;
        this.days = new Days(words);
    }

    /**
     * Steps that belong together.
     *
     * @param date the day of the advice, or the day to look
     * @param all the steps
     * @param names their names, in the same order
     */
    public record Together(LocalDate date, List<Advised> all, List<String> names) {

        /** Their names in one line. */
        public String steps() {
            return String.join("; ", names);
        }
    }

    /** A line for each day of advice that is still open; none where nothing is. */
    List<String> lines(Pile pile) {
        List<String> lines = new ArrayList<>();
        asking(pile).forEach(t -> lines.add(words.text("memory.asks", days.of(t.date()), t.steps())));
        waiting(pile).forEach(t -> lines.add(words.text("memory.waits", t.steps(), days.of(t.date()))));
        underway(pile).forEach(t -> lines.add(words.text("memory.done", t.steps(), days.of(t.date()))));
        stale(pile).ifPresent(lines::add);
        return lines;
    }

    /** That all that was noted is from before the work whose outcome was told. */
    public Optional<String> stale(Pile pile) {
        return Memory.of(pile).stale() ? Optional.of(words.text("memory.stale")) : Optional.empty();
    }

    /** What was taken on and should show by now, by the day of the advice; to leave it alone is no work that could help. */
    public List<Together> asking(Pile pile) {
        return together(
                Memory.of(pile).asking().stream().filter(a -> !isRest(a)).toList(), Advised::date, pile);
    }

    private boolean isRest(Advised advised) {
        return words.knowledge().remedies().get(Memory.remedy(advised)).urgency() == Urgency.REST;
    }

    /** What was taken on, is not to be looked at yet and not told to be done, by the day to look. */
    public List<Together> waiting(Pile pile) {
        return waiting(pile, Outcome.OPEN);
    }

    /** What was done and is not to be looked at yet, by the day to look. */
    public List<Together> underway(Pile pile) {
        return waiting(pile, Outcome.DONE);
    }

    private List<Together> waiting(Pile pile, Outcome outcome) {
        return together(
                Memory.of(pile).waiting().stream()
                        .filter(a -> a.outcome() == outcome)
                        .toList(),
                Advised::look,
                pile);
    }

    private List<Together> together(List<Advised> all, Function<Advised, LocalDate> day, Pile pile) {
        return byDay(all, day).entrySet().stream()
                .map(e -> new Together(e.getKey(), e.getValue(), names(e.getValue(), pile)))
                .toList();
    }

    private static Map<LocalDate, List<Advised>> byDay(List<Advised> all, Function<Advised, LocalDate> day) {
        return all.stream().collect(Collectors.groupingBy(day, TreeMap::new, Collectors.toList()));
    }

    private List<String> names(List<Advised> all, Pile pile) {
        return all.stream().map(a -> words.way(Memory.remedy(a), pile).name()).toList();
    }
}
