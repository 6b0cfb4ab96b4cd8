package heapwright.report;

import heapwright.advice.Memory;
import heapwright.pile.Advised;
import heapwright.pile.Pile;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Tells what was taken on earlier: of what is due it asks whether it helped, of the rest when to look. */
final class MemoryText {

    private final Words words;
    private final Days days;

    MemoryText(Words words) {
        this.words = words;
        this.days = new Days(words);
    }

    /** A line for each day of advice that is still open; none where nothing is. */
    List<String> lines(Pile pile) {
        Memory memory = Memory.of(pile);
        List<String> lines = new ArrayList<>();
        byDay(memory.asking(), Advised::date)
                .forEach((day, all) -> lines.add(words.text("memory.asks", days.of(day), steps(all, pile))));
        byDay(memory.waiting(), Advised::look)
                .forEach((day, all) -> lines.add(words.text("memory.waits", steps(all, pile), days.of(day))));
        return lines;
    }

    private static Map<LocalDate, List<Advised>> byDay(List<Advised> all, Function<Advised, LocalDate> day) {
        return all.stream().collect(Collectors.groupingBy(day, TreeMap::new, Collectors.toList()));
    }

    private String steps(List<Advised> all, Pile pile) {
        return all.stream().map(a -> words.way(Memory.remedy(a), pile).name()).collect(Collectors.joining("; "));
    }
}
